package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Placements across a seam that is sewn in the run, which a step prints.
 *
 * @param arrangement whose placements they are
 * @param numbers of those across it, in short
 * @param step the step that prints them
 * @param stepNumber its number
 * @param sewing the step that sews the seam
 * @param sewingNumber the number of the step that sews the seam
 * @param filmsBefore true if something is printed before that step, which is to be dry when it is
 *     sewn
 * @param padded true if its ridge is levelled
 * @param rest the same numbers, one by one, if the step can be parted by writing them; else empty
 * @param again what the step prints across it, as a step of its own; empty if {@code rest} is
 * @param others numbers that the step can go on to print, in short; {@code none} if all cross it
 */
public record PrintAcrossSeam(
    String seam,
    String arrangement,
    String numbers,
    String step,
    int stepNumber,
    String sewing,
    int sewingNumber,
    boolean filmsBefore,
    boolean padded,
    List<Integer> rest,
    Optional<String> again,
    String others,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /** In place of numbers, where all placements cross the seam. */
  public static final String NONE = "none";

  public PrintAcrossSeam {
    rest = List.copyOf(rest);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** How many steps before the sewing they are printed; below zero after it. */
  public int stepsBefore() {
    return sewingNumber - stepNumber;
  }

  /**
   * The same as edits of the plan: the step is parted, or, where all of it crosses the seam, the
   * sewing comes first, at once or when what is printed is dry.
   */
  public List<List<Edit>> edits() {
    PlanPath sew = path.parent().item(sewingNumber - 1);
    if (!others.equals(NONE)) {
      return again
          .map(
              step ->
                  List.<Edit>of(
                      new Edit.Write(path.key("only"), rest.toString()),
                      new Edit.Insert(path.parent().item(sewingNumber), step)))
          .map(List::of)
          .orElseGet(List::of);
    }
    List<Edit> first = List.of(new Edit.Move(sew, path));
    List<Edit> onceDry =
        List.of(new Edit.Insert(path, "dry: until lift-safe"), new Edit.Move(sew, path));
    return filmsBefore ? List.of(first, onceDry) : List.of(first);
  }
}
