package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.facts.Surety;

/** Three paints in a half-drop so close that each colour takes two passes, and one fan. */
class FanInWaitsTest {

  private static final String TOWELS =
      """
      plan: Tea towels in three paints
      cloth: {fibre: cotton, mass: 190 g/m², length: 2.2 m, width: 70 cm, washed: yes, ground: white, selvedge: 1 cm, allowances: {start: 3 cm, end: 3 cm, near: 2 cm, far: 2 cm}}
      table: {length: 2.5 m, width: 1.2 m, railed: yes}
      room: {temperature: 19 °C, humidity: 55 %}
      equipment: {sinks: 1, fans: 1}
      crew: [Wren, Tam]
      hours: 09:00-16:00
      protection: [gloves, heat gloves]
      screens:
        leaf: {frame: 30 x 34 cm, image: 15 x 15 cm, mesh: 43/cm, thread: 80 µm, squeegee: 17 cm}
        berry: {frame: 30 x 34 cm, image: 15 x 15 cm, mesh: 43/cm, thread: 80 µm, squeegee: 17 cm}
        stem: {frame: 30 x 34 cm, image: 15 x 15 cm, mesh: 61/cm, thread: 64 µm, squeegee: 17 cm}
      pastes:
        green: {medium: paint, colour: "#8fa863", amount: 250 g, label: {temperature: 150 °C, for: 4 min}}
        red: {medium: paint, colour: "#b5403a", amount: 120 g, label: {temperature: 150 °C, for: 4 min}}
        brown: {medium: paint, colour: "#3f2f28", amount: 120 g, label: {temperature: 150 °C, for: 4 min}}
      designs:
        sprig:
          size: 14 x 14 cm
          separations:
            - {screen: leaf, paste: green, covers: 28 %}
            - {screen: berry, paste: red, covers: 10 %, trap: 1 mm}
            - {screen: stem, paste: brown, covers: 9 %, key: yes, trap: 1 mm, detail: 0.6 mm}
      placements:
        sprigs: {design: sprig, fill: half-drop, pitch: 22 x 22 cm}
      """;

  private static final String RUN =
      """
      run:
        - mix: all
        - print: sprigs
          order: over all
          every other: yes
          dry between passes: until frame-safe
          dry between colours: until frame-safe
          by: Wren
        - end of day
        - heat-set: iron
          temperature: 150 °C
          for: 4 min
        - wash: 40 °C
          for: 15 min
      """;

  /** Pass by pass with the fan in every wait, as a printer wrote it by hand. */
  private static final String BY_HAND =
      """
      run:
        - mix: all
          by: Tam
        - print: sprigs
          only: [1, 3, 4, 6, 8, 9, 11, 13, 14, 16, 18, 19, 21, 23, 24]
          dry between colours: {until: frame-safe, air: fan}
          by: Wren
        - wash screen: all
        - dry: until frame-safe
          air: fan
        - print: sprigs
          only: [2, 5, 7, 10, 12, 15, 17, 20, 22, 25]
          dry between colours: {until: frame-safe, air: fan}
          by: Wren
        - dry: until fix-safe
          air: fan
        - heat-set: iron
          temperature: 150 °C
          for: 4 min
        - wash: 40 °C
          for: 15 min
      """;

  private static Proposal.Found proposed(String text) {
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(600), () -> 0);
    return (Proposal.Found) Proposer.proposed(SmallPlan.CHECKER, "towels.yaml", text, asked, 1);
  }

  private static Moment byHand() {
    return ((Checked.Judged) SmallPlan.CHECKER.check("towels.yaml", TOWELS + BY_HAND))
        .facts()
        .timeline()
        .finish();
  }

  @Test
  void theFanThatStandsThereSavesTheNight() {
    for (String text : new String[] {TOWELS + RUN, TOWELS}) {
      Proposal.Found found = proposed(text);
      assertThat(found.finish()).isLessThanOrEqualTo(byHand());
      assertThat(found.after().findings()).noneMatch(Judge::stands);
    }
  }

  @Test
  void whereHoursLieBetweenALongerSearchIsNamed() {
    Proposal.Found found = proposed(TOWELS + RUN);
    Checked.Judged plan = found.before();
    Proposal.Found later =
        new Proposal.Found(plan, "", plan, found.slowFinish(), found.bound(), 1, List.of());
    assertThat(later.proof())
        .endsWith(" later; a longer search, as by `--seconds 60`, may find a sooner run.");
    assertThat(found.proof()).doesNotContain("--seconds");
  }

  /** Paint dries in screens that wait for the second pass; nothing else is to be changed. */
  @Test
  void whereNoTimeIsSavedOnlyWhatCuresIsChanged() {
    String night =
        TOWELS.replace("09:00-16:00", "09:00-14:00")
            + BY_HAND
                .replace("  - wash screen: all\n", "")
                .replace("  - dry: until fix-safe\n    air: fan\n", "  - end of day\n");
    Proposal.Found found = proposed(night);
    assertThat(found.finish()).isEqualTo(found.ends().orElseThrow());
    assertThat(found.after().findings()).noneMatch(Judge::stands);
    assertThat(lines(found.text()))
        .filteredOn(line -> !lines(night).contains(line))
        .containsExactly("- wash screen: all");
    assertThat(lines(night)).allMatch(lines(found.text())::contains);
    assertThat(found.endsBut())
        .isEqualTo("as late as yours, but without what the check finds there");
    assertThat(found.cured())
        .singleElement()
        .asString()
        .startsWith("In yours drying/paint-dries-in-screen, line ")
        .contains("leaf the longest, 73 min");
  }

  private static List<String> lines(String text) {
    return text.lines()
        .map(line -> line.replaceFirst("#[^\"]*$", "").strip())
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
