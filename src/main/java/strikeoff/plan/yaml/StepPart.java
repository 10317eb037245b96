package strikeoff.plan.yaml;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Begins;
import strikeoff.plan.Crew;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Span;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads the steps of the run; each is known by its first word. */
final class StepPart {

  private static final String END = "end of day";

  /** What a step begins with. */
  static final List<String> VERBS =
      List.of(
          "mix",
          "print",
          "dry",
          "wash screen",
          "move on",
          "sew",
          "fix",
          "rinse",
          "wash",
          "heat-set",
          END);

  private static final Map<String, String> EXAMPLES =
      Map.of(
          "mix", "mix: all",
          "print", "print: herons",
          "dry", "dry: until lift-safe",
          "wash screen", "wash screen: all",
          "move on", "move on: 1 m",
          "sew", "sew: centre",
          "fix", "fix: steam",
          "rinse", "rinse: 20 °C",
          "wash", "wash: 60 °C",
          "heat-set", "heat-set: iron");

  private static final Map<String, Begins> BEGINS =
      Map.of(
          Begins.WHEN_FREE.text(), Begins.WHEN_FREE,
          Begins.WHEN_DONE.text(), Begins.WHEN_DONE);

  private final Draft draft;
  private final Crew crew;
  private final Map<String, Seam> seams;
  private final Map<String, Paste> pastes;
  private final PrintStepPart printing;
  private final WetStepPart wet;
  private final RoomPart room;
  private final MixingOrder mixing;
  private final Set<Integer> mixAll = new HashSet<>();
  private int number;

  StepPart(
      Draft draft,
      Crew crew,
      Map<String, Seam> seams,
      Map<String, Paste> pastes,
      Map<String, Design> designs,
      Map<String, Arrangement> placements) {
    this.draft = draft;
    this.crew = crew;
    this.seams = seams;
    this.pastes = pastes;
    this.room = new RoomPart(draft);
    this.printing = new PrintStepPart(draft, designs, placements, crew, room);
    this.wet = new WetStepPart(draft, crew);
    this.mixing = new MixingOrder(designs, placements);
  }

  List<Step> run(Fields root) {
    if (!root.has("run")) {
      return List.of();
    }
    int most = draft.bounds().steps();
    if (root.item("run").get().node() instanceof Node.Sequence s && s.items().size() > most) {
      root.wrongKey(
          "run",
          "the run has " + s.items().size() + " steps; more than " + most + " cannot be checked");
      return List.of();
    }
    List<Step> run = root.required("run", Lists.of("a step such as print: herons", this::step));
    return mixing.of(run, mixAll);
  }

  private Step step(Item item) {
    number++;
    if (item.node() instanceof Node.Scalar s) {
      if (!s.text().equals(END)) {
        draft.reading().wrong(item, oneWord(s.text()));
      }
      return new Step.EndOfDay(number, item.path());
    }
    Fields f = Fields.of(item, "a step such as print: herons", draft.reading());
    List<String> verbs = f.names().stream().filter(VERBS::contains).toList();
    if (verbs.isEmpty()) {
      String near =
          f.names().stream()
              .flatMap(k -> Everyday.step(k).or(() -> Spelling.nearest(k, VERBS)).stream())
              .findFirst()
              .map(v -> "; did you mean “" + v + "”?")
              .orElse("");
      f.wrong("a step says what is done with one of " + String.join(", ", VERBS) + near);
      return new Step.EndOfDay(number, item.path());
    }
    if (f.item(verbs.get(0)).get().node() instanceof Node.Mapping under
        && !(verbs.get(0).equals("print") && printing.namesAny(under.entries().keySet()))) {
      f.wrong(
          verbs.get(0),
          "what is done stands right after “"
              + verbs.get(0)
              + ":”, and its other keys on lines of their own below it, without braces");
      return new Step.EndOfDay(number, item.path());
    }
    Optional<String> beside = f.names().stream().filter(k -> !k.equals(END)).findFirst();
    if (verbs.equals(List.of(END)) && beside.isPresent()) {
      f.wrongKey(
          beside.get(),
          "“end of day” stands alone, as - end of day; leave out what stands below it");
      return new Step.EndOfDay(number, item.path());
    }
    Step step = decode(verbs.get(0), f);
    if (verbs.size() > 1) {
      verbs.forEach(f::has);
      f.wrong(verbs.get(1), "a step does one thing; make “" + verbs.get(1) + "” a step of its own");
    }
    f.done();
    return step;
  }

  private static String oneWord(String text) {
    Optional<String> verb = VERBS.stream().filter(v -> text.startsWith(v + " ")).findFirst();
    if (verb.isPresent()) {
      return "a colon is missing after “" + verb.get() + "”";
    }
    return VERBS.contains(text)
        ? "“" + text + "” needs a value, such as " + EXAMPLES.get(text)
        : "a step such as print: herons, or end of day, was expected"
            + Everyday.step(text)
                .map(step -> "; did you mean “" + step + "”?")
                .orElseGet(() -> Spelling.didYouMean(text, VERBS));
  }

  private Step decode(String verb, Fields f) {
    return switch (verb) {
      case "mix" -> mix(f);
      case "print" -> printing.print(number, f);
      case "dry" -> dry(f);
      case "wash screen" -> washScreen(f);
      case "move on" -> move(f);
      case "sew" -> sew(f);
      case "fix" -> wet.fix(number, f);
      case "rinse" -> wet.rinse(number, f);
      case "wash" -> wet.wash(number, f);
      case "heat-set" -> wet.heatSet(number, f);
      default -> end(f);
    };
  }

  /** A mapping may say it too; what stands after the colon has nothing to add. */
  private Step end(Fields f) {
    f.has(END);
    return new Step.EndOfDay(number, f.path());
  }

  private Step mix(Fields f) {
    Expected<String> name =
        ValueKinds.nameIn(
            "all, or a paste's name",
            "paste",
            Stream.concat(draft.names().pastes().stream(), Stream.of("all")).toList());
    List<String> named = f.required("mix", ValueKinds.oneOrMore(name));
    boolean all = named.contains("all");
    if (all) {
      mixAll.add(number);
    }
    return new Step.Mix(number, all ? unmixed() : named, takes(f), by(f), begins(f), f.path());
  }

  /** All that was not mixed before the print days. */
  private List<String> unmixed() {
    return pastes.values().stream()
        .filter(p -> p.mixedBefore().isEmpty())
        .map(Paste::name)
        .toList();
  }

  private Step dry(Fields f) {
    return new Step.Dry(
        number,
        f.required("dry", Waits.until()),
        f.optional("air", room.draught(f, "air")),
        by(f),
        f.path());
  }

  private Step washScreen(Fields f) {
    List<String> screens = List.copyOf(draft.names().screens());
    Expected<String> name =
        ValueKinds.nameIn(
            "all, or a screen's name",
            "screen",
            Stream.concat(screens.stream(), Stream.of("all")).toList());
    List<String> named = f.required("wash screen", ValueKinds.oneOrMore(name));
    boolean all = named.contains("all") && !screens.contains("all");
    return new Step.WashScreen(number, all ? screens : named, takes(f), by(f), begins(f), f.path());
  }

  private Step move(Fields f) {
    return new Step.Move(
        number,
        f.required("move on", QuantityKinds.signed(Length.class)),
        takes(f),
        by(f),
        f.path());
  }

  private Step sew(Fields f) {
    String seam =
        f.required("sew", ValueKinds.nameIn("a seam's name", "seam", draft.names().seams()));
    Seam known = seams.get(seam);
    if (known != null && known.sewnBefore()) {
      f.wrong("sew", "the seam " + seam + " is sewn before the print days (sewn: yes)");
    }
    return new Step.Sew(number, seam, takes(f), by(f), begins(f), f.path());
  }

  /** Whether it waits for the step above it. */
  static Begins begins(Fields f) {
    return f.optional("begins", ValueKinds.word("when free or when done", BEGINS))
        .orElse(Begins.IN_TURN);
  }

  private static Optional<Span> takes(Fields f) {
    return f.optional("takes", QuantityKinds.quantity(Span.class));
  }

  private Optional<String> by(Fields f) {
    return f.optional(
        "by", ValueKinds.nameIn("a name of the crew", "person of the crew", crew.names()));
  }
}
