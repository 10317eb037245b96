package strikeoff.report.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;

/**
 * What became of one plan.
 *
 * @param name what both versions are called
 * @param before the old version; empty if the plan is new
 * @param after the new version; empty if the plan is gone
 * @param mended findings of the old version that the new one doesn't have
 * @param left findings of both, as they stand in the new one
 * @param fresh findings of the new version that the old one didn't have
 * @param figures that changed
 */
public record PlanChange(
    String name,
    Optional<Outcome> before,
    Optional<Outcome> after,
    List<Found> mended,
    List<Found> left,
    List<Found> fresh,
    List<Change> figures) {

  public PlanChange {
    mended = List.copyOf(mended);
    left = List.copyOf(left);
    fresh = List.copyOf(fresh);
    figures = List.copyOf(figures);
  }

  /**
   * Compares two versions, or tells that one is new or gone.
   *
   * @param name what both are called
   */
  public static PlanChange of(String name, Optional<Outcome> before, Optional<Outcome> after) {
    Map<String, Found> old = new HashMap<>();
    before.ifPresent(b -> b.findings().forEach(f -> old.put(f.key(), f)));
    List<Found> left = new ArrayList<>();
    List<Found> fresh = new ArrayList<>();
    after.ifPresent(
        a -> a.findings().forEach(f -> (old.containsKey(f.key()) ? left : fresh).add(f)));
    left.forEach(f -> old.remove(f.key()));
    // A version that could not be judged says nothing about what is mended.
    boolean judged = after.flatMap(Outcome::figures).isPresent();
    List<Found> mended =
        judged
            ? before.stream()
                .flatMap(b -> b.findings().stream())
                .filter(f -> old.containsKey(f.key()))
                .toList()
            : List.of();
    return new PlanChange(
        name,
        before,
        after,
        mended,
        left,
        fresh,
        FigureChanges.of(before.flatMap(Outcome::figures), after.flatMap(Outcome::figures)));
  }

  /** Mistakes that keep the new version from being read. */
  public List<Mistake> mistakes() {
    return after.map(Outcome::mistakes).orElse(List.of());
  }

  /** The verdict, or what became of it, in a few words. */
  public String verdict() {
    if (before.isEmpty()) {
      return "new: " + after.orElseThrow().verdict().text();
    }
    String was = before.get().verdict().text();
    if (after.isEmpty()) {
      return "gone; was " + was;
    }
    String is = after.get().verdict().text();
    return was.equals(is) ? "still " + is : is + "; was " + was;
  }

  /** How many findings have that fate, and how many of them stop the work: {@code 3 (1 stop)}. */
  public static String count(List<Found> findings) {
    long stops = findings.stream().filter(Found::blocks).count();
    String some = stops == 0 ? "" : " (" + stops + (stops == 1 ? " stop)" : " stops)");
    return findings.size() + some;
  }

  /** What findings can't tell of a file that could not be read before; else empty. */
  public String remark() {
    int mistakes = before.map(b -> b.mistakes().size()).orElse(0);
    if (mistakes == 0 || after.flatMap(Outcome::figures).isEmpty()) {
      return "";
    }
    return (mistakes == 1 ? "The mistake" : "The " + mistakes + " mistakes")
        + " that kept it from being read "
        + (mistakes == 1 ? "is" : "are")
        + " mended; what is new could not be seen before.";
  }

  /** True if nothing at all changed that is compared. */
  public boolean same() {
    return mended.isEmpty()
        && fresh.isEmpty()
        && figures.isEmpty()
        && before.map(Outcome::verdict).equals(after.map(Outcome::verdict))
        && before.map(Outcome::mistakes).equals(after.map(Outcome::mistakes));
  }
}
