package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Scalars;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/**
 * What a first plan prints: its pastes, and its designs with the separations of each.
 *
 * @param pastes in the order of printing
 */
public record FirstDesigns(List<Coloured> pastes, List<Motif> motifs) {

  public FirstDesigns {
    pastes = List.copyOf(pastes);
    motifs = List.copyOf(motifs);
  }

  /**
   * A paste.
   *
   * @param colour as plans write it
   * @param standsIn true if the colour was made up, since nobody said one
   */
  public record Coloured(String name, String colour, boolean standsIn) {}

  /**
   * A design.
   *
   * @param placement what the row of it is called
   */
  public record Motif(String name, String placement, Said<Pair> size, List<Layer> layers) {
    public Motif {
      layers = List.copyOf(layers);
    }
  }

  /**
   * A separation.
   *
   * @param prints what it prints, as plans write it after screen and paste
   */
  public record Layer(String screen, String paste, String prints) {}

  /** One motif, of which nobody knows yet how it is shared among its colours. */
  static FirstDesigns guessed(List<String> colours, Said<Pair> size) {
    List<Coloured> pastes = new ArrayList<>();
    List<Layer> layers = new ArrayList<>();
    for (int i = 1; i <= colours.size(); i++) {
      pastes.add(new Coloured("colour " + i, colours.get(i - 1), false));
      layers.add(new Layer("screen " + i, "colour " + i, "covers: 30 %"));
    }
    return new FirstDesigns(pastes, List.of(new Motif("motif", "row", size, layers)));
  }

  /** A size in round figures, as a plan in those units writes it. */
  public static Said<Pair> size(Pair size, Measures units) {
    PlanNumbers numbers = new PlanNumbers(units);
    String text = numbers.pair(numbers.near(size.along().mm()), numbers.near(size.across().mm()));
    return new Said<>(text, Pair.size(text).toOptional().orElse(size));
  }

  /** A separation by its film. */
  public static Layer film(String screen, String paste, String file, boolean key) {
    return new Layer(screen, paste, "artwork: " + Scalars.quoted(file) + (key ? ", key: yes" : ""));
  }

  boolean ofFilms() {
    return motifs.stream()
        .flatMap(motif -> motif.layers().stream())
        .anyMatch(layer -> layer.prints().startsWith("artwork"));
  }

  /** What has to be told of colours that nobody said; empty if there are none. */
  public Optional<String> standIns() {
    List<String> names =
        pastes.stream().filter(Coloured::standsIn).map(paste -> "“" + paste.name() + "”").toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "By name no colour that plans know: "
                + String.join(", ", names)
                + ". Greys and black stand in; write the colours into the plan.");
  }

  /** The same in other colours, in the same order. */
  public FirstDesigns in(List<String> colours) {
    List<Coloured> others = new ArrayList<>();
    for (int i = 0; i < pastes.size(); i++) {
      Coloured paste = pastes.get(i);
      boolean same = paste.colour().equals(colours.get(i));
      others.add(same ? paste : new Coloured(paste.name(), colours.get(i), false));
    }
    return new FirstDesigns(others, motifs);
  }
}
