package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Evidence;
import strikeoff.timeline.Moment;
import strikeoff.units.Measures;
import strikeoff.units.Parsed;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * Sentences that no file lists, since every value of every fact has them: {@code whose pitch is
 * less than 30 cm}, {@code whose pastes include “rust”}.
 */
final class ComparedValues {

  private static final Map<String, String> COMPARED = new LinkedHashMap<>();

  static {
    COMPARED.put("is more than", ">");
    COMPARED.put("is less than", "<");
    COMPARED.put("is at least", ">=");
    COMPARED.put("is at most", "<=");
    COMPARED.put("is not", "!=");
    COMPARED.put("is", "==");
    COMPARED.put("include", "contains");
    COMPARED.put("do not include", "not contains");
  }

  private static final Pattern FORM =
      Pattern.compile(
          "whose\\s+(.+?)\\s+(is\\s+more\\s+than|is\\s+less\\s+than|is\\s+at\\s+least|is\\s+at\\s+most"
              + "|is\\s+not|is|do\\s+not\\s+include|include)\\s+(.+)",
          Pattern.CASE_INSENSITIVE);

  /** What is no value, and the word that opens a block in the rules' language. */
  private static final Set<String> UNSAYABLE =
      Set.of("path", "related", "marks", "hashCode", "toString", "with");

  /** What can be said and not compared. */
  private static final Set<Class<?>> SAID_ONLY =
      Set.of(Moment.class, OptionalInt.class, OptionalDouble.class);

  private ComparedValues() {}

  /**
   * A value of a fact that sentences can name.
   *
   * @param words its name in words
   * @param access how the engine gets it, to be compared
   * @param many true for a list, of which one thing is asked
   */
  record Value(String words, String access, Kind kind, Optional<KnownWords> known, boolean many) {

    Value(String words, String access, Kind kind, boolean many) {
      this(words, access, kind, kind.known(), many);
    }

    /** As a rule's writer would ask for it. */
    String example() {
      return known.isPresent() && kind == Kind.NAME
          ? "“" + known.get().names().get(0) + "”"
          : kind.example();
    }

    private Parsed<String> read(String text) {
      return kind.isText() ? Kind.word(text, known) : kind.read(text);
    }
  }

  /** The values of a type by their words. */
  static Map<String, Value> values(Class<?> type) {
    Map<String, Value> values = new TreeMap<>();
    for (Method method : asked(type)) {
      if (method.getParameterCount() == 0) {
        value(type, method).ifPresent(v -> values.put(v.words(), v));
      }
    }
    return values;
  }

  /**
   * Names of the values of a type that a message can say: those, points of time, and texts with
   * figures.
   */
  static Set<String> sayable(Class<?> type) {
    Set<String> names = new TreeSet<>();
    for (Method method : asked(type)) {
      if (value(type, method).isPresent() || SAID_ONLY.contains(method.getReturnType())) {
        names.add(method.getName());
      }
    }
    return names;
  }

  /** The words of those that are texts with figures, which can't be compared. */
  static List<String> told(Class<?> type) {
    return asked(type).stream()
        .filter(method -> isTold(method) && value(type, method).isPresent())
        .map(method -> words(method.getName()))
        .sorted()
        .toList();
  }

  private static List<Method> asked(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(method -> method.getParameterCount() == 0 || isTold(method))
        .filter(method -> !Modifier.isStatic(method.getModifiers()))
        .filter(method -> method.getDeclaringClass() != Object.class)
        .filter(method -> method.getDeclaringClass() != Record.class)
        .filter(method -> !UNSAYABLE.contains(method.getName()))
        .toList();
  }

  /** True for a text that is made when it is known in whose units. */
  private static boolean isTold(Method method) {
    return Arrays.equals(method.getParameterTypes(), new Class<?>[] {Measures.class});
  }

  private static Optional<Value> value(Class<?> fact, Method method) {
    Class<?> type = method.getReturnType();
    String name = method.getName();
    String words = words(name);
    if (type == String.class) {
      return Optional.of(new Value(words, name, KnownValues.list().kind(fact, name), false));
    }
    if (type == boolean.class) {
      return Optional.of(new Value(words, name + "()", Kind.ANSWER, false));
    }
    if (type == int.class || type == double.class) {
      return Optional.of(new Value(words, name + "()", Kind.NUMBER, false));
    }
    if (type == Range.class) {
      return Optional.of(new Value(words, name + "().best()", Kind.NUMBER, false));
    }
    if (Quantity.class.isAssignableFrom(type)) {
      return Kind.of(type).map(kind -> new Value(words, name + "().base()", kind, false));
    }
    Optional<String> called = calledBy(type);
    if (called.isPresent()) {
      Optional<KnownWords> known =
          type.isEnum() ? Optional.of(KnownWords.of(type)) : Optional.empty();
      String access = name + "()." + called.get() + "()";
      Kind kind = type.isEnum() ? Kind.NAME : KnownValues.list().kind(fact, name);
      return Optional.of(new Value(words, access, kind, known, false));
    }
    boolean texts =
        Collection.class.isAssignableFrom(type)
            && method.getGenericReturnType().getTypeName().endsWith("<java.lang.String>");
    return texts
        ? Optional.of(new Value(words, name, KnownValues.list().kind(fact, name), true))
        : Optional.empty();
  }

  /**
   * How something of the trade tells its name: a kind of thing by its text, a thing by its name.
   */
  private static Optional<String> calledBy(Class<?> type) {
    if (type.isEnum()) {
      return has(type, "text");
    }
    return type.isRecord() && type.getRecordComponents()[0].getName().equals("name")
        ? has(type, "name")
        : Optional.empty();
  }

  private static Optional<String> has(Class<?> type, String method) {
    return Arrays.stream(type.getMethods())
        .filter(m -> m.getName().equals(method) && m.getParameterCount() == 0)
        .filter(m -> m.getReturnType() == String.class)
        .map(Method::getName)
        .findFirst();
  }

  /** As {@code frame length} for {@code frameLength}. */
  static String words(String name) {
    return name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
  }

  /** The condition for a text of this form; empty if it has another one. */
  static Optional<Parsed<String>> read(String text, Class<?> type) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      return Optional.empty();
    }
    Map<String, Value> values = values(type);
    Value value = values.get(form.group(1).toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
    if (value == null) {
      List<String> known = new ArrayList<>(values.keySet());
      String meant = Spelling.didYouMean(form.group(1), known);
      return Optional.of(
          Parsed.refused(
              "nothing here is called "
                  + Script.quoted(form.group(1))
                  + (meant.isEmpty() ? "; there are " + String.join(", ", known) : meant)));
    }
    String how = form.group(2).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    String operator = COMPARED.get(how);
    boolean asksMany = operator.contains("contains");
    boolean asksMore =
        !operator.contains("=") && !asksMany
            || operator.length() == 2 && !operator.equals("==") && !operator.equals("!=");
    boolean ordered = value.kind().isOrdered();
    if (asksMany != value.many() || asksMore && !ordered) {
      return Optional.of(
          Parsed.refused(
              Script.quoted(value.words())
                  + " can't be asked so; write “whose "
                  + value.words()
                  + (value.many() ? " include " : ordered ? " is more than " : " is ")
                  + value.example()
                  + "”"));
    }
    if (value.kind().isText() && !form.group(3).matches("(?iu)" + Kind.regex(value.known()))) {
      // It would take all that follows into the name: “reeds” and whose mesh is 43/cm.
      return Optional.empty();
    }
    return Optional.of(
        value.read(form.group(3)).map(v -> value.access() + " " + operator + " " + v));
  }

  /** What a writer could say instead of something that isn't known. */
  static List<String> examples(Class<?> type) {
    if (!Evidence.class.isAssignableFrom(type)) {
      return List.of();
    }
    return values(type).values().stream()
        .map(
            v ->
                "whose "
                    + v.words()
                    + (v.many() ? " include " : v.kind().isOrdered() ? " is more than " : " is ")
                    + v.example())
        .toList();
  }
}
