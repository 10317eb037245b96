package strikeoff.paste;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.document.Edit;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;

/** When each paste is mixed, and when it is printed first. */
final class MixOrder {

  private final PrintPlan plan;
  private final Mixings mixings;

  /** The first impression of each printed paste, in order of printing. */
  private final Map<String, Impression> firstUse = new LinkedHashMap<>();

  private final Map<String, Integer> prints = new LinkedHashMap<>();

  MixOrder(PrintPlan plan, Timeline timeline, Mixings mixings) {
    this.plan = plan;
    this.mixings = mixings;
    for (Impression impression : timeline.impressions()) {
      String paste = impression.footprint().paste().name();
      firstUse.putIfAbsent(paste, impression);
      prints.merge(paste, 1, Integer::sum);
    }
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    firstUse.forEach((name, first) -> facts.add(print(plan.pastes().get(name), first)));
    for (Step step : plan.run()) {
      if (step instanceof Step.Mix mix) {
        new LinkedHashSet<>(mix.pastes()).forEach(paste -> facts.add(mixing(mix, paste)));
      }
    }
    return facts;
  }

  private FirstPrint print(Paste paste, Impression first) {
    return new FirstPrint(
        List.of(paste.name()),
        paste.mixedBefore().isPresent(),
        mixings.of(paste.name()).size(),
        first.laid(),
        mixings.of(paste.name()).stream().map(Mixings.Batch::ready).min(Moment::compareTo),
        mixings.of(paste.name()).stream()
            .min(Comparator.comparing(Mixings.Batch::ready))
            .map(batch -> List.<Edit>of(new Edit.Move(batch.step().path(), first.path())))
            .orElse(List.of()),
        List.of(new Evidence.Related(Tie.THIS_PASTE, paste.path())),
        first.path());
  }

  private Mixing mixing(Step.Mix mix, String paste) {
    return new Mixing(
        List.of(paste),
        prints.getOrDefault(paste, 0),
        mixings.of(paste).stream()
            .filter(batch -> batch.step().number() == mix.number())
            .map(Mixings.Batch::ready)
            .findFirst(),
        mix.path());
  }
}
