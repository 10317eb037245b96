package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.plan.Assumption;
import strikeoff.policy.Default;
import strikeoff.policy.Defaults;
import strikeoff.policy.Policy;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.Reading;

/** Fills in what a plan leaves open, and keeps a record of it. */
final class Assumptions {

  private static final Position NOWHERE = new Position(1, 1);

  private final Policy policy;
  private final List<Open> list = new ArrayList<>();

  /** An assumption before it is known in whose units it is told. */
  private record Open(
      PlanPath path, String words, Function<Measures, String> shown, String source) {}

  Assumptions(Policy policy) {
    this.policy = policy;
  }

  /** What plans are filled in from. */
  Defaults standard() {
    return policy.assumed();
  }

  /**
   * The plan's value, or the policy's default.
   *
   * @param words what it is, in the trade's words
   */
  <T> T or(Fields f, String key, Expected<T> expected, Default<T> standard, String words) {
    if (f.has(key)) {
      return f.required(key, expected);
    }
    assume(f.path().key(key), words, standard);
    return standard.value();
  }

  /** The same for words, which are read as those of a plan are. */
  <T> T orWords(
      Fields f, String key, Expected<T> expected, Default<String> standard, String words) {
    if (f.has(key)) {
      return f.required(key, expected);
    }
    assume(f.path().key(key), words, standard);
    Node node = new Node.Scalar(standard.value(), NOWHERE, NOWHERE);
    return expected
        .read(new Item(node, new PlanPath(standard.name()), NOWHERE), new Reading())
        .orElseThrow(() -> new IllegalStateException("the policy's default is wrong: " + standard));
  }

  /** The plan's value, or one that follows from other parts of the plan. */
  <T> T orDerived(
      Fields f,
      String key,
      Expected<T> expected,
      T derived,
      Function<Measures, String> shown,
      String words,
      String why) {
    if (f.has(key)) {
      return f.required(key, expected);
    }
    list.add(new Open(f.path().key(key), words, shown, why));
    return derived;
  }

  /** Something that the studio's stock gave. */
  void taken(Assumption assumption) {
    list.add(
        new Open(
            assumption.path(), assumption.name(), u -> assumption.value(), assumption.source()));
  }

  void derived(PlanPath path, String words, String shown, String why) {
    list.add(new Open(path, words, u -> shown, why));
  }

  /** Records that a default was taken. */
  void assume(PlanPath path, String words, Default<?> standard) {
    list.add(new Open(path, words, u -> shown(standard, u), standard.source()));
  }

  /**
   * A default as the policy writes it, or in other units if figures of its kind are told in them.
   */
  private static String shown(Default<?> standard, Measures units) {
    return standard.value() instanceof Quantity q && !q.text(units).equals(q.text())
        ? q.text(units)
        : standard.text();
  }

  /** The assumptions, with those that units of several meanings gave rise to. */
  List<Assumption> all(Reading reading, Measures units) {
    List<Assumption> all = new ArrayList<>();
    for (Open one : list) {
      all.add(new Assumption(one.path(), one.words(), one.shown().apply(units), one.source()));
    }
    for (Reading.Note n : reading.notes()) {
      all.add(new Assumption(n.path(), "what is meant by " + n.written(), n.words(), "the plan"));
    }
    return all;
  }
}
