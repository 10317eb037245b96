package strikeoff.rulebook.own;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import strikeoff.units.Parsed;

/**
 * A value of a fact that sentences can ask for.
 *
 * @param words its name in words
 * @param access the names that lead to it
 * @param kind what it is compared with
 * @param known the words that it can be, if all are known
 * @param many true for a list, of which one thing is asked
 * @param steps what is called, one upon the other
 */
record Value(
    String words,
    String access,
    Kind kind,
    Optional<KnownWords> known,
    boolean many,
    List<Method> steps) {

  Value {
    steps = List.copyOf(steps);
  }

  /** A number for what can be more or less, in base units; else a text, a Boolean, a list. */
  Object of(Object fact) {
    Object value = fact;
    for (Method step : steps) {
      try {
        value =
            Modifier.isStatic(step.getModifiers()) ? step.invoke(null, value) : step.invoke(value);
      } catch (InvocationTargetException e) {
        if (e.getCause() instanceof RuntimeException thrown) {
          throw thrown;
        }
        if (e.getCause() instanceof Error thrown) {
          throw thrown;
        }
        throw new IllegalStateException(e.getCause());
      } catch (IllegalAccessException e) {
        throw new IllegalStateException(e);
      }
    }
    return value instanceof Number number ? (Object) number.doubleValue() : value;
  }

  /** The name that rules say it by in braces. */
  String name() {
    return steps.get(0).getName();
  }

  /** True for what can be added up, and be greatest. */
  boolean isAmount() {
    return kind.isAmount();
  }

  /** As a rule's writer would ask for it. */
  String example() {
    return known.isPresent() && kind == Kind.NAME
        ? "“" + known.get().names().get(0) + "”"
        : kind.example();
  }

  /** The same with how it may be asked for. */
  String exampleOfAsking() {
    return "whose "
        + words
        + (many ? " include " : kind.isOrdered() ? " is more than " : " is ")
        + example();
  }

  Parsed<Object> read(String text) {
    return kind.isText() ? Kind.word(text, known) : kind.read(text);
  }

  /** True if both can be compared. */
  boolean goesWith(Value other) {
    return kind.isOrdered() == other.kind.isOrdered()
        && (!kind.isOrdered()
            || kind == other.kind
            || kind == Kind.NUMBER
            || other.kind == Kind.NUMBER)
        && (kind == Kind.ANSWER) == (other.kind == Kind.ANSWER);
  }

  /** True if a thing has something in common with another one by this value. */
  boolean shared(Object mine, Object theirs) {
    if (mine instanceof Collection<?> many) {
      return theirs instanceof Collection<?> others
          ? many.stream().anyMatch(others::contains)
          : many.contains(theirs);
    }
    return theirs instanceof Collection<?> others
        ? others.contains(mine)
        : How.IS.holds(mine, theirs, kind);
  }
}
