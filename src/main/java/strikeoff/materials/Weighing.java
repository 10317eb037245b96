package strikeoff.materials;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.day.Moment;
import strikeoff.units.Mass;

/**
 * What is weighed at one time: a batch of paste, or a bath.
 *
 * @param kind which of the two
 * @param name of the paste; of the step that fixes, soak or batch
 * @param step whose work it is; empty for a paste that no step mixes
 * @param begins when that begins; empty where no step does it, or it never comes to pass
 * @param amount of the paste; empty for a bath
 * @param recipe who says what it is made of
 * @param usualAt the file and line of the studio's usual recipe, where that is taken
 * @param parts in the recipe's order; none where nobody says
 */
public record Weighing(
    Kind kind,
    String name,
    OptionalInt step,
    Optional<Moment> begins,
    Optional<Mass> amount,
    Recipe recipe,
    Optional<String> usualAt,
    List<WeighedPart> parts) {

  public Weighing {
    parts = List.copyOf(parts);
  }

  /** What is made up. */
  public enum Kind {
    PASTE,
    BATH
  }

  /** Whose recipe it is. */
  public enum Recipe {
    PLAN,
    STUDIO,
    UNKNOWN
  }
}
