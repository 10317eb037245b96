package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.plan.Assumption;
import strikeoff.yaml.Node;

/**
 * A plan's document with what it takes from the studio's stock put in.
 *
 * @param root the document
 * @param taken a record of everything that was taken
 * @param places where in the plan the things are named that it doesn't describe itself
 * @param films those that were taken, by the separation
 */
record Stocked(
    Node root,
    List<Assumption> taken,
    Map<PlanPath, Node> places,
    Map<PlanPath, Stock.Film> films) {

  static Stocked of(Node root, Stock stock) {
    if (stock.isEmpty() || !(root instanceof Node.Mapping plan)) {
      return new Stocked(root, List.of(), Map.of(), Map.of());
    }
    Taking taking = new Taking(plan);
    stock.places().forEach(taking::place);
    taking.named("screens", "screen", stock.screens());
    taking.named("pastes", "paste", stock.pastes());
    taking.films(stock.films());
    return new Stocked(
        new Node.Mapping(taking.entries, root.at(), root.end()),
        List.copyOf(taking.taken),
        taking.places,
        taking.films);
  }

  /** Puts one thing after the other in. */
  private static final class Taking {

    private final Map<String, Node.Entry> entries;
    private final Position top;
    private final List<Assumption> taken = new ArrayList<>();
    private final Map<PlanPath, Node> places = new LinkedHashMap<>();
    private final Map<PlanPath, Stock.Film> films = new LinkedHashMap<>();

    Taking(Node.Mapping plan) {
      entries = new LinkedHashMap<>(plan.entries());
      top = plan.at();
    }

    /** A section that the plan leaves out, or keys of it. */
    void place(String name, Stock.Held held) {
      Node.Entry written = entries.get(name);
      PlanPath path = new PlanPath(name);
      if (written == null) {
        entries.put(name, new Node.Entry(name, at(held.node(), top), top));
        note(path, held);
      } else if (written.value() instanceof Node.Mapping own
          && held.node() instanceof Node.Mapping) {
        entries.put(
            name, new Node.Entry(name, filled(own, held, path, written.at()), written.at()));
      }
    }

    /** Screens or pastes that the plan names without describing them, or not wholly. */
    void named(String section, String key, Map<String, Stock.Held> stock) {
      Map<String, Node.Entry> own = new LinkedHashMap<>();
      Node.Entry written = entries.get(section);
      if (written != null) {
        if (!(written.value() instanceof Node.Mapping mapping)) {
          return;
        }
        mapping.entries().forEach((name, e) -> own.put(name, completed(section, e, stock)));
      }
      Map<String, Node> uses = new LinkedHashMap<>();
      designs(key, uses);
      if (section.equals("pastes")) {
        mixes(uses);
      }
      uses.forEach(
          (name, use) -> {
            Position at = use.at();
            Stock.Held held = stock.get(name);
            if (held != null && !own.containsKey(name)) {
              PlanPath path = new PlanPath(section).key(name);
              own.put(name, new Node.Entry(name, at(held.node(), at), at));
              places.put(path, use);
              note(path, held);
            }
          });
      if (!own.isEmpty()) {
        Position at = written == null ? top : written.at();
        entries.put(section, new Node.Entry(section, new Node.Mapping(own, at, at), at));
      }
    }

    /** What separations that name a film say of it, and don't say otherwise themselves. */
    void films(Map<String, Stock.Film> stock) {
      if (stock.isEmpty()) {
        return;
      }
      PlanPath path = new PlanPath("designs");
      within(entries, "designs", all -> each(all, path, (d, p) -> filmed(d, p, stock)));
    }

    private Node filmed(Node design, PlanPath path, Map<String, Stock.Film> stock) {
      if (!(design instanceof Node.Mapping m)) {
        return design;
      }
      Map<String, Node.Entry> keys = new LinkedHashMap<>(m.entries());
      within(
          keys,
          "separations",
          all -> {
            if (!(all instanceof Node.Sequence list)) {
              return all;
            }
            List<Node> items = new ArrayList<>();
            for (Node one : list.items()) {
              PlanPath at = path.key("separations").item(items.size());
              items.add(one instanceof Node.Mapping s ? film(s, at, stock) : one);
            }
            return new Node.Sequence(items, list.at(), list.end());
          });
      return new Node.Mapping(keys, m.again(), m.whole(), m.at(), m.end());
    }

    private Node film(Node.Mapping separation, PlanPath path, Map<String, Stock.Film> stock) {
      Node.Entry use = separation.entries().get("film");
      Stock.Film film =
          use != null && use.value() instanceof Node.Scalar s ? stock.get(s.text()) : null;
      if (film == null
          || separation.entries().containsKey("artwork")
          || !(film.held().node() instanceof Node.Mapping keys)) {
        return separation;
      }
      Map<String, Node.Entry> all = new LinkedHashMap<>(separation.entries());
      Position at = use.value().at();
      for (Node.Entry e : keys.entries().values()) {
        all.putIfAbsent(e.key(), new Node.Entry(e.key(), at(e.value(), at), at));
        places.put(path.key(e.key()), use.value());
      }
      films.put(path, film);
      note(path.key("film"), film.held());
      return new Node.Mapping(
          all, separation.again(), separation.whole(), separation.at(), separation.end());
    }

    private static void within(
        Map<String, Node.Entry> entries, String key, UnaryOperator<Node> change) {
      entries.computeIfPresent(
          key, (k, e) -> new Node.Entry(e.key(), change.apply(e.value()), e.at()));
    }

    private static Node each(Node all, PlanPath path, BiFunction<Node, PlanPath, Node> change) {
      if (!(all instanceof Node.Mapping m)) {
        return all;
      }
      Map<String, Node.Entry> changed = new LinkedHashMap<>();
      m.entries()
          .forEach(
              (name, e) ->
                  changed.put(
                      name,
                      new Node.Entry(e.key(), change.apply(e.value(), path.key(name)), e.at())));
      return new Node.Mapping(changed, m.again(), m.whole(), m.at(), m.end());
    }

    private Node.Entry completed(String section, Node.Entry entry, Map<String, Stock.Held> stock) {
      Stock.Held held = stock.get(entry.key());
      return held != null
              && held.node() instanceof Node.Mapping
              && entry.value() instanceof Node.Mapping own
          ? new Node.Entry(
              entry.key(),
              filled(own, held, new PlanPath(section).key(entry.key()), entry.at()),
              entry.at())
          : entry;
    }

    private Node filled(Node.Mapping own, Stock.Held held, PlanPath path, Position at) {
      Map<String, Node.Entry> all = new LinkedHashMap<>(own.entries());
      for (Node.Entry e : ((Node.Mapping) held.node()).entries().values()) {
        if (!all.containsKey(e.key())) {
          all.put(e.key(), new Node.Entry(e.key(), at(e.value(), at), at));
          note(path.key(e.key()), new Stock.Held(e.value(), held.source()));
        }
      }
      return new Node.Mapping(all, own.at(), own.end());
    }

    private void note(PlanPath path, Stock.Held held) {
      taken.add(
          new Assumption(
              path, path.spoken() + " of the studio", words(held.node()), held.source()));
    }

    private void designs(String key, Map<String, Node> uses) {
      for (Node design : values(entries.get("designs"))) {
        if (design instanceof Node.Mapping d) {
          for (Node separation : values(d.entries().get("separations"))) {
            if (separation instanceof Node.Mapping s) {
              values(s.entries().get(key)).forEach(n -> use(n, uses));
            }
          }
        }
      }
    }

    private void mixes(Map<String, Node> uses) {
      for (Node step : values(entries.get("run"))) {
        if (step instanceof Node.Mapping s) {
          values(s.entries().get("mix")).forEach(n -> use(n, uses));
        }
      }
    }

    private static void use(Node node, Map<String, Node> uses) {
      if (node instanceof Node.Scalar s) {
        uses.putIfAbsent(s.text(), s);
      }
    }
  }

  /** What stands under an entry: the items of a list or a mapping, or the one value. */
  private static List<Node> values(Node.Entry entry) {
    if (entry == null) {
      return List.of();
    }
    if (entry.value() instanceof Node.Sequence s) {
      return s.items();
    }
    return entry.value() instanceof Node.Mapping m
        ? m.entries().values().stream().map(Node.Entry::value).toList()
        : List.of(entry.value());
  }

  /** A part of another file, as if it stood here: mistakes and findings show in the plan. */
  private static Node at(Node node, Position at) {
    if (node instanceof Node.Scalar s) {
      return new Node.Scalar(s.text(), at, at);
    }
    if (node instanceof Node.Sequence s) {
      return new Node.Sequence(s.items().stream().map(n -> at(n, at)).toList(), at, at);
    }
    if (node instanceof Node.Mapping m) {
      Map<String, Node.Entry> entries = new LinkedHashMap<>();
      m.entries().forEach((k, e) -> entries.put(k, new Node.Entry(e.key(), at(e.value(), at), at)));
      return new Node.Mapping(entries, at, at);
    }
    return new Node.Nothing(false, at);
  }

  /** As it would be written in one line. */
  private static String words(Node node) {
    if (node instanceof Node.Scalar s) {
      return s.text();
    }
    List<String> parts = new ArrayList<>();
    if (node instanceof Node.Sequence s) {
      s.items().forEach(n -> parts.add(words(n)));
    } else if (node instanceof Node.Mapping m) {
      m.entries().values().forEach(e -> parts.add(e.key() + " " + words(e.value())));
    }
    return String.join(", ", parts);
  }

  /** Names that may be used although the plan doesn't describe them. */
  static Set<String> with(Set<String> own, Map<String, Stock.Held> stock) {
    Set<String> all = new LinkedHashSet<>(own);
    all.addAll(stock.keySet());
    return all;
  }
}
