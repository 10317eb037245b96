package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.model.Rule;
import strikeoff.findings.Grade;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;

/**
 * Reads what a rule says of itself: its annotations, and from its text the limits: those that it
 * reads, and in {@code @limits} those that a fact hands it with what it computed by them.
 */
public final class RuleText {

  /** The form of the part of an id after the slash. */
  private static final String FAULT = "[a-z]+(-[a-z]+)*";

  private static final Pattern ID = Pattern.compile("[a-z]+/" + FAULT);

  private static final Pattern LIMIT =
      Pattern.compile("\\bLimit\\s*\\([^)]*?\\bname\\s*==\\s*\"([^\"]+)\"");

  private static final Pattern HANDED = Pattern.compile("(?m)^\\s*@limits\\(\"([^\"]+)\"\\)");

  private static final Pattern GRADE = Pattern.compile("\\bfrom ([a-z]+/[a-z-]+)");

  private static final Pattern ESCAPED = Pattern.compile("\\\\([\"\\\\])");

  private RuleText() {}

  /**
   * @throws IllegalStateException if the rule breaks the form that all rules have
   */
  static RuleInfo of(Rule rule) {
    String id = rule.getName();
    if (!ID.matcher(id).matches()) {
      throw new IllegalStateException("not family/fault: the rule name " + id);
    }
    if (!rule.getPackage().equals("rules." + id.substring(0, id.indexOf('/')))) {
      throw new IllegalStateException("rule " + id + " stands in package " + rule.getPackage());
    }
    List<Grade> grades = grades(rule);
    return new RuleInfo(
        id,
        grades.get(0).severity(),
        grades.size() == 1 ? List.of() : grades,
        text(rule, "summary"),
        text(rule, "because"),
        text(rule, "message"),
        text(rule, "remedy"),
        perhaps(rule, "mend").orElse(""),
        perhaps(rule, "harms").orElse(""),
        perhaps(rule, "doubts").map(families -> List.of(families.split(", "))).orElse(List.of()),
        rule.getMetaData().containsKey("atWork"),
        text(rule, "source"),
        new LimitNames(id));
  }

  /**
   * Names of the limits that a rule's severity and conditions read or are handed, in their order.
   */
  static List<String> limits(String drl) {
    Stream<String> grades =
        drl.lines()
            .filter(line -> line.strip().startsWith("@severity"))
            .flatMap(line -> GRADE.matcher(line).results())
            .map(grade -> grade.group(1));
    Stream<String> conditions = LIMIT.matcher(drl).results().map(limit -> limit.group(1));
    Stream<String> handed =
        HANDED.matcher(drl).results().flatMap(names -> Stream.of(names.group(1).split(", ")));
    return Stream.of(grades, conditions, handed).flatMap(names -> names).distinct().toList();
  }

  /**
   * One severity, or several by chance: {@code stop from drying/wet-stop, risk from
   * drying/wet-risk, advice}.
   */
  private static List<Grade> grades(Rule rule) {
    List<Grade> grades = new ArrayList<>();
    for (String grade : text(rule, "severity").split(", ")) {
      String[] from = grade.split(" from ", 2);
      Severity severity =
          Stream.of(Severity.values())
              .filter(s -> s.text().equals(from[0]))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalStateException(
                          "rule " + rule.getName() + ": no severity " + from[0]));
      grades.add(new Grade(severity, from.length == 1 ? "" : from[1]));
    }
    return grades;
  }

  private static Optional<String> perhaps(Rule rule, String key) {
    return rule.getMetaData().containsKey(key) ? Optional.of(text(rule, key)) : Optional.empty();
  }

  /** The executable model keeps the quotes of a string annotation; here, and only here, they go. */
  private static String text(Rule rule, String key) {
    Object value = rule.getMetaData().get(key);
    if (value == null) {
      throw new IllegalStateException("rule " + rule.getName() + " has no @" + key);
    }
    String text = value.toString();
    if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
      text = text.substring(1, text.length() - 1);
    }
    return ESCAPED.matcher(text).replaceAll(e -> Matcher.quoteReplacement(e.group(1)));
  }
}
