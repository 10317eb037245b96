package strikeoff.paste;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Span;

/**
 * Dyes of several reactive groups mixed in one pot.
 *
 * @param groups each with how long its dye lives in that pot, as a best estimate
 * @param alkali what the pot holds of it
 * @param alkaliNamed the same in the plan's own words; empty if it names none
 * @param path of the paste
 */
public record MixedGroups(
    String paste, List<Lived> groups, HeldAlkali alkali, String alkaliNamed, PlanPath path)
    implements Evidence {

  /** A group, and the life of its dye. */
  public record Lived(ReactiveGroup group, Span life) {}

  public MixedGroups {
    groups = List.copyOf(groups);
  }
}
