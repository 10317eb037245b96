package strikeoff.plan;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.ArealMass;
import strikeoff.units.Quantity;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * One colour of paste or paint.
 *
 * @param groups the dyes' reactive groups as the policy knows them (dichlorotriazine, …), usually
 *     one; empty for paint
 * @param transparent true if what lies under it shows through
 * @param amount how much is mixed, a mass or a volume; empty if the plan leaves it to the tool
 * @param recipe what it is mixed from, may be empty
 * @param alkaliInPaste true if the paste holds the alkali that fixes it
 * @param thickener how the thickener was kept; empty if the plan doesn't say
 * @param storage where the mixed paste is kept
 * @param mixedBefore how long before the start of day 1 it was mixed; empty if a mix step mixes it
 * @param deposit measured mass of paste per area and pull, on a strike-off; empty to estimate it
 * @param frameSafe measured time to frame-safe; empty to estimate it
 * @param liftSafe measured time to lift-safe; empty to estimate it
 * @param strikeOff a strike-off that was weighed; empty if none was
 * @param label how its label wants it heat-set; empty if the plan doesn't say
 */
public record Paste(
    String name,
    Medium medium,
    List<String> groups,
    Colour colour,
    boolean transparent,
    Optional<Quantity> amount,
    List<Ingredient> recipe,
    boolean alkaliInPaste,
    Optional<Thickener> thickener,
    Storage storage,
    Optional<Span> mixedBefore,
    Optional<ArealMass> deposit,
    Optional<DryingTime> frameSafe,
    Optional<DryingTime> liftSafe,
    Optional<StrikeOff> strikeOff,
    Optional<Label> label,
    PlanPath path) {

  public Paste {
    groups = List.copyOf(groups);
    recipe = List.copyOf(recipe);
  }

  /** The same, whatever it is mixed from and however much of it. */
  Paste unmixed() {
    return new Paste(
        name,
        medium,
        groups,
        colour,
        transparent,
        Optional.empty(),
        List.of(),
        alkaliInPaste,
        thickener,
        storage,
        mixedBefore,
        deposit,
        frameSafe,
        liftSafe,
        strikeOff,
        label,
        path);
  }

  /** Paint of no opaque grade: it tints what lies under it and hides a part of it as well. */
  public boolean translucent() {
    return transparent && medium == Medium.PAINT;
  }

  /**
   * The thickener's history: how long it stood after it was sprinkled in, and its age and place.
   */
  public record Thickener(Span stood, Span age, Storage storage, PlanPath path) {}

  /**
   * What a paint's label asks of the heat-set.
   *
   * @param temperature at the film
   * @param lasts at each spot
   */
  public record Label(Temperature temperature, Span lasts, PlanPath path) {}
}
