package strikeoff.findings;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.Replacement;
import strikeoff.units.Phrase;

/**
 * A change of the plan that was tried: made literally, the finding is gone and no new stop has
 * come.
 *
 * @param edits what is changed
 * @param changes the same as stretches of the file's text, down the file
 * @param hunks the same as whole lines, down the file
 * @param end when the run then ends, if that is another minute than before
 * @param risks what the plan then risks and did not before, a few words each
 */
public record Mend(
    List<Edit> edits,
    List<Replacement> changes,
    List<Hunk> hunks,
    Optional<String> end,
    List<String> risks) {

  public Mend {
    edits = List.copyOf(edits);
    changes = List.copyOf(changes);
    hunks = List.copyOf(hunks);
    risks = List.copyOf(risks);
  }

  /** What comes of it besides, in words; empty if nothing does. */
  public String costs() {
    String ends = end.map(e -> "the run then ends " + e).orElse("");
    String then =
        risks.isEmpty()
            ? ""
            : risks.stream().map(Phrase::small).collect(joining("; ", "new risk: ", ""));
    return ends + (ends.isEmpty() || then.isEmpty() ? "" : "; ") + then;
  }

  /**
   * Lines that change.
   *
   * @param line number of the first one that goes, or before which others come
   * @param gone lines as they were
   * @param come lines in their place
   */
  public record Hunk(int line, List<String> gone, List<String> come) {

    public Hunk {
      gone = List.copyOf(gone);
      come = List.copyOf(come);
    }
  }
}
