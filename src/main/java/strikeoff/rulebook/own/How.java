package strikeoff.rulebook.own;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How something is compared. */
enum How {
  AT_LEAST(">=", List.of("is at least")),
  AT_MOST("<=", List.of("is at most")),
  MORE(">", List.of("is more than", "is greater than", "is longer than", "is later than")),
  LESS(
      "<",
      List.of(
          "is less than",
          "is fewer than",
          "is smaller than",
          "is shorter than",
          "is earlier than")),
  INCLUDE("contains", List.of("include", "includes")),
  INCLUDE_NOT("not contains", List.of("do not include", "don't include", "does not include")),
  HOLDS("holds", List.of("contains")),
  BEGINS("begins", List.of("begins with")),
  ENDS("ends", List.of("ends with")),
  IS_NOT("!=", List.of("is not", "isn't")),
  IS("==", List.of("is"));

  /** As an amount is led in. */
  private static final Map<String, How> AMOUNTS = new LinkedHashMap<>();

  static {
    AMOUNTS.put("more than", MORE);
    AMOUNTS.put("less than", LESS);
    AMOUNTS.put("fewer than", LESS);
    AMOUNTS.put("at least", AT_LEAST);
    AMOUNTS.put("at most", AT_MOST);
    AMOUNTS.put("exactly", IS);
  }

  private final String sign;
  private final List<String> words;

  How(String sign, List<String> words) {
    this.sign = sign;
    this.words = words;
  }

  /** As the vocabulary's files and what is kept of a condition write it. */
  String sign() {
    return sign;
  }

  /** After {@code whose VALUE}. */
  List<String> words() {
    return words;
  }

  static How of(String sign) {
    for (How how : values()) {
      if (how.sign.equals(sign)) {
        return how;
      }
    }
    throw new IllegalArgumentException("nothing is compared by " + sign);
  }

  /** “more than”, “at least” and so on, from a word of a line on. */
  static Optional<Got<How>> at(Tokens line, int from) {
    for (Map.Entry<String, How> amount : AMOUNTS.entrySet()) {
      String[] words = amount.getKey().split(" ");
      if (line.at(from, words)) {
        return Optional.of(new Got<>(amount.getValue(), from + words.length));
      }
    }
    return Optional.empty();
  }

  /** True if the words lead in an amount, so that others that do may stand for them. */
  static boolean isAmount(String first, String second) {
    return AMOUNTS.containsKey(first + " " + second);
  }

  /** What holds wherever this doesn't, if there is a word for it. */
  Optional<How> contrary() {
    return switch (this) {
      case MORE -> Optional.of(AT_MOST);
      case LESS -> Optional.of(AT_LEAST);
      case AT_LEAST -> Optional.of(LESS);
      case AT_MOST -> Optional.of(MORE);
      case IS -> Optional.of(IS_NOT);
      case IS_NOT -> Optional.of(IS);
      case INCLUDE -> Optional.of(INCLUDE_NOT);
      case INCLUDE_NOT -> Optional.of(INCLUDE);
      default -> Optional.empty();
    };
  }

  /** True if a list is asked for what it holds. */
  boolean asksMany() {
    return this == INCLUDE || this == INCLUDE_NOT;
  }

  /** True if the letters of a text are asked for. */
  boolean asksLetters() {
    return this == HOLDS || this == BEGINS || this == ENDS;
  }

  /** True if it asks for more or less. */
  boolean asksMore() {
    return this == MORE || this == LESS || this == AT_LEAST || this == AT_MOST;
  }

  /**
   * Compares a value of a fact with another one, both as {@link Value} gives them.
   *
   * @param kind of both, which says what is no difference
   */
  boolean holds(Object mine, Object than, Kind kind) {
    return switch (this) {
      case MORE -> compared(mine, than, kind) > 0;
      case LESS -> compared(mine, than, kind) < 0;
      case AT_LEAST -> compared(mine, than, kind) >= 0;
      case AT_MOST -> compared(mine, than, kind) <= 0;
      case IS -> same(mine, than, kind);
      case IS_NOT -> !same(mine, than, kind);
      case INCLUDE -> ((Collection<?>) mine).contains(than);
      case INCLUDE_NOT -> !((Collection<?>) mine).contains(than);
      case HOLDS -> fold(mine).contains(fold(than));
      case BEGINS -> fold(mine).startsWith(fold(than));
      case ENDS -> fold(mine).endsWith(fold(than));
    };
  }

  private static boolean same(Object a, Object b, Kind kind) {
    return a instanceof Number ? compared(a, b, kind) == 0 : a.equals(b);
  }

  private static int compared(Object a, Object b, Kind kind) {
    double first = ((Number) a).doubleValue();
    double second = ((Number) b).doubleValue();
    return Math.abs(first - second) <= kind.tolerance(first, second)
        ? 0
        : Double.compare(first, second);
  }

  private static String fold(Object text) {
    return text.toString().toLowerCase(Locale.ROOT);
  }
}
