package strikeoff.report.outcome;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.findings.Finding;
import strikeoff.findings.Since;
import strikeoff.findings.SinceBaseline;

/**
 * The results of an earlier run, against which new ones are held. A finding is known again by its
 * plan's name, its rule and what it is about, wherever its lines stand by now.
 *
 * @param name the file, as the user named it
 */
public record Baseline(String name, Results results, Map<String, Map<String, Found>> byPlan) {

  public static Baseline of(String name, Results results) {
    Map<String, Map<String, Found>> byPlan = new HashMap<>();
    for (Outcome plan : results.plans()) {
      Map<String, Found> byKey = new LinkedHashMap<>();
      plan.findings().forEach(found -> byKey.put(found.key(), found));
      byPlan.put(plain(plan.file()), byKey);
    }
    return new Baseline(name, results, byPlan);
  }

  private static String plain(String file) {
    return file.startsWith("./") ? plain(file.substring(2)) : file;
  }

  /** The same plan, each finding with how it stands to those of the earlier run. */
  public Checked marked(Checked checked) {
    if (!(checked instanceof Checked.Judged judged)) {
      return checked;
    }
    Map<String, Found> before = before(judged.file());
    List<Finding> marked = new ArrayList<>();
    int old = 0;
    Keys keys = new Keys(judged.plan());
    for (Finding finding : judged.findings()) {
      Found known = before.get(keys.next(finding.rule().id(), finding.place().path()));
      Since since = known == null ? Since.NEW : since(known, finding);
      old += since.isOld() ? 1 : 0;
      marked.add(finding.since(since));
    }
    return judged
        .with(marked)
        .since(
            new SinceBaseline(
                marked.size() - old, old, gone(judged).stream().map(Found::rule).toList()));
  }

  private static Since since(Found known, Finding finding) {
    boolean worse = finding.severity().ordinal() < known.severity().ordinal();
    boolean reopened = known.accepted().isPresent() && finding.accepted().isEmpty();
    if (worse || reopened) {
      return Since.NEW;
    }
    return known.message().equals(finding.message()) ? Since.UNCHANGED : Since.UPDATED;
  }

  /**
   * Findings of the earlier run that the plan has no more; none of rules that weren't asked now.
   */
  public List<Found> gone(Checked checked) {
    if (!(checked instanceof Checked.Judged judged)) {
      return List.of();
    }
    Keys keys = new Keys(judged.plan());
    Set<String> now = new HashSet<>();
    judged.findings().forEach(f -> now.add(keys.next(f.rule().id(), f.place().path())));
    return before(judged.file()).values().stream()
        .filter(found -> !now.contains(found.key()))
        .filter(found -> judged.narrowed().map(n -> n.asks(found.rule())).orElse(true))
        .toList();
  }

  private Map<String, Found> before(String file) {
    return byPlan.getOrDefault(plain(file), Map.of());
  }

  /** True if the earlier run knows the plan. */
  public boolean knows(String file) {
    return byPlan.containsKey(plain(file));
  }
}
