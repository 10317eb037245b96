package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/**
 * Placements across a seam that is sewn in the run, which a step prints.
 *
 * @param arrangement whose placements they are
 * @param across numbers of those across it
 * @param step the step that prints them
 * @param stepNumber its number
 * @param sewing the step that sews the seam
 * @param sewingNumber the number of the step that sews the seam
 * @param filmsBefore true if something is printed before that step, which is to be dry when it is
 *     sewn
 * @param padded true if its ridge is levelled
 * @param rest numbers that the step can go on to print; empty if all cross it
 * @param again what the step prints across it, as a step of its own; empty if {@code rest} is
 */
public record PrintAcrossSeam(
    String seam,
    String arrangement,
    List<Integer> across,
    Step step,
    int stepNumber,
    Step sewing,
    int sewingNumber,
    boolean filmsBefore,
    boolean padded,
    List<Integer> rest,
    Optional<String> again,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintAcrossSeam {
    across = List.copyOf(across);
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
    if (!rest.isEmpty()) {
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
