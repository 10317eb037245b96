package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Gathers what follows from a finished layout, in a fixed order. */
final class LayoutFacts {

  private LayoutFacts() {}

  static List<Evidence> of(PrintPlan plan, Layout layout, Laying laying, Policy policy) {
    List<Evidence> facts = new ArrayList<>();
    Length closing = policy.layout().closingTolerance();
    for (Arrangement arrangement : plan.arrangements().values()) {
      Template template = laying.template(arrangement.name());
      if (template != null) {
        spans(facts, arrangement, template, layout.tube(), closing);
        Crowding.of(arrangement, template, layout.tube(), closing, plan.cloth())
            .ifPresent(facts::add);
        NeighbourGap.of(plan, layout, arrangement).ifPresent(facts::add);
        BoardsAtPitch.of(plan, layout, arrangement).ifPresent(facts::add);
        Lays.of(plan, layout, policy, arrangement).ifPresent(facts::add);
        FrameChoices.of(plan, layout, policy, arrangement).ifPresent(facts::add);
      }
    }
    facts.addAll(EdgeReach.of(plan, layout));
    facts.addAll(Overlaps.of(plan, layout));
    facts.addAll(LaidOver.of(plan, layout));
    facts.addAll(FillerNear.of(plan, layout));
    facts.addAll(MirroredPrint.of(plan));
    facts.addAll(PanelPairs.of(plan, layout, policy));
    facts.addAll(SeamCrossing.of(plan, layout));
    facts.addAll(FrameAtSeam.of(plan, layout));
    facts.addAll(SeamAllowanceReach.of(plan, layout));
    facts.addAll(BladeOverEdge.of(plan, layout));
    facts.addAll(StationRow.of(plan, layout));
    facts.addAll(StationFit.of(plan, layout));
    List<FrameOnTable> frames = FrameOnTable.of(plan, layout);
    facts.addAll(frames);
    ClothLay.of(plan, frames).ifPresent(facts::add);
    facts.add(ClothOnTable.of(plan));
    facts.addAll(Shrinkage.of(plan));
    FinishedSize.of(plan).ifPresent(facts::add);
    return facts;
  }

  private static void spans(
      List<Evidence> facts, Arrangement arrangement, Template template, Tube tube, Length closing) {
    if (arrangement instanceof Arrangement.Series series) {
      facts.add(SeriesSpan.of(series, template));
      if (tube.closed() && series.count() > 1) {
        facts.add(TubeClosing.of(series, template, tube));
      }
    } else if (arrangement instanceof Arrangement.Border border) {
      facts.add(BorderRepeats.of(border, template.bounds().getWidth(), tube, closing));
      RoundTwice.of(border, template, tube, closing).ifPresent(facts::add);
    } else if (arrangement instanceof Arrangement.Fill fill && FillRound.goesRound(fill, tube)) {
      facts.add(FillRound.of(fill, template.bounds().getWidth(), tube));
    }
  }
}
