package strikeoff.yaml;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Position;
import strikeoff.units.Script;

/** Says what a YAML parser complains of in words that help somebody who never read about YAML. */
final class SyntaxWords {

  private static final Pattern CHARACTER =
      Pattern.compile("found character '(.).*'", Pattern.DOTALL);
  private static final Pattern BARE_HASH = Pattern.compile("[:,\\[-] +#");

  /** Told where the mark stands, since the parser gives up at the end of the file. */
  static final String UNCLOSED = "the quotation mark that opens here is never closed";

  private SyntaxWords() {}

  /**
   * @param problem the parser's words
   * @param context its words for where it was
   * @param from where the part began that it could not finish
   * @param at where it gave up
   */
  static String of(String problem, String context, Position from, Position at, List<String> lines) {
    if (problem.contains("TAB") || problem.contains("'\\t'")) {
      return "a tab stands here; indent with spaces";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "a second “: ” stands in one line, or the line is indented too far; put a value that"
          + " holds a colon in quotes";
    }
    if (problem.contains("unexpected end of stream") && context.contains("quoted")) {
      return UNCLOSED;
    }
    if (problem.contains("expected ',' or")) {
      char close = problem.contains("']'") ? ']' : '}';
      return "a comma or the closing “"
          + close
          + "” is missing in what begins at "
          + from
          + hashHint(from, at, lines);
    }
    if (context.contains("flow") && problem.contains("expected the node content")) {
      return "a value is missing, or a bracket is not closed, in what begins at "
          + from
          + hashHint(from, at, lines);
    }
    if (problem.contains("<block end>") || problem.contains("BlockEnd")) {
      return "this line is indented like none of the lines above it";
    }
    if (problem.contains("<document start>")) {
      return "what stands here belongs to nothing; it is indented too little, or a bracket before it"
          + " was closed too early";
    }
    if (problem.contains("could not find expected ':'")) {
      return "a key without “: ” stands here";
    }
    if (problem.contains("escape")) {
      return "a backslash in double quotes starts a special sign; use single quotes";
    }
    if (problem.contains("undefined alias")) {
      return "a value that begins with “*” refers to an anchor; put it in quotes";
    }
    Matcher character = CHARACTER.matcher(problem);
    if (character.find()) {
      return "a value cannot begin with “" + character.group(1) + "”; put it in quotes";
    }
    String told = Script.quoted(problem);
    return "this cannot be read as YAML: " + told.substring(1, told.length() - 1);
  }

  /** In a flow mapping an unquoted colour swallows the rest of its line, brackets and all. */
  private static String hashHint(Position from, Position at, List<String> lines) {
    for (int n = from.line(); n <= Math.min(at.line(), lines.size()); n++) {
      if (BARE_HASH.matcher(lines.get(n - 1)).find()) {
        return "; “#” in line " + n + " starts a comment unless it stands in quotes";
      }
    }
    return "";
  }
}
