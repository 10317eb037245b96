package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.report.page.DaySheet;

/** Day sheets of two who print side by side on a day with a break. */
class BesideSheetsTest {

  private static final List<DaySheet> SHEETS =
      DaySheets.of(
          (Checked.Judged)
              Checker.builtIn()
                  .check(
                      "plan.yaml",
                      """
                      plan: Two at one table
                      cloth: {length: 3 m, width: 1 m, washed: yes}
                      table: {length: 3 m, width: 1.4 m}
                      crew: [Wren, Tam]
                      hours: 09:00-12:30, 13:15-17:00
                      screens:
                        a: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
                        b: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
                        c: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
                      pastes:
                        blue: {medium: dye, group: DCT, colour: blue, mixed before: 1 h}
                        ink: {medium: dye, group: DCT, colour: black, mixed before: 1 h}
                        rust: {medium: dye, group: DCT, colour: sienna, mixed before: 1 h}
                      designs:
                        heron:
                          size: 20 x 20 cm
                          separations:
                            - {screen: a, paste: blue, covers: 40 %}
                            - {screen: b, paste: ink, covers: 10 %}
                        leaf: {size: 20 x 20 cm, separations: [{screen: c, paste: rust, covers: 40 %}]}
                      placements:
                        herons: {design: heron, at: ["20 cm, 20 cm", "70 cm, 20 cm"]}
                        leaves: {design: leaf, at: ["150 cm, 20 cm", "200 cm, 20 cm", "250 cm, 20 cm"]}
                      run:
                        - print: herons
                        - {print: leaves, by: Tam, begins: when free, air: fan}
                      """));

  @Test
  void whatTwoPrintAtTheSameTimeStaysTogether() {
    List<DaySheet.Job> prints =
        SHEETS.get(0).jobs().stream().filter(job -> job.what().startsWith("Print ")).toList();
    assertThat(prints)
        .extracting(DaySheet.Job::number, DaySheet.Job::what)
        .containsExactly(tuple("1.1", "Print herons 1, 2"), tuple("2.1", "Print leaves 1–3"));
    assertThat(prints.get(0).lines()).hasSize(2).allMatch(line -> line.who().equals("Wren"));
    // By hand: frames reach 12 cm over the designs, so heron 1 lies at 8 to 52 cm while leaf 1 lies
    // at 138 to 182 cm, and both go on by 50 cm.
    assertThat(prints.get(0).lines().get(0).with()).endsWith(", frames 86 cm or more from Tam's");
    assertThat(prints.get(1).lines())
        .singleElement()
        .satisfies(line -> assertThat(line.who()).isEqualTo("Tam"))
        .satisfies(
            line ->
                assertThat(line.with())
                    .endsWith(
                        ", frames 86 cm or more from Wren's, fan on to 09:18, then flood and cover"))
        .satisfies(
            line -> assertThat(line.begins()).isEqualTo(prints.get(0).lines().get(0).begins()));
  }

  /** Tam follows with the ink while Wren goes on with the blue: nobody's line begins anew. */
  @Test
  void whoFollowsWithTheNextColourHasOneLineForIt() {
    String row =
        """
        plan: One follows the other
        cloth: {length: 3.6 m, width: 1 m, washed: yes}
        table: {length: 4 m, width: 1.4 m}
        crew: [Wren, Tam]
        screens:
          a: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
          b: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        pastes:
          blue: {medium: dye, group: DCT, colour: blue, mixed before: 1 h}
          ink: {medium: dye, group: DCT, colour: black, mixed before: 1 h}
        designs:
          heron:
            size: 20 x 20 cm
            separations:
              - {screen: a, paste: blue, covers: 40 %}
              - {screen: b, paste: ink, covers: 10 %}
        placements:
          herons: {design: heron, series: 6, pitch: 55 cm, start: 20 cm, across: 30 cm}
        run:
          - {print: herons, by: [Wren, Tam]}
        """;
    List<DaySheet.Line> lines = prints(row);
    assertThat(lines)
        .extracting(DaySheet.Line::what, DaySheet.Line::who)
        .containsExactly(tuple("Blue", "Wren"), tuple("Ink", "Tam"));
    assertThat(lines.get(0).with()).doesNotContain("behind");
    // By hand: frames of 44 cm at a pitch of 55 cm don't meet, so Tam lays his where Wren has just
    // lifted hers; at 32 cm he has to leave one copy between, at 16 cm two.
    assertThat(lines.get(1).with()).endsWith(", 1 copy behind Wren");
    assertThat(prints(row.replace("55 cm", "32 cm")).get(1).with())
        .endsWith(", 2 copies behind Wren");
    assertThat(prints(row.replace("55 cm", "16 cm")).get(1).with())
        .endsWith(", 3 copies behind Wren");
  }

  private static List<DaySheet.Line> prints(String plan) {
    return DaySheets.of((Checked.Judged) Checker.builtIn().check("row.yaml", plan)).stream()
        .flatMap(sheet -> sheet.jobs().stream())
        .filter(job -> job.what().startsWith("Print "))
        .flatMap(job -> job.lines().stream())
        .toList();
  }

  @Test
  void theDaysStretchesStandInItsTitle() {
    assertThat(SHEETS.get(0).title()).isEqualTo("Day 1, 09:00 to 12:30 and 13:15 to 17:00");
  }
}
