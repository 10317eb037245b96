package strikeoff.report.json;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.check.Verdict;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Grade;
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
import strikeoff.report.outcome.Supplies;

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
    json.list(
        "rules",
        list -> {
          for (RuleInfo rule : results.rules()) {
            list.item(r -> rule(r, rule));
          }
        });
    if (!results.silent().isEmpty()) {
      json.put("silentRules", results.silent());
    }
    json.list(
        "plans",
        list -> {
          for (Outcome plan : results.plans()) {
            list.item(p -> plan(p, plan));
          }
        });
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
      json.list(
          "grades",
          list -> {
            for (Grade grade : rule.grades()) {
              list.item(g -> g.put("severity", grade.severity().text()).put("from", grade.from()));
            }
          });
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
    json.list(
        "findings",
        list -> {
          for (Found found : plan.findings()) {
            list.item(f -> found(f, found));
          }
        });
    json.list(
        "mistakes",
        list -> {
          for (Mistake mistake : plan.mistakes()) {
            list.item(m -> mistake(m, mistake));
          }
        });
    json.list(
        "failedRules",
        list -> {
          for (FailedRule fault : plan.failedRules()) {
            list.item(f -> f.put("rule", fault.rule()).put("what", fault.what()));
          }
        });
    if (plan.failure().isPresent()) {
      json.put("failure", plan.failure().get());
    }
    if (!plan.policies().isEmpty()) {
      json.put("policies", plan.policies());
    }
    if (!plan.changes().isEmpty()) {
      json.list(
          "policyChanges",
          list -> {
            for (PolicyChange change : plan.changes()) {
              list.item(c -> change(c, change));
            }
          });
    }
    if (plan.points().isPresent()) {
      json.object("points", p -> points(p, plan.points().get()));
    }
    if (!plan.gone().isEmpty()) {
      json.list(
          "gone",
          list -> {
            for (Found found : plan.gone()) {
              list.item(f -> found(f, found));
            }
          });
    }
    if (plan.figures().isPresent()) {
      json.object("figures", f -> figures(f, plan.figures().get()));
    }
  }

  private static void points(Json json, PointsGiven points) throws IOException {
    json.put("points", points.points()).put("of", points.of()).put("where", points.where());
    json.list(
        "taken",
        list -> {
          for (PointsGiven.Taken taken : points.taken()) {
            list.item(
                t ->
                    t.put("rule", taken.rule())
                        .put("findings", taken.findings())
                        .put("points", taken.points()));
          }
        });
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
    json.list(
        "mends",
        list -> {
          for (Fix fix : found.fixes()) {
            list.item(f -> fix(f, fix));
          }
        });
    json.object("place", p -> spot(p, found.place()));
    json.list(
        "related",
        list -> {
          for (Spot spot : found.related()) {
            list.item(s -> spot(s.put("label", spot.label()), spot));
          }
        });
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
    json.list(
        "changes",
        list -> {
          for (Fix.Part part : fix.parts()) {
            list.item(
                p -> {
                  region(p, part.region());
                  p.put("text", part.text());
                });
          }
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
    json.list(
        "busy",
        list -> {
          for (Figures.InUse busy : figures.busy()) {
            list.item(
                b ->
                    b.put("kind", busy.kind())
                        .put("name", busy.name())
                        .put("seconds", busy.seconds())
                        .put("percent", busy.percent()));
          }
        });
    json.object(
        "lays",
        lays -> {
          for (Map.Entry<String, Integer> screen : figures.lays().entrySet()) {
            lays.put(screen.getKey(), screen.getValue());
          }
        });
    json.list(
        "pastes",
        list -> {
          for (Figures.Paste paste : figures.pastes()) {
            list.item(p -> paste(p, paste));
          }
        });
    json.object("materials", m -> supplies(m, figures.materials()));
  }

  private static void supplies(Json json, Supplies supplies) throws IOException {
    json.list(
        "buy",
        list -> {
          for (Supplies.Bought bought : supplies.buy()) {
            list.item(b -> bought(b, bought));
          }
        });
    json.list(
        "weigh",
        list -> {
          for (Supplies.Weighed weighed : supplies.weigh()) {
            list.item(w -> weighed(w, weighed));
          }
        });
  }

  private static void bought(Json json, Supplies.Bought bought) throws IOException {
    json.put("name", bought.name());
    if (bought.substance().isPresent()) {
      json.put("substance", bought.substance().get());
    }
    if (bought.paste().isPresent()) {
      json.put("paste", bought.paste().get());
    }
    json.put("lowGrams", bought.low())
        .put("grams", bought.best())
        .put("highGrams", bought.high())
        .put("buyGrams", bought.toBuy());
  }

  private static void weighed(Json json, Supplies.Weighed weighed) throws IOException {
    json.put("kind", weighed.kind()).put("name", weighed.name());
    if (weighed.step().isPresent()) {
      json.put("step", weighed.step().getAsInt());
    }
    if (weighed.begins().isPresent()) {
      json.put("startSeconds", weighed.begins().get().seconds());
    }
    if (weighed.amount().isPresent()) {
      json.put("grams", weighed.amount().get());
    }
    json.put("recipe", weighed.recipe());
    json.list(
        "parts",
        list -> {
          for (Supplies.Line line : weighed.parts()) {
            list.item(
                l ->
                    l.put("name", line.name())
                        .put("substance", line.substance())
                        .put("lowGrams", line.low())
                        .put("grams", line.best())
                        .put("highGrams", line.high()));
          }
        });
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
