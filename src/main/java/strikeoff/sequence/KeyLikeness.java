package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.colour.Meetings;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.layout.Layout;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/** Outlines that nobody tells from what they are drawn round. */
final class KeyLikeness {

  private final PrintPlan plan;
  private final Layout layout;
  private final Meetings meetings;
  private final Limit shows;

  KeyLikeness(PrintPlan plan, Layout layout, Policy policy) {
    this.plan = plan;
    this.layout = layout;
    meetings = new Meetings(plan.cloth(), policy);
    shows = policy.order().showsFrom();
  }

  /** One for each outline of a placed design. */
  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    for (Design design : plan.designs().values()) {
      List<String> placements = layout.placed(design);
      if (!placements.isEmpty()) {
        design.separations().stream()
            .filter(Separation::key)
            .forEach(key -> fact(design, key, placements).ifPresent(facts::add));
      }
    }
    return facts;
  }

  /** Tone on tone from one pot is meant, and so is a line that lies on its fill alone. */
  private Optional<Evidence> fact(Design design, Separation key, List<String> placements) {
    Paste ink = paste(key);
    List<Separation> fills =
        design.separations().stream()
            .filter(s -> !s.key() && SharedAreas.common(key, s) > 0)
            .toList();
    List<Separation> alike =
        fills.stream()
            .filter(s -> !s.paste().equals(key.paste()))
            .filter(s -> meetings.beside(ink, paste(s)) < shows.amount())
            .sorted(Comparator.comparingDouble(s -> meetings.beside(ink, paste(s))))
            .toList();
    if (alike.isEmpty()
        || SharedAreas.certain(design, key, alike) >= 1
        || meetings.isLostOnGround(ink)
        || meetings.over(ink, paste(alike.get(0))).isLost()) {
      return Optional.empty();
    }
    Paste fill = paste(alike.get(0));
    return Optional.of(
        new KeyLikeFill(
            design.name(),
            key.paste(),
            alike.stream().map(Separation::paste).distinct().toList(),
            new Share(printed(alike) / printed(fills)),
            Ratio.toTenth(meetings.beside(ink, fill)),
            shows,
            Ratio.toTenth(meetings.over(ink, fill).difference()),
            placements,
            List.of(new Related(fill.name(), fill.path().key("colour"))),
            ink.path().key("colour")));
  }

  private static double printed(List<Separation> separations) {
    return separations.stream().mapToDouble(s -> s.printed().squareCm()).sum();
  }

  private Paste paste(Separation separation) {
    return plan.pastes().get(separation.paste());
  }
}
