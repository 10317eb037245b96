package strikeoff.paste;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.Share;

/**
 * What of a colour lies under an opaque one of its own motif, by their films, further in than a
 * trap has to reach.
 *
 * @param under its paste
 * @param over the opaque one
 * @param area of it in each print
 * @param share the same of all that it prints
 * @param prints how often it is printed before the other; as the design lists them where nothing is
 *     printed
 * @param grams what that takes of its paste in all of them, by the best estimate
 * @param trap what has to be left under the other all round: how far a frame can be off
 * @param path of its film
 */
public record HiddenUnderOpaque(
    String design,
    String under,
    String over,
    Area area,
    Share share,
    int prints,
    Mass grams,
    boolean railed,
    Length trap,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public HiddenUnderOpaque {
    related = List.copyOf(related);
  }

  /** Of every pair of films that were compared, the later one opaque. */
  static List<HiddenUnderOpaque> all(PrintPlan plan, List<Impression> impressions, Policy policy) {
    List<HiddenUnderOpaque> all = new ArrayList<>();
    for (Design design : plan.designs().values()) {
      for (Joint joint : design.joints()) {
        Separation one = design.separation(joint.one());
        Separation other = design.separation(joint.other());
        int otherLater = later(design, other, one, impressions);
        int oneLater = later(design, one, other, impressions);
        boolean listed = impressions.isEmpty();
        if (otherLater > 0 || listed) {
          of(plan, policy, design, one, other, joint, otherLater).ifPresent(all::add);
        }
        if (oneLater > 0) {
          of(plan, policy, design, other, one, joint, oneLater).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private static Optional<HiddenUnderOpaque> of(
      PrintPlan plan,
      Policy policy,
      Design design,
      Separation under,
      Separation over,
      Joint joint,
      int prints) {
    Paste paste = plan.pastes().get(under.paste());
    Area area = joint.of(under.number()).inside();
    if (plan.pastes().get(over.paste()).transparent() || area.squareCm() == 0) {
      return Optional.empty();
    }
    Screen screen = plan.screens().get(under.screen());
    double each =
        Deposit.of(screen, paste, plan.cloth(), policy).afterPulls(under.pulls()).best()
            * area.squareMetres();
    return Optional.of(
        new HiddenUnderOpaque(
            design.name(),
            under.paste(),
            over.paste(),
            area,
            new Share(area.squareCm() / under.printed().squareCm()),
            prints,
            new Mass(each * prints),
            plan.table().railed(),
            policy.registration(plan.table().railed()),
            List.of(new Related(Tie.OTHER_FILM, over.path().key("artwork"))),
            under.path().key("artwork")));
  }

  /** On how many motifs one is printed after another. */
  private static int later(
      Design design, Separation one, Separation other, List<Impression> impressions) {
    Set<Integer> before = new HashSet<>();
    int later = 0;
    for (Impression print : impressions) {
      if (print.footprint().placement().design().equals(design.name())) {
        int motif = print.footprint().placement().id();
        int number = print.footprint().separation().number();
        if (number == other.number()) {
          before.add(motif);
        } else if (number == one.number() && before.contains(motif)) {
          later++;
        }
      }
    }
    return later;
  }
}
