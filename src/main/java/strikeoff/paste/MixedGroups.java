package strikeoff.paste;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

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

  public String names() {
    return Phrase.list(groups.stream().map(g -> g.group().name()).toList());
  }

  /** How long each lives in the pot, in words. */
  public String lives() {
    return switch (alkali) {
          case NONE -> "Without alkali";
          case SODA -> "With soda";
          case BICARBONATE -> "With " + alkaliNamed;
        }
        + " in the pot, "
        + Phrase.list(
            groups.stream().map(g -> g.group().name() + " lives " + g.life().text()).toList());
  }

  /** What a bath has to offer, in words. */
  public String windows(Measures units) {
    Temperature coolest =
        groups.stream().map(g -> g.group().coolest()).max(Temperature::compareTo).orElseThrow();
    Temperature warmest =
        groups.stream().map(g -> g.group().warmest()).min(Temperature::compareTo).orElseThrow();
    String asked =
        groups.stream()
            .map(
                g ->
                    g.group().name()
                        + " asks for "
                        + g.group().coolest().text(units)
                        + " to "
                        + g.group().warmest().text(units))
            .collect(Collectors.joining(", "));
    int met = coolest.compareTo(warmest);
    return "In a bath "
        + asked
        + ": "
        + (met > 0
            ? "no temperature serves all of them"
            : met == 0
                ? "only " + coolest.text(units) + " serves all of them"
                : coolest.text(units) + " to " + warmest.text(units) + " serve all of them");
  }
}
