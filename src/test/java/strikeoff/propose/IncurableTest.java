package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What no run cures is told, and nothing else, before any run is searched for: with as many runs
 * allowed as here a search would take hours.
 */
class IncurableTest {

  private static final String SOUND = new SmallPlan(2, 1, 52, 180, 1, false).text();

  private static Proposal proposed(String text, long effort) {
    return Proposer.proposed(SmallPlan.CHECKER, "row.yaml", text, SmallPlan.shortest(effort), 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "group: dichlorotriazine | group: dichlorotriazine, amount: 5 g | paste/short",
        "width: 120 cm | width: 30 cm | table/frame-off-table",
        "start: 14 cm | start: 130 cm | layout/image-off-cloth",
        "image: 27 x 27 cm | image: 20 x 20 cm | screens/separation-larger-than-image",
        "- fix: soak~    bath: {soda ash: 400 g, salt: 1 kg, water: 10 L}~    temperature: 30 °C~    for: 60 min~  - rinse | - rinse | fixing/dye-never-fixed",
      })
  void isToldAtOnce(String sound, String fault, String rule) {
    String text = SOUND.replace(sound.replace('~', '\n'), fault);
    assertThat(text).isNotEqualTo(SOUND);
    Proposal proposal = proposed(text, 100_000_000);
    assertThat(proposal)
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused ->
                assertThat(refused.findings()).extracting(f -> f.rule().id()).contains(rule));
  }

  /** Whatever is printed when: a search that counts on another order would look in vain. */
  @Test
  void aTrapIsOfTheArtwork() {
    String narrow = new SmallPlan(2, 2, 52, 180, 1, false).text().replace("1.5 mm", "0 mm");
    assertThat(proposed(narrow.replace("  - dry: until fix-safe\n", ""), 100_000_000))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why())
                  .startsWith("However its prints are arranged, a risk stays that no run cures");
              assertThat(refused.findings())
                  .extracting(f -> f.rule().id())
                  .containsExactly("order/trap-too-narrow");
            });
  }

  /** A soak with no wait is a fault of the run as written; what no run is free of comes first. */
  @Test
  void whatStandsInEveryRunIsToldFirst() {
    String late =
        new SmallPlan(2, 1, 52, 180, 1, false)
                .text()
                .replace("for: 60 min", "for: 23 h")
                .replace("  - end of day\n  - dry: until fix-safe\n", "")
            + "start on: 2026-03-02\nfinish by: 2026-03-02\n";
    assertThat(proposed(late, 40))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why()).startsWith("Of ");
              assertThat(refused.findings())
                  .extracting(f -> f.rule().id())
                  .contains("fixing/fixed-before-dry")
                  .first()
                  .isEqualTo("time/step-far-longer-than-any-day");
            });
  }

  /** As if its prints were left out of a run that it doesn't have. */
  @Test
  void ofAPlanWithoutPrintsItIsToldWhatStandsAgainstThem() {
    String text = new SmallPlan(2, 1, 52, 180, 1, false).text();
    String damp =
        text.substring(0, text.indexOf("run:")) + "room: {temperature: 8 °C, humidity: 100 %}\n";
    assertThat(proposed(damp, 40))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused ->
                assertThat(refused.findings())
                    .extracting(f -> f.rule().id())
                    .contains("drying/never-dry")
                    .doesNotContain("layout/not-printed"));
  }

  /** Whatever is printed when, dye and translucent paint stay darker than a black cloth. */
  @Test
  void aGroundIsOfTheCloth() {
    String black = new SmallPlan(2, 1, 52, 180, 1, true).text().replace("#f4efe4", "#202020");
    assertThat(proposed(black, 100_000_000))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why()).endsWith("the plan is not printable as it is.");
              assertThat(refused.findings())
                  .extracting(f -> f.rule().id())
                  .containsExactly("order/colour-lighter-than-ground");
            });
  }

  @Test
  void bracesRoundTheWholePlanAreToldByTheirLine() {
    String braces =
        """
        # A row.
        {plan: Row, protection: [dust mask, gloves, goggles],
         cloth: {fibre: linen, length: 2.1 m, width: 50 cm, washed: yes},
         table: {length: 2.4 m, width: 1.2 m},
         screens: {reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}},
         pastes: {green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}},
         designs: {reeds: {size: 30 x 22 cm,
           separations: [{screen: reeds, paste: green, covers: 40 %}]}},
         placements: {border: {design: reeds, border: near, from: 0 cm, to: 2.1 m, repeat: 30 cm,
           inset: 2 cm}},
         run: [{print: border}, {dry: until fix-safe}, {fix: steam, for: 15 min}]}
        """;
    assertThat(proposed(braces, 100_000_000))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused ->
                assertThat(refused.why())
                    .startsWith("The braces round the whole plan, from line 2 on, leave no place"));
  }

  @Test
  void andWithoutItARunIsFound() {
    assertThat(proposed(SOUND, 300)).isInstanceOf(Proposal.Found.class);
  }
}
