package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * How dry prints are when they are wrapped for a batch, or go into steam.
 *
 * @param prints how many there are
 * @param dry how many of them have dried through by then on an ordinary day
 * @param waited from the first of them to the start
 * @param damp how long the one that dries first stays damp, even in quick drying
 * @param sooner edits that leave out a wait right before it; none if there is none
 */
public record Wrapped(int prints, int dry, Span waited, Span damp, List<List<Edit>> sooner) {

  public Wrapped {
    sooner = List.copyOf(sooner);
  }

  /**
   * @return empty without such prints
   */
  static Optional<Wrapped> of(FixingRun work, Step.Fix fix, List<Paste> pastes) {
    List<Impression> prints =
        work.before(fix, Medium.DYE).stream()
            .filter(i -> pastes.contains(i.footprint().paste()))
            .toList();
    Optional<Moment> start = work.start(fix);
    if (prints.isEmpty() || start.isEmpty()) {
      return Optional.empty();
    }
    Moment first =
        prints.stream().map(Impression::lifted).min(Comparator.naturalOrder()).orElseThrow();
    Span damp =
        prints.stream()
            .map(i -> i.film().fixSafe().earliest().since(i.lifted()))
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return Optional.of(
        new Wrapped(
            prints.size(),
            (int)
                prints.stream()
                    .filter(i -> i.film().fixSafe().best().compareTo(start.get()) <= 0)
                    .count(),
            start.get().since(first),
            new Span(Math.floor(damp.minutes())),
            work.dryingBefore(fix).stream()
                .map(wait -> List.<Edit>of(new Edit.Remove(wait.path())))
                .toList()));
  }

  /** True if any of them has dried through. */
  public boolean anyDry() {
    return dry > 0;
  }
}
