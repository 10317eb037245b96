package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.Surety;
import strikeoff.findings.Severity;
import strikeoff.plan.PrintStep;

/** Plans that print again on cloth that was fixed: each part is arranged by itself. */
class InPartsTest {

  private static final Checker CHECKER = Checker.builtIn();

  /** Shells in dye, soaked and washed; the next day paint on them, ironed. */
  private static final String SHELLS =
      """
      plan: Cockle shells, lit in pearl once they are fixed
      cloth:
        fibre: cotton
        mass: 180 g/m²
        length: 2.4 m
        width: 60 cm
        ground: "#f4efe4"
        washed: yes
        allowances: {start: 2 cm, end: 2 cm, near: 2 cm, far: 2 cm}
      table: {length: 180 cm, width: 120 cm, railed: yes}
      hours: 09:00-17:00
      crew: [Wren, Tam]
      equipment: {fans: 1}
      protection: [dust mask, gloves, goggles, heat gloves]
      screens:
        shell: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
        rib: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm, thread: 64 µm, squeegee: 31 cm}
        glint: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
      pastes:
        sand: {medium: dye, group: dichlorotriazine, colour: "#8a6d4b", amount: 250 g}
        dark: {medium: dye, group: dichlorotriazine, colour: "#2b3440", amount: 200 g}
        pearl: {medium: paint, transparent: no, colour: "#fdfbf2", amount: 200 g}
      designs:
        shell:
          size: 25 x 25 cm
          separations:
            - {screen: shell, paste: sand, covers: 40 %, trap: 1.5 mm}
            - {screen: rib, paste: dark, covers: 10 %, key: yes}
        glint:
          size: 10 x 10 cm
          separations:
            - {screen: glint, paste: pearl, covers: 30 %}
      placements:
        shells: {design: shell, series: 4, pitch: 52 cm, start: 14 cm, across: 17 cm}
        glints: {design: glint, series: 4, pitch: 52 cm, start: 22 cm, across: 24 cm, over: shells}
      run:
        - mix: [sand, dark]
        - print: shells
          dry between colours: until frame-safe
          before moving: until lift-safe
        - end of day
        - fix: soak # by the kitchen clock
          bath: {soda ash: 400 g, salt: 1 kg, water: 10 L}
          temperature: 30 °C
          for: 60 min
        - rinse: 20 °C
          for: 20 min
        - wash: 60 °C
          for: 15 min
        - end of day # on the line overnight
        - mix: pearl
        - print: glints
          before moving: until lift-safe
        - end of day
        - heat-set: iron
          temperature: 150 °C
          for: 5 min
      """;

  private static Proposal proposed(String text, int effort) {
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(effort), () -> 0);
    return Proposer.proposed(CHECKER, "shells.yaml", text, asked, 2);
  }

  private static Proposal.Found found(String text) {
    return (Proposal.Found) proposed(text, 400);
  }

  private static List<Class<?>> wet(Checked.Judged judged) {
    return judged.plan().run().stream()
        .filter(step -> step instanceof PrintStep || Leeway.isWet(step))
        .<Class<?>>map(Object::getClass)
        .distinct()
        .toList();
  }

  @Test
  void eachPartIsArrangedAndWhatFixesItStays() {
    Proposal.Found found = found(SHELLS);
    assertThat(found.after().findings()).allMatch(f -> f.severity() == Severity.ADVICE);
    assertThat(found.ends().orElseThrow().day()).isEqualTo(4);
    assertThat(found.finish().day()).isEqualTo(2);
    assertThat(wet(found.after())).isEqualTo(wet(found.before()));
    assertThat(found.text())
        .contains("  - fix: soak # by the kitchen clock\n")
        .contains("  - end of day # on the line overnight\n  - mix: pearl\n");
  }

  @Test
  void itsBoundGoesThroughAllParts() {
    Proposal.Found found = found(SHELLS);
    Bound bound = found.bound();
    assertThat(bound.before()).hasSize(1);
    assertThat(bound.before().get(0).finish().day()).isEqualTo(1);
    // The night on the line lies between them.
    assertThat(bound.finish().day()).isEqualTo(2);
    assertThat(bound.finish()).isLessThanOrEqualTo(found.finish());
    assertThat(found.proof())
        .contains("what is printed before is fixed and clean on day 1, ")
        .contains("); then ");
  }

  @Test
  void theSameEffortFindsTheSame() {
    assertThat(found(SHELLS).text()).isEqualTo(found(SHELLS).text());
  }

  @Test
  void whatLacksInALaterPartIsMendedThere() {
    String early =
        SHELLS.replace("    before moving: until lift-safe\n  - end of day\n  - heat", "  - heat");
    Checked.Judged judged = (Checked.Judged) CHECKER.check("shells.yaml", early);
    assertThat(judged.of(Severity.STOP)).isNotEmpty();
    Proposal.Found found = found(early);
    assertThat(found.after().findings()).allMatch(f -> f.severity() == Severity.ADVICE);
  }

  @Test
  void aDateThatTheRunAsWrittenMissesIsKept() {
    String by = SHELLS + "start on: 2027-03-06\nfinish by: 2027-03-07\n";
    assertThat(((Checked.Judged) CHECKER.check("shells.yaml", by)).findings())
        .anyMatch(f -> f.rule().id().equals("time/ends-after-date"));
    assertThat(found(by).finish().day()).isEqualTo(2);
  }

  @Test
  void whatNoRunCuresIsTold() {
    String weak = SHELLS.replace("soda ash: 400 g", "soda ash: 10 g");
    assertThat(proposed(weak, 60))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why()).contains("no. 1 of 2");
              assertThat(refused.findings())
                  .anyMatch(f -> f.place().path().text().startsWith("run[3]"));
            });
  }

  @Test
  void aColourOfItsDesignMayComeLater() {
    String parted =
        SHELLS
            .replace("- print: shells\n", "- print: shells\n    colours: [sand]\n")
            .replace("- mix: pearl\n  - print: glints\n", LATER);
    Proposal proposal = proposed(parted, 400);
    assertThat(proposal).isInstanceOf(Proposal.Found.class);
    String text = ((Proposal.Found) proposal).text();
    assertThat(text.indexOf("colours: sand")).isLessThan(text.indexOf("- fix: soak #"));
    assertThat(text.indexOf("colours: dark")).isGreaterThan(text.indexOf("- wash: 60 °C"));
  }

  @Test
  void whereNothingIsSaidOfFixingDyeIsFixedBeforePaintGoesOverIt() {
    Proposal.Found found = found(SHELLS.substring(0, SHELLS.indexOf("run:")));
    assertThat(found.after().findings()).allMatch(f -> f.severity() == Severity.ADVICE);
    String text = found.text();
    assertThat(text.indexOf("- print: shells")).isLessThan(text.indexOf("- fix: soak"));
    assertThat(text.indexOf("- wash: 60 °C")).isLessThan(text.indexOf("- print: glints"));
    assertThat(text.indexOf("- print: glints")).isLessThan(text.indexOf("- heat-set: iron"));
    assertThat(found.notes())
        .anyMatch(note -> note.contains("nothing of how its prints are fixed"));
  }

  /** Of one design the dye is fixed and washed before its paint goes on; under paint it is not. */
  @Test
  void soItIsWithinADesign() {
    String both =
        SHELLS
            .substring(0, SHELLS.indexOf("run:"))
            .replace("dark: {medium: dye, group: dichlorotriazine,", "dark: {medium: paint,");
    Proposal.Found found = found(both);
    assertThat(found.after().findings()).allMatch(f -> f.severity() == Severity.ADVICE);
    String text = found.text();
    assertThat(text.indexOf("colours: sand")).isLessThan(text.indexOf("- fix: soak"));
    assertThat(text.indexOf("- wash: 60 °C")).isLessThan(text.indexOf("colours: dark"));
    assertThat(text.indexOf("colours: dark")).isLessThan(text.indexOf("- heat-set: iron"));
    String under =
        both.replace("paste: sand, covers: 40 %, trap: 1.5 mm", "paste: pearl, covers: 40 %")
            .replace("paste: dark", "paste: sand");
    assertThat(proposed(under, 100))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> assertThat(refused.why()).doesNotContain("However its prints"));
  }

  @Test
  void paintBesideDyeIsSetBeforeItGetsWet() {
    String beside =
        SHELLS
            .substring(0, SHELLS.indexOf("run:"))
            .replace(
                "series: 4, pitch: 52 cm, start: 14 cm", "series: 2, pitch: 52 cm, start: 14 cm")
            .replace(
                "series: 4, pitch: 52 cm, start: 22 cm, across: 24 cm, over: shells",
                "series: 2, pitch: 52 cm, start: 130 cm, across: 24 cm")
            .replace("#fdfbf2", "#a4532f");
    Proposal.Found found = found(beside);
    assertThat(found.after().findings()).allMatch(f -> f.severity() == Severity.ADVICE);
    String text = found.text();
    assertThat(Phase.of(found.after().plan().run())).hasSize(1);
    assertThat(text.indexOf("- heat-set: iron")).isLessThan(text.indexOf("- fix: soak"));
  }

  @Test
  void aPlanInInchesGetsItsBathInQuarts() {
    String reeds =
        """
        plan: Reed napkins
        cloth: {fibre: cotton, mass: 5.3 oz/yd², length: 60 in, width: 22 in, ground: white, washed: yes}
        table: {length: 72 in, width: 40 in}
        crew: [Wren]
        protection: [dust mask, gloves, goggles]
        screens:
          reed: {frame: 16 x 16 in, image: 10 x 10 in, mesh: 110/in, squeegee: 11 in}
        pastes:
          green: {medium: dye, group: dichlorotriazine, colour: "#40583a"}
        designs:
          reed: {size: 8 x 8 in, separations: [{screen: reed, paste: green, covers: 30 %}]}
        placements:
          reeds: {design: reed, series: 3, pitch: 18 in, start: 6 in, across: 6 in}
        """;
    Proposal.Found found = found(reeds);
    assertThat(found.text())
        .containsPattern("bath: \\{soda ash: [\\d.]+ oz, salt: [\\d.]+ oz, water: [\\d /]+ qt\\}")
        .contains("temperature: 90 °F")
        .contains("- rinse: 68 °F");
    assertThat(found.after().findings())
        .allMatch(f -> f.severity() == Severity.ADVICE)
        .noneMatch(f -> f.rule().id().equals("fixing/soak-short-of-salt"));
  }

  private static final String LATER =
      """
      - print: shells
          colours: [dark]
          before moving: until lift-safe
        - end of day
        - fix: soak
          bath: {soda ash: 400 g, salt: 1 kg, water: 10 L}
          temperature: 30 °C
          for: 60 min
        - rinse: 20 °C
          for: 20 min
        - wash: 60 °C
          for: 15 min
        - end of day
        - mix: pearl
        - print: glints
      """;
}
