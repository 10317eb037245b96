package strikeoff.paste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Mixings;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Timeline;

/** Whether pastes are mixed, in time, and for something. */
final class MixOrder {

  private final PrintPlan plan;
  private final Mixings mixings;

  /** The first impression of each printed paste, in order of printing. */
  private final Map<String, Impression> firstUse = new LinkedHashMap<>();

  MixOrder(PrintPlan plan, Timeline timeline, Mixings mixings) {
    this.plan = plan;
    this.mixings = mixings;
    timeline.impressions().forEach(i -> firstUse.putIfAbsent(i.footprint().paste().name(), i));
  }

  List<Evidence> all() {
    List<Paste> never = new ArrayList<>();
    List<Paste> late = new ArrayList<>();
    for (String name : firstUse.keySet()) {
      Paste paste = plan.pastes().get(name);
      if (mixings.batches(paste) == 0) {
        never.add(paste);
      } else if (mixings.readyBefore(paste, firstUse.get(name).laid()).isEmpty()) {
        late.add(paste);
      }
    }
    List<Evidence> facts = new ArrayList<>();
    if (!never.isEmpty()) {
      facts.add(
          new NeverMixed(names(never), related(never), firstUse.get(never.get(0).name()).path()));
    }
    if (!late.isEmpty()) {
      facts.add(late(late));
    }
    for (Step step : plan.run()) {
      if (step instanceof Step.Mix mix) {
        List<String> idle = mix.pastes().stream().filter(p -> !firstUse.containsKey(p)).toList();
        if (!idle.isEmpty()) {
          facts.add(new MixedForNothing(idle, mix.path()));
        }
      }
    }
    return facts;
  }

  private UsedBeforeMixed late(List<Paste> pastes) {
    Impression first = firstUse.get(pastes.get(0).name());
    Moment ready =
        pastes.stream()
            .map(p -> mixings.of(p.name()).get(0).ready())
            .max(Moment::compareTo)
            .orElseThrow();
    return new UsedBeforeMixed(names(pastes), first.laid(), ready, related(pastes), first.path());
  }

  private static List<String> names(List<Paste> pastes) {
    return pastes.stream().map(Paste::name).toList();
  }

  private static List<Evidence.Related> related(List<Paste> pastes) {
    return pastes.stream().map(p -> new Evidence.Related("this paste", p.path())).toList();
  }
}
