package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.plan.Assumption;
import strikeoff.policy.Default;
import strikeoff.policy.Policy;
import strikeoff.units.Measures;
import strikeoff.units.Quantities;
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

  /**
   * The plan's value, or the policy's default of that name.
   *
   * @param words what it is, in the trade's words
   */
  <T> T or(Fields f, String key, Expected<T> expected, String defaultName, String words) {
    if (f.has(key)) {
      return f.required(key, expected);
    }
    Default standard = standard(defaultName);
    assume(f.path().key(key), words, standard);
    return value(standard, expected);
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

  /** A default's value, without a record of it. */
  <T> T value(Default standard, Expected<T> expected) {
    Reading apart = new Reading();
    Node node = new Node.Scalar(standard.value(), NOWHERE, NOWHERE);
    return expected
        .read(new Item(node, new PlanPath(standard.name()), NOWHERE), apart)
        .orElseThrow(() -> new IllegalStateException("the policy's default is wrong: " + standard));
  }

  void assume(PlanPath path, String words, Default standard) {
    list.add(new Open(path, words, u -> shown(standard.value(), u), standard.source()));
  }

  /**
   * A default as the policy writes it, or in other units if figures of its kind are told in them.
   */
  private static String shown(String value, Measures units) {
    if (units.allMetric()) {
      return value; // as the policy writes it, and need not be read for that
    }
    return Quantities.parseAny(value)
        .toOptional()
        .filter(q -> !q.text(units).equals(q.text()))
        .map(q -> q.text(units))
        .orElse(value);
  }

  Default standard(String name) {
    Default standard = policy.defaults().get(name);
    if (standard == null) {
      throw new IllegalStateException("the policy has no default " + name);
    }
    return standard;
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
