package strikeoff.yaml;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Problem;

/** What came of reading a YAML text. */
public sealed interface YamlReading {

  /** The text, line by line; empty if it could not even be decoded. */
  List<String> lines();

  /** A sound document. */
  record Document(Node root, List<String> lines) implements YamlReading {
    public Document {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A text that is no sound document.
   *
   * @param root what it says where slips are taken as they were meant, for finding more mistakes;
   *     empty where nobody can tell
   * @param partial true if parts were left out, so that what is missing may be there
   */
  record Faulty(List<Problem> problems, List<String> lines, Optional<Node> root, boolean partial)
      implements YamlReading {
    public Faulty {
      problems = List.copyOf(problems);
      lines = List.copyOf(lines);
    }
  }
}
