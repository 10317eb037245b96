package strikeoff.findings;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.speech.Speakers;
import strikeoff.units.Measures;

/**
 * Reads the values of facts by name: record components, methods without parameters, and methods
 * that are only given the units to tell figures in. What its speakers say of a fact is told before
 * what it has itself.
 */
final class FactValues {

  private static final Set<String> OF_EVERY_RECORD = Set.of("hashCode", "toString");

  private static final ClassValue<Map<String, Method>> METHODS =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
          Map<String, Method> byName = new TreeMap<>();
          for (Method method : type.getMethods()) {
            if (isValue(method)
                && !Modifier.isStatic(method.getModifiers())
                && method.getReturnType() != void.class
                && method.getDeclaringClass() != Object.class
                && !OF_EVERY_RECORD.contains(method.getName())) {
              // Of a method and its bridge, the one with the narrower type tells more.
              byName.merge(method.getName(), method, (a, b) -> tellsMore(b, a) ? b : a);
            }
          }
          byName.putAll(Speakers.said(type));
          return byName;
        }
      };

  private FactValues() {}

  private static boolean isValue(Method method) {
    return method.getParameterCount() == 0
        || method.getParameterCount() == 1 && method.getParameterTypes()[0] == Measures.class;
  }

  /** What is told in the plan's units goes before what is always told in the same ones. */
  private static boolean tellsMore(Method one, Method other) {
    return one.getParameterCount() != other.getParameterCount()
        ? one.getParameterCount() > other.getParameterCount()
        : other.getReturnType().isAssignableFrom(one.getReturnType());
  }

  static boolean has(Class<?> type, String name) {
    return METHODS.get(type).containsKey(name);
  }

  /** Tells whether a dotted name leads on from the type, by declared types. */
  static boolean canFollow(Class<?> type, String dotted) {
    Class<?> at = type;
    for (String name : dotted.split("\\.", -1)) {
      Method method = METHODS.get(at).get(name);
      if (method == null) {
        return false;
      }
      at = method.getReturnType();
    }
    return true;
  }

  /**
   * The value that a dotted name leads to.
   *
   * @throws IllegalArgumentException if it leads nowhere or a method on the way fails
   */
  static Object follow(Object from, String dotted, Measures units) {
    Object at = from;
    for (String name : dotted.split("\\.", -1)) {
      Method method = at == null ? null : METHODS.get(at.getClass()).get(name);
      if (method == null) {
        throw new IllegalArgumentException("{" + dotted + "}: nothing is called " + name);
      }
      at = call(method, at, dotted, units);
    }
    return at;
  }

  static String firstName(String dotted) {
    int dot = dotted.indexOf('.');
    return dot < 0 ? dotted : dotted.substring(0, dot);
  }

  static String lastName(String dotted) {
    return dotted.substring(dotted.lastIndexOf('.') + 1);
  }

  private static Object call(Method method, Object on, String dotted, Measures units) {
    try {
      if (Modifier.isStatic(method.getModifiers())) {
        return Speakers.inUnits(method) ? method.invoke(null, on, units) : method.invoke(null, on);
      }
      return method.getParameterCount() == 0 ? method.invoke(on) : method.invoke(on, units);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException("{" + dotted + "} failed: " + e.getCause(), e);
    } catch (IllegalAccessException e) {
      throw new IllegalArgumentException("{" + dotted + "} is not public", e);
    }
  }
}
