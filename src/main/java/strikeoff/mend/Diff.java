package strikeoff.mend;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.findings.Mend;

/** What was mended, as a unified diff: each hunk with the rules whose findings it mends. */
public final class Diff {

  private static final int CONTEXT = 3;

  private static final Pattern HUNK =
      Pattern.compile("@@ -\\d+(?:,\\d+)? \\+(\\d+)(?:,(\\d+))? @@");

  /** A carriage return alone ends a line too, as it does for the reader. */
  private static final Pattern LINE_END = Pattern.compile("\n|\r(?!\n)");

  /** How patches say it. */
  private static final String NO_LINE_END = "\n\\ No newline at end of file";

  private Diff() {}

  /**
   * Lines of the diff; none if nothing was mended.
   *
   * @param name of the file, for both sides
   * @param before its text as it was
   */
  public static List<String> of(String name, String before, Mender.Mended mended) {
    List<String> old = lines(before);
    List<String> diff =
        UnifiedDiffUtils.generateUnifiedDiff(
            name, name, old, DiffUtils.diff(old, lines(mended.text())), CONTEXT);
    List<Set<String>> rules = rules(old.size(), mended.made());
    List<String> told = new ArrayList<>();
    for (String line : diff) {
      Matcher hunk = HUNK.matcher(line);
      told.add(hunk.matches() ? line + " " + String.join(", ", within(hunk, rules)) : line);
    }
    return told;
  }

  /**
   * Lines of the diff of two texts; none if they are alike.
   *
   * @param name of the file, for both sides
   */
  public static List<String> of(String name, String before, String after) {
    List<String> old = lines(before);
    return UnifiedDiffUtils.generateUnifiedDiff(
        name, name, old, DiffUtils.diff(old, lines(after)), CONTEXT);
  }

  /** Each with the carriage return that it may end with, or a patch would not find it. */
  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>(List.of(LINE_END.split(text, -1)));
    int last = lines.size() - 1;
    if (lines.get(last).isEmpty()) {
      lines.remove(last);
    } else {
      lines.set(last, lines.get(last) + NO_LINE_END);
    }
    return lines;
  }

  private static Set<String> within(Matcher hunk, List<Set<String>> rules) {
    int first = Integer.parseInt(hunk.group(1));
    int many = hunk.group(2) == null ? 1 : Integer.parseInt(hunk.group(2));
    Set<String> all = new LinkedHashSet<>();
    for (int line = first; line <= Math.min(first + many, rules.size() - 1); line++) {
      all.addAll(rules.get(line));
    }
    return all;
  }

  /**
   * For each line of the mended text, counted from 1, the rules that changed it; for the place of a
   * line that went, the line behind it has them.
   */
  private static List<Set<String>> rules(int lines, List<Mender.Made> made) {
    List<Set<String>> rules = new ArrayList<>();
    for (int i = 0; i <= lines + 1; i++) {
      rules.add(new LinkedHashSet<>());
    }
    for (Mender.Made one : made) {
      List<Mend.Hunk> hunks = one.mend().hunks();
      for (int i = hunks.size() - 1; i >= 0; i--) {
        Mend.Hunk hunk = hunks.get(i);
        Set<String> here = new LinkedHashSet<>();
        for (String ignored : hunk.gone()) {
          here.addAll(rules.remove(hunk.line()));
        }
        here.add(one.finding().rule().id());
        for (String ignored : hunk.come()) {
          rules.add(hunk.line(), new LinkedHashSet<>(here));
        }
        if (hunk.come().isEmpty() && hunk.line() < rules.size()) {
          rules.get(hunk.line()).addAll(here);
        }
      }
    }
    return rules;
  }
}
