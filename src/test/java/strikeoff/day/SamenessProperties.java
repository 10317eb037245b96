package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.checks.Draws;
import strikeoff.checks.Worked;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;

/**
 * How a plan is written changes nothing in its run: what things are called, in which order its keys
 * stand, in which units it measures, and which of the cloth's edges is near. {@code print: all} is
 * the exception that plans/README.md names: it prints in the order in which placements are listed.
 */
class SamenessProperties {

  /** Conversions are rounded, and a film is felt a second sooner or later for it. */
  private static final long SECONDS = 5;

  /**
   * Herons in a row, shells at places, reeds along an edge, and a fill of dots.
   *
   * @param between minutes between colours; below zero until frame-safe
   */
  record Invented(
      boolean paint, Row row, int people, String order, int between, int pause, Room room) {}

  /** Copies of the heron, and their colours; pitch in cm. */
  record Row(int copies, int pitch, int colours) {}

  /** Lengths in cm. */
  record Room(int table, boolean fill, boolean mixedByAnother, boolean shared) {}

  /** How it is written. */
  private record Way(boolean otherNames, boolean otherOrder, boolean otherUnits, boolean mirrored) {

    static final Way PLAIN = new Way(false, false, false, false);

    String name(String plain) {
      // Turned round, so that what sorts first sorts last.
      return otherNames ? "z" + (char) ('z' - (plain.charAt(0) - 'a')) + " " + plain : plain;
    }

    String cm(double cm) {
      return otherUnits ? decimals(cm / 2.54, 4) + " in" : decimals(cm, 1) + " cm";
    }

    String size(double along, double across) {
      return otherUnits
          ? decimals(along / 2.54, 4) + " x " + decimals(across / 2.54, 4) + " in"
          : decimals(along, 1) + " x " + decimals(across, 1) + " cm";
    }

    String minutes(int minutes) {
      return otherUnits ? minutes * 60 + " s" : minutes + " min";
    }

    /** Lines of a mapping. */
    String keys(List<String> lines) {
      List<String> all = new ArrayList<>(lines);
      if (otherOrder) {
        Collections.reverse(all);
      }
      return String.join("\n", all).indent(2);
    }

    String across(double from, double height) {
      return cm(mirrored ? WIDTH - from - height : from);
    }

    String edge(boolean near) {
      return near == mirrored ? "far" : "near";
    }

    private static String decimals(double value, int decimals) {
      return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
  }

  private static final double WIDTH = 140;

  private static PrintPlan written(Invented plan, Way way) {
    List<String> screens = new ArrayList<>();
    List<String> pastes = new ArrayList<>();
    List<String> colours = new ArrayList<>();
    String medium = plan.paint() ? "medium: paint" : "medium: dye, group: DCT";
    for (int i = 0; i < plan.row().colours(); i++) {
      screens.add(screen(way, "s" + i, 30, 40));
      pastes.add(way.name("p" + i) + ": {" + medium + ", colour: blue}");
      colours.add(separation(way, "s" + i, "p" + i));
    }
    screens.add(screen(way, "shell", 20, 20));
    screens.add(screen(way, "reed", 24, 15));
    pastes.add(way.name("sand") + ": {" + medium + ", colour: tan}");
    String reedPaste = plan.room().shared() ? "p0" : "sand";
    List<String> designs =
        List.of(
            design(way, "heron", 30, 40, String.join(", ", colours)),
            design(way, "shell", 20, 20, separation(way, "shell", "sand")),
            design(way, "reed", 24, 15, separation(way, "reed", reedPaste)),
            design(way, "dot", 20, 20, separation(way, "shell", "p0")));
    List<String> placements =
        new ArrayList<>(
            List.of(
                placement(
                    way,
                    "herons",
                    "heron",
                    "series: %d, pitch: %s, start: %s, across: %s",
                    plan.row().copies(),
                    way.cm(plan.row().pitch()),
                    way.cm(16),
                    way.across(30, 40)),
                placement(
                    way,
                    "shells",
                    "shell",
                    "at: [\"%s, %s\", \"%s, %s\", \"%s, %s\"]",
                    way.cm(25),
                    way.across(80, 20),
                    way.cm(61),
                    way.across(85, 20),
                    way.cm(131),
                    way.across(75, 20)),
                placement(
                    way,
                    "reeds",
                    "reed",
                    "border: %s, from: %s, to: %s, inset: %s",
                    way.edge(true),
                    way.cm(9),
                    way.cm(9 + 24 * 4),
                    way.cm(3))));
    String printed = way.name("herons") + ", " + way.name("shells") + ", " + way.name("reeds");
    if (plan.room().fill()) {
      placements.add(
          placement(
              way,
              "dots",
              "dot",
              "fill: grid, pitch: %s, from: %s, to: %s, near: %s, far: %s",
              way.size(35, 30),
              way.cm(170),
              way.cm(290),
              way.cm(105),
              way.cm(130)));
      printed += ", " + way.name("dots");
    }
    List<String> people =
        List.of(way.name("wren"), way.name("tam"), way.name("ada")).subList(0, plan.people());
    List<String> top =
        List.of(
            "plan: test",
            "cloth: {length: %s, width: %s, mass: %s, washed: yes}"
                .formatted(
                    way.cm(420), way.cm(WIDTH), way.otherUnits ? "5.30905 oz/yd²" : "180 g/m²"),
            "table: {length: %s, width: %s}".formatted(way.cm(plan.room().table()), way.cm(180)),
            "room: {temperature: %s}".formatted(way.otherUnits ? "68 °F" : "20 °C"),
            "crew: [" + way.name("wren") + ", " + way.name("tam") + ", " + way.name("ada") + "]",
            "screens:\n" + way.keys(screens),
            "pastes:\n" + way.keys(pastes),
            "designs:\n" + way.keys(designs),
            "placements:\n" + way.keys(placements),
            "run:\n"
                + """
                  - {mix: all, by: %s}
                  - {print: [%s], by: [%s], order: %s, dry between colours: %s, pause: %s}
                """
                    .formatted(
                        plan.room().mixedByAnother() ? way.name("ada") : way.name("wren"),
                        printed,
                        String.join(", ", people),
                        plan.order(),
                        plan.between() < 0 ? "until frame-safe" : way.minutes(plan.between()),
                        way.minutes(plan.pause())));
    String text = String.join("\n", top);
    PlanReading reading = PlanReader.read("test.yaml", text, Worked.POLICY);
    assertThat(reading).as("%s%n%s", reading, text).isInstanceOf(PlanReading.Readable.class);
    return ((PlanReading.Readable) reading).plan();
  }

  private static String screen(Way way, String name, int along, int across) {
    String mesh = way.otherUnits ? "109.22/in" : "43/cm";
    return "%s: {frame: %s, image: %s, mesh: %s, thread: 80 µm}"
        .formatted(
            way.name(name), way.size(along + 20, across + 20), way.size(along, across), mesh);
  }

  private static String separation(Way way, String screen, String paste) {
    return "{screen: %s, paste: %s, covers: 40 %%}".formatted(way.name(screen), way.name(paste));
  }

  private static String design(Way way, String name, int along, int across, String separations) {
    return "%s: {size: %s, separations: [%s]}"
        .formatted(way.name(name), way.size(along, across), separations);
  }

  private static String placement(
      Way way, String name, String design, String how, Object... values) {
    String mirrored = way.mirrored ? ", mirrored: yes" : "";
    return "%s: {design: %s, %s%s}"
        .formatted(way.name(name), way.name(design), how.formatted(values), mirrored);
  }

  /** A run without names, in numbers that can be compared. */
  private record Ran(List<List<Long>> work, List<List<Long>> contacts) {

    static Ran of(PrintPlan plan) {
      DayRun day = DayRun.of(plan, Layout.of(plan, Worked.POLICY), Worked.POLICY);
      List<String> crew = plan.crew().names();
      List<List<Long>> work = new ArrayList<>();
      for (Task task : day.tasks()) {
        long who = task.people().stream().mapToLong(name -> 1L << crew.indexOf(name)).sum();
        work.add(
            List.of(
                task.start().seconds(),
                task.end().seconds(),
                (long) task.kind().ordinal(),
                (long) task.step(),
                who,
                (long) task.set().orElse(0)));
      }
      List<List<Long>> contacts = new ArrayList<>();
      for (Contact contact : day.contacts()) {
        contacts.add(
            List.of(
                contact.earlier().lifted().seconds(),
                contact.later().laid().seconds(),
                contact.safe().best().seconds(),
                Math.round(contact.area().squareCm())));
      }
      return new Ran(sorted(work), sorted(contacts));
    }

    private static List<List<Long>> sorted(List<List<Long>> rows) {
      Comparator<List<Long>> order = Comparator.comparing(row -> row.get(0));
      for (int i = 1; i < (rows.isEmpty() ? 0 : rows.get(0).size()); i++) {
        int column = i;
        order = order.thenComparing(row -> row.get(column));
      }
      return rows.stream().sorted(order).toList();
    }
  }

  @Provide
  Arbitrary<Invented> plans() {
    return Combinators.combine(
            Arbitraries.of(true, false),
            Combinators.combine(
                    Arbitraries.integers().between(1, 5),
                    Arbitraries.of(36, 44, 50, 58, 64),
                    Arbitraries.integers().between(1, 3))
                .as(Row::new),
            Arbitraries.integers().between(1, 3),
            Arbitraries.of("by colour", "by station", "over all", "set by set"),
            Arbitraries.of(-1, 0, 3, 20),
            Arbitraries.of(0, 0, 2),
            Combinators.combine(
                    Arbitraries.of(110, 180, 260, 420),
                    Arbitraries.of(true, false),
                    Arbitraries.of(true, false),
                    Arbitraries.of(true, false))
                .as(Room::new))
        .as(Invented::new);
  }

  @Property(tries = 150, seed = Draws.ALIKE)
  void namesChangeNothing(@ForAll("plans") Invented plan) {
    assertThat(Ran.of(written(plan, new Way(true, false, false, false))))
        .isEqualTo(Ran.of(written(plan, Way.PLAIN)));
  }

  @Property(tries = 150, seed = Draws.ALIKE)
  void theOrderOfKeysChangesNothing(@ForAll("plans") Invented plan) {
    assertThat(Ran.of(written(plan, new Way(false, true, false, false))))
        .isEqualTo(Ran.of(written(plan, Way.PLAIN)));
  }

  @Property(tries = 150, seed = Draws.ALIKE)
  void unitsChangeNothing(@ForAll("plans") Invented plan) {
    Ran metric = Ran.of(written(plan, Way.PLAIN));
    Ran imperial = Ran.of(written(plan, new Way(false, false, true, false)));
    alike(imperial.work(), metric.work());
    alike(imperial.contacts(), metric.contacts());
  }

  private static void alike(List<List<Long>> some, List<List<Long>> others) {
    assertThat(some).hasSameSizeAs(others);
    for (int i = 0; i < some.size(); i++) {
      for (int column = 0; column < some.get(i).size(); column++) {
        assertThat(Math.abs(some.get(i).get(column) - others.get(i).get(column)))
            .as("%s and %s", some.get(i), others.get(i))
            .isLessThanOrEqualTo(SECONDS);
      }
    }
  }

  /**
   * Near for far. Two at the same place along the cloth are printed from the near edge on, and so
   * the other way round; a fill has such.
   */
  @Property(tries = 150, seed = Draws.ALIKE)
  void mirroringChangesNothing(@ForAll("plans") Invented plan) {
    Assume.that(!plan.room().fill());
    assertThat(Ran.of(written(plan, new Way(false, false, false, true))))
        .isEqualTo(Ran.of(written(plan, Way.PLAIN)));
  }
}
