package strikeoff.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;
import strikeoff.units.Measures;

/**
 * Turns a rule's {@code @mend} and the facts it reported into edits of the plan. Alternatives stand
 * between bars, edits that belong together between semicolons:
 *
 * <pre>
 * {path}: {warmest}                     writes a value, also under a key that is not there yet
 * {path}^.pause: {pause}                  beside it: the circumflex is the mapping that holds it
 * protection + gloves                   adds an item to a list
 * before {path}: dry: {wait}            puts an item into a list, in front of another one
 * move {fixStep} before {path}          a number is that of a step
 * remove {path}
 * {cures}                               alternatives that the fact worked out itself
 * </pre>
 *
 * <p>Names in braces are those of {@link Words}; a path in them is one of the plan, and names of
 * the plan are quoted where YAML needs it. An alternative is left out if one of its values is.
 */
public final class Edits {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

  private static final Pattern WRITE = Pattern.compile("([^:+]+): (.+)");

  private static final Pattern APPEND = Pattern.compile("([^:]+) \\+ (.+)");

  private static final Pattern INSERT = Pattern.compile("before ([^:]+): (.+)");

  private static final Pattern MOVE = Pattern.compile("move (.+) before (.+)");

  private static final Pattern REMOVE = Pattern.compile("remove (.+)");

  /** Says that an alternative has no value for one of its places. */
  private static final class Left extends Exception {
    private static final long serialVersionUID = 1;
  }

  private Edits() {}

  /**
   * All alternatives, in the rule's order.
   *
   * @throws IllegalArgumentException if the template is none, or names nothing in the facts: a
   *     fault of the tool
   */
  public static List<List<Edit>> of(String template, List<?> facts, Measures units) {
    List<List<Edit>> all = new ArrayList<>();
    if (template.isEmpty()) {
      return all;
    }
    for (String alternative : template.split(" \\| ")) {
      Matcher own = PLACEHOLDER.matcher(alternative);
      if (own.matches()) {
        all.addAll(workedOut(Words.value(own.group(1), facts, units), alternative));
        continue;
      }
      try {
        List<Edit> edits = new ArrayList<>();
        for (String edit : alternative.split("; ")) {
          edits.add(edit(edit, facts, units));
        }
        all.add(edits);
      } catch (Left e) {
        // The next one may do.
      }
    }
    return all;
  }

  private static List<List<Edit>> workedOut(Object value, String name) {
    List<List<Edit>> all = new ArrayList<>();
    for (Object alternative : (Collection<?>) value) {
      List<Edit> edits = new ArrayList<>();
      for (Object edit : (Collection<?>) alternative) {
        edits.add((Edit) edit);
      }
      all.add(edits);
    }
    return all;
  }

  private static Edit edit(String text, List<?> facts, Measures units) throws Left {
    Matcher move = MOVE.matcher(text);
    if (move.matches()) {
      return new Edit.Move(path(move.group(1), facts, units), path(move.group(2), facts, units));
    }
    Matcher remove = REMOVE.matcher(text);
    if (remove.matches()) {
      return new Edit.Remove(path(remove.group(1), facts, units));
    }
    Matcher insert = INSERT.matcher(text);
    if (insert.matches()) {
      return new Edit.Insert(
          path(insert.group(1), facts, units), filled(insert.group(2), facts, units));
    }
    Matcher append = APPEND.matcher(text);
    if (append.matches()) {
      return new Edit.Append(
          path(append.group(1), facts, units), filled(append.group(2), facts, units));
    }
    Matcher write = WRITE.matcher(text);
    if (write.matches()) {
      return new Edit.Write(
          path(write.group(1), facts, units), filled(write.group(2), facts, units));
    }
    throw new IllegalArgumentException("no edit: " + text);
  }

  /** A place of the plan: {@code {path}}, {@code {path}.pause}, {@code table.cloth at}. */
  private static PlanPath path(String template, List<?> facts, Measures units) throws Left {
    Matcher place = PLACEHOLDER.matcher(template);
    StringBuilder text = new StringBuilder();
    while (place.find()) {
      Object value = there(Words.value(place.group(1), facts, units));
      place.appendReplacement(text, Matcher.quoteReplacement(path(value)));
    }
    String path = place.appendTail(text).toString();
    int above = path.indexOf('^');
    return above < 0
        ? new PlanPath(path)
        : new PlanPath(
            new PlanPath(path.substring(0, above)).parent().text() + path.substring(above + 1));
  }

  /** Steps are told by their number. */
  private static String path(Object value) {
    return value instanceof PlanPath path
        ? path.text()
        : value instanceof Integer step ? "run[" + (step - 1) + "]" : value.toString();
  }

  private static String filled(String template, List<?> facts, Measures units) throws Left {
    Matcher place = PLACEHOLDER.matcher(template);
    StringBuilder text = new StringBuilder();
    while (place.find()) {
      String name = place.group(1);
      String word =
          Words.isLimit(name)
              ? Words.fill(place.group(), facts, units)
              : value(there(Words.value(name, facts, units)), name, units);
      place.appendReplacement(text, Matcher.quoteReplacement(word));
    }
    return place.appendTail(text).toString();
  }

  private static Object there(Object value) throws Left {
    if (value instanceof Optional<?> perhaps) {
      return perhaps.map(Object.class::cast).orElseThrow(Left::new);
    }
    return value;
  }

  private static String value(Object value, String name, Measures units) {
    if (value instanceof String text) {
      return Scalars.text(text);
    }
    if (value instanceof Collection<?> many) {
      return many.stream()
          .map(one -> value(one, name, units))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return Spoken.text(value, FactValues.lastName(name), units);
  }
}
