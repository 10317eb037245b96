package strikeoff.report.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.day.Moment;
import strikeoff.day.Resource;
import strikeoff.document.Position;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Grade;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.RuleInfo;
import strikeoff.report.outcome.Figures;
import strikeoff.report.outcome.Fix;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Part;
import strikeoff.report.outcome.Region;
import strikeoff.report.outcome.Results;
import strikeoff.report.outcome.Spot;
import strikeoff.units.Measures;

/** Reads back what {@link JsonReport} wrote. */
public final class JsonReading {

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  /** As the schema has it. */
  private static final Pattern ID = Pattern.compile("[a-z-]+/[a-z0-9-]+");

  private static final Pattern REPORT = Pattern.compile("strikeoff\\.report/([0-9]{1,9})");

  /** As pages are called: none leads out of the reports' folder, or anywhere else if followed. */
  private static final Pattern PAGE = Pattern.compile("[a-z0-9][a-z0-9.-]*\\.html");

  private static final Map<String, String> KINDS = new LinkedHashMap<>();

  static {
    for (Resource.Kind kind : Resource.Kind.values()) {
      KINDS.put(kind.text(), kind.text());
    }
  }

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
      JsonNode root = MAPPER.readTree(text);
      Tree tree = new Tree(root, "");
      String format = tree.at("format").text();
      return format.equals(JsonReport.FORMAT)
          ? new Read.Good(results(tree))
          : new Read.Bad(
              "its format is “" + format + "”, not " + JsonReport.FORMAT + whose(format));
    } catch (JsonProcessingException e) {
      return new Read.Bad("it is not JSON: " + what(e) + place(e));
    } catch (Tree.Unfit | IllegalArgumentException e) {
      return new Read.Bad(e.getMessage());
    } catch (StackOverflowError e) {
      return new Read.Bad("it is nested too deep");
    }
  }

  /** Reads back what {@link JsonReport#plan} wrote; empty if it is anything else. */
  public static Optional<Outcome> plan(String text) {
    try {
      return Optional.of(plan(new Tree(MAPPER.readTree(text), "")));
    } catch (JsonProcessingException
        | Tree.Unfit
        | IllegalArgumentException
        | StackOverflowError e) {
      return Optional.empty();
    }
  }

  private static String whose(String format) {
    Matcher other = REPORT.matcher(format);
    if (!other.matches()) {
      return "";
    }
    return Integer.parseInt(other.group(1)) > JsonReport.NUMBER
        ? "; a newer strikeoff wrote it"
        : "; an older strikeoff wrote it";
  }

  /** The parser's own words name its classes and settings. */
  private static String what(JsonProcessingException e) {
    if (e instanceof StreamConstraintsException) {
      return "a text, a number or the nesting is longer than results ever have";
    }
    if (e instanceof JsonEOFException) {
      return "it breaks off";
    }
    boolean twice = String.valueOf(e.getOriginalMessage()).startsWith("Duplicate");
    return twice ? "a key stands twice in one object" : "something else was expected";
  }

  private static String place(JsonProcessingException e) {
    JsonLocation at = e.getLocation();
    return at == null || at.getLineNr() < 1
        ? ""
        : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  private static Results results(Tree tree) {
    Results results = read(tree);
    Consistency.check(tree, results);
    return results;
  }

  private static Results read(Tree tree) {
    tree.at("tool").at("name").text(Pattern.compile("strikeoff"), "“strikeoff”");
    return new Results(
        tree.at("tool").at("version").text(),
        tree.at("title").text(),
        tree.perhaps("part", JsonReading::part),
        tree.at("size").count(0),
        tree.perhaps("narrowed", JsonReading::narrowed),
        tree.perhaps("baseline", Tree::text),
        tree.at("rules").list(JsonReading::rule),
        tree.at("plans").list(JsonReading::plan));
  }

  private static Narrowed narrowed(Tree tree) {
    return new Narrowed(
        tree.at("only").list(Tree::text),
        tree.at("skip").list(Tree::text),
        tree.at("leftOut").list(JsonReading::ruleId),
        tree.at("of").count(0));
  }

  private static Part part(Tree tree) {
    int number = tree.at("number").count(1);
    int of = tree.at("of").count(1);
    return Part.parse(number + "/" + of)
        .orElseThrow(() -> tree.unfit("a part such as 2/7", "not " + number + "/" + of));
  }

  private static String ruleId(Tree tree) {
    return tree.text(ID, "a rule's id such as drying/frame-on-wet-film");
  }

  private static RuleInfo rule(Tree tree) {
    return new RuleInfo(
        ruleId(tree.at("id")),
        tree.at("severity").word(FormatWords.severities()),
        tree.perhaps("grades", g -> g.list(JsonReading::grade)).orElse(List.of()),
        tree.at("summary").text(),
        tree.at("because").text(),
        tree.at("message").text(),
        tree.at("remedy").text(),
        tree.at("mend").text(),
        tree.perhaps("harms", Tree::text).orElse(""),
        tree.perhaps("doubts", d -> d.list(Tree::text)).orElse(List.of()),
        tree.perhaps("atWork", Tree::truth).orElse(false),
        tree.at("source").text(),
        tree.at("limits").list(Tree::text));
  }

  private static Grade grade(Tree tree) {
    return new Grade(tree.at("severity").word(FormatWords.severities()), tree.at("from").text());
  }

  private static Outcome plan(Tree tree) {
    Outcome plan =
        new Outcome(
            tree.at("number").count(1),
            tree.at("file").text(),
            tree.at("title").text(),
            tree.perhaps("report", r -> r.text(PAGE, "a page's name such as plan.html")),
            tree.at("verdict").word(FormatWords.verdicts()),
            tree.at("sentence").text(),
            tree.at("findings").list(JsonReading::found),
            tree.at("mistakes").list(JsonReading::mistake),
            tree.at("failedRules")
                .list(f -> new FailedRule(f.at("rule").text(), f.at("what").text())),
            tree.perhaps("failure", Tree::text),
            tree.perhaps("figures", JsonReading::figures),
            tree.perhaps("policies", p -> p.list(Tree::text)).orElse(List.of()),
            tree.perhaps("policyChanges", c -> c.list(JsonReading::change)).orElse(List.of()),
            tree.perhaps("gone", g -> g.list(JsonReading::found)).orElse(List.of()),
            tree.perhaps("by", Tree::text).orElse(""),
            tree.perhaps("points", JsonReading::points));
    Consistency.verdict(tree, plan);
    return plan;
  }

  private static PointsGiven points(Tree tree) {
    return new PointsGiven(
        tree.at("points").number(),
        tree.at("of").number(1),
        tree.at("where").text(),
        tree.at("taken")
            .list(
                t ->
                    new PointsGiven.Taken(
                        ruleId(t.at("rule")), t.at("findings").count(1), t.at("points").number())));
  }

  private static PolicyChange change(Tree tree) {
    return new PolicyChange(
        tree.at("where").text(),
        tree.at("what").text(),
        tree.at("from").text(),
        tree.at("to").text(),
        tree.perhaps("findings", f -> f.count(0)).map(OptionalInt::of).orElse(OptionalInt.empty()));
  }

  private static Found found(Tree tree) {
    return new Found(
        ruleId(tree.at("rule")),
        tree.at("severity").word(FormatWords.severities()),
        tree.at("key").text(),
        tree.at("message").text(),
        tree.at("remedy").text(),
        tree.at("mends").list(JsonReading::fix),
        spot(tree.at("place")),
        tree.at("related").list(JsonReading::spot),
        tree.at("marks").list(Tree::text),
        tree.perhaps("accepted", Tree::text),
        tree.perhaps("acceptLine", Tree::text),
        tree.perhaps("since", s -> s.word(FormatWords.since())));
  }

  private static Fix fix(Tree tree) {
    return new Fix(
        tree.at("changes").list(c -> new Fix.Part(region(c.at("region")), c.at("text").text())),
        tree.perhaps("end", Tree::text),
        tree.at("risks").list(Tree::text));
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
        tree.at("path").text(),
        region(tree.at("region")),
        tree.at("message").text(),
        tree.perhaps("line", Tree::text).orElse(""));
  }

  private static Region region(Tree tree) {
    Position start = new Position(tree.at("startLine").count(1), tree.at("startColumn").count(1));
    Position end = new Position(tree.at("endLine").count(1), tree.at("endColumn").count(1));
    if (end.compareTo(start) < 0) {
      throw tree.unfit("an end behind " + start, "not " + end);
    }
    return new Region(start, end);
  }

  private static Figures figures(Tree tree) {
    Map<String, Integer> lays = tree.at("lays").each(n -> n.count(0));
    // In words for people; what is read is the number.
    tree.perhaps("start", Tree::text);
    tree.perhaps("finish", Tree::text);
    return new Figures(
        tree.at("placements").count(0),
        tree.perhaps("startSeconds", s -> new Moment(s.clock())),
        tree.perhaps("finishSeconds", s -> new Moment(s.clock())),
        tree.at("workSeconds").seconds(),
        tree.at("waitingSeconds").seconds(),
        tree.perhaps("busy", b -> b.list(JsonReading::busy)).orElse(List.of()),
        lays,
        tree.at("pastes").list(JsonReading::paste),
        tree.perhaps("materials", SuppliesReading::of),
        Measures.METRIC);
  }

  private static Figures.InUse busy(Tree tree) {
    return new Figures.InUse(
        tree.at("kind").word(KINDS),
        tree.at("name").text(),
        tree.at("seconds").seconds(),
        tree.at("percent").number());
  }

  private static Figures.Paste paste(Tree tree) {
    return new Figures.Paste(
        tree.at("name").text(),
        tree.number("needLowGrams"),
        tree.number("needGrams"),
        tree.number("needHighGrams"),
        tree.node().has("mixedGrams") ? Optional.of(tree.number("mixedGrams")) : Optional.empty());
  }
}
