package strikeoff.report.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Puts the parts of a batch together. */
public final class Parts {

  private Parts() {}

  /** Parts of one batch, or the reason why these aren't all of it. */
  public sealed interface Joined {
    /** The whole batch, as if one run had checked it. */
    record Whole(Results results) implements Joined {}

    /** Why it can't be put together, in one line. */
    record Unfit(String why) implements Joined {}
  }

  /** Joins parts in any order. */
  public static Joined join(List<Results> parts) {
    if (parts.isEmpty()) {
      return new Joined.Unfit("there are no parts");
    }
    Results first = parts.get(0);
    for (Results part : parts) {
      Optional<String> other = difference(first, part);
      if (other.isPresent()) {
        return new Joined.Unfit("these are parts of two batches: " + other.get());
      }
    }
    Optional<String> missing = missing(parts);
    if (missing.isPresent()) {
      return new Joined.Unfit(missing.get());
    }
    List<Outcome> plans = new ArrayList<>();
    TreeSet<Integer> numbers = new TreeSet<>();
    for (Results part : parts) {
      for (Outcome plan : part.plans()) {
        if (!numbers.add(plan.number())) {
          return new Joined.Unfit("plan " + plan.number() + " stands in two parts");
        }
        plans.add(plan);
      }
    }
    return plans.size() == first.size()
        ? new Joined.Whole(first.with(Optional.empty(), plans))
        : new Joined.Unfit(
            "the batch has " + first.size() + " plans, and its parts hold " + plans.size());
  }

  private static Optional<String> difference(Results a, Results b) {
    if (!a.version().equals(b.version())) {
      return Optional.of("version " + a.version() + " wrote one, " + b.version() + " another");
    }
    if (!a.title().equals(b.title()) || a.size() != b.size()) {
      return Optional.of(
          a.title() + " with " + a.size() + " plans, and " + b.title() + " with " + b.size());
    }
    if (!of(a).equals(of(b))) {
      return Optional.of("one is of " + of(a) + ", another of " + of(b));
    }
    if (!a.narrowed().equals(b.narrowed())) {
      return Optional.of("other rules were left out of one than of another");
    }
    if (!a.baseline().equals(b.baseline())) {
      return Optional.of("they were held against two baselines, or one of them against none");
    }
    return a.rules().equals(b.rules()) ? Optional.empty() : Optional.of("their rules differ");
  }

  private static Integer of(Results part) {
    return part.part().map(Part::of).orElse(1);
  }

  private static Optional<String> missing(List<Results> parts) {
    TreeSet<Integer> numbers = new TreeSet<>();
    for (Results part : parts) {
      int number = part.part().map(Part::number).orElse(1);
      if (!numbers.add(number)) {
        return Optional.of("part " + number + " is there twice");
      }
    }
    for (int i = 1; i <= of(parts.get(0)); i++) {
      if (!numbers.contains(i)) {
        return Optional.of("part " + i + " of " + of(parts.get(0)) + " is missing");
      }
    }
    return Optional.empty();
  }
}
