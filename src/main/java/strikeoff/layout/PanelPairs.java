package strikeoff.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import strikeoff.document.GivenUp;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * Finds the arrangements that answer each other as mirrored panels. Two do if a printer would say
 * that they do: one is mirrored and one is not, their turns answer each other, they have as many
 * copies of designs of one size, all of one lie to one side of all of the other, and most copies
 * lie within a part of the motif from the mirror image of their partner. Motifs that face each
 * other in turn along one row, and panels that were set without regard to each other, are none.
 *
 * <p>The line is a seam between the two if they answer each other about it; else the line of an
 * earlier pair that lies between them, since the parts of one panel share their line; else the one
 * that fits most of their own copies.
 */
final class PanelPairs {

  private final PrintPlan plan;
  private final Tube tube;

  /** Part of a motif's shorter side that a partner may be out and still be meant as one. */
  private final double meant;

  private final List<MirroredPanels> found = new ArrayList<>();

  private PanelPairs(PrintPlan plan, Tube tube, Policy policy) {
    this.plan = plan;
    this.tube = tube;
    this.meant = policy.layout().mirrorPartner().fraction();
  }

  static List<MirroredPanels> of(PrintPlan plan, Layout layout, Policy policy) {
    if (plan.arrangements().values().stream().noneMatch(Arrangement::mirrored)) {
      return List.of();
    }
    PanelPairs pairs = new PanelPairs(plan, layout.tube(), policy);
    for (boolean across : new boolean[] {true, false}) {
      Map<List<Object>, List<Panel>> alike = new LinkedHashMap<>();
      for (Arrangement arrangement : plan.arrangements().values()) {
        List<Placement> own = layout.of(arrangement.name());
        if (!own.isEmpty()) {
          var design = plan.designs().get(arrangement.design());
          alike
              .computeIfAbsent(
                  List.of(design.length(), design.width(), own.size()), k -> new ArrayList<>())
              .add(Panel.of(arrangement, design, across, own));
        }
      }
      alike.values().forEach(pairs::pair);
    }
    return pairs.found;
  }

  /** From the start of the cloth on, each takes the nearest one that answers it. */
  private void pair(List<Panel> panels) {
    List<Panel> sorted = new ArrayList<>(panels);
    sorted.sort(Comparator.comparingDouble(Panel::firstCentre));
    // By identity: to compare two panels means to compare all their copies.
    Set<Panel> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    List<PanelFit> fits = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      Panel left = sorted.get(i);
      PanelFit best = null;
      for (int j = i + 1; j < sorted.size() && !taken.contains(left); j++) {
        GivenUp.ifAsked();
        Panel right = sorted.get(j);
        boolean further = best != null && right.firstCentre() > best.right().firstCentre();
        if (further) {
          break;
        }
        if (!taken.contains(right) && mayAnswer(left, right)) {
          PanelFit fit = PanelFit.of(left, right);
          if (isMeant(fit) && (best == null || fit.typical() < best.typical())) {
            best = fit;
          }
        }
      }
      if (best != null) {
        taken.add(best.left());
        taken.add(best.right());
        fits.add(best);
      }
    }
    fits.forEach(fit -> found.add(told(fit)));
  }

  private boolean mayAnswer(Panel left, Panel right) {
    return left.answers(right)
        && left.lastCentre() < right.firstCentre()
        && Math.abs(left.meanBeside() - right.meanBeside()) <= left.shortSide();
  }

  private boolean isMeant(PanelFit fit) {
    return fit.typical() <= meant * fit.left().shortSide() + Length.TOLERANCE;
  }

  private MirroredPanels told(PanelFit own) {
    boolean across = own.left().lineAcross();
    PanelFit fit = own;
    MirrorLine line = new MirrorLine(across, MirrorLine.SetBy.PANELS, "");
    Optional<Seam> seam = across ? seam(own) : Optional.empty();
    Optional<MirroredPanels> others = others(own);
    if (seam.isPresent()) {
      fit = own.about(place(seam.get(), own));
      line = new MirrorLine(true, MirrorLine.SetBy.SEAM, seam.get().name());
    } else if (others.isPresent()) {
      fit = own.about(others.get().axis().mm());
      String names = others.get().arrangement() + " and " + others.get().mirrored();
      line = new MirrorLine(across, MirrorLine.SetBy.OTHER_PANELS, names);
    }
    return told(fit, line);
  }

  private MirroredPanels told(PanelFit fit, MirrorLine line) {
    boolean rightMirrored = fit.right().arrangement().mirrored();
    Panel mirrored = rightMirrored ? fit.right() : fit.left();
    Panel drawn = rightMirrored ? fit.left() : fit.right();
    int worst = fit.worst();
    Coordinate move = fit.moveOfRight(worst);
    Placement right = fit.right().placements().get(worst);
    Placement left = fit.left().placements().get(fit.partners()[worst]);
    return new MirroredPanels(
        drawn.arrangement().name(),
        mirrored.arrangement().name(),
        line,
        new Length(fit.axis()),
        fit.partners().length,
        new Length(fit.misfit(worst)),
        size(line.across() ? move.x : move.y),
        size(line.across() ? move.y : move.x),
        (rightMirrored ? left : right).name(),
        (rightMirrored ? right : left).name(),
        new Length(Math.abs(fit.apart()) < Length.TOLERANCE ? 0 : fit.apart()),
        MirrorMend.of(fit, rightMirrored, plan.measures()),
        mirrored.arrangement().path(),
        List.of(new Related(Tie.AS_DRAWN, drawn.arrangement().path())));
  }

  private static Length size(double mm) {
    return new Length(Math.abs(mm) < Length.TOLERANCE ? 0 : Math.abs(mm));
  }

  /** The seam between two panels that fits them best, if they answer each other about it. */
  private Optional<Seam> seam(PanelFit own) {
    return plan.seams().values().stream()
        .filter(seam -> between(own, place(seam, own)))
        .filter(seam -> isMeant(own.about(place(seam, own))))
        .min(Comparator.comparingDouble(seam -> Math.abs(place(seam, own) - own.axis())));
  }

  /** On a tube, what is mirrored in a seam is mirrored in the line opposite to it just as well. */
  private double place(Seam seam, PanelFit own) {
    double at = seam.at().mm();
    double half = tube.circumference() / 2;
    return tube.closed() ? at + half * Math.rint((own.axis() - at) / half) : at;
  }

  /** The first pair found that shares its line with these. */
  private Optional<MirroredPanels> others(PanelFit own) {
    GivenUp.ifAsked();
    return found.stream()
        .filter(other -> other.line().across() == own.left().lineAcross())
        .filter(other -> between(own, other.axis().mm()))
        .filter(other -> isMeant(own.about(other.axis().mm())))
        .findFirst();
  }

  private static boolean between(PanelFit fit, double line) {
    return fit.left().lastCentre() < line && line < fit.right().firstCentre();
  }
}
