package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.plan.yaml.Snippets.plan;
import static strikeoff.plan.yaml.Snippets.with;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Assumption;
import strikeoff.plan.Draught;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Storage;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.policy.Default;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.yaml.Reading;
import strikeoff.yaml.YamlReader;

/** What the words of the language mean, and that its page names each of them. */
class LanguageTest {

  /** A plan that uses every way of saying something, so that every decoder asks for its keys. */
  static final String EVERYTHING =
      Snippets.SOUND
          .replace(
              "fibre: cotton",
              "fibre: {cotton: 60 %, flax: 40 %}\n  form: tube\n  shrinkage: {length: 4 %}")
          .replace(
              "table: {length: 2.4 m, width: 1.2 m}",
              "table: {stations: {count: 2, length: 60 cm, width: 60 cm}}\nroom: {air: fan}\nequipment: {sinks: 2}")
          .replace(
              "amount: 100 g}\n  ink",
              "frame-safe: {after: 5 min, air: fan}, thickener: {stood: 3 h, kept: cold},\n"
                  + "    strike-off: {size: 20 x 30 cm, cloth: 9 g, printed: 13 g, touch-dry: 12 g, after: 9 min}}\n  ink")
          .replace(
              "run:\n",
              "  edge: {design: shell, border: far}\n"
                  + "  dots: {design: shell, fill: brick, pitch: 30 x 20 cm}\n"
                  + "  pair: {design: shell, at: [\"1 cm, 2 cm\", [50 cm, 2 cm]], turn: 90°, mirrored: yes}\n"
                  + "run:\n  - print: edge\n    before moving: {until: lift-safe, air: fan}\n"
                  + "  - wash screen: all\n  - move on: 1 m\n  - heat-set: iron\n  - end of day: now\n");

  @Test
  void everyKeyStandsOnThePageOfTheLanguage() throws IOException {
    Reading reading = new Reading();
    PlanReading read =
        PlanReader.read("plan.yaml", YamlReader.read(EVERYTHING), Snippets.POLICY, reading);
    assertThat(Snippets.problems(read)).isEmpty();
    TreeSet<String> fibresApart = new TreeSet<>(reading.keys());
    fibresApart.removeAll(List.of("flax"));
    assertThat(words(page())).containsAll(fibresApart);
    // The other way round: a key that the page offers is one that decoders ask for.
    assertThat(reading.keys()).hasSizeGreaterThan(90).containsAll(firstColumn(page()));
  }

  @Test
  void theFiguresOnThePageAreThePolicys() throws IOException {
    String page = page().replace("\n", " ");
    for (Default<?> d : Snippets.POLICY.defaults().values()) {
      boolean figure = Character.isDigit(d.text().charAt(0)) && d.text().contains(" ");
      boolean table =
          d.name().startsWith("screen.thread.")
              || d.name().startsWith("cloth.shrinkage.")
              || d.name().startsWith("air.");
      if (figure && !table) {
        assertThat(page).as(d.name()).contains(d.text());
      }
    }
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("plans/README.md"));
  }

  /** What stands in backquotes, and each key of the mappings shown there. */
  private static TreeSet<String> words(String page) {
    TreeSet<String> words = new TreeSet<>();
    Matcher code = Pattern.compile("`([^`]+)`").matcher(page);
    while (code.find()) {
      for (String part : code.group(1).split("[{},]|: ?")) {
        words.add(part.strip());
      }
    }
    return words;
  }

  /** Keys of the tables' first columns; a run's steps carry an example value, which goes. */
  private static TreeSet<String> firstColumn(String page) {
    TreeSet<String> keys = new TreeSet<>();
    for (String line : page.lines().filter(l -> l.startsWith("| `")).toList()) {
      Matcher code = Pattern.compile("`([^`]+)`").matcher(line.substring(1, line.indexOf('|', 1)));
      while (code.find()) {
        String said = code.group(1);
        boolean inside =
            said.startsWith("table: ")
                || said.startsWith("room: ")
                || said.startsWith("handling: ");
        String key = inside ? said.substring(said.indexOf(": ") + 2) : said.split(": ")[0];
        if (!key.startsWith("until ")) {
          keys.add(key);
        }
      }
    }
    keys.removeAll(List.of("batch", "steam", "press", "oven", "all"));
    return keys;
  }

  @Test
  void tubesTurnsBordersAndPlaces() {
    PrintPlan plan = plan(EVERYTHING);
    assertThat(plan.cloth().closed()).isTrue();
    assertThat(plan.cloth().fibres())
        .containsExactly(
            java.util.Map.entry("cotton", new Share(0.6)),
            java.util.Map.entry("linen", new Share(0.4)));
    assertThat(plan.arrangements().get("edge"))
        .isInstanceOfSatisfying(
            Arrangement.Border.class,
            b -> {
              assertThat(b.edge()).isEqualTo(Arrangement.Edge.FAR);
              assertThat(b.repeat()).isEqualTo(Length.ofCm(10));
              assertThat(b.inset()).isEqualTo(Length.ofCm(1));
              assertThat(b.to()).isEqualTo(Length.ofCm(300));
            });
    assertThat(plan.arrangements().get("dots"))
        .isInstanceOfSatisfying(
            Arrangement.Fill.class,
            f -> {
              assertThat(f.lattice()).isEqualTo(Arrangement.Lattice.BRICK);
              assertThat(f.around()).containsExactly("row", "pearls", "edge", "pair");
              assertThat(f.near()).isEqualTo(Length.ofCm(1));
              assertThat(f.far()).isEqualTo(Length.ofCm(59));
            });
    assertThat(plan.arrangements().get("pair"))
        .isInstanceOfSatisfying(
            Arrangement.Placed.class,
            p -> {
              assertThat(p.at())
                  .containsExactly(
                      new Arrangement.Point(Length.ofCm(1), Length.ofCm(2)),
                      new Arrangement.Point(Length.ofCm(50), Length.ofCm(2)));
              assertThat(p.turn()).isEqualTo(new Angle(90));
              assertThat(p.mirrored()).isTrue();
            });
    assertThat(plan.room().air()).isEqualTo(new Draught(Draught.By.FAN, new AirSpeed(1)));
  }

  @Test
  void anchorsTakeOffsetsBelowZeroAndNumbers() {
    PrintPlan plan = plan(with("\"12 cm, 5 cm\", which: 1-3", "\"-12 cm, 5 cm\", which: [1, 3-4]"));
    assertThat(plan.arrangements().get("pearls"))
        .isInstanceOfSatisfying(
            Arrangement.Anchored.class,
            a -> {
              assertThat(a.dx()).isEqualTo(Length.ofCm(-12));
              assertThat(a.which()).containsExactly(1, 3, 4);
            });
  }

  @Test
  void printStepsTakeTheirOptions() {
    String text =
        with(
            "    only: 1-3, 5\n",
            """
                only: [1, 2, 5-6]
                colours: [ink, shell]
                order: by station
                every other: yes
                pause: 30 s
                dry between colours: 10 min
                dry between passes: until frame-safe
                before moving: until lift-safe
                by: Tam
            """);
    PrintStep print = (PrintStep) plan(text).run().get(1);
    assertThat(print.only()).containsExactly(1, 2, 5, 6);
    assertThat(print.separations()).containsExactly(2, 1);
    assertThat(print.order()).isEqualTo(PrintOrder.BY_STATION);
    assertThat(print.everyOther()).isTrue();
    assertThat(print.pause()).isEqualTo(new Span(0.5));
    assertThat(print.dryBetweenColours()).isEqualTo(Wait.of(new Until.Time(new Span(10))));
    assertThat(print.dryBetweenPasses())
        .isEqualTo(Wait.of(new Until.State(Until.Dryness.FRAME_SAFE)));
    assertThat(print.beforeMoving()).isEqualTo(Wait.of(new Until.State(Until.Dryness.LIFT_SAFE)));
    assertThat(print.by()).hasValue("Tam");
  }

  @Test
  void aPrintStepMayWashItsScreensBetweenColours() {
    String washed = with("    only: 1-3, 5\n", "    wash between colours: yes\n");
    assertThat(((PrintStep) plan(washed).run().get(1)).washBetweenColours()).isTrue();
    String leftOut = with("    only: 1-3, 5\n", "");
    assertThat(((PrintStep) plan(leftOut).run().get(1)).washBetweenColours()).isFalse();
  }

  @Test
  void waitsInsideAPrintStepTakeMovedAir() {
    String text =
        with(
            "    only: 1-3, 5\n",
            """
                dry between colours: {for: 20 min, air: fan}
                before moving: {until: lift-safe, air: 0.8 m/s}
            """);
    PrintStep print = (PrintStep) plan(text).run().get(1);
    assertThat(print.dryBetweenColours().until()).isEqualTo(new Until.Time(new Span(20)));
    assertThat(print.dryBetweenColours().air())
        .hasValueSatisfying(air -> assertThat(air.by()).isEqualTo(Draught.By.FAN));
    assertThat(print.dryBetweenColours().text(Measures.METRIC))
        .isEqualTo("{for: 20 min, air: fan}");
    assertThat(print.beforeMoving().until()).isEqualTo(new Until.State(Until.Dryness.LIFT_SAFE));
    assertThat(print.beforeMoving().text(Measures.METRIC))
        .isEqualTo("{until: lift-safe, air: 0.8 m/s}");
    assertThat(plan(text).assumptions())
        .anySatisfy(a -> assertThat(a.path().text()).isEqualTo("run[1].dry between colours.air"));
  }

  @Test
  void mixingAllLeavesOutWhatWasMixedBefore() {
    String text =
        with(
            "colour: \"#2b3440\", amount: 100 g",
            "colour: \"#2b3440\", mixed before: 12 h, kept: cold");
    PrintPlan plan = plan(text);
    assertThat(((Step.Mix) plan.run().get(0)).pastes()).containsExactly("sand");
    assertThat(plan.pastes().get("ink").mixedBefore()).hasValue(new Span(720));
    assertThat(plan.pastes().get("ink").storage()).isEqualTo(Storage.COLD);
  }

  @Test
  void alkaliInTheRecipeIsAlkaliInThePaste() {
    String text =
        with(
            "colour: \"#d9b77e\", amount: 100 g",
            "colour: \"#d9b77e\", recipe: {dye: 3 g, baking soda: 2 tsp}");
    PrintPlan plan = plan(text);
    assertThat(plan.pastes().get("sand").alkaliInPaste()).isTrue();
    assertThat(plan.pastes().get("sand").recipe().get(1).substance()).isEqualTo("bicarbonate");
    assertThat(plan.pastes().get("ink").alkaliInPaste()).isFalse();
    assertThat(plan.assumptions())
        .contains(
            new Assumption(
                plan.pastes().get("sand").recipe().get(1).path(),
                "what is meant by 2 tsp",
                "“tsp” is taken as the US tsp, 4.93 ml",
                "the plan"));
  }

  @Test
  void wordsForHoursAndCrewMayBeShort() {
    PrintPlan plan = plan(with("crew: [Wren, Tam]", "crew: 2\nhours: [9-12, \"13:30 to 18:00\"]"));
    assertThat(plan.crew().names()).containsExactly("printer 1", "printer 2");
    assertThat(plan.hours().of(1).closes()).isEqualTo(720);
    assertThat(plan.hours().of(7).opens()).isEqualTo(13 * 60 + 30);
  }

  @Test
  void aDayMayHaveBreaks() {
    PrintPlan plan = plan(with("crew: [Wren, Tam]", "hours: [9-12, '9-10, 10:15-12, 13 to 17']"));
    assertThat(plan.hours().of(1).breaks()).isEmpty();
    assertThat(plan.hours().of(2))
        .isEqualTo(
            new Hours.Day(
                540, 1020, List.of(new Hours.Break(600, 615), new Hours.Break(720, 780))));
  }

  @Test
  void everythingLeftOpenIsAnAssumptionWithItsSource() {
    PrintPlan plan = plan(Snippets.SOUND);
    assertThat(plan.assumptions())
        .allMatch(a -> !a.name().isBlank() && !a.value().isBlank() && !a.source().isBlank());
    assertThat(plan.assumptions()).extracting(a -> a.path().text()).doesNotHaveDuplicates();
    assertThat(
            plan.assumptions().stream()
                .collect(Collectors.toMap(a -> a.path().text(), Assumption::value)))
        .containsEntry("cloth.mass", "150 g/m²")
        .containsEntry("cloth.shrinkage.length", "6 %")
        .containsEntry("seams.centre.padded", "no")
        .containsEntry("room.temperature", "20 °C")
        .containsEntry("hours", "09:00-17:00")
        .containsEntry("handling.dry screen", "30 min")
        .containsEntry("screens.key.thread", "64 µm")
        .containsEntry("screens.key.rail", "4 cm")
        .containsEntry("pastes.ink.transparent", "yes")
        .containsEntry("designs.shell.separations[1].pulls", "2")
        .containsEntry("run[5].temperature", "20 °C")
        .containsEntry("run[7].for", "15 min")
        .doesNotContainKeys("cloth.ground", "crew", "table.length", "pastes.ink.amount");
    assertThat(((Step.Fix) plan.run().get(5)).temperature()).isEqualTo(new Temperature(20));
  }

  @Test
  void shrinkageFollowsFibreAndWashing() {
    assertThat(plan(with("fibre: cotton", "fibre: linen")).cloth().shrinkLength())
        .isEqualTo(new Share(0.04));
    assertThat(plan(with("fibre: cotton", "washed: yes")).cloth().shrinkLength())
        .isEqualTo(new Share(0));
    assertThat(plan(with("fibre: cotton", "shrinkage: 3 %")).cloth().shrinkWidth())
        .isEqualTo(new Share(0.03));
  }

  /** A trade table has 3.5 to 5.5 % for poly-cotton, and plain cotton's 6 % is too much. */
  @Test
  void blendsShrinkByTheSharesOfTheirFibres() {
    assertThat(
            plan(with("fibre: cotton", "fibre: {cotton: 60 %, polyester: 40 %}"))
                .cloth()
                .shrinkLength()
                .fraction())
        .isCloseTo(0.036, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(
            plan(with("fibre: cotton", "fibre: {polyester: 35 %, linen: 65 %}"))
                .cloth()
                .shrinkWidth()
                .fraction())
        .isCloseTo(0.026, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void coloursHaveNamesOrThreeOrSixDigits() {
    assertThat(plan(with("\"#efe6d3\"", "RebeccaPurple")).cloth().ground().hex())
        .isEqualTo("#663399");
    assertThat(plan(with("\"#efe6d3\"", "\"#Fa0\"")).cloth().ground().hex()).isEqualTo("#ffaa00");
  }

  /** CSS Color Module Level 4, section 6.1: 148 names. */
  @Test
  void everyCssNameIsAColour() throws IOException {
    List<String> lines;
    try (var in = Colours.class.getResourceAsStream("css-colours.txt")) {
      lines =
          new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
              .lines()
              .skip(1)
              .toList();
    }
    assertThat(lines)
        .hasSize(148)
        .contains("teal #008080", "tan #d2b48c", "grey #808080", "gray #808080");
    for (String line : lines) {
      String[] part = line.split(" ");
      assertThat(plan(with("\"#efe6d3\"", part[0])).cloth().ground().hex()).isEqualTo(part[1]);
    }
  }
}
