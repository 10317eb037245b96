package strikeoff.yaml;

import strikeoff.document.Position;
import strikeoff.units.Script;

/** Says what a YAML parser complains of in words that help somebody who never read about YAML. */
final class SyntaxWords {

  private SyntaxWords() {}

  /**
   * @param from where the part began that the parser could not finish, in the written text
   */
  static String of(Fault fault, Position from) {
    String problem = fault.problem();
    if (problem.contains("field name")) {
      return "a key must be a single word or a few; a list or a mapping stands here";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "a second “: ” stands in one line, or the line is indented too far; put a value that"
          + " holds a colon in quotes";
    }
    if (problem.contains("expected ',' or")) {
      char close = problem.contains("']'") ? ']' : '}';
      return "a comma or the closing “" + close + "” is missing in what begins at " + from;
    }
    if (fault.context().contains("flow") && problem.contains("expected the node content")) {
      return "a value is missing, or a bracket is not closed, in what begins at " + from;
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
    String told = Script.quoted(problem);
    return "this cannot be read as YAML: " + told.substring(1, told.length() - 1);
  }
}
