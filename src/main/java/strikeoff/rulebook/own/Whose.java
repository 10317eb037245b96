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
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Evidence;
import strikeoff.units.Parsed;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/**
 * Sentences that no file lists, since every value of every fact has them: {@code whose pitch is
 * less than 30 cm}, {@code whose pastes include “rust”}.
 */
final class Whose {

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

  private Whose() {}

  /**
   * A value of a fact that sentences can name.
   *
   * @param words its name in words
   * @param access how the engine gets it, to be compared
   * @param many true for a list, of which one thing is asked
   */
  record Value(String words, String access, Kind kind, boolean many) {}

  /** The values of a type by their words. */
  static Map<String, Value> values(Class<?> type) {
    Map<String, Value> values = new TreeMap<>();
    for (Method method : type.getMethods()) {
      if (method.getParameterCount() > 0
          || Modifier.isStatic(method.getModifiers())
          || method.getDeclaringClass() == Object.class
          || method.getDeclaringClass() == Record.class
          || UNSAYABLE.contains(method.getName())) {
        continue;
      }
      value(method).ifPresent(v -> values.put(v.words(), v));
    }
    return values;
  }

  private static Optional<Value> value(Method method) {
    Class<?> type = method.getReturnType();
    String name = method.getName();
    String words = words(name);
    if (type == String.class) {
      return Optional.of(new Value(words, name, Kind.NAME, false));
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
      return Optional.of(new Value(words, name + "()." + called.get() + "()", Kind.NAME, false));
    }
    boolean texts =
        Collection.class.isAssignableFrom(type)
            && method.getGenericReturnType().getTypeName().endsWith("<java.lang.String>");
    return texts ? Optional.of(new Value(words, name, Kind.NAME, true)) : Optional.empty();
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
    boolean ordered = value.kind() != Kind.NAME && value.kind() != Kind.ANSWER;
    if (asksMany != value.many() || asksMore && !ordered) {
      return Optional.of(
          Parsed.refused(
              Script.quoted(value.words())
                  + " can't be asked so; write “whose "
                  + value.words()
                  + (value.many() ? " include " : ordered ? " is more than " : " is ")
                  + value.kind().example()
                  + "”"));
    }
    if (value.kind() == Kind.NAME && !form.group(3).matches(Kind.NAME.regex())) {
      // It would take all that follows into the name: “reeds” and whose mesh is 43/cm.
      return Optional.empty();
    }
    return Optional.of(
        value.kind().read(form.group(3)).map(v -> value.access() + " " + operator + " " + v));
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
                    + (v.many()
                        ? " include "
                        : v.kind() == Kind.NAME || v.kind() == Kind.ANSWER
                            ? " is "
                            : " is more than ")
                    + v.kind().example())
        .toList();
  }
}
