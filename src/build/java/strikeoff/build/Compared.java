package strikeoff.build;

import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;

/**
 * Comparators as {@link Comparator} and {@link Map.Entry} make them, but of plain classes: those of
 * the JDK are lambdas that can be written to a stream, which no archive of classes keeps. A jar
 * that is rewritten gets this class and calls it, so names and parameters are those of the JDK.
 */
public final class Compared {

  private Compared() {}

  public static <T, U> Comparator<T> comparing(
      Function<? super T, ? extends U> key, Comparator<? super U> order) {
    Objects.requireNonNull(key);
    Objects.requireNonNull(order);
    return (a, b) -> order.compare(key.apply(a), key.apply(b));
  }

  public static <T, U extends Comparable<? super U>> Comparator<T> comparing(
      Function<? super T, ? extends U> key) {
    Objects.requireNonNull(key);
    return (a, b) -> key.apply(a).compareTo(key.apply(b));
  }

  public static <T> Comparator<T> comparingInt(ToIntFunction<? super T> key) {
    Objects.requireNonNull(key);
    return (a, b) -> Integer.compare(key.applyAsInt(a), key.applyAsInt(b));
  }

  public static <T> Comparator<T> comparingLong(ToLongFunction<? super T> key) {
    Objects.requireNonNull(key);
    return (a, b) -> Long.compare(key.applyAsLong(a), key.applyAsLong(b));
  }

  public static <T> Comparator<T> comparingDouble(ToDoubleFunction<? super T> key) {
    Objects.requireNonNull(key);
    return (a, b) -> Double.compare(key.applyAsDouble(a), key.applyAsDouble(b));
  }

  public static <T> Comparator<T> thenComparing(Comparator<T> first, Comparator<? super T> second) {
    // A class of its own may compare in another way; a lambda can't.
    if (!first.getClass().isSynthetic()) {
      return first.thenComparing(second);
    }
    Objects.requireNonNull(second);
    return (a, b) -> {
      int order = first.compare(a, b);
      return order != 0 ? order : second.compare(a, b);
    };
  }

  public static <T, U> Comparator<T> thenComparing(
      Comparator<T> first, Function<? super T, ? extends U> key, Comparator<? super U> order) {
    return thenComparing(first, comparing(key, order));
  }

  public static <T, U extends Comparable<? super U>> Comparator<T> thenComparing(
      Comparator<T> first, Function<? super T, ? extends U> key) {
    return thenComparing(first, comparing(key));
  }

  public static <T> Comparator<T> thenComparingInt(
      Comparator<T> first, ToIntFunction<? super T> key) {
    return thenComparing(first, comparingInt(key));
  }

  public static <T> Comparator<T> thenComparingLong(
      Comparator<T> first, ToLongFunction<? super T> key) {
    return thenComparing(first, comparingLong(key));
  }

  public static <T> Comparator<T> thenComparingDouble(
      Comparator<T> first, ToDoubleFunction<? super T> key) {
    return thenComparing(first, comparingDouble(key));
  }

  public static <K extends Comparable<? super K>, V> Comparator<Map.Entry<K, V>> comparingByKey() {
    return (a, b) -> a.getKey().compareTo(b.getKey());
  }

  public static <K, V extends Comparable<? super V>>
      Comparator<Map.Entry<K, V>> comparingByValue() {
    return (a, b) -> a.getValue().compareTo(b.getValue());
  }

  public static <K, V> Comparator<Map.Entry<K, V>> comparingByKey(Comparator<? super K> order) {
    Objects.requireNonNull(order);
    return (a, b) -> order.compare(a.getKey(), b.getKey());
  }

  public static <K, V> Comparator<Map.Entry<K, V>> comparingByValue(Comparator<? super V> order) {
    Objects.requireNonNull(order);
    return (a, b) -> order.compare(a.getValue(), b.getValue());
  }
}
