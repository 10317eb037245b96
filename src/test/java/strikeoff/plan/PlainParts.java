package strikeoff.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Share;

/** Parts of plans for tests: what a test does not name is zero, absent or as usual. */
public final class PlainParts {

  private static final Length NONE = new Length(0);

  private PlainParts() {}

  /** Washed cloth that shrinks no more, without allowances or selvedges. */
  public static Cloth cloth(
      Map<String, Share> fibres,
      ArealMass mass,
      Length length,
      Length width,
      boolean closed,
      Colour ground) {
    return new Cloth(
        fibres,
        mass,
        width,
        length,
        closed,
        ground,
        true,
        new Share(0),
        new Share(0),
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        new PlanPath("cloth"));
  }

  /** Cotton of 180 g/m². */
  public static Cloth cotton(Length length, Length width, boolean closed, Colour ground) {
    return cloth(Map.of("cotton", new Share(1)), new ArealMass(180), length, width, closed, ground);
  }

  /** A paste kept in the room, of which nothing was measured; dye is a dichlorotriazine. */
  public static Paste paste(String name, Medium medium, Colour colour, boolean transparent) {
    return new Paste(
        name,
        medium,
        medium == Medium.DYE ? List.of("dichlorotriazine") : List.of(),
        colour,
        transparent,
        Optional.empty(),
        List.of(),
        false,
        Optional.empty(),
        Storage.ROOM,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new PlanPath("pastes." + name));
  }
}
