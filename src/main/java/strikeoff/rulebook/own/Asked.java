package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.day.Moment;

/** What is asked of a fact, perhaps beside others that a rule has found. */
sealed interface Asked {

  /**
   * True if the fact is as asked.
   *
   * @param others gives the facts of {@link #things}
   */
  boolean holds(Object fact, Function<Thing, Object> others);

  /** The other things that it speaks of. */
  default Set<Thing> things() {
    return Set.of();
  }

  /** What tells it from others; with {@code value sign figure} where it is no more than that. */
  String text();

  /** A value is compared with a figure, a word or another value. */
  record Compared(Value value, How how, Than than) implements Asked {

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      return how.holds(value.of(fact), than.of(fact, others), value.kind());
    }

    @Override
    public Set<Thing> things() {
      return than.things();
    }

    @Override
    public String text() {
      return value.access() + " " + how.sign() + " " + than.text();
    }
  }

  /** At least one of several is so. */
  record Either(List<List<Asked>> ways) implements Asked {

    public Either {
      ways = ways.stream().map(List::copyOf).toList();
    }

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      return ways.stream().anyMatch(way -> way.stream().allMatch(a -> a.holds(fact, others)));
    }

    @Override
    public Set<Thing> things() {
      return ways.stream()
          .flatMap(List::stream)
          .flatMap(a -> a.things().stream())
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @Override
    public String text() {
      return ways.stream()
          .map(way -> String.join(" and ", way.stream().map(Asked::text).toList()))
          .collect(Collectors.joining(" or ", "either ", ""));
    }
  }

  /** Not all of it is so. */
  record Not(List<Asked> what) implements Asked {

    public Not {
      what = List.copyOf(what);
    }

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      return !what.stream().allMatch(a -> a.holds(fact, others));
    }

    @Override
    public Set<Thing> things() {
      return new Either(List.of(what)).things();
    }

    @Override
    public String text() {
      return "not " + new Either(List.of(what)).text();
    }
  }

  /** Both have something in common. */
  record Shared(Value mine, Thing other, Value theirs) implements Asked {

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      return mine.shared(mine.of(fact), theirs.of(others.apply(other)));
    }

    @Override
    public Set<Thing> things() {
      return Set.of(other);
    }

    @Override
    public String text() {
      return mine.access() + " shared with " + theirs.access() + " of " + other.number();
    }
  }

  /** It is another one. */
  record Another(Thing other) implements Asked {

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      return fact != others.apply(other);
    }

    @Override
    public Set<Thing> things() {
      return Set.of(other);
    }

    @Override
    public String text() {
      return "another than " + other.number();
    }
  }

  /** It comes before another one or after it, by so many minutes. */
  record InTime(Method mine, boolean after, How how, double minutes, Thing other, Method theirs)
      implements Asked {

    @Override
    public boolean holds(Object fact, Function<Thing, Object> others) {
      double from = minutes(mine, fact);
      double to = minutes(theirs, others.apply(other));
      double apart = after ? from - to : to - from;
      return apart >= 0 && how.holds(apart, minutes, Kind.TIME);
    }

    private static double minutes(Method method, Object fact) {
      try {
        return ((Moment) method.invoke(fact)).seconds() / 60.0;
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }

    @Override
    public Set<Thing> things() {
      return Set.of(other);
    }

    @Override
    public String text() {
      return mine.getName()
          + (after ? " after " : " before ")
          + theirs.getName()
          + " of "
          + other.number()
          + " by "
          + how.sign()
          + " "
          + minutes;
    }
  }

  /** All that is asked, as texts. */
  static List<String> texts(List<Asked> all) {
    List<String> texts = new ArrayList<>();
    all.forEach(asked -> texts.add(asked.text()));
    return texts;
  }
}
