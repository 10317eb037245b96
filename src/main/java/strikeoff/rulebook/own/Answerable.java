package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the conditions of a rule that no plan can ever meet. */
final class Answerable {

  /** More than a plan can hold of anything. */
  private static final int MOST_COUNTED = 10_000;

  private Answerable() {}

  /**
   * Why a line is never met, by its number.
   *
   * @param lines each with what may hold instead of one another
   */
  static Map<Integer, String> never(List<List<Clause>> lines) {
    Map<Integer, String> never = new LinkedHashMap<>();
    Map<Class<?>, List<Asked>> together = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      Optional<String> why = Optional.empty();
      boolean all = true;
      for (Clause way : lines.get(i)) {
        Optional<String> one = never(way, lines, together);
        why = why.or(() -> one);
        all &= one.isPresent();
      }
      if (all) {
        never.put(i, why.orElseThrow());
      }
    }
    return never;
  }

  private static Optional<String> never(
      Clause clause, List<List<Clause>> lines, Map<Class<?>, List<Asked>> together) {
    List<Asked> asked = clause.everything();
    boolean only = Things.ONE_ONLY.contains(clause.type());
    if (only
        && clause.finds()
        && lines.stream().anyMatch(l -> l.size() == 1 && l.get(0) == clause)) {
      asked = together.computeIfAbsent(clause.type(), t -> new ArrayList<>());
      asked.addAll(clause.everything());
    }
    Optional<String> always =
        clause.everything().stream()
            .filter(one -> isAlways(clause.type(), one))
            .map(one -> ((Asked.Compared) one).value().words())
            .findFirst();
    if (always.isPresent()) {
      return Optional.of(
          "everything is so, and this asks for nothing: look at “" + always.get() + "”");
    }
    Optional<String> impossible = impossible(clause.type(), asked);
    if (impossible.isPresent()) {
      return Optional.of(
          "nothing can be all of this at once, so the rule would never find anything: look at “"
              + impossible.get()
              + "”");
    }
    if (clause.form() instanceof Clause.Count count) {
      return uncountable(count, only);
    }
    if (!(clause.form() instanceof Clause.None)) {
      return Optional.empty();
    }
    if (clause.asked().isEmpty() && only) {
      return Optional.of("every plan has this, so the rule would never find anything");
    }
    return lines.stream().anyMatch(other -> other.stream().allMatch(o -> denies(clause, o)))
        ? Optional.of(
            "another line asks for what must not be there by this one, so the rule would never"
                + " find anything")
        : Optional.empty();
  }

  /** Of one thing, of which perhaps one of several ways can be, all that is asked. */
  private static Optional<String> impossible(Class<?> type, List<Asked> asked) {
    List<String> plain = new ArrayList<>();
    List<Asked.Either> eithers = new ArrayList<>();
    for (Asked one : asked) {
      if (one instanceof Asked.Either either) {
        eithers.add(either);
      } else {
        plain.add(plainly(one));
      }
    }
    Optional<String> impossible = Possible.impossible(type, plain);
    for (Asked.Either either : eithers) {
      if (impossible.isPresent()) {
        break;
      }
      for (List<Asked> way : either.ways()) {
        List<String> all = new ArrayList<>(plain);
        way.forEach(one -> all.add(plainly(one)));
        impossible = Possible.impossible(type, all);
        if (impossible.isEmpty()) {
          break;
        }
      }
    }
    return impossible;
  }

  /** What isn't so can be said the other way round where a single value is asked. */
  private static String plainly(Asked asked) {
    return asked instanceof Asked.Not not
            && not.what().size() == 1
            && not.what().get(0) instanceof Asked.Compared compared
        ? compared
            .how()
            .contrary()
            .map(how -> new Asked.Compared(compared.value(), how, compared.than()).text())
            .orElse(asked.text())
        : asked.text();
  }

  /** True if the contrary of what is asked of a figure is never so. */
  private static boolean isAlways(Class<?> type, Asked asked) {
    return asked instanceof Asked.Compared compared
        && compared.how().asksMore()
        && compared.than() instanceof Than.Figure
        && Possible.impossible(type, List.of(plainly(new Asked.Not(List.of(asked))))).isPresent();
  }

  private static Optional<String> uncountable(Clause.Count count, boolean only) {
    int most = only ? 1 : MOST_COUNTED;
    int so = 0;
    for (int number = 0; number <= most; number++) {
      so += count.how().holds((double) number, count.number(), Kind.NUMBER) ? 1 : 0;
    }
    if (so == most + 1) {
      return Optional.of("there are always so many, so this asks for nothing");
    }
    if (so > 0) {
      return Optional.empty();
    }
    return Optional.of(
        only
            ? "every plan has one of this, so the rule would never find anything"
            : "there are never so many, so the rule would never find anything");
  }

  /** True if whatever the other condition finds must not be there by this one. */
  private static boolean denies(Clause absent, Clause other) {
    return other.finds()
        && other.type() == absent.type()
        && other.constraints().containsAll(absent.constraints());
  }
}
