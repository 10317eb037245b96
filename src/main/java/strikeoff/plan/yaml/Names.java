package strikeoff.plan.yaml;

import java.util.List;
import java.util.stream.Stream;
import strikeoff.units.Spelling;
import strikeoff.yaml.Node;

/**
 * The names that a plan defines in its sections, taken from the tree before anything is decoded.
 */
record Names(
    List<String> seams,
    List<String> screens,
    List<String> pastes,
    List<String> designs,
    List<String> placements) {

  static Names of(Node root) {
    return new Names(
        keys(root, "seams"),
        keys(root, "screens"),
        keys(root, "pastes"),
        keys(root, "designs"),
        keys(root, "placements"));
  }

  /** Also the names that the studio's stock gives. */
  Names with(Stock stock) {
    return new Names(
        seams,
        Stocked.with(screens, stock.screens()),
        Stocked.with(pastes, stock.pastes()),
        designs,
        placements);
  }

  private static List<String> keys(Node root, String section) {
    if (!(root instanceof Node.Mapping m)) {
      return List.of();
    }
    Node.Entry entry =
        m.entries().values().stream()
            .filter(e -> e.key().equals(section))
            .findFirst()
            .or(
                () ->
                    m.entries().values().stream()
                        .filter(e -> Spelling.isSlip(e.key(), section))
                        .findFirst())
            .orElse(null);
    if (entry != null && entry.value() instanceof Node.Sequence list) {
      return list.items().stream().flatMap(Names::listed).toList();
    }
    return entry != null && entry.value() instanceof Node.Mapping inner
        ? List.copyOf(inner.entries().keySet())
        : List.of();
  }

  /** A list is no section, which is told once; its names are taken as they were meant. */
  private static Stream<String> listed(Node item) {
    if (!(item instanceof Node.Mapping m)) {
      return Stream.empty();
    }
    Node.Entry name = m.entries().get("name");
    return name != null && name.value() instanceof Node.Scalar s
        ? Stream.of(s.text())
        : m.entries().keySet().stream();
  }
}
