package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import strikeoff.units.Parsed;

/**
 * A line of a rule's conditions, understood.
 *
 * @param type the fact it is about
 * @param constraints what of it must hold, all of it
 * @param absent true if there must be no such fact
 */
record Condition(Class<?> type, List<String> constraints, boolean absent) {

  private static final int LONGEST = 300;
  private static final Pattern NONE = Pattern.compile("(?i)^there\\s+is\\s+no\\s+");
  private static final Pattern AND = Pattern.compile("(?i)^(?:,\\s*and\\s+|,\\s*|and\\s+)");
  private static final Pattern TYPE = Pattern.compile("(\\w+)\\((.*)\\)");

  Condition {
    constraints = List.copyOf(constraints);
  }

  /** Reads a line that opens a condition. */
  static Parsed<Condition> read(String line, Vocabulary words) {
    if (line.length() > LONGEST) {
      return Parsed.refused("a sentence has at most " + LONGEST + " letters");
    }
    boolean absent = NONE.matcher(line).find();
    List<String> readings =
        absent
            ? List.of(
                NONE.matcher(line).replaceFirst("there is a "),
                NONE.matcher(line).replaceFirst("there is an "))
            : List.of(line);
    String refusal = "";
    String about = "";
    for (String text : readings) {
      for (int cut : cuts(text)) {
        String opening = text.substring(0, cut);
        for (Sentence sentence : words.openings()) {
          Optional<Parsed<String>> read = sentence.read(opening);
          if (read.isEmpty()) {
            continue;
          }
          if (read.get() instanceof Parsed.Refused<String> refused) {
            refusal = refusal.isEmpty() ? refused.message() : refusal;
            continue;
          }
          List<String> constraints = new ArrayList<>();
          inside(read.get().toOptional().orElseThrow()).ifPresent(constraints::add);
          Parsed<List<String>> rest = more(text.substring(cut).strip(), sentence.type(), words);
          if (rest instanceof Parsed.Value<List<String>> more) {
            constraints.addAll(more.value());
            return Parsed.value(new Condition(sentence.type(), constraints, absent));
          }
          if (about.isEmpty()) {
            about = ((Parsed.Refused<List<String>>) rest).message();
          }
        }
      }
    }
    return Parsed.refused(
        !about.isEmpty() ? about : refusal.isEmpty() ? unknown(line, words.all(), words) : refusal);
  }

  /** Reads what more is said of a fact, without the dash. */
  static Parsed<List<String>> more(String text, Class<?> type, Vocabulary words) {
    if (text.length() > LONGEST) {
      return Parsed.refused("a sentence has at most " + LONGEST + " letters");
    }
    String left = AND.matcher(text).replaceFirst("");
    if (left.isBlank()) {
      return Parsed.value(List.of());
    }
    String refusal = "";
    for (int cut : cuts(left)) {
      String part = left.substring(0, cut);
      for (Optional<Parsed<String>> read : readings(part, type, words)) {
        if (read.isEmpty()) {
          continue;
        }
        if (read.get() instanceof Parsed.Refused<String> refused) {
          refusal = refusal.isEmpty() ? refused.message() : refusal;
          continue;
        }
        Parsed<List<String>> rest = more(left.substring(cut).strip(), type, words);
        if (rest instanceof Parsed.Value<List<String>> further) {
          List<String> all = new ArrayList<>();
          all.add(read.get().toOptional().orElseThrow());
          all.addAll(further.value());
          return Parsed.value(all);
        }
        return rest;
      }
    }
    if (!refusal.isEmpty()) {
      return Parsed.refused(refusal);
    }
    List<String> known = new ArrayList<>();
    words.more(type).forEach(s -> known.add(s.said()));
    known.addAll(ComparedValues.examples(type));
    return Parsed.refused(unknown(left, known, words));
  }

  private static List<Optional<Parsed<String>>> readings(
      String part, Class<?> type, Vocabulary words) {
    List<Optional<Parsed<String>>> readings = new ArrayList<>();
    words.more(type).forEach(s -> readings.add(s.read(part)));
    readings.add(ComparedValues.read(part, type));
    return readings;
  }

  /** A sentence that says less leaves more to read: the longest part first, whole words only. */
  private static List<Integer> cuts(String text) {
    List<Integer> cuts = new ArrayList<>();
    cuts.add(text.length());
    for (int i = text.length() - 1; i > 0; i--) {
      char c = text.charAt(i);
      if (Character.isWhitespace(c) || c == ',') {
        cuts.add(i);
      }
    }
    return cuts;
  }

  private static String unknown(String text, List<String> known, Vocabulary words) {
    // In full, since it is the user's own file and the slip may stand at its end.
    return "“"
        + text
        + "” is no sentence that is known here; the nearest is “"
        + words.nearest(text, known)
        + "”";
  }

  /** A condition of an opening is a whole pattern. */
  private static Optional<String> inside(String pattern) {
    var match = TYPE.matcher(pattern);
    String constraint = match.matches() ? match.group(2).strip() : pattern;
    return constraint.isEmpty() ? Optional.empty() : Optional.of(constraint);
  }

  /** As the rules' language writes it. */
  String drl(String variable) {
    String pattern = type.getSimpleName() + "(" + String.join(", ", constraints) + ")";
    return absent ? "not " + pattern : variable + " : " + pattern;
  }
}
