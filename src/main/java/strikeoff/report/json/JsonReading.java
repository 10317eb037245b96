package strikeoff.report.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import strikeoff.findings.RuleFault;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.Position;
import strikeoff.report.outcome.Figures;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Region;
import strikeoff.report.outcome.Results;
import strikeoff.report.outcome.Shard;
import strikeoff.report.outcome.Spot;
import strikeoff.timeline.Moment;

/** Reads back what {@link JsonReport} wrote. */
public final class JsonReading {

  private JsonReading() {}

  /** Results, or the reason why the text isn't any. */
  public sealed interface Read {
    /** The results. */
    record Good(Results results) implements Read {}

    /** The reason, in one line. */
    record Bad(String why) implements Read {}
  }

  /** Reads a text that nobody vouches for; never throws. */
  public static Read of(String text) {
    try {
      JsonNode root = new ObjectMapper().readTree(text);
      Tree tree = new Tree(root, "");
      String format = tree.at("format").text();
      return format.equals(JsonReport.FORMAT)
          ? new Read.Good(results(tree))
          : new Read.Bad("its format is “" + format + "”, not " + JsonReport.FORMAT);
    } catch (JsonProcessingException e) {
      return new Read.Bad("it is not JSON: " + e.getOriginalMessage());
    } catch (Tree.Unfit | IllegalArgumentException e) {
      return new Read.Bad(e.getMessage());
    } catch (StackOverflowError e) {
      return new Read.Bad("it is nested too deep");
    }
  }

  private static Results results(Tree tree) {
    return new Results(
        tree.at("tool").at("version").text(),
        tree.at("title").text(),
        tree.perhaps("shard", s -> new Shard(s.at("number").count(), s.at("of").count())),
        tree.at("size").count(),
        tree.at("rules").list(JsonReading::rule),
        tree.at("plans").list(JsonReading::plan));
  }

  private static RuleInfo rule(Tree tree) {
    String id = tree.at("id").text();
    if (id.indexOf('/') < 1) {
      throw new Tree.Unfit(tree.path() + ".id: a family and a fault were expected");
    }
    return new RuleInfo(
        id,
        tree.at("severity").word(Words.severities()),
        tree.at("summary").text(),
        tree.at("because").text(),
        tree.at("message").text(),
        tree.at("remedy").text(),
        tree.at("source").text(),
        tree.at("limits").list(Tree::text));
  }

  private static Outcome plan(Tree tree) {
    return new Outcome(
        tree.at("number").count(),
        tree.at("file").text(),
        tree.at("title").text(),
        tree.perhaps("report", Tree::text),
        tree.at("verdict").word(Words.verdicts()),
        tree.at("sentence").text(),
        tree.at("findings").list(JsonReading::found),
        tree.at("mistakes").list(JsonReading::mistake),
        tree.at("faults").list(f -> new RuleFault(f.at("rule").text(), f.at("what").text())),
        tree.perhaps("failure", Tree::text),
        tree.perhaps("figures", JsonReading::figures),
        tree.perhaps("policies", p -> p.list(Tree::text)).orElse(List.of()));
  }

  private static Found found(Tree tree) {
    return new Found(
        tree.at("rule").text(),
        tree.at("severity").word(Words.severities()),
        tree.at("key").text(),
        tree.at("message").text(),
        tree.at("remedy").text(),
        spot(tree.at("place")),
        tree.at("related").list(JsonReading::spot),
        tree.at("marks").list(Tree::text),
        tree.perhaps("accepted", Tree::text));
  }

  private static Spot spot(Tree tree) {
    return new Spot(
        tree.perhaps("label", Tree::text).orElse(""),
        tree.at("path").text(),
        region(tree.at("region")),
        tree.at("line").text());
  }

  private static Mistake mistake(Tree tree) {
    return new Mistake(
        tree.at("path").text(), region(tree.at("region")), tree.at("message").text());
  }

  private static Region region(Tree tree) {
    return new Region(
        new Position(tree.at("startLine").count(), tree.at("startColumn").count()),
        new Position(tree.at("endLine").count(), tree.at("endColumn").count()));
  }

  private static Figures figures(Tree tree) {
    Map<String, Integer> lays = tree.at("lays").each(Tree::count);
    return new Figures(
        tree.at("placements").count(),
        tree.perhaps("startSeconds", s -> new Moment(s.seconds())),
        tree.perhaps("finishSeconds", s -> new Moment(s.seconds())),
        tree.at("workSeconds").seconds(),
        tree.at("waitingSeconds").seconds(),
        tree.perhaps("busy", b -> b.list(JsonReading::busy)).orElse(List.of()),
        lays,
        tree.at("pastes").list(JsonReading::paste));
  }

  private static Figures.InUse busy(Tree tree) {
    return new Figures.InUse(
        tree.at("kind").text(),
        tree.at("name").text(),
        tree.at("seconds").seconds(),
        tree.number("percent"));
  }

  private static Figures.Paste paste(Tree tree) {
    return new Figures.Paste(
        tree.at("name").text(),
        tree.number("needLowGrams"),
        tree.number("needGrams"),
        tree.number("needHighGrams"),
        tree.perhaps("mixedGrams", Tree::number));
  }
}
