package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Begins;
import strikeoff.plan.Crew;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Script;
import strikeoff.units.Span;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads print steps, and finds which separations and placements they mean. */
final class PrintStepPart {

  private static final Map<String, PrintOrder> ORDERS = new LinkedHashMap<>();

  static {
    ORDERS.put("by colour", PrintOrder.BY_COLOUR);
    ORDERS.put("by station", PrintOrder.BY_STATION);
    ORDERS.put("over all", PrintOrder.OVER_ALL);
    ORDERS.put("set by set", PrintOrder.SET_BY_SET);
  }

  private final Draft draft;
  private final Map<String, Design> designs;
  private final Map<String, Arrangement> placements;
  private final Crew crew;
  private final RoomPart room;
  private final Waits waits;
  private final boolean whole;
  private final Counts counts;
  private long impressions;

  PrintStepPart(
      Draft draft,
      Map<String, Design> designs,
      Map<String, Arrangement> placements,
      Crew crew,
      RoomPart room) {
    this.draft = draft;
    this.designs = designs;
    this.placements = placements;
    this.crew = crew;
    this.room = room;
    this.waits = new Waits(room);
    // Faulty placements have stand-ins for counts; nothing is said about numbers then.
    this.whole = draft.reading().problems().none();
    this.counts = new Counts(placements);
  }

  Step print(int number, Fields f) {
    f.knows("dry between colours", "dry between neighbours", "wash between colours");
    boolean each = f.item("print").filter(i -> i.node() instanceof Node.Mapping).isPresent();
    Map<String, List<Integer>> numbers = each ? numbers(f) : Map.of();
    List<String> names = each ? List.copyOf(numbers.keySet()) : arrangements(f);
    List<Integer> only =
        f.optional("only", PlacementNumbers.list(draft.bounds().placements())).orElse(List.of());
    if (each && f.has("only")) {
      f.wrongKey("only", "each placement has its numbers after “print:” already; leave only out");
    }
    List<String> people = f.optional("by", ValueKinds.oneOrMore(person())).orElse(List.of());
    if (people.stream().distinct().count() < people.size()) {
      f.wrong("by", "one person is named twice");
    }
    PrintStep step =
        new PrintStep(
            number,
            names,
            only,
            colours(f, names),
            f.optional(
                    "order",
                    ValueKinds.word("by colour, by station, over all or set by set", ORDERS))
                .orElse(PrintOrder.BY_COLOUR),
            f.optional("every other", ValueKinds.yesNo()).orElse(false),
            f.optional("pause", QuantityKinds.quantity(Span.class)).orElse(new Span(0)),
            f.optional("dry between colours", waits.orPlain()).orElse(Wait.NONE),
            f.optional("before moving", waits.orPlain()).orElse(Wait.NONE),
            people.stream().findFirst(),
            people.stream().skip(1).toList(),
            f.optional("washes", person()),
            f.optional("dry between passes", waits.orPlain()).orElse(Wait.NONE),
            f.optional("wash between colours", ValueKinds.yesNo()).orElse(false),
            f.optional("dry between neighbours", Waits.until()).orElse(Until.NO_WAIT),
            numbers,
            f.optional("air", room.draught(f, "air")),
            StepPart.begins(f),
            f.path());
    passes(f, step);
    handsFree(f, step);
    washing(f, step);
    if (whole && f.sound("print", "only", "colours")) {
      numbers(f, step);
      bound(f, step);
    }
    return step;
  }

  private static void passes(Fields f, PrintStep step) {
    if (!f.has("dry between passes") || !f.sound("every other", "by", "begins")) {
      return;
    }
    if (!step.everyOther()) {
      f.wrong("dry between passes", "there are two passes only with every other: yes");
    } else if (step.beside()) {
      f.wrong("dry between passes", beside(step) + " make no passes to dry between; " + cure(step));
    }
  }

  /** Several who print at the same time wait film by film; a fan runs on beside them. */
  private static void handsFree(Fields f, PrintStep step) {
    if (step.air().filter(a -> a.by() == Draught.By.HAIR_DRYER).isPresent()) {
      f.wrong(
          "air",
          "whoever prints has no hand free for a hair-dryer; take a fan, or dry by a step or a wait"
              + " of its own");
    }
    boolean held =
        step.dryBetweenColours().air().filter(a -> a.by() == Draught.By.HAIR_DRYER).isPresent();
    if (held && step.beside() && f.sound("by", "begins")) {
      f.wrong(
          "dry between colours",
          beside(step)
              + " have no hand free for a hair-dryer between colours; take a fan, or "
              + cure(step));
    }
  }

  private static String beside(PrintStep step) {
    return step.also().isEmpty()
        ? "people who print beside another step"
        : "several who print at the same time";
  }

  private static String cure(PrintStep step) {
    return step.also().isEmpty()
        ? "leave out begins"
        : step.begins() == Begins.WHEN_FREE
            ? "name one person and leave out begins"
            : "name one person";
  }

  /**
   * A screen that is laid again at the next station, or by somebody else, cannot be in the sink.
   */
  private static void washing(Fields f, PrintStep step) {
    if (!step.washBetweenColours() || !f.sound("wash between colours", "order", "by", "begins")) {
      return;
    }
    if (step.order() == PrintOrder.BY_STATION) {
      f.wrong(
          "wash between colours",
          "by station every screen is laid again at the next station; print by colour");
    } else if (step.beside()) {
      f.wrong(
          "wash between colours",
          beside(step)
              + " go on without a break; "
              + cure(step)
              + (step.also().isEmpty() ? "" : ", or under washes somebody who does not print"));
    }
  }

  private Expected<String> person() {
    return ValueKinds.nameIn("a name of the crew", "person of the crew", crew.names());
  }

  /** True if one of these names a placement. */
  boolean namesAny(Set<String> names) {
    return names.stream().anyMatch(draft.names().placements()::contains);
  }

  /** Placements with numbers of their own; with none for all of them. */
  private Map<String, List<Integer>> numbers(Fields f) {
    Fields each = f.under("print", "the placements").orElseThrow();
    Set<String> known = new LinkedHashSet<>(draft.names().placements());
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    for (String name : each.names()) {
      if (known.contains(name)) {
        numbers.put(name, each.required(name, PlacementNumbers.orAll(draft.bounds().placements())));
      } else if (each.has(name)) {
        each.wrongKey(
            name,
            "no placement is called " + Script.quoted(name) + Spelling.didYouMean(name, known));
      }
    }
    each.done();
    return numbers;
  }

  private List<String> arrangements(Fields f) {
    Set<String> known = new LinkedHashSet<>(draft.names().placements());
    if (!known.isEmpty()) {
      known.add("all");
    }
    List<String> names =
        f.required(
            "print",
            ValueKinds.oneOrMore(ValueKinds.nameIn("a placement's name", "placement", known)));
    if (names.contains("all") && !placements.containsKey("all")) {
      return List.copyOf(placements.keySet());
    }
    if (names.stream().distinct().count() < names.size()) {
      f.wrong("print", "a placement is named twice in one step; print it in two steps");
    }
    return names;
  }

  private void numbers(Fields f, PrintStep step) {
    for (String name : step.arrangements()) {
      long there = counts.atMost(name);
      for (int n : step.only(name)) {
        if (n > there) {
          f.wrong(
              step.numbers().isEmpty() ? "only" : "print",
              "there is no number " + n + " of " + name + ", which has at most " + there);
          return;
        }
      }
    }
  }

  private void bound(Fields f, PrintStep step) {
    for (String name : step.arrangements()) {
      Design design = designs.get(placements.get(name).design());
      List<Integer> only = step.only(name);
      long places = only.isEmpty() ? counts.atMost(name) : only.size();
      int colours =
          step.separations().isEmpty() ? design.separations().size() : step.separations().size();
      impressions += places * colours;
    }
    if (impressions > draft.bounds().impressions()) {
      f.wrong(
          "print",
          "with this step the run comes to some "
              + impressions
              + " impressions; more than "
              + draft.bounds().impressions()
              + " cannot be checked");
    }
  }

  /** Numbers of separations, from names of pastes or screens or from numbers. */
  private List<Integer> colours(Fields f, List<String> names) {
    Optional<List<String>> named =
        f.optional(
            "colours",
            ValueKinds.oneOrMore(
                ValueKinds.text("a paste, a screen or a separation's number", 80)));
    if (named.isEmpty() || !f.sound("print")) {
      return List.of();
    }
    List<Integer> result = null;
    for (String name : names) {
      Arrangement arrangement = placements.get(name);
      Design design = arrangement == null ? null : designs.get(arrangement.design());
      if (design == null || design.separations().isEmpty()) {
        continue;
      }
      List<Integer> here = separations(f, named.get(), design);
      if (here.isEmpty()) {
        return List.of();
      }
      if (result != null && !result.equals(here)) {
        f.wrong(
            "colours",
            "these colours have other places in other designs; print the placements in"
                + " steps of their own");
        return List.of();
      }
      result = here;
    }
    return result == null ? List.of() : result;
  }

  private static List<Integer> separations(Fields f, List<String> wanted, Design design) {
    List<Integer> numbers = new ArrayList<>();
    for (String colour : wanted) {
      List<Integer> found =
          design.separations().stream()
              .filter(s -> is(colour, s))
              .map(Separation::number)
              .filter(n -> !numbers.contains(n))
              .toList();
      if (found.isEmpty()) {
        TreeSet<String> known = new TreeSet<>();
        design.separations().forEach(s -> known.add(s.paste()));
        f.wrong(
            "colours",
            "the design "
                + design.name()
                + " has no further separation “"
                + colour
                + "”"
                + Spelling.nearest(colour, known)
                    .filter(w -> !w.equals(colour))
                    .map(w -> "; did you mean “" + w + "”?")
                    .orElse("; its pastes are " + String.join(", ", known)));
        return List.of();
      }
      numbers.addAll(found);
    }
    return numbers;
  }

  private static boolean is(String colour, Separation s) {
    return s.paste().equals(colour)
        || s.screen().equals(colour)
        || Integer.toString(s.number()).equals(colour);
  }
}
