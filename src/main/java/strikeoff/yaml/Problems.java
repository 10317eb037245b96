package strikeoff.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;

/** Collects what is wrong with one file, up to a bound. */
public final class Problems {

  /** More than anybody mends in one go. */
  public static final int MOST = 100;

  private final List<Problem> list = new ArrayList<>();
  private int more;
  private int doubtful;

  public void add(Position at, PlanPath path, String message) {
    add(at, path, () -> message);
  }

  /** The words are only made up if they will be shown. */
  public void add(Position at, PlanPath path, Supplier<String> message) {
    if (list.size() < MOST) {
      list.add(new Problem(at, path, message.get()));
    } else {
      more++;
    }
  }

  /** Everything that another collection holds. */
  void addAll(Problems others) {
    others.list.forEach(p -> add(p.position(), p.path(), p.message()));
    more += others.more;
  }

  /** Everything of a list. */
  public void addAll(List<Problem> others) {
    others.forEach(p -> add(p.position(), p.path(), p.message()));
  }

  /**
   * Counts one that may be none, since part of the file could not be read: nobody is told of it.
   */
  void doubtful() {
    doubtful++;
  }

  public int count() {
    return list.size() + more + doubtful;
  }

  public boolean none() {
    return count() == 0;
  }

  /** Down the file; the last one tells how many more there are. */
  public List<Problem> sorted() {
    List<Problem> sorted = new ArrayList<>(list);
    sorted.sort(Problem.ORDER);
    if (more > 0) {
      Position last = sorted.get(sorted.size() - 1).position();
      // One column on, so that it stays the last one however often they are sorted.
      Position after = new Position(last.line(), last.column() + 1);
      sorted.add(
          new Problem(
              after, PlanPath.ROOT, "and " + more + " more; mend these first, then check again"));
    }
    return List.copyOf(sorted);
  }
}
