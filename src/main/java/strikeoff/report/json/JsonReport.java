package strikeoff.report.json;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.check.Verdict;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.report.outcome.Figures;
import strikeoff.report.outcome.Fix;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Region;
import strikeoff.report.outcome.Results;
import strikeoff.report.outcome.Spot;

/**
 * Results as JSON, by the schema {@code report-schema.json} beside this class. The format's number
 * goes up when a reader of the old one would go wrong; keys may be added without that.
 */
public final class JsonReport {

  static final int NUMBER = 2;

  /** Name and number of the format. */
  public static final String FORMAT = "strikeoff.report/" + NUMBER;

  private JsonReport() {}

  /** The same bytes for the same results; ends with a line end. */
  public static String text(Results results) {
    return Json.document(json -> results(json, results));
  }

  /** What came of one plan, as it stands in such a document. */
  public static String plan(Outcome plan) {
    return Json.document(json -> plan(json, plan));
  }

  /** What the format calls a verdict. */
  public static String word(Verdict verdict) {
    return FormatWords.of(verdict);
  }

  private static void results(Json json, Results results) throws IOException {
    json.put("format", FORMAT);
    json.object("tool", t -> t.put("name", "strikeoff").put("version", results.version()));
    json.put("title", results.title());
    if (results.part().isPresent()) {
      json.object(
          "part",
          s -> s.put("number", results.part().get().number()).put("of", results.part().get().of()));
    }
    json.put("size", results.size());
    if (results.narrowed().isPresent()) {
      json.object("narrowed", n -> narrowed(n, results.narrowed().get()));
    }
    if (results.baseline().isPresent()) {
      json.put("baseline", results.baseline().get());
    }
    json.object("summary", s -> summary(s, results));
    json.each("rules", results.rules(), JsonReport::rule);
    if (!results.silent().isEmpty()) {
      json.put("silentRules", results.silent());
    }
    json.each("plans", results.plans(), JsonReport::plan);
  }

  private static void narrowed(Json json, Narrowed narrowed) throws IOException {
    json.put("only", narrowed.only())
        .put("skip", narrowed.skip())
        .put("leftOut", narrowed.leftOut())
        .put("of", narrowed.of());
  }

  private static void summary(Json json, Results results) throws IOException {
    for (Map.Entry<String, Long> count : counts(results).entrySet()) {
      json.put(count.getKey(), count.getValue());
    }
  }

  /** How often each verdict and each severity stands in results, by its word in the format. */
  static Map<String, Long> counts(Results results) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Verdict verdict : Verdict.values()) {
      counts.put(FormatWords.of(verdict), results.count(verdict));
    }
    List<Found> all = results.plans().stream().flatMap(p -> p.findings().stream()).toList();
    for (Severity severity : Severity.values()) {
      counts.put(severity.text(), all.stream().filter(f -> f.severity() == severity).count());
    }
    counts.put("accepted", all.stream().filter(f -> f.accepted().isPresent()).count());
    return counts;
  }

  private static void rule(Json json, RuleInfo rule) throws IOException {
    json.put("id", rule.id()).put("severity", rule.severity().text());
    if (!rule.grades().isEmpty()) {
      json.each(
          "grades",
          rule.grades(),
          (g, grade) -> g.put("severity", grade.severity().text()).put("from", grade.from()));
    }
    json.put("summary", rule.summary())
        .put("because", rule.because())
        .put("message", rule.message())
        .put("remedy", rule.remedy())
        .put("mend", rule.mend());
    if (!rule.harms().isEmpty()) {
      json.put("harms", rule.harms());
    }
    if (!rule.doubts().isEmpty()) {
      json.put("doubts", rule.doubts());
    }
    if (rule.atWork()) {
      json.put("atWork", true);
    }
    json.put("source", rule.source()).put("limits", rule.limits());
  }

  private static void plan(Json json, Outcome plan) throws IOException {
    json.put("number", plan.number()).put("file", plan.file()).put("title", plan.title());
    if (plan.report().isPresent()) {
      json.put("report", plan.report().get());
    }
    if (!plan.by().isEmpty()) {
      json.put("by", plan.by());
    }
    json.put("verdict", FormatWords.of(plan.verdict())).put("sentence", plan.sentence());
    json.each("findings", plan.findings(), JsonReport::found);
    json.each("mistakes", plan.mistakes(), JsonReport::mistake);
    json.each(
        "failedRules",
        plan.failedRules(),
        (f, fault) -> f.put("rule", fault.rule()).put("what", fault.what()));
    if (plan.failure().isPresent()) {
      json.put("failure", plan.failure().get());
    }
    if (!plan.policies().isEmpty()) {
      json.put("policies", plan.policies());
    }
    if (!plan.changes().isEmpty()) {
      json.each("policyChanges", plan.changes(), JsonReport::change);
    }
    if (plan.points().isPresent()) {
      json.object("points", p -> points(p, plan.points().get()));
    }
    if (!plan.gone().isEmpty()) {
      json.each("gone", plan.gone(), JsonReport::found);
    }
    if (plan.figures().isPresent()) {
      json.object("figures", f -> figures(f, plan.figures().get()));
    }
  }

  private static void points(Json json, PointsGiven points) throws IOException {
    json.put("points", points.points()).put("of", points.of()).put("where", points.where());
    json.each(
        "taken",
        points.taken(),
        (t, taken) ->
            t.put("rule", taken.rule())
                .put("findings", taken.findings())
                .put("points", taken.points()));
  }

  private static void change(Json json, PolicyChange change) throws IOException {
    json.put("where", change.where())
        .put("what", change.what())
        .put("from", change.from())
        .put("to", change.to());
    if (change.findings().isPresent()) {
      json.put("findings", change.findings().getAsInt());
    }
  }

  /** A finding's keys. */
  public static void found(Json json, Found found) throws IOException {
    json.put("rule", found.rule())
        .put("severity", found.severity().text())
        .put("key", found.key())
        .put("message", found.message())
        .put("remedy", found.remedy());
    json.each("mends", found.fixes(), JsonReport::fix);
    json.object("place", p -> spot(p, found.place()));
    json.each("related", found.related(), (s, spot) -> spot(s.put("label", spot.label()), spot));
    json.put("marks", found.marks());
    if (found.accepted().isPresent()) {
      json.put("accepted", found.accepted().get());
    }
    if (found.acceptLine().isPresent()) {
      json.put("acceptLine", found.acceptLine().get());
    }
    if (found.since().isPresent()) {
      json.put("since", found.since().get().text());
    }
  }

  private static void fix(Json json, Fix fix) throws IOException {
    json.each(
        "changes",
        fix.parts(),
        (p, part) -> {
          region(p, part.region());
          p.put("text", part.text());
        });
    if (fix.end().isPresent()) {
      json.put("end", fix.end().get());
    }
    json.put("risks", fix.risks());
  }

  private static void spot(Json json, Spot spot) throws IOException {
    json.put("path", spot.path());
    region(json, spot.region());
    json.put("line", spot.line());
  }

  private static void mistake(Json json, Mistake mistake) throws IOException {
    json.put("path", mistake.path());
    region(json, mistake.region());
    json.put("message", mistake.message());
    if (!mistake.line().isEmpty()) {
      json.put("line", mistake.line());
    }
  }

  private static void region(Json json, Region region) throws IOException {
    json.object(
        "region",
        r ->
            r.put("startLine", region.start().line())
                .put("startColumn", region.start().column())
                .put("endLine", region.end().line())
                .put("endColumn", region.end().column()));
  }

  /** The keys of a plan's figures. */
  public static void figures(Json json, Figures figures) throws IOException {
    json.put("placements", figures.placements());
    if (figures.start().isPresent()) {
      json.put("startSeconds", figures.start().get().seconds());
      json.put("start", figures.start().get().text());
    }
    if (figures.finish().isPresent()) {
      json.put("finishSeconds", figures.finish().get().seconds());
      json.put("finish", figures.finish().get().text());
    }
    json.put("workSeconds", figures.workSeconds());
    json.put("waitingSeconds", figures.waitingSeconds());
    json.each(
        "busy",
        figures.busy(),
        (b, busy) ->
            b.put("kind", busy.kind())
                .put("name", busy.name())
                .put("seconds", busy.seconds())
                .put("percent", busy.percent()));
    json.object(
        "lays",
        lays -> {
          for (Map.Entry<String, Integer> screen : figures.lays().entrySet()) {
            lays.put(screen.getKey(), screen.getValue());
          }
        });
    json.each("pastes", figures.pastes(), JsonReport::paste);
    if (figures.materials().isPresent()) {
      json.object("materials", m -> SuppliesWriting.write(m, figures.materials().get()));
    }
  }

  private static void paste(Json json, Figures.Paste paste) throws IOException {
    json.put("name", paste.name())
        .put("needLowGrams", paste.low())
        .put("needGrams", paste.best())
        .put("needHighGrams", paste.high());
    if (paste.mixed().isPresent()) {
      json.put("mixedGrams", paste.mixed().get());
    }
  }
}
