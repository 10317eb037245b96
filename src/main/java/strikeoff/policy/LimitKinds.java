package strikeoff.policy;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes the limits that derivations read out of all limits. A component of {@link Limits} says
 * which limit it is by its name, and of what kind that has to be by its type.
 */
public final class LimitKinds {

  private static final Map<String, Class<? extends Record>> SUBJECTS = subjects();

  private static Map<String, Class<? extends Record>> subjects() {
    Map<String, Class<? extends Record>> subjects = new LinkedHashMap<>();
    for (RecordComponent subject : Limits.class.getRecordComponents()) {
      subjects.put(subject.getName(), subject.getType().asSubclass(Record.class));
    }
    return subjects;
  }

  /** Names of the limits that are read, subject by subject, with the type of each. */
  private static final Map<String, Class<?>> KINDS = kinds();

  private static Map<String, Class<?>> kinds() {
    Map<String, Class<?>> kinds = new LinkedHashMap<>();
    SUBJECTS.forEach(
        (subject, type) -> {
          for (RecordComponent limit : type.getRecordComponents()) {
            kinds.put(name(subject, limit.getName()), limit.getType());
          }
        });
    return Collections.unmodifiableMap(kinds);
  }

  private LimitKinds() {}

  /**
   * The limits that derivations read.
   *
   * @throws IllegalArgumentException if one is missing or of another kind, naming each
   */
  static Limits of(Map<String, Limit> limits) {
    List<String> faults = new ArrayList<>();
    SUBJECTS.keySet().forEach(subject -> faults.addAll(missing(subject, limits)));
    limits.values().forEach(limit -> fault(limit).ifPresent(faults::add));
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    List<Object> subjects = new ArrayList<>();
    SUBJECTS.forEach((name, type) -> subjects.add(made(type, values(name, type, limits))));
    return made(Limits.class, subjects);
  }

  /** The names of all limits that derivations read. */
  public static Set<String> names() {
    return KINDS.keySet();
  }

  /** What a subject lacks that derivations read, in words. */
  public static List<String> missing(String subject, Map<String, Limit> limits) {
    return KINDS.keySet().stream()
        .filter(name -> name.startsWith(subject + "/") && !limits.containsKey(name))
        .map(name -> "the limit " + name + " is missing, which a derivation reads")
        .toList();
  }

  /** What is wrong with the kind of a limit's value, in words. */
  public static Optional<String> fault(Limit limit) {
    Class<?> kind = KINDS.get(limit.name());
    return kind == null || kind == Limit.class || kind.isInstance(limit.value())
        ? Optional.empty()
        : Optional.of(
            limit.name()
                + " is a "
                + kind.getSimpleName().toLowerCase(Locale.ROOT)
                + " to those who read it, and "
                + limit.value().text()
                + " is none");
  }

  private static List<Object> values(
      String subject, Class<? extends Record> type, Map<String, Limit> limits) {
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Limit limit = limits.get(name(subject, component.getName()));
      values.add(component.getType() == Limit.class ? limit : limit.value());
    }
    return values;
  }

  /** {@code sideMargin} of {@code screens} is {@code screens/side-margin}. */
  private static String name(String subject, String component) {
    StringBuilder name = new StringBuilder(subject).append('/');
    for (char letter : component.toCharArray()) {
      if (Character.isUpperCase(letter)) {
        name.append('-');
      }
      name.append(Character.toLowerCase(letter));
    }
    return name.toString();
  }

  /** A record of its components in their order. */
  static <R extends Record> R made(Class<R> type, List<Object> values) {
    Constructor<?> canonical = type.getDeclaredConstructors()[0];
    try {
      return type.cast(canonical.newInstance(values.toArray()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " has another constructor than its components'", e);
    }
  }
}
