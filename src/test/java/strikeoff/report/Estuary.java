package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import strikeoff.care.Care;
import strikeoff.check.Checked;
import strikeoff.cloth.Fibres;
import strikeoff.day.ClothLies;
import strikeoff.day.Contact;
import strikeoff.day.Doing;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.SourceMap;
import strikeoff.drying.PlainDrying;
import strikeoff.facts.Facts;
import strikeoff.findings.Finding;
import strikeoff.findings.Place;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.plan.Acceptance;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Assumption;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Crew;
import strikeoff.plan.Design;
import strikeoff.plan.Draught;
import strikeoff.plan.Equipment;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Protection;
import strikeoff.plan.Room;
import strikeoff.plan.Screen;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.plan.Storage;
import strikeoff.plan.Table;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.screens.Screens;
import strikeoff.sequence.Sequence;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * The estuary curtains as a judged plan, made by hand so that pages can be tested without reader,
 * simulation and rules. Every text of it goes through {@code texts}, to try what a hostile plan may
 * hold.
 */
final class Estuary {

  private final UnaryOperator<String> texts;
  private final Map<String, Screen> screens = new LinkedHashMap<>();
  private final Map<String, Paste> pastes = new LinkedHashMap<>();
  private final Map<String, Design> designs = new LinkedHashMap<>();
  private final Map<String, Arrangement> arrangements = new LinkedHashMap<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Impression> impressions = new ArrayList<>();
  private final List<Contact> contacts = new ArrayList<>();

  private Estuary(UnaryOperator<String> texts) {
    this.texts = texts;
  }

  static Checked.Judged plain(List<Finding> findings) {
    return judged(UnaryOperator.identity(), findings);
  }

  static Checked.Judged judged(UnaryOperator<String> texts, List<Finding> findings) {
    Estuary estuary = new Estuary(texts);
    PrintPlan plan = estuary.plan();
    Layout layout = Layout.of(plan, PolicyReader.builtIn());
    Timeline timeline = estuary.timeline(plan, layout);
    SourceMap source =
        new SourceMap(texts.apply("estuary-curtains.yaml"), List.of(), Map.of(), Map.of());
    return new Checked.Judged(
        texts.apply("estuary-curtains.yaml"),
        plan,
        source,
        new Facts(
            layout,
            List.of(),
            new Screens(List.of()),
            EstuaryFacts.swatches(plan),
            timeline,
            new Sequence(List.of()),
            EstuaryFacts.pastes(plan, texts),
            EstuaryFacts.fixing(),
            new Fibres(Optional.empty(), List.of()),
            new Care(List.of(), List.of()),
            PolicyReader.builtIn(),
            List.of()),
        findings,
        List.of());
  }

  /** A finding of the given severity on the first herons. */
  static Finding finding(
      UnaryOperator<String> texts, String rule, Severity severity, int line, String... marks) {
    RuleInfo info =
        new RuleInfo(
            rule,
            severity,
            texts.apply("A frame is laid on a colour of the same motif that is still wet"),
            texts.apply("The frame lifts the film, smears it and prints it off on the next motif."),
            "",
            "",
            texts.apply("common practice, no source"),
            List.of());
    return new Finding(
        info,
        texts.apply("Screen heron key is laid on slate blue 38 min before it is frame-safe."),
        texts.apply("Wait 38 min more before heron key, or print every other one."),
        List.of(),
        List.of(),
        new Place(
            "", new PlanPath("run[1]"), new Position(line, 5), texts.apply("  - print: herons")),
        List.of(
            new Place(
                texts.apply("the earlier print"),
                new PlanPath("designs.heron"),
                new Position(line + 1, 9),
                texts.apply("      - {screen: heron blue, paste: slate blue}"))),
        List.of(marks),
        List.of(),
        Optional.empty(),
        Optional.of("- {rule: " + info.id() + ", at: step 2, because: your reason}"),
        Optional.empty());
  }

  static Finding accepted(Finding finding, String because) {
    return new Finding(
        finding.rule(),
        finding.message(),
        finding.remedy(),
        List.of(),
        List.of(),
        finding.place(),
        finding.related(),
        finding.marks(),
        finding.evidence(),
        Optional.of(
            new Acceptance(
                finding.rule().id(), Optional.empty(), because, new PlanPath("accept[0]"))),
        Optional.empty(),
        Optional.empty());
  }

  private PrintPlan plan() {
    screen("heron blue", 54, 74, 36, 54);
    screen("heron rust", 54, 74, 36, 54);
    screen("heron key", 54, 74, 36, 54);
    screen("reed green", 50, 44, 31, 24);
    screen("reed key", 50, 44, 31, 24);
    screen("shell sand", 26, 26, 9, 8);
    screen("shell rust", 26, 26, 9, 8);
    paste("sand", 0xd9, 0xb7, 0x7e, 100);
    paste("rust", 0xb5, 0x65, 0x3a, 200);
    paste("reed green", 0x7d, 0x8b, 0x52, 400);
    paste("slate blue", 0x5f, 0x7d, 0x94, 500);
    paste("ink", 0x2b, 0x34, 0x40, 300);
    design("heron", 34, 52, "heron rust:rust:4", "heron blue:slate blue:38", "heron key:ink:9");
    design("reeds", 30, 22, "reed green:reed green:40", "reed key:ink:10");
    design("shell", 8, 7, "shell sand:sand:55", "shell rust:rust:15");
    arrange(
        new Arrangement.Border(
            texts.apply("reed border"),
            texts.apply("reeds"),
            Arrangement.Edge.NEAR,
            cm(5),
            cm(425),
            cm(30),
            cm(6),
            new Angle(0),
            false,
            path("placements.reed border")));
    arrange(
        new Arrangement.Series(
            texts.apply("herons"),
            texts.apply("heron"),
            6,
            cm(70),
            cm(23),
            cm(46),
            new Angle(0),
            false,
            path("placements.herons")));
    arrange(
        new Arrangement.Fill(
            texts.apply("shells"),
            texts.apply("shell"),
            Arrangement.Lattice.HALF_DROP,
            cm(18),
            cm(20),
            cm(10),
            cm(420),
            cm(32),
            cm(120),
            cm(3),
            List.of(texts.apply("herons"), texts.apply("reed border")),
            Optional.empty(),
            new Angle(0),
            false,
            path("placements.shells")));
    return new PrintPlan(
        texts.apply("Estuary curtains"),
        texts.apply("Hem at the near edge."),
        new Cloth(
            Map.of("cotton", new Share(1)),
            new ArealMass(180),
            cm(140),
            cm(430),
            false,
            new Colour(0xef, 0xe6, 0xd3, texts.apply("#efe6d3")),
            true,
            new Share(0.03),
            new Share(0.03),
            cm(5),
            cm(5),
            cm(4),
            cm(6),
            cm(1),
            path("cloth")),
        Map.of(
            texts.apply("centre"),
            new Seam(texts.apply("centre"), cm(200), cm(1.5), true, false, path("seams.centre"))),
        new Table(cm(280), cm(160), true, Optional.empty(), Optional.empty(), path("table")),
        new Room(new Temperature(20), new Share(0.5), Draught.STILL, path("room")),
        new Crew(List.of(texts.apply("Wren"), texts.apply("Tam")), path("crew")),
        new Hours(List.of(new Hours.Day(540, 1020)), path("hours")),
        new Handling(
            min(0.5),
            min(0.2),
            min(0.2),
            min(10),
            min(5),
            min(8),
            min(20),
            min(15),
            min(10),
            min(30),
            path("handling")),
        new Equipment(1, 1, 1, 10, path("equipment")),
        screens,
        pastes,
        designs,
        arrangements,
        List.of(
            new Step.Mix(
                1,
                List.copyOf(pastes.keySet()),
                Optional.empty(),
                Optional.empty(),
                path("run[0]"))),
        List.of(Protection.DUST_MASK, Protection.GLOVES, Protection.GOGGLES),
        List.of(),
        List.of(
            new Assumption(
                path("handling.lay"),
                texts.apply("time to lay a frame"),
                texts.apply("30 s"),
                texts.apply("common practice, no source"))),
        Measures.METRIC,
        "");
  }

  /** Prints by colour in sets of three, a day for herons and shells, a day for the reeds. */
  private Timeline timeline(PrintPlan plan, Layout layout) {
    Moment now = Moment.of(1, 540);
    String wren = texts.apply("Wren");
    String tam = texts.apply("Tam");
    task(
        1,
        Task.Kind.MIX,
        new Doing.Mix(plan.pastes().keySet().iterator().next()),
        now,
        now.plus(min(40)),
        wren);
    task(1, Task.Kind.LOAD, new Doing.LayCloth(), now, now.plus(min(10)), tam);
    now = now.plus(min(40));
    now = print(plan, layout, texts.apply("herons"), 2, now, wren);
    now = print(plan, layout, texts.apply("shells"), 3, now, tam);
    task(4, Task.Kind.CLOSED, new Doing.Closed(), now, Moment.of(2, 540), null);
    now = Moment.of(2, 540);
    now = print(plan, layout, texts.apply("reed border"), 5, now, wren);
    task(6, Task.Kind.WAIT, Doing.Wait.BETWEEN_COLOURS, now, now.plus(min(90)), null);
    now = now.plus(min(90));
    task(7, Task.Kind.FIX, new Doing.OfStep(plan.run().get(0)), now, now.plus(min(60)), tam);
    Impression first = impressions.get(0);
    Impression second = impressions.get(3);
    contacts.add(
        new Contact(
            first,
            second,
            new Area(120),
            Optional.empty(),
            new Reached(
                PlainDrying.at(
                    second.laid().plus(new Span(20)).seconds(),
                    second.laid().plus(new Span(38)).seconds(),
                    second.laid().plus(new Span(55)).seconds()))));
    return new Timeline(
        tasks,
        impressions,
        contacts,
        Moment.of(1, 540),
        now.plus(min(60)),
        min(420),
        min(180),
        List.of(
            new ClothLies(
                new Length(0), Moment.of(1, 540), Moment.of(1, 550), List.of(), path("run[0]"))));
  }

  private Moment print(
      PrintPlan plan, Layout layout, String arrangement, int step, Moment start, String person) {
    Moment now = start;
    var placements = layout.of(arrangement);
    Design design = plan.designs().get(placements.get(0).design());
    for (int set = 0; set * 3 < placements.size(); set++) {
      for (Design.Separation colour : design.separations()) {
        for (int i = set * 3; i < Math.min(placements.size(), set * 3 + 3); i++) {
          int id = placements.get(i).id();
          Footprint footprint =
              layout.footprints().stream()
                  .filter(
                      f -> f.placement().id() == id && f.separation().number() == colour.number())
                  .findFirst()
                  .orElseThrow();
          Moment lifted = now.plus(min(0.9));
          Impression impression =
              new Impression(
                  impressions.size(),
                  step,
                  set + 1,
                  footprint,
                  person,
                  now,
                  lifted,
                  new Film(reached(lifted, 2), reached(lifted, 45), reached(lifted, 90)),
                  path("run[" + (step - 1) + "]"));
          impressions.add(impression);
          tasks.add(
              new Task(
                  step,
                  Task.Kind.PRINT,
                  new Doing.Impress(footprint.placement().name(), footprint.screen().name()),
                  now,
                  lifted,
                  Optional.of(person),
                  Optional.empty(),
                  Optional.of(footprint.screen().name()),
                  Optional.empty(),
                  OptionalInt.of(set + 1),
                  OptionalInt.of(impression.id()),
                  impression.path()));
          now = lifted;
        }
        task(step, Task.Kind.WAIT, Doing.Wait.BETWEEN_COLOURS, now, now.plus(min(3)), null);
        now = now.plus(min(3));
      }
      task(
          step,
          Task.Kind.MOVE,
          new Doing.MoveCloth(new Length(500), false),
          now,
          now.plus(min(5)),
          person);
      now = now.plus(min(5));
    }
    return now;
  }

  private void task(int step, Task.Kind kind, Doing what, Moment from, Moment to, String person) {
    tasks.add(
        new Task(
            step,
            kind,
            what,
            from,
            to,
            Optional.ofNullable(person),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            path("run[" + (step - 1) + "]")));
  }

  private static Reached reached(Moment lifted, double minutes) {
    return new Reached(
        PlainDrying.at(
            lifted.plus(min(minutes * 0.7)).seconds(),
            lifted.plus(min(minutes)).seconds(),
            lifted.plus(min(minutes * 1.5)).seconds()));
  }

  private void screen(String name, double frameX, double frameY, double imageX, double imageY) {
    String called = texts.apply(name);
    screens.put(
        called,
        new Screen(
            called,
            cm(frameX),
            cm(frameY),
            cm(4),
            cm(imageX),
            cm(imageY),
            new MeshCount(43),
            new Length(0.08),
            Optional.of(cm(imageY + 4)),
            path("screens." + name)));
  }

  private void paste(String name, int red, int green, int blue, double grams) {
    String called = texts.apply(name);
    Colour colour = new Colour(red, green, blue, texts.apply("colour of " + name));
    pastes.put(
        called,
        new Paste(
            called,
            Medium.DYE,
            List.of("dichlorotriazine"),
            colour,
            true,
            Optional.of(new Mass(grams)),
            List.of(new Ingredient("dye", new Mass(15), texts.apply("15 g"), path("pastes"))),
            false,
            Optional.empty(),
            Storage.COLD,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            path("pastes." + name)));
  }

  private void design(String name, double length, double width, String... colours) {
    List<Design.Separation> separations = new ArrayList<>();
    for (String colour : colours) {
      String[] parts = colour.split(":");
      separations.add(
          new Design.Separation(
              separations.size() + 1,
              texts.apply(parts[0]),
              texts.apply(parts[1]),
              cm(0),
              cm(0),
              cm(length),
              cm(width),
              new Area(length * width * Double.parseDouble(parts[2]) / 100),
              1,
              false,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              path("designs." + name)));
    }
    String called = texts.apply(name);
    designs.put(
        called,
        new Design(called, cm(length), cm(width), separations, List.of(), path("designs." + name)));
  }

  private void arrange(Arrangement arrangement) {
    arrangements.put(arrangement.name(), arrangement);
  }

  private static PlanPath path(String text) {
    return new PlanPath(text);
  }

  private static Length cm(double cm) {
    return Length.ofCm(cm);
  }

  private static Span min(double minutes) {
    return new Span(minutes);
  }
}
