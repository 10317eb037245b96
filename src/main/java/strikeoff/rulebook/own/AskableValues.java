package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import strikeoff.day.Moment;
import strikeoff.plan.Step;
import strikeoff.speech.Speakers;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.units.Range;

/** The values that facts have, as sentences ask for them and messages say them. */
final class AskableValues {

  /** What is no value. */
  private static final Set<String> UNSAYABLE =
      Set.of("path", "related", "marks", "doing", "hashCode", "toString", "with");

  /** What can be said and not compared. */
  private static final Set<Class<?>> SAID_ONLY =
      Set.of(Moment.class, OptionalInt.class, OptionalDouble.class, Quantity.class);

  private static final String A_STEP_PERHAPS =
      Optional.class.getName() + "<" + Step.class.getName() + ">";

  private static final ClassValue<Map<String, Value>> BY_WORDS =
      new ClassValue<>() {
        @Override
        protected Map<String, Value> computeValue(Class<?> type) {
          Map<String, Value> values = new TreeMap<>();
          for (Method method : asked(type)) {
            if (!isTold(method)) {
              value(type, method).ifPresent(v -> values.put(v.words(), v));
            }
          }
          return values;
        }
      };

  private AskableValues() {}

  /** The values of a type by their words. */
  static Map<String, Value> of(Class<?> type) {
    return BY_WORDS.get(type);
  }

  /**
   * The value to which names lead, joined by dots: {@code early.ordinary}.
   *
   * @throws IllegalArgumentException if they lead to none
   */
  static Value at(Class<?> type, String names) {
    List<Method> steps = new ArrayList<>();
    Class<?> holder = type;
    String first = "";
    for (String name : names.replace("()", "").split("\\.")) {
      try {
        Method said = Speakers.said(holder).get(name);
        Method step = said == null ? holder.getMethod(name) : said;
        first = first.isEmpty() ? name : first;
        steps.add(step);
        holder = step.getReturnType();
      } catch (NoSuchMethodException e) {
        throw new IllegalArgumentException(
            holder.getSimpleName() + " has no value called " + name, e);
      }
    }
    return value(type, first, steps)
        .orElseThrow(() -> new IllegalArgumentException(names + " can't be compared"));
  }

  /**
   * Names of the values of a type that a message can say: those, points of time, and texts with
   * figures.
   */
  static Set<String> sayable(Class<?> type) {
    Set<String> names = new TreeSet<>();
    for (Method method : asked(type)) {
      if (value(type, method).isPresent()
          || isStep(method)
          || SAID_ONLY.contains(method.getReturnType())) {
        names.add(method.getName());
      }
    }
    return names;
  }

  /** The words of those that can only be said: texts with figures, and steps of the run. */
  static List<String> told(Class<?> type) {
    return asked(type).stream()
        .filter(method -> isStep(method) || isTold(method) && value(type, method).isPresent())
        .map(method -> words(method.getName()))
        .distinct()
        .sorted()
        .toList();
  }

  /** The moment that a method of a fact gives, if it has such a one. */
  static Optional<Method> moment(Class<?> type, String name) {
    try {
      return Optional.of(type.getMethod(name)).filter(m -> m.getReturnType() == Moment.class);
    } catch (NoSuchMethodException e) {
      return Optional.empty();
    }
  }

  private static List<Method> asked(Class<?> type) {
    Map<String, Method> said = Speakers.said(type);
    Stream<Method> own =
        Arrays.stream(type.getMethods())
            .filter(method -> method.getParameterCount() == 0 || isTold(method))
            .filter(method -> !Modifier.isStatic(method.getModifiers()))
            .filter(method -> method.getDeclaringClass() != Object.class)
            .filter(method -> method.getDeclaringClass() != Record.class)
            .filter(
                method ->
                    !said.containsKey(method.getName())
                        || isTold(said.get(method.getName())) != isTold(method));
    return Stream.concat(own, said.values().stream())
        .filter(method -> !UNSAYABLE.contains(method.getName()))
        .toList();
  }

  /** True for a step of the run, which may be missing. */
  private static boolean isStep(Method method) {
    return method.getReturnType() == Step.class
        || method.getGenericReturnType().getTypeName().equals(A_STEP_PERHAPS);
  }

  /** True for a text that is made when it is known in whose units. */
  private static boolean isTold(Method method) {
    Class<?>[] given = method.getParameterTypes();
    return given.length > 0 && given[given.length - 1] == Measures.class;
  }

  private static Optional<Value> value(Class<?> fact, Method method) {
    return value(fact, method.getName(), List.of(method));
  }

  private static Optional<Value> value(Class<?> fact, String name, List<Method> steps) {
    Method last = steps.get(steps.size() - 1);
    Class<?> type = last.getReturnType();
    if (type == String.class) {
      return value(name, steps, KnownValues.list().kind(fact, name), false);
    }
    if (type == boolean.class) {
      return value(name, steps, Kind.ANSWER, false);
    }
    if (type == int.class || type == double.class) {
      return value(name, steps, number(fact, name, last), false);
    }
    if (type == Range.class) {
      return value(name, and(steps, type, "best"), Kind.NUMBER, false);
    }
    if (Quantity.class.isAssignableFrom(type)) {
      Optional<Kind> kind = Kind.of(type);
      return kind.flatMap(k -> value(name, and(steps, type, "base"), k, false));
    }
    Optional<Method> called = calledBy(type);
    if (called.isPresent()) {
      Optional<KnownWords> known =
          type.isEnum() ? Optional.of(KnownWords.of(type)) : Optional.empty();
      Kind kind = type.isEnum() ? Kind.NAME : KnownValues.list().kind(fact, name);
      List<Method> all = and(steps, called.get());
      return Optional.of(new Value(words(name), access(all), kind, known, false, all));
    }
    boolean texts =
        Collection.class.isAssignableFrom(type)
            && last.getGenericReturnType().getTypeName().endsWith("<java.lang.String>");
    return texts ? value(name, steps, KnownValues.list().kind(fact, name), true) : Optional.empty();
  }

  /** What kind of amount a number is: that of a quantity whose base it is, a clock's, or none. */
  private static Kind number(Class<?> fact, String name, Method last) {
    return Kind.of(last.getDeclaringClass())
        .orElse(KnownValues.list().kind(fact, name) == Kind.CLOCK ? Kind.CLOCK : Kind.NUMBER);
  }

  private static Optional<Value> value(String name, List<Method> steps, Kind kind, boolean many) {
    return Optional.of(new Value(words(name), access(steps), kind, kind.known(), many, steps));
  }

  private static String access(List<Method> steps) {
    return String.join(".", steps.stream().map(Method::getName).toList());
  }

  private static List<Method> and(List<Method> steps, Class<?> type, String name) {
    try {
      return and(steps, type.getMethod(name));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Method> and(List<Method> steps, Method last) {
    List<Method> all = new ArrayList<>(steps);
    all.add(last);
    return all;
  }

  /** The text by which a kind of thing that the program tells apart is called. */
  static Object called(Enum<?> one) {
    Method text = has(one.getDeclaringClass(), "text").orElseThrow();
    return new Value("", "", Kind.NAME, Optional.empty(), false, List.of(text)).of(one);
  }

  /**
   * How something of the trade tells its name: a kind of thing by its text, a thing by its name.
   */
  private static Optional<Method> calledBy(Class<?> type) {
    if (type.isEnum()) {
      return has(type, "text");
    }
    return type.isRecord() && type.getRecordComponents()[0].getName().equals("name")
        ? has(type, "name")
        : Optional.empty();
  }

  private static Optional<Method> has(Class<?> type, String name) {
    return asked(type).stream()
        .filter(m -> m.getName().equals(name) && !isTold(m))
        .filter(m -> m.getReturnType() == String.class)
        .findFirst();
  }

  /** As {@code frame length} for {@code frameLength}. */
  static String words(String name) {
    return name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
