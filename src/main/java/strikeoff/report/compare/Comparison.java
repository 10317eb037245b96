package strikeoff.report.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/**
 * What became of a plan or of a batch of plans. Two single plans are versions of each other
 * whatever they are called; in batches, plans that are called alike below their batch's folder.
 *
 * @param version of the program
 * @param before what the old batch is
 * @param after what the new batch is
 * @param plans those of the new batch in its order, then those that are gone
 * @param rules what each rule finds, in a few words, by its id
 */
public record Comparison(
    String version,
    String before,
    String after,
    List<PlanChange> plans,
    Map<String, String> rules) {

  public Comparison {
    plans = List.copyOf(plans);
    rules = Map.copyOf(rules);
  }

  public static Comparison of(Results before, Results after) {
    List<PlanChange> plans = new ArrayList<>();
    if (before.plans().size() == 1 && after.plans().size() == 1) {
      Outcome plan = after.plans().get(0);
      plans.add(PlanChange.of(plan.file(), Optional.of(before.plans().get(0)), Optional.of(plan)));
    } else {
      Map<String, Outcome> old = byName(before.plans());
      Map<String, Outcome> now = byName(after.plans());
      Set<String> names = new LinkedHashSet<>(now.keySet());
      names.addAll(old.keySet());
      for (String name : names) {
        plans.add(
            PlanChange.of(
                name, Optional.ofNullable(old.get(name)), Optional.ofNullable(now.get(name))));
      }
    }
    Map<String, String> rules = new HashMap<>(before.summaries());
    rules.putAll(after.summaries());
    return new Comparison(after.version(), before.title(), after.title(), plans, rules);
  }

  public long mended() {
    return plans.stream().mapToLong(p -> p.mended().size()).sum();
  }

  public long left() {
    return plans.stream().mapToLong(p -> p.left().size()).sum();
  }

  public long fresh() {
    return plans.stream().mapToLong(p -> p.fresh().size()).sum();
  }

  /** What came of it in one sentence. */
  public String sentence() {
    return mended() + " mended, " + left() + " left, " + fresh() + " new.";
  }

  /** Names below the folder that all plans of the batch lie in. */
  private static Map<String, Outcome> byName(List<Outcome> plans) {
    String folder = plans.isEmpty() ? "" : folder(plans.get(0).file());
    for (Outcome plan : plans) {
      while (!plan.file().startsWith(folder)) {
        folder = folder(folder.substring(0, folder.length() - 1));
      }
    }
    Map<String, Outcome> byName = new LinkedHashMap<>();
    for (Outcome plan : plans) {
      byName.putIfAbsent(plan.file().substring(folder.length()), plan);
    }
    return byName;
  }

  /** Up to and with the last slash. */
  private static String folder(String file) {
    return file.substring(0, file.lastIndexOf('/') + 1);
  }
}
