package strikeoff.yaml;

import java.util.List;
import strikeoff.plan.Problem;

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

  /** A text that is no sound document. */
  record Faulty(List<Problem> problems, List<String> lines) implements YamlReading {
    public Faulty {
      problems = List.copyOf(problems);
      lines = List.copyOf(lines);
    }
  }
}
