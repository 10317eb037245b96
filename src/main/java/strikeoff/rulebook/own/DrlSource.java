package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Rules as the compiler takes them.
 *
 * @param file the file they come from
 * @param drl their text; line for line either the file's own or made from its sentences
 * @param lines for each line of {@code drl}, the line of the file it came from
 */
record DrlSource(RuleFile file, String drl, List<Integer> lines) {

  DrlSource {
    lines = List.copyOf(lines);
  }

  /** Each of its rules alone, on its own lines. */
  List<DrlSource> ruleByRule() {
    List<String> all = drl.lines().toList();
    List<DrlSource> alone = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).matches("\\s*rule\\s+\".*")) {
        from = i;
      }
      if (all.get(i).strip().equals("end")) {
        alone.add(without(all, from, i));
      }
    }
    return alone;
  }

  /** Other rules' lines are left blank, so that line numbers stay. */
  private DrlSource without(List<String> all, int from, int to) {
    List<String> kept = new ArrayList<>();
    boolean inRule = false;
    for (int i = 0; i < all.size(); i++) {
      inRule = inRule || all.get(i).matches("\\s*rule\\s+\".*");
      kept.add(!inRule || i >= from && i <= to ? all.get(i) : "");
      inRule = inRule && !all.get(i).strip().equals("end");
    }
    return new DrlSource(file, String.join("\n", kept) + "\n", lines);
  }

  /** Where a message of the compiler belongs: its own line, the line it quotes, or the rule. */
  int lineOf(OwnCompiler.Refusal message) {
    if (message.use().isPresent()) {
      return lineUsing(message.use().get());
    }
    if (message.line() > 0 && message.line() <= lines.size()) {
      return lines.get(message.line() - 1);
    }
    String text = message.text();
    String quoted = text.substring(text.lastIndexOf(": ") + 1).strip();
    List<String> all = drl.lines().toList();
    int rule = 0;
    boolean inRule = false;
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).matches("\\s*rule\\s+\".*")) {
        rule = lines.get(i);
        inRule = true;
      }
      if (inRule && !quoted.isEmpty() && all.get(i).contains(quoted)) {
        return lines.get(i);
      }
    }
    return rule;
  }

  /** The line that names most of what it uses, best below the imports; else the rule's. */
  private int lineUsing(CodeUse use) {
    Pattern type = Pattern.compile("\\b" + Pattern.quote(use.simpleType()) + "\\b");
    Pattern member = Pattern.compile("\\b" + Pattern.quote(use.member()) + "\\b");
    List<String> all = drl.lines().toList();
    int best = 0;
    int most = 0;
    int rule = 0;
    for (int i = 0; i < all.size(); i++) {
      String line = all.get(i);
      if (line.matches("\\s*rule\\s+\".*")) {
        rule = i;
      }
      int named =
          (line.strip().startsWith("import ") ? 0 : 2)
              * ((type.matcher(line).find() ? 1 : 0)
                  + (!use.member().isEmpty() && member.matcher(line).find() ? 1 : 0));
      if (named > most) {
        most = named;
        best = i;
      }
    }
    return lines.get(most > 0 ? best : rule);
  }
}
