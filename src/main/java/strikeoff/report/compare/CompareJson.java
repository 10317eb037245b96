package strikeoff.report.compare;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import strikeoff.report.json.Json;
import strikeoff.report.json.JsonReport;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/** A comparison as JSON, by the schema {@code compare-schema.json} beside this class. */
public final class CompareJson {

  /** Name and number of the format. */
  public static final String FORMAT = "strikeoff.compare/1";

  private CompareJson() {}

  /** The same bytes for the same comparison; ends with a line end. */
  public static String text(Comparison comparison) {
    return Json.document(
        json -> {
          json.put("format", FORMAT);
          json.object("tool", t -> t.put("name", "strikeoff").put("version", comparison.version()));
          json.put("before", comparison.before()).put("after", comparison.after());
          json.object(
              "summary",
              s ->
                  s.put("mended", comparison.mended())
                      .put("left", comparison.left())
                      .put("new", comparison.fresh()));
          json.each("plans", comparison.plans(), CompareJson::plan);
        });
  }

  private static void plan(Json json, PlanChange plan) throws IOException {
    json.put("name", plan.name());
    version(json, "before", plan.before());
    version(json, "after", plan.after());
    findings(json, "mended", plan.mended());
    findings(json, "left", plan.left());
    findings(json, "new", plan.fresh());
    json.each(
        "figures",
        plan.figures(),
        (c, change) -> {
          c.put("name", change.name())
              .put("before", change.before())
              .put("after", change.after())
              .put("difference", change.difference());
        });
  }

  private static void version(Json json, String name, Optional<Outcome> plan) throws IOException {
    if (plan.isPresent()) {
      json.object(
          name,
          v -> {
            v.put("file", plan.get().file()).put("title", plan.get().title());
            v.put("verdict", JsonReport.word(plan.get().verdict()));
            if (plan.get().figures().isPresent()) {
              v.object("figures", f -> JsonReport.figures(f, plan.get().figures().get()));
            }
          });
    }
  }

  private static void findings(Json json, String name, List<Found> findings) throws IOException {
    json.each(name, findings, JsonReport::found);
  }
}
