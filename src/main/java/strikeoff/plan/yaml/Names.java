package strikeoff.plan.yaml;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.units.Spelling;
import strikeoff.yaml.Node;

/**
 * The names that a plan defines in its sections, in order, taken from the tree before anything is
 * decoded. Sets, since each place that uses one is looked up. Films have names in a studio alone.
 */
record Names(
    Set<String> seams,
    Set<String> screens,
    Set<String> pastes,
    Set<String> films,
    Set<String> designs,
    Set<String> placements) {

  Names {
    seams = Collections.unmodifiableSet(new LinkedHashSet<>(seams));
    screens = Collections.unmodifiableSet(new LinkedHashSet<>(screens));
    pastes = Collections.unmodifiableSet(new LinkedHashSet<>(pastes));
    films = Collections.unmodifiableSet(new LinkedHashSet<>(films));
    designs = Collections.unmodifiableSet(new LinkedHashSet<>(designs));
    placements = Collections.unmodifiableSet(new LinkedHashSet<>(placements));
  }

  static Names of(Node root) {
    return new Names(
        keys(root, "seams"),
        keys(root, "screens"),
        keys(root, "pastes"),
        Set.of(),
        keys(root, "designs"),
        keys(root, "placements"));
  }

  /** Also the names that the studio's stock gives. */
  Names with(Stock stock) {
    return new Names(
        seams,
        Stocked.with(screens, stock.screens()),
        Stocked.with(pastes, stock.pastes()),
        stock.films().keySet(),
        designs,
        placements);
  }

  private static Set<String> keys(Node root, String section) {
    if (!(root instanceof Node.Mapping m)) {
      return Set.of();
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
      return list.items().stream()
          .flatMap(Names::listed)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }
    return entry != null && entry.value() instanceof Node.Mapping inner
        ? inner.entries().keySet()
        : Set.of();
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
