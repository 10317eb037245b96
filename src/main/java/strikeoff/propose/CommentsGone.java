package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strikeoff.document.yaml.Manuscript;

/** Finds a plan's comments that another text of it does without. */
final class CommentsGone {

  /** More of them are counted. */
  private static final int MOST = 5;

  private static final int LONGEST = 80;

  private CommentsGone() {}

  /** What a printer should know of them, in one sentence; none if all are there. */
  static List<String> noted(String before, String after) {
    List<String> gone = new ArrayList<>(Manuscript.comments(before));
    Manuscript.comments(after).forEach(gone::remove);
    gone.removeIf(Reasons::isOwn);
    if (gone.isEmpty()) {
      return List.of();
    }
    String told =
        gone.stream()
            .limit(MOST)
            .map(
                comment ->
                    "“"
                        + (comment.length() > LONGEST
                            ? comment.substring(0, LONGEST) + "…"
                            : comment)
                        + "”")
            .collect(Collectors.joining(", "));
    return List.of(
        "Of your comments in the run this one has no place for "
            + told
            + (gone.size() > MOST ? " and " + (gone.size() - MOST) + " more" : "")
            + ": write them beside their steps again.");
  }
}
