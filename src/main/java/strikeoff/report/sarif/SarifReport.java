package strikeoff.report.sarif;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import strikeoff.findings.FailedRule;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.findings.Since;
import strikeoff.findings.Sources;
import strikeoff.report.json.Json;
import strikeoff.report.outcome.Fix;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Region;
import strikeoff.report.outcome.Results;
import strikeoff.report.outcome.Spot;

/**
 * Results as a SARIF 2.1.0 log of one run. Findings are results: a stop an error, a risk a warning,
 * advice a note; what the plan accepts is suppressed in source with the plan's reason. What kept a
 * plan from being judged, in the file or in the tool, is a notification and no result.
 */
public final class SarifReport {

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  /** Name of the fingerprint; its number goes up when keys are made in another way. */
  private static final String FINGERPRINT = "strikeoffKey/v1";

  private final Results results;
  private final List<String> ids;
  private final RunFolder where;

  private SarifReport(Results results, RunFolder where) {
    this.where = where;
    this.results = results;
    this.ids = results.rules().stream().map(RuleInfo::id).toList();
  }

  /** The same bytes for the same results; ends with a line end. */
  public static String text(Results results) {
    return text(results, new RunFolder(Optional.empty(), Optional.empty()));
  }

  /** The same with plans and rules named from where the program runs. */
  public static String text(Results results, RunFolder where) {
    SarifReport report = new SarifReport(results, where);
    return Json.document(
        json -> {
          json.put("$schema", SCHEMA).put("version", "2.1.0");
          json.list("runs", runs -> runs.item(report::run));
        });
  }

  private void run(Json json) throws IOException {
    json.object("tool", tool -> tool.object("driver", this::driver));
    if (results.part().isPresent()) {
      json.object(
          "automationDetails",
          a -> a.put("id", "strikeoff/" + results.part().get().toString().replace('/', '-')));
    }
    json.put("columnKind", "utf16CodeUnits");
    json.list("invocations", list -> list.item(this::invocation));
    json.each("artifacts", results.plans(), this::artifact);
    json.list(
        "results",
        list -> {
          for (int i = 0; i < results.plans().size(); i++) {
            int index = i;
            Outcome plan = results.plans().get(i);
            for (Found found : plan.findings()) {
              list.item(r -> result(r, found, plan, index, found.since().map(Since::text)));
            }
            // Section 3.27.24: what the baseline had and this run has no more.
            for (Found found : plan.gone()) {
              list.item(r -> result(r, found, plan, index, Optional.of("absent")));
            }
          }
        });
  }

  private void driver(Json json) throws IOException {
    json.put("name", "strikeoff").put("version", results.version());
    if (where.page().isPresent()) {
      json.put("informationUri", where.page().get());
    }
    json.each("rules", results.rules(), this::rule);
    json.each(
        "notifications",
        List.of(Notice.values()),
        (n, notice) ->
            n.put("id", notice.id())
                .object("shortDescription", d -> d.put("text", notice.words())));
  }

  private void rule(Json json, RuleInfo rule) throws IOException {
    json.put("id", rule.id());
    if (where.page().isPresent()) {
      json.put("helpUri", where.page().get() + "#" + rule.id());
    }
    json.object("shortDescription", d -> d.put("text", rule.summary()));
    json.object("fullDescription", d -> d.put("text", rule.because()));
    json.object(
        "help",
        h ->
            h.put(
                "text",
                rule.because()
                    + "\n\nSource: "
                    + Sources.shown(rule.source())
                    + "\n"
                    + more(rule)));
    json.object("defaultConfiguration", c -> c.put("level", level(rule.severity())));
    json.object(
        "properties",
        p ->
            p.put("tags", List.of(rule.family()))
                .put("source", Sources.shown(rule.source()))
                .put("limits", rule.limits()));
  }

  private static String more(RuleInfo rule) {
    return "More: strikeoff explain " + rule.id();
  }

  private void artifact(Json json, Outcome plan) throws IOException {
    json.object("location", l -> l.put("uri", where.uri(plan)));
    json.put("roles", List.of("analysisTarget"));
    json.put("encoding", "UTF-8").put("sourceLanguage", "yaml");
  }

  private void result(
      Json json, Found found, Outcome plan, int index, Optional<String> baselineState)
      throws IOException {
    json.put("ruleId", found.rule());
    if (ids.contains(found.rule())) {
      json.put("ruleIndex", ids.indexOf(found.rule()));
    }
    json.put("level", level(found.severity()));
    if (baselineState.isPresent()) {
      json.put("baselineState", baselineState.get());
    }
    json.object("message", m -> m.put("text", found.message() + " Mend: " + found.remedy()));
    json.list("locations", l -> l.item(p -> location(p, found.place(), plan, index)));
    json.list(
        "relatedLocations",
        list -> {
          int id = 0;
          for (Spot spot : found.related()) {
            int number = ++id;
            list.item(
                l -> {
                  l.put("id", number).object("message", m -> m.put("text", spot.label()));
                  location(l, spot, plan, index);
                });
          }
        });
    // Section 3.55: each fix alone is enough, so each holds all of its replacements.
    json.each("fixes", found.fixes(), (f, fix) -> fix(f, fix, plan, index));
    json.object("partialFingerprints", f -> f.put(FINGERPRINT, found.key()));
    // All or none: an empty list says that this one is not suppressed (section 3.27.23).
    json.list(
        "suppressions",
        list -> {
          if (found.accepted().isPresent()) {
            list.item(s -> s.put("kind", "inSource").put("justification", found.accepted().get()));
          }
        });
    json.object("properties", p -> p.put("marks", found.marks()));
  }

  private void fix(Json json, Fix fix, Outcome plan, int index) throws IOException {
    String end = fix.end().map(e -> "The run then ends " + e + ".").orElse("");
    String risks = fix.risks().isEmpty() ? "" : "New risk: " + String.join("; ", fix.risks()) + ".";
    if (!end.isEmpty() || !risks.isEmpty()) {
      json.object("description", d -> d.put("text", (end + " " + risks).strip()));
    }
    json.list(
        "artifactChanges",
        changes ->
            changes.item(
                c -> {
                  c.object(
                      "artifactLocation", a -> a.put("uri", where.uri(plan)).put("index", index));
                  c.each(
                      "replacements",
                      fix.parts(),
                      (r, part) -> {
                        r.object("deletedRegion", d -> region(d, part.region()));
                        r.object("insertedContent", i -> i.put("text", part.text()));
                      });
                }));
  }

  private void location(Json json, Spot spot, Outcome plan, int index) throws IOException {
    physical(json, spot.region(), plan, index);
    if (!spot.path().isEmpty()) {
      json.list(
          "logicalLocations",
          list -> list.item(l -> l.put("fullyQualifiedName", spot.path()).put("kind", "member")));
    }
  }

  private void physical(Json json, Region region, Outcome plan, int index) throws IOException {
    json.object(
        "physicalLocation",
        p -> {
          p.object("artifactLocation", a -> a.put("uri", where.uri(plan)).put("index", index));
          p.object("region", r -> region(r, region));
        });
  }

  private static void region(Json json, Region region) throws IOException {
    json.put("startLine", region.start().line())
        .put("startColumn", region.start().column())
        .put("endLine", region.end().line())
        .put("endColumn", region.end().column());
  }

  private void invocation(Json json) throws IOException {
    json.put("executionSuccessful", results.complete());
    if (results.narrowed().isPresent()) {
      json.list(
          "toolConfigurationNotifications",
          list ->
              list.item(
                  n -> {
                    notice(n, Notice.NARROWED, "warning", results.narrowed().get().text() + ".");
                    n.object(
                        "properties", p -> p.put("leftOut", results.narrowed().get().leftOut()));
                  }));
    }
    json.list(
        "toolExecutionNotifications",
        list -> {
          for (int i = 0; i < results.plans().size(); i++) {
            int index = i;
            Outcome plan = results.plans().get(i);
            for (Mistake mistake : plan.mistakes()) {
              list.item(
                  n -> {
                    String at = mistake.path().isEmpty() ? "" : mistake.path() + ": ";
                    notice(n, Notice.UNREADABLE, at + mistake.message());
                    n.list(
                        "locations", l -> l.item(p -> physical(p, mistake.region(), plan, index)));
                  });
            }
            for (FailedRule fault : plan.failedRules()) {
              list.item(
                  n -> {
                    notice(n, Notice.RULE_FAILED, fault.rule() + ": " + fault.what());
                    if (ids.contains(fault.rule())) {
                      n.object(
                          "associatedRule",
                          r -> r.put("id", fault.rule()).put("index", ids.indexOf(fault.rule())));
                    }
                    n.list("locations", l -> l.item(p -> whole(p, plan, index)));
                  });
            }
            if (plan.failure().isPresent()) {
              list.item(
                  n -> {
                    notice(n, Notice.NOT_CHECKED, plan.failure().get());
                    n.list("locations", l -> l.item(p -> whole(p, plan, index)));
                  });
            }
          }
        });
  }

  private static void notice(Json json, Notice notice, String text) throws IOException {
    notice(json, notice, "error", text);
  }

  private static void notice(Json json, Notice notice, String level, String text)
      throws IOException {
    json.object(
        "descriptor",
        d -> d.put("id", notice.id()).put("index", List.of(Notice.values()).indexOf(notice)));
    json.put("level", level).object("message", m -> m.put("text", text));
  }

  private void whole(Json json, Outcome plan, int index) throws IOException {
    json.object(
        "physicalLocation",
        p -> p.object("artifactLocation", a -> a.put("uri", where.uri(plan)).put("index", index)));
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case STOP -> "error";
      case RISK -> "warning";
      case ADVICE -> "note";
    };
  }

  /** Why a plan was not judged, or not by every rule. */
  private enum Notice {
    UNREADABLE("unreadable", "The file can't be read as a plan."),
    RULE_FAILED("rule-failed", "A rule failed while it judged the plan."),
    NOT_CHECKED("not-checked", "The tool failed on the plan."),
    NARROWED("narrowed", "Some rules were left out, as the user asked.");

    private final String id;
    private final String words;

    Notice(String id, String words) {
      this.id = id;
      this.words = words;
    }

    String id() {
      return id;
    }

    String words() {
      return words;
    }
  }
}
