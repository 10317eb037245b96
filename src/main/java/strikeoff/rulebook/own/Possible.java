package strikeoff.rulebook.own;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a fact can be all that a rule asks of it. A rule that asks for two things of which only
 * one can be so never fires, and its writer takes that for plans without faults.
 */
final class Possible {

  private static final Pattern ONE =
      Pattern.compile(
          "\\s*([\\w.()]+)\\s+(==|!=|>=|<=|>|<|not contains|contains)\\s+"
              + "(\"(?:[^\"\\\\]|\\\\.)*\"|true|false|-?[0-9.]+)\\s*(?:,|$)");

  private final Class<?> fact;
  private final Map<String, Asked> asked = new LinkedHashMap<>();

  private Possible(Class<?> fact) {
    this.fact = fact;
  }

  /** What is asked of one value. */
  private static final class Asked {
    private double least = Double.NEGATIVE_INFINITY;
    private double most = Double.POSITIVE_INFINITY;
    private boolean aboveLeast;
    private boolean belowMost;
    private final Set<String> is = new LinkedHashSet<>();
    private final Set<String> isNot = new LinkedHashSet<>();
    private final Set<String> holds = new LinkedHashSet<>();
    private final Set<String> lacks = new LinkedHashSet<>();

    private void atLeast(double value, boolean above) {
      if (value > least || value == least && above) {
        least = value;
        aboveLeast = above;
      }
    }

    private void atMost(double value, boolean below) {
      if (value < most || value == most && below) {
        most = value;
        belowMost = below;
      }
    }

    private boolean possible() {
      return is.size() < 2
          && is.stream().noneMatch(isNot::contains)
          && holds.stream().noneMatch(lacks::contains)
          && (least < most || least == most && !aboveLeast && !belowMost);
    }
  }

  /**
   * The value of a fact that can't be as asked, in words; empty if all can be, or if a constraint
   * has a form that isn't known here.
   */
  static Optional<String> impossible(Class<?> fact, List<String> constraints) {
    Possible possible = new Possible(fact);
    List<String> all = new ArrayList<>();
    for (String several : constraints) {
      for (String one : single(several)) {
        all.add(one);
        all.addAll(KnownValues.list().with(fact, one));
      }
    }
    all.forEach(possible::add);
    return possible.asked.entrySet().stream()
        .filter(e -> !e.getValue().possible())
        .map(e -> AskableValues.words(property(e.getKey())))
        .findFirst();
  }

  /** The constraints that a sentence stands for, each alone; none if one is of another form. */
  static List<String> single(String several) {
    List<String> all = new ArrayList<>();
    Matcher one = ONE.matcher(several);
    int from = 0;
    while (from < several.length() && one.find(from) && one.start() == from) {
      all.add(one.group(1) + " " + one.group(2) + " " + one.group(3));
      from = one.end();
    }
    return from == several.length() ? all : List.of();
  }

  private void add(String constraint) {
    Matcher parts = ONE.matcher(constraint);
    if (!parts.matches()) {
      return;
    }
    String access = property(parts.group(1));
    String value = parts.group(3);
    Asked of = asked.computeIfAbsent(access, a -> bounded(a));
    boolean figure = value.matches("-?[0-9.]+");
    switch (parts.group(2)) {
      case "==" -> {
        of.is.add(value);
        if (figure) {
          double number = Double.parseDouble(value);
          of.atLeast(number, isWhole(access) && number != Math.rint(number));
          of.atMost(number, false);
        }
      }
      case "!=" -> {
        of.isNot.add(value);
        if (value.equals("true") || value.equals("false")) {
          of.is.add(value.equals("true") ? "false" : "true");
        }
      }
      case "contains" -> of.holds.add(value);
      case "not contains" -> of.lacks.add(value);
      case ">" -> {
        double number = Double.parseDouble(value);
        of.atLeast(isWhole(access) ? Math.floor(number) + 1 : number, !isWhole(access));
      }
      case ">=" -> {
        double number = Double.parseDouble(value);
        of.atLeast(isWhole(access) ? Math.ceil(number) : number, false);
      }
      case "<" -> {
        double number = Double.parseDouble(value);
        of.atMost(isWhole(access) ? Math.ceil(number) - 1 : number, !isWhole(access));
      }
      default -> {
        double number = Double.parseDouble(value);
        of.atMost(isWhole(access) ? Math.floor(number) : number, false);
      }
    }
  }

  private Asked bounded(String property) {
    Asked fresh = new Asked();
    if (isWhole(property)) {
      // Whole numbers of facts are counts, or numbers from 1.
      fresh.atLeast(0, false);
    }
    KnownValues.list().most(fact, property).ifPresent(most -> fresh.atMost(most, false));
    return fresh;
  }

  private boolean isWhole(String property) {
    try {
      Method method = fact.getMethod(property);
      return method.getReturnType() == int.class;
    } catch (NoSuchMethodException e) {
      return false;
    }
  }

  private static String property(String access) {
    return access.replaceAll("[.(].*", "");
  }
}
