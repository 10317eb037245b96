package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Visible;

/** Takes what word processors make of plain spaces, quotes and dashes for what was typed. */
final class Typed {

  private static final Pattern SPACES = Pattern.compile("[\\u00a0\\u2000-\\u200a\\u202f\\u3000]");

  /** As {@link Visible} shows what nobody sees. */
  private static final Pattern UNSEEN = Pattern.compile("\\[(U\\+[0-9A-F]{4,6})]");

  private static final Pattern DASH =
      Pattern.compile("^[\\u2010-\\u2015\\u2212•‣·*](?=[\\s\\p{L}])");

  /** Names in the quotes of several languages, or in single ones; and apostrophes stay. */
  private static final Pattern QUOTED =
      Pattern.compile(
          "[„“”\"]([^„“”\"]*)[“”\"]|[«»]\\s?([^«»]*?)\\s?[«»]"
              + "|(?<![^\\s])[‘‚']([^‘’‚']*)[‘’'](?=[\\s,]|$)");

  private Typed() {}

  /** The lines of a file, with spaces that are spaces; what nobody sees is told and left out. */
  static List<String> lines(RuleFile file, List<RuleMistake> mistakes) {
    List<String> lines = new ArrayList<>();
    for (String written : file.text().lines().toList()) {
      String line = SPACES.matcher(written).replaceAll(" ");
      Matcher unseen = UNSEEN.matcher(Visible.line(line));
      if (!UNSEEN.matcher(line).find() && unseen.find()) {
        if (mistakes.size() < RuleMistakes.MOST) {
          mistakes.add(
              new RuleMistake(
                  file.name(),
                  lines.size() + 1,
                  unseen.start() + 1,
                  "the invisible character " + unseen.group(1) + " stands here; delete it"));
        }
        line = unseen.replaceAll("");
      }
      lines.add(line);
    }
    return lines;
  }

  /** A condition as plain signs write it. */
  static String condition(String line) {
    return quotes(DASH.matcher(line).replaceFirst("-")).replace('’', '\'');
  }

  /** Names in one kind of quotes. */
  static String quotes(String line) {
    return QUOTED
        .matcher(line)
        .replaceAll(
            match -> {
              for (int i = 1; i <= match.groupCount(); i++) {
                if (match.group(i) != null) {
                  return Matcher.quoteReplacement("“" + match.group(i) + "”");
                }
              }
              return Matcher.quoteReplacement(match.group());
            });
  }
}
