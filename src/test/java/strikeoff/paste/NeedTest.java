package strikeoff.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.checks.Worked;
import strikeoff.screens.Mesh;
import strikeoff.speech.PasteSpeech;
import strikeoff.speech.PasteUseSpeech;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;

/** What a colour needs over the run, and how old its paste gets. */
class NeedTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green";

  /** 43 threads a centimetre of 80 µm. */
  private static final Mesh MESH = new Mesh(new MeshCount(43), new Length(0.08));

  /**
   * By hand: 30 × 22 cm at 40 % are 264 cm², three prints of two pulls; a strike-off weighed 50
   * g/m² and pull, and a second pull adds half (30 to 80 %): 5.94 g (5.148 to 7.128). At the last
   * pull as at the first 2 g/cm (1 to 3) lie before a blade of 24 cm, 48 g (24 to 72); the mesh
   * holds its volume over 31 × 24 cm; 4.5 g (3 to 6) cling to the blade. Of the bead a quarter (a
   * tenth to two fifths) is lost where the screen is washed out. A tenth is wasted.
   */
  @Test
  void theNeedIsWhatOneWorksOutByHand() {
    PasteUse use = printed(DYE + ", amount: 100 g, deposit: 50 g/m²");
    assertThat(use.impressions()).isEqualTo(3);
    assertThat(use.pulls()).isEqualTo(6);
    assertThat(use.printed().squareCm()).isCloseTo(792, within(1e-6));
    assertThat(use.onClothGrams().low()).isCloseTo(5.148, within(1e-9));
    assertThat(use.onClothGrams().best()).isCloseTo(5.94, within(1e-9));
    assertThat(use.onClothGrams().high()).isCloseTo(7.128, within(1e-9));
    assertThat(use.washes()).isEqualTo(1);
    Range inMesh = MESH.theoreticalVolume().times(1.05 * 0.31 * 0.24);
    // apart from its best the root of the squares of cloth, mesh with blade, and bead
    double below = Math.sqrt(sq(5.94 - 5.148) + sq(inMesh.best() - inMesh.low() + 1.5) + sq(24));
    double above = Math.sqrt(sq(7.128 - 5.94) + sq(inMesh.high() - inMesh.best() + 1.5) + sq(24));
    double best = 5.94 + 48 + inMesh.best() + 4.5;
    assertThat(use.needGrams().low()).isCloseTo((best - below) * 1.1, within(1e-9));
    assertThat(use.needGrams().best()).isCloseTo(best * 1.1, within(1e-9));
    assertThat(use.needGrams().high()).isCloseTo((best + above) * 1.1, within(1e-9));
    assertThat(use.leftGrams().best()).isCloseTo(12 + inMesh.best() + 4.5, within(1e-9));
    assertThat(use.scrapedBack().grams()).isCloseTo(36, within(1e-9));
    // 62.4 + 24.1 with a tenth are 95.2 g
    assertThat(use.toMix().grams()).isEqualTo(100);
    assertThat(use.shortMost().grams()).isNegative();
    assertThat(use.runsOut()).isEmpty();
  }

  private static double sq(double number) {
    return number * number;
  }

  @Test
  void aPotThatIsShortTellsWhereItEnds() {
    PasteUse use = printed(DYE + ", amount: 67 g, deposit: 50 g/m²");
    assertThat(use.shortLeast().grams()).isNegative();
    assertThat(use.shortMost().grams()).isCloseTo(use.needGrams().high() - 67, within(1e-6));
    // 95.2 g, weighed in steps of 5 g: 100 g, which is 33 more than 67
    assertThat(use.toMix().grams()).isEqualTo(100);
    assertThat(use.more().grams()).isEqualTo(33);
    assertThat(PasteUseSpeech.mixingEnough(use, Measures.METRIC)).isEqualTo("Mix 100 g, 33 g more");
    assertThat(use.runsOut()).contains("reeds 3");
  }

  @Test
  void theMixedAmountItAsksForIsEnough() {
    PasteUse tight = printed(DYE + ", amount: 20 g");
    PasteUse mended = printed(DYE + ", amount: " + tight.toMix().grams() + " g");
    assertThat(tight.shortMost().grams()).isPositive();
    assertThat(mended.shortMost().grams()).isNotPositive();
  }

  /** Another screen's bead is scraped back into the pot before this one's is taken from it. */
  @Test
  void aBeadIsTakenFromThePotOnceWhereOneScreenPrintsAfterTheOther() {
    PasteUse use =
        Worked.of(
                """
                plan: Reeds and buds
                cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
                table: {length: 2.4 m, width: 1.4 m}
                pastes:
                  green: {medium: dye, group: DCT, colour: green, amount: 200 g, deposit: 50 g/m²}
                screens:
                  reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
                  buds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
                  buds: {size: 30 x 22 cm, separations: [{screen: buds, paste: green, covers: 40 %}]}
                placements:
                  reeds: {design: reeds, series: 2, pitch: 40 cm, start: 5 cm, across: 30 cm}
                  buds: {design: buds, series: 2, pitch: 40 cm, start: 100 cm, across: 30 cm}
                run:
                  - mix: all
                  - print: reeds
                  - print: buds
                """)
            .the(PasteUse.class);
    double lost = use.leftGrams().best();
    // half of what is lost goes with the first screen, and 36 g of 48 come back from it
    assertThat(use.needGrams().best())
        .isCloseTo((use.onClothGrams().best() + lost + 36) * 1.1, within(1e-9));
    assertThat(use.washes()).isEqualTo(2);
  }

  @Test
  void pasteIsLostWhereTheScreenIsWashedOutAndNotAtAPause() {
    Worked twoDays =
        Worked.reeds(
            DYE + ", amount: 100 g",
            """
            - mix: all
            - print: reeds
              only: [1, 2]
            - end of day
            - print: reeds
              only: [3]
            """);
    assertThat(twoDays.the(PasteUse.class).washes()).isEqualTo(2);
    Worked paused =
        Worked.reeds(
            DYE + ", amount: 100 g",
            """
            - mix: all
            - print: reeds
              only: [1, 2]
            - dry: 90 min
            - print: reeds
              only: [3]
            """);
    assertThat(paused.the(PasteUse.class).washes()).isEqualTo(1);
  }

  /** The frame is 110 cm long, and more than 90 takes two; common practice, no source. */
  private static PasteUse byTwo(String people) {
    return Worked.of(
            """
            plan: Banner with reeds
            cloth: {length: 2.4 m, width: 120 cm, washed: yes}
            table: {length: 2.4 m, width: 1.4 m}
            crew: [Wren, Tam, Ada]
            screens:
              reeds: {frame: 60 x 110 cm, image: 40 x 80 cm, mesh: 43/cm}
            pastes:
              green: {medium: dye, group: DCT, colour: green, amount: 100 g}
            designs:
              reeds: {size: 40 x 80 cm, separations: [{screen: reeds, paste: green, covers: 30 %%}]}
            placements:
              reeds: {design: reeds, series: 2, pitch: 100 cm, start: 40 cm, across: 20 cm}
            run:
              - mix: all
              - {print: reeds, by: %s}
            """
                .formatted(people))
        .the(PasteUse.class);
  }

  @Test
  void twoPeopleAtOneFrameAreOneFrame() {
    PasteUse two = byTwo("[Wren, Ada]");
    assertThat(two.impressions()).isEqualTo(2);
    assertThat(two.washes()).isEqualTo(1);
    assertThat(two.needGrams()).isEqualTo(byTwo("Wren").needGrams());
  }

  @Test
  void mixedTwiceIsTwiceTheAmount() {
    PasteUse use =
        Worked.reeds(
                DYE + ", amount: 40 g",
                """
                - mix: green
                - print: reeds
                  only: [1, 2]
                - mix: green
                - print: reeds
                  only: [3]
                """)
            .the(PasteUse.class);
    assertThat(use.batches()).isEqualTo(2);
    assertThat(use.mixedGrams().orElseThrow().best()).isEqualTo(80);
  }

  /** Half a litre of paste of 1050 g/L, filled to within a tenth: 525 g, 472.5 to 577.5. */
  @Test
  void anAmountByVolumeIsWeighedThroughItsDensity() {
    PasteUse use = printed(DYE + ", amount: 500 ml");
    assertThat(use.mixedGrams().orElseThrow().best()).isCloseTo(525, within(1e-9));
    assertThat(use.mixedGrams().orElseThrow().low()).isCloseTo(472.5, within(1e-9));
    assertThat(use.mixedGrams().orElseThrow().high()).isCloseTo(577.5, within(1e-9));
  }

  /** What lies on the cloth adds up over placements, whichever step prints them. */
  @Property(tries = 15, seed = Draws.ALIKE)
  void needIsAdditiveOverPlacements(@ForAll @IntRange(min = 1, max = 5) int first) {
    PasteUse all = some("[1, 2, 3, 4, 5, 6]");
    StringBuilder head = new StringBuilder("[");
    StringBuilder tail = new StringBuilder("[");
    for (int i = 1; i <= 6; i++) {
      (i <= first ? head : tail).append(i).append(i == first || i == 6 ? "]" : ", ");
    }
    PasteUse one = some(head.toString());
    PasteUse other = some(tail.toString());
    assertThat(one.onClothGrams().low() + other.onClothGrams().low())
        .isCloseTo(all.onClothGrams().low(), within(1e-9));
    assertThat(one.onClothGrams().high() + other.onClothGrams().high())
        .isCloseTo(all.onClothGrams().high(), within(1e-9));
    assertThat(one.pulls() + other.pulls()).isEqualTo(all.pulls());
  }

  private static PasteUse some(String only) {
    return Worked.reeds(
            """
            pastes:
              green: {medium: dye, group: DCT, colour: green, amount: 100 g}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
            placements:
              reeds: {design: reeds, series: 6, pitch: 31 cm, start: 5 cm, across: 30 cm}
            run:
              - mix: all
              - print: reeds
                only: %s
            """
                .formatted(only))
        .the(PasteUse.class);
  }

  /** A day of 8 hours at 20 °C: the stated hour with alkali, the stated week without. */
  @Test
  void atTheStatedTemperatureLivesAreTheStatedOnes() {
    PasteAge alkaline = aged(DYE + ", amount: 100 g, alkali: in paste", 2 * 60, 20);
    assertThat(alkaline.lifeMinutes().isExact()).isTrue();
    assertThat(alkaline.lifeMinutes().best()).isCloseTo(60, within(1e-9));
    assertThat(alkaline.overLeast().minutes()).isPositive();
    PasteAge plain = aged(DYE + ", amount: 100 g", 2 * 60, 20);
    assertThat(plain.lifeMinutes().best()).isCloseTo(7 * 1440, within(1e-6));
    assertThat(plain.overMost().minutes()).isNegative();
  }

  /** About 4 h with a dichlorotriazine: common practice, no source. Washing soda is soda. */
  @Test
  void bakingSodaIsMilderThanSoda() {
    PasteAge baking = aged(DYE + ", recipe: {baking soda: 3 g, water: 150 ml}", 2 * 60, 20);
    assertThat(baking.alkali()).isEqualTo(HeldAlkali.BICARBONATE);
    assertThat(baking.lifeMinutes().best()).isCloseTo(4 * 60, within(1e-9));
    PasteAge both =
        aged(DYE + ", recipe: {baking soda: 3 g, washing soda: 1 g, water: 150 ml}", 2 * 60, 20);
    assertThat(both.lifeMinutes().best()).isCloseTo(60, within(1e-9));
  }

  /** A monochlorotriazine lives a week with soda and four without any alkali. */
  @Test
  void withBakingSodaNoPasteOutlivesTheOneWithoutAlkali() {
    String paste = "medium: dye, group: MCT, colour: green, recipe: {baking soda: 3 g, water: 1 l}";
    assertThat(aged(paste, 60, 20).lifeMinutes().best()).isLessThanOrEqualTo(28 * 1440);
  }

  /** Factors 20 → 30 °C for 60, 81 and 100 kJ/mol: 2.252, 2.993, 3.870. */
  @Test
  void tenDegreesWarmerLivesShrinkByArrhenius() {
    PasteAge warm = aged(DYE + ", amount: 100 g, alkali: in paste", 10, 30);
    assertThat(warm.lifeMinutes().high()).isCloseTo(60 / 2.252, within(0.02));
    assertThat(warm.lifeMinutes().best()).isCloseTo(60 / 2.993, within(0.02));
    assertThat(warm.lifeMinutes().low()).isCloseTo(60 / 3.870, within(0.02));
  }

  @Test
  void mixedWhenItAsksForItLastsToTheEnd() {
    PasteAge old = aged(DYE + ", amount: 100 g, alkali: in paste", 2 * 60, 20);
    assertThat(old.lastUse().since(old.mixFrom()).minutes())
        .isLessThanOrEqualTo(old.lifeMinutes().low());
    assertThat(old.marks()).containsExactly("reeds 1", "reeds 2", "reeds 3");
  }

  @Test
  void pasteMixedBeforeTheDayIsOlder() {
    PasteAge age = aged(DYE + ", amount: 100 g, mixed before: 8 days", 0, 20);
    assertThat(age.age().hours()).isGreaterThan(8 * 24);
    assertThat(age.overLeast().minutes()).isPositive();
  }

  @Test
  void pasteThatNobodyMixesHasNoAge() {
    Worked worked = Worked.reeds(DYE + ", amount: 100 g", "- print: reeds\n");
    assertThat(worked.all(PasteAge.class)).isEmpty();
    assertThat(worked.the(FirstPrint.class).mixings()).isZero();
  }

  private static PasteUse printed(String paste) {
    return Worked.reeds(paste, "- mix: all\n- print: reeds\n").the(PasteUse.class);
  }

  /** Three prints 42 minutes apart and a life of 60: the third one needs a batch of its own. */
  @Test
  void aRunThatIsLongerThanThePasteLivesTakesFreshBatches() {
    PasteAge age =
        Worked.reeds(
                """
                room: {temperature: 20 °C}
                pastes:
                  green: {%s, amount: 100 g, alkali: in paste}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
                placements:
                  reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
                run:
                  - mix: all
                  - print: reeds
                    pause: 41 min
                """
                    .formatted(DYE))
            .the(PasteAge.class);
    assertThat(age.batches()).hasSize(2);
    assertThat(age.batches().get(1)).isEqualTo(age.lastUse());
    assertThat(PasteSpeech.mixing(age))
        .contains("mix 2 fresh ones", age.lastUse().text(), "alkali out");
  }

  private static PasteAge aged(String paste, int minutes, int celsius) {
    String mix = paste.contains("mixed before") ? "" : "  - mix: all\n";
    return Worked.reeds(
            """
            room: {temperature: %d °C}
            pastes:
              green: {%s}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
            placements:
              reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
            run:
            %s  - dry: %d min
              - print: reeds
            """
                .formatted(celsius, paste, mix, Math.max(1, minutes)))
        .the(PasteAge.class);
  }
}
