package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * A file of rules in sentences.
 *
 * @param read the same rules as they were read
 */
record SentenceFile(List<OwnRule> rules, List<SentenceRule> read) {

  private static final Pattern RULE = Pattern.compile("(?i)rule\\s+[\"“]?(.*?)[\"”]?");

  private enum Part {
    OUTSIDE,
    HEAD,
    WHEN,
    THEN
  }

  static SentenceFile of(RuleFile file, Vocabulary words, List<RuleMistake> mistakes) {
    List<String> lines = Typed.lines(file, mistakes);
    List<SentenceRule> read = new ArrayList<>();
    List<Integer> begins = new ArrayList<>();
    List<OwnRule> rules = new ArrayList<>();
    Part part = Part.OUTSIDE;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#") || line.startsWith("//")) {
        continue;
      }
      if (mistakes.size() >= RuleMistakes.MOST) {
        wrong(file, i, "so much is wrong up to here that the rest isn't read", mistakes);
        part = Part.OUTSIDE;
        break;
      }
      Matcher head = RULE.matcher(Typed.quotes(line));
      if (head.matches() && part != Part.OUTSIDE) {
        wrong(file, i, "the rule before this one has no “end”", mistakes);
        part = Part.OUTSIDE;
      }
      SentenceRule rule = read.isEmpty() ? null : read.get(read.size() - 1);
      switch (part) {
        case OUTSIDE -> {
          if (!head.matches() || head.group(1).isBlank()) {
            wrong(
                file,
                i,
                "“rule a few words” was expected; this is " + Script.quoted(line),
                mistakes);
          }
          if (head.matches()) {
            read.add(new SentenceRule(file, words, mistakes, i + 1, head.group(1).strip()));
            begins.add(i);
            part = Part.HEAD;
          }
        }
        case HEAD -> {
          part = Part.WHEN;
          if (!is(line, "when")) {
            wrong(file, i, "“when” was expected; this is " + Script.quoted(line), mistakes);
          }
        }
        case WHEN -> {
          if (is(line, "then")) {
            part = Part.THEN;
          } else if (line.matches("\\p{L}{3,5}:?")
              && Spelling.nearest(line, List.of("then")).isPresent()) {
            wrong(file, i, "“then” was expected; this is " + Script.quoted(line), mistakes);
            part = Part.THEN;
          } else if (is(line, "end")) {
            wrong(file, i, "the rule has no “then”", mistakes);
            part = Part.OUTSIDE;
          } else if (Saying.isConsequence(line)) {
            wrong(file, i, "“then” is missing above this line", mistakes);
            rule.consequence(i + 1, line);
            part = Part.THEN;
          } else {
            rule.condition(i + 1, Typed.condition(line.replaceAll("[.,;]$", "")));
          }
        }
        case THEN -> {
          if (is(line, "end") && !goesOn(lines, i + 1)) {
            int from = begins.get(begins.size() - 1);
            rules.add(new OwnRule(rule.done(), file.name(), from + 1, lines.subList(from, i + 1)));
            part = Part.OUTSIDE;
          } else {
            rule.consequence(i + 1, line);
          }
        }
      }
    }
    if (part != Part.OUTSIDE) {
      wrong(file, lines.size() - 1, "the last rule has no “end”", mistakes);
    }
    if (read.isEmpty()) {
      mistakes.add(new RuleMistake(file.name(), 0, "no rule is in this file"));
    }
    return new SentenceFile(rules, read);
  }

  /** True if the rule says more, so that an “end” before it is the last word of what it says. */
  private static boolean goesOn(List<String> lines, int from) {
    return lines.stream()
        .skip(from)
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.startsWith("//"))
        .findFirst()
        .filter(Saying::isConsequence)
        .isPresent();
  }

  /** People write {@code When:} as well. */
  private static boolean is(String line, String word) {
    return line.equalsIgnoreCase(word) || line.equalsIgnoreCase(word + ":");
  }

  private static void wrong(RuleFile file, int index, String message, List<RuleMistake> mistakes) {
    mistakes.add(new RuleMistake(file.name(), index + 1, message));
  }
}
