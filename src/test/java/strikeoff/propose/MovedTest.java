package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.Impression;
import strikeoff.units.Span;

class MovedTest {

  private static final String ROW =
      """
      plan: A row of cockle shells
      cloth: {fibre: cotton, mass: 180 g/m², length: 4.6 m, width: 60 cm, washed: yes}
      table: {length: 5 m, width: 120 cm, railed: yes}
      hours: 09:00-17:00
      crew: [Wren, Tam]
      protection: [dust mask, gloves, goggles]
      screens:
        one: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
        two: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm, thread: 64 µm, squeegee: 31 cm}
      pastes:
        sand: {medium: dye, group: dichlorotriazine, colour: "#d9b77e", mixed before: 1 h}
        ink: {medium: dye, group: dichlorotriazine, colour: "#2b3440", mixed before: 1 h}
      designs:
        shell:
          size: 25 x 25 cm
          separations:
            - {screen: one, paste: sand, covers: 40 %, trap: 1.5 mm}
            - {screen: two, paste: ink, covers: 12 %, key: yes, detail: 1 mm}
      placements:
        row: {design: shell, series: 9, pitch: 48 cm, start: 14 cm, across: 17 cm}
      run:
        - print: row
        - dry: 5 h
      """
          + SmallPlan.fixed(false, "soda ash: 800 g, salt: 2 kg, water: 20 L");

  /** Two people, a row of shells in two colours: one follows the other along the table. */
  @Test
  void twoWhoPrintAtOnceAreNotToldToFetchFrames() {
    Proposal.Found found =
        (Proposal.Found)
            Proposer.proposed(SmallPlan.CHECKER, "row.yaml", ROW, SmallPlan.shortest(300), 1);
    List<Impression> run = found.after().facts().timeline().impressions();
    assertThat(run.stream())
        .as(found.text())
        .anyMatch(
            one ->
                run.stream()
                    .anyMatch(
                        other ->
                            other.step() == one.step()
                                && !other.person().equals(one.person())
                                && other.laid().compareTo(one.lifted()) < 0
                                && one.laid().compareTo(other.lifted()) < 0));
    assertThat(found.moved())
        .filteredOn(told -> told.contains("several people at once"))
        .singleElement()
        .asString()
        .contains(", in yours ")
        .endsWith(": they print at the same time, as far apart as the sheets say.");
  }

  /** A colour a day old in the printer's own run: how young it is in the proposed one is told. */
  @Test
  void aColourThatComesSoonerOnAnotherIsToldWithBothTimes() {
    String plan =
        ROW.replace(
            "  - print: row\n  - dry: 5 h\n",
            "  - print: row\n    colours: [sand]\n  - end of day\n"
                + "  - print: row\n    colours: [ink]\n  - dry: 5 h\n");
    Proposal.Found found =
        (Proposal.Found)
            Proposer.proposed(SmallPlan.CHECKER, "row.yaml", plan, SmallPlan.shortest(300), 1);
    assertThat(found.moved())
        .filteredOn(told -> told.startsWith("On the same print"))
        .as(found.text())
        .containsExactly(
            "On the same print ink goes on sand from "
                + youngest(found.after().facts().timeline().impressions())
                + " old on, in yours from "
                + youngest(found.before().facts().timeline().impressions())
                + ".");
  }

  private static String youngest(List<Impression> run) {
    double least = Double.MAX_VALUE;
    for (Impression sand : run) {
      for (Impression ink : run) {
        if (sand.footprint().placement().id() == ink.footprint().placement().id()
            && sand.footprint().separation().number() == 1
            && ink.footprint().separation().number() == 2) {
          least = Math.min(least, ink.laid().seconds() - sand.lifted().seconds());
        }
      }
    }
    return Span.ofSeconds(least).text();
  }
}
