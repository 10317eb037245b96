package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import strikeoff.document.Edit;
import strikeoff.findings.Finding;
import strikeoff.plan.Assumption;
import strikeoff.units.MeasureKind;
import strikeoff.units.UnitChoice;
import strikeoff.units.UnitSystem;

/** A plan is answered in the units that it is written in. */
class UnitsOfThePlanTest {

  private static final Checker CHECKER = Checker.builtIn();

  /** Threads are told in micrometres everywhere, so they are none of these. */
  private static final Pattern METRIC =
      Pattern.compile("\\d ?(?:mm|cm|m|g|kg|ml|L|°C|cm²|m²|g/m²|g/L|m/s|cm³/m²)(?![\\w²/])");

  private static final Pattern CUSTOMARY =
      Pattern.compile(
          "\\d (?:in(?! all)|yd|oz|lb|cups?|tbsp|tsp|qt|gal|fl oz|°F|in²|ft/min)(?![\\w²/])");

  /** It asks whether a count by the inch was meant by the centimetre. */
  private static final String MESH = "screens/mesh-implausible";

  @TestFactory
  Stream<DynamicTest> anExampleInInchesOuncesAndFahrenheitIsAnsweredSo() {
    return CHECKER.rules().rules().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.id(),
                    () -> {
                      Example example = Example.packaged(rule.id());
                      String plan = Inches.ofAll(example.firingText());
                      for (String said : said(CHECKER.of(example), plan)) {
                        assertThat(said).doesNotContainPattern(METRIC);
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> anExampleInMetricUnitsIsAnsweredSo() {
    return CHECKER.rules().rules().stream()
        .filter(rule -> !CUSTOMARY.matcher(Example.packaged(rule.id()).firingText()).find())
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.id(),
                    () -> {
                      Example example = Example.packaged(rule.id());
                      for (String said : said(CHECKER.of(example), example.firingText())) {
                        assertThat(said).doesNotContainPattern(CUSTOMARY);
                      }
                    }));
  }

  @Test
  void eachKindHasAMajorityOfItsOwn() {
    Checked.Judged judged =
        judged(
            CHECKER,
            """
            plan: Reeds in inches and grams
            cloth: {fibre: cotton, length: 80 in, width: 40 in, washed: yes, mass: 180 g/m²}
            table: {length: 90 in, width: 1.2 m}
            room: {temperature: 70 °F}
            screens:
              reed: {frame: 18 x 18 in, image: 9 x 9 in, mesh: 43/cm, thread: 80 µm}
            pastes:
              green: {medium: dye, group: dichlorotriazine, colour: green, amount: 10 g}
            designs:
              reed:
                size: 8 x 8 in
                separations:
                  - {screen: reed, paste: green, covers: 30 %, trap: 1 mm}
            placements:
              row: {design: reed, series: 3, pitch: 20 in, start: 3 in, across: 3 in}
            run:
              - mix: all
              - print: row
            """);
    var measures = judged.plan().measures();
    assertThat(measures.of(MeasureKind.LENGTH)).isEqualTo(UnitSystem.US);
    assertThat(measures.of(MeasureKind.SMALL_LENGTH)).isEqualTo(UnitSystem.METRIC);
    assertThat(measures.of(MeasureKind.MASS)).isEqualTo(UnitSystem.METRIC);
    assertThat(measures.of(MeasureKind.AREAL_MASS)).isEqualTo(UnitSystem.METRIC);
    assertThat(measures.of(MeasureKind.TEMPERATURE)).isEqualTo(UnitSystem.US);
    assertThat(measures.of(MeasureKind.MESH_COUNT)).isEqualTo(UnitSystem.METRIC);
    assertThat(measures.of(MeasureKind.VOLUME)).as("as lengths").isEqualTo(UnitSystem.US);
    Finding tooLittle =
        judged.findings().stream()
            .filter(f -> f.rule().id().equals("paste/short"))
            .findFirst()
            .orElseThrow();
    assertThat(tooLittle.message()).containsPattern("\\d g\\b").doesNotContain(" oz");
  }

  @Test
  void aMetricPlanWithFahrenheitBathsKeepsBoth() {
    Example example = Example.packaged("fixing/bath-too-hot");
    String plan =
        example.firingText().replaceAll("\\b80 °C", "176 °F").replaceAll("(\\d+) °C", "95 °F");
    Checked.Judged judged = judged(CHECKER, plan);
    assertThat(judged.plan().measures().of(MeasureKind.TEMPERATURE)).isEqualTo(UnitSystem.US);
    assertThat(judged.plan().measures().of(MeasureKind.LENGTH)).isEqualTo(UnitSystem.METRIC);
    for (String said : said(CHECKER, plan)) {
      assertThat(said).doesNotContainPattern("\\d °C");
    }
  }

  @Test
  void aUserMayAskForOthers() {
    Example example = Example.packaged("layout/placements-overlap");
    for (String said : said(CHECKER.in(UnitChoice.US), example.firingText())) {
      assertThat(said).doesNotContainPattern(METRIC);
    }
    for (String said : said(CHECKER.in(UnitChoice.METRIC), Inches.ofAll(example.firingText()))) {
      assertThat(said).doesNotContainPattern(CUSTOMARY);
    }
  }

  /**
   * 15 °C apart are 27 °F apart, whatever 15 °C are; and 1 mm is a sixteenth of an inch at most.
   */
  @Test
  void differencesAndBoundsAreToldAsAPrinterMeasuresThem() {
    assertThat(inInches("paste/life-not-known")).anyMatch(s -> s.contains("up to 27 °F above"));
    assertThat(inInches("fixing/steam-hot")).noneMatch(s -> s.contains("Fahrenheit"));
    assertThat(inInches("order/trap-too-narrow"))
        .anyMatch(s -> s.matches("Widen the trap by \\d+/\\d+ in, to \\d+/(16|32) in\\."));
  }

  private static List<String> inInches(String rule) {
    Example example = Example.packaged(rule);
    return said(CHECKER.of(example), Inches.ofAll(example.firingText()));
  }

  @Test
  void whatIsAssumedIsToldInThem() {
    Example example = Example.packaged("layout/placements-overlap");
    Checked.Judged judged = judged(CHECKER, Inches.ofAll(example.firingText()));
    assertThat(judged.plan().assumptions())
        .extracting(Assumption::value)
        .contains("68 °F")
        .noneMatch(value -> METRIC.matcher(value).find() && !value.contains("taken as"));
  }

  /** Messages, remedies and edits of all findings but of one that names two units on purpose. */
  private static List<String> said(Checker checker, String plan) {
    List<String> said = new ArrayList<>();
    for (Finding finding : judged(checker, plan).findings()) {
      if (!finding.rule().id().equals(MESH)) {
        said.add(finding.message());
        said.add(finding.remedy());
        finding.edits().forEach(edits -> edits.forEach(edit -> said.add(text(edit))));
      }
    }
    return said;
  }

  private static String text(Edit edit) {
    return edit instanceof Edit.Write write
        ? write.value()
        : edit instanceof Edit.Insert insert
            ? insert.item()
            : edit instanceof Edit.Append append ? append.item() : "";
  }

  private static Checked.Judged judged(Checker checker, String plan) {
    return (Checked.Judged) checker.check("plan.yaml", plan);
  }
}
