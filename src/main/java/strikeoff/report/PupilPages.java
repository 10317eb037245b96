package strikeoff.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.check.Verdict;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.RuleInfo;
import strikeoff.report.drawing.MarkShapes;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.page.Listed;
import strikeoff.report.page.PupilPage;
import strikeoff.report.page.PupilPage.Item;
import strikeoff.report.page.Quote;
import strikeoff.speech.RightSpeech;
import strikeoff.units.Numbers;

/** Puts the page together that a pupil gets back. */
final class PupilPages {

  /** More are read by nobody who has to mend them; the plan's own page has all. */
  private static final int MOST = 20;

  private final Map<String, RuleInfo> rules;
  private final Optional<Narrowed> narrowed;

  /**
   * @param rules all that judged, by id
   * @param narrowed which of them were left out, if not all were asked
   */
  PupilPages(Map<String, RuleInfo> rules, Optional<Narrowed> narrowed) {
    this.rules = rules;
    this.narrowed = narrowed;
  }

  PupilPage of(String name, List<Outcome> outcomes) {
    List<PupilPage.Plan> plans = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      plans.add(plan("plan-" + (plans.size() + 1), outcome));
    }
    long printable = outcomes.stream().filter(o -> o.verdict() == Verdict.PRINTABLE).count();
    return new PupilPage(
        Assets.head(PageMark.CHECK, name + ": to hand back", Assets.PLAN_SCRIPT),
        name,
        printable
            + " of "
            + outcomes.size()
            + (outcomes.size() == 1 ? " plan is printable." : " plans are printable."),
        outcomes.size() == 1
            ? ""
            : PointsGiven.sum(outcomes.stream().flatMap(o -> o.points().stream()).toList()),
        plans);
  }

  private PupilPage.Plan plan(String id, Outcome plan) {
    List<Item> open =
        Stream.concat(
                plan.mistakes().stream().map(PupilPages::item),
                plan.findings().stream().filter(f -> f.accepted().isEmpty()).map(this::item))
            .toList();
    List<Item> accepted =
        plan.findings().stream().filter(f -> f.accepted().isPresent()).map(this::item).toList();
    boolean judged = plan.figures().isPresent();
    return new PupilPage.Plan(
        id,
        plan.title(),
        plan.file(),
        plan.report().orElse(""),
        PlanPages.cssClass(plan.verdict()),
        plan.sentence(),
        plan.points().map(PointsGiven::text).orElse(""),
        plan.points().stream().flatMap(p -> p.taken().stream()).map(this::taken).toList(),
        Listed.of(open, MOST),
        Listed.of(accepted, MOST),
        judged && narrowed.isEmpty() ? right(plan) : List.of(),
        judged ? narrowed.map(n -> n.text() + ".").orElse("") : "");
  }

  private String taken(PointsGiven.Taken taken) {
    RuleInfo rule = rules.get(taken.rule());
    return Numbers.plain(taken.points(), 2)
        + " for “"
        + (rule == null ? taken.rule() : rule.summary())
        + "”"
        + (taken.findings() == 1 ? "" : ", found " + taken.findings() + " times");
  }

  /** Families of which nothing was found, nothing failed and nothing was left out. */
  private List<String> right(Outcome plan) {
    Set<String> told = new HashSet<>();
    plan.heard().stream().flatMap(Set::stream).forEach(rule -> told.add(family(rule)));
    plan.changes().forEach(change -> told.add(family(change.what())));
    return rules.keySet().stream()
        .map(PupilPages::family)
        .distinct()
        .filter(family -> !told.contains(family))
        .map(RightSpeech::of)
        .filter(sentence -> !sentence.isEmpty())
        .toList();
  }

  private static String family(String rule) {
    int end = rule.indexOf('/');
    return end < 0 ? rule : rule.substring(0, end);
  }

  private Item item(Found found) {
    RuleInfo rule = rules.get(found.rule());
    Map<Integer, Quote> lines = new LinkedHashMap<>();
    Stream.concat(Stream.of(found.place()), found.related().stream())
        .forEach(
            spot -> {
              int line = spot.region().start().line();
              lines.putIfAbsent(line, FindingCards.quote(spot.label(), line, spot.line()));
            });
    return new Item(
        found.severity().text(),
        MarkShapes.icon(found.severity()),
        rule == null ? found.rule() : rule.summary(),
        found.message(),
        found.remedy(),
        found.accepted().orElse(""),
        List.copyOf(lines.values()));
  }

  private static Item item(Mistake mistake) {
    String place =
        "Line "
            + mistake.region().start().line()
            + ", column "
            + mistake.region().start().column()
            + (mistake.path().isEmpty() ? "" : ": " + mistake.path());
    List<Quote> lines =
        mistake.line().isEmpty()
            ? List.of()
            : List.of(FindingCards.quote("", mistake.region().start().line(), mistake.line()));
    return new Item("", null, place, mistake.message(), "", "", lines);
  }
}
