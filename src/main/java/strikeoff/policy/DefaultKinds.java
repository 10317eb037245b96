package strikeoff.policy;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;

/**
 * Takes defaults by subject out of all defaults. A component of {@link Defaults} says which default
 * it is by its name, and of what kind that has to be by its type and bounds; one that holds a map
 * takes all whose names go on from there.
 */
public final class DefaultKinds {

  /** By the whole name. */
  private static final Map<String, DefaultKind> KINDS = new LinkedHashMap<>();

  /** By what names begin with, the dot included, for those that go on with a key. */
  private static final Map<String, DefaultKind> FAMILIES = new LinkedHashMap<>();

  /** What the keys are. */
  private static final Map<String, Class<?>> KEYS = new LinkedHashMap<>();

  static {
    know(Defaults.class, "");
  }

  private DefaultKinds() {}

  private static void know(Class<?> subject, String before) {
    for (RecordComponent component : subject.getRecordComponents()) {
      String name = before + called(component);
      if (component.getType() == Default.class) {
        KINDS.put(name, kind(component, component.getGenericType()));
      } else if (component.getType() == Map.class) {
        Type[] of = ((ParameterizedType) component.getGenericType()).getActualTypeArguments();
        KEYS.put(name + ".", (Class<?>) of[0]);
        FAMILIES.put(name + ".", kind(component, of[1]));
      } else {
        know(component.getType(), name + ".");
      }
    }
  }

  private static DefaultKind kind(RecordComponent component, Type standard) {
    Type type = ((ParameterizedType) standard).getActualTypeArguments()[0];
    Optional<Defaults.Within> within =
        Optional.ofNullable(component.getAnnotation(Defaults.Within.class));
    return new DefaultKind(
        (Class<?>) type,
        within.map(Defaults.Within::least),
        within.map(Defaults.Within::most),
        component.isAnnotationPresent(Defaults.AboveZero.class));
  }

  /** {@code washScreen} is {@code wash screen}. */
  private static String called(RecordComponent component) {
    return component.isAnnotationPresent(Defaults.Named.class)
        ? component.getAnnotation(Defaults.Named.class).value()
        : component.getName().replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }

  /** What a default of that name has to be; empty if nobody reads one. */
  public static Optional<DefaultKind> kind(String name) {
    return Optional.ofNullable(KINDS.get(name))
        .or(
            () ->
                FAMILIES.keySet().stream()
                    .filter(before -> key(before, name).isPresent())
                    .findFirst()
                    .map(FAMILIES::get));
  }

  /** What no plan can do without and is not there, in words. */
  public static List<String> missing(Map<String, Default<?>> defaults) {
    return KINDS.keySet().stream()
        .filter(name -> !defaults.containsKey(name))
        .map(name -> "the default " + name + " is missing, which plans are filled in from")
        .toList();
  }

  /** What is wrong with the name or the kind of a default, in words. */
  private static Optional<String> fault(Default<?> standard) {
    Optional<DefaultKind> kind = kind(standard.name());
    return kind.isEmpty()
        ? Optional.of("nobody reads a default called " + standard.name())
        : Optional.of(standard.name() + " is " + standard.text() + ", which is not of its kind")
            .filter(words -> !kind.get().type().isInstance(standard.value()));
  }

  /**
   * The defaults by subject.
   *
   * @throws IllegalArgumentException if one is missing, of another kind or read by nobody, naming
   *     each
   */
  static Defaults of(Map<String, Default<?>> defaults) {
    List<String> faults = new ArrayList<>(missing(defaults));
    defaults.values().forEach(standard -> fault(standard).ifPresent(faults::add));
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    return (Defaults) made(Defaults.class, "", defaults);
  }

  private static Object made(Class<?> subject, String before, Map<String, Default<?>> defaults) {
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : subject.getRecordComponents()) {
      String name = before + called(component);
      values.add(
          component.getType() == Default.class
              ? defaults.get(name)
              : component.getType() == Map.class
                  ? family(name + ".", defaults)
                  : made(component.getType(), name + ".", defaults));
    }
    return LimitKinds.made(subject.asSubclass(Record.class), values);
  }

  private static Map<Object, Default<?>> family(String before, Map<String, Default<?>> defaults) {
    Map<Object, Default<?>> family = new LinkedHashMap<>();
    defaults.forEach(
        (name, standard) -> key(before, name).ifPresent(key -> family.put(key, standard)));
    return Collections.unmodifiableMap(family);
  }

  /** How a name goes on from there; empty if it doesn't, or not as it has to. */
  private static Optional<?> key(String before, String name) {
    if (!name.startsWith(before)) {
      return Optional.empty();
    }
    String key = name.substring(before.length());
    Class<?> kind = KEYS.get(before);
    return kind == String.class
        ? Optional.of(key)
        : Quantities.parse(key, kind.asSubclass(Quantity.class)).toOptional();
  }
}
