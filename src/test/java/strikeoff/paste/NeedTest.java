package strikeoff.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;

/** What a colour needs over the run, and how old its paste gets. */
class NeedTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green";

  /**
   * By hand: 30 × 22 cm at 40 % are 264 cm², three prints of two pulls; a strike-off weighed 50
   * g/m² and pull: 7.92 g. One filling of a 24 cm image at 1 g/cm (0.5 to 1.5): 24 g. A tenth is
   * wasted.
   */
  @Test
  void theNeedIsWhatOneWorksOutByHand() {
    PasteUse use = printed(DYE + ", amount: 60 g, deposit: 50 g/m²");
    assertThat(use.impressions()).isEqualTo(3);
    assertThat(use.pulls()).isEqualTo(6);
    assertThat(use.printed().squareCm()).isCloseTo(792, within(1e-6));
    assertThat(use.onClothGrams().best()).isCloseTo(7.92, within(1e-9));
    assertThat(use.onClothGrams().isExact()).isTrue();
    assertThat(use.fillings()).isEqualTo(1);
    assertThat(use.needGrams().low()).isCloseTo((7.92 + 12) * 1.1, within(1e-9));
    assertThat(use.needGrams().best()).isCloseTo((7.92 + 24) * 1.1, within(1e-9));
    assertThat(use.needGrams().high()).isCloseTo((7.92 + 36) * 1.1, within(1e-9));
    assertThat(use.toMix().grams()).isEqualTo(50);
    assertThat(use.shortMost().grams()).isNegative();
    assertThat(use.runsOut()).isEmpty();
  }

  @Test
  void aPotThatIsShortTellsWhereItEnds() {
    PasteUse use = printed(DYE + ", amount: 33 g, deposit: 50 g/m²");
    assertThat(use.shortLeast().grams()).isNegative();
    assertThat(use.shortMost().grams()).isCloseTo(48.312 - 33, within(1e-6));
    assertThat(use.more().grams()).isEqualTo(20);
    assertThat(use.runsOut()).contains("reeds 3");
  }

  @Test
  void theMixedAmountItAsksForIsEnough() {
    PasteUse tight = printed(DYE + ", amount: 20 g");
    PasteUse mended = printed(DYE + ", amount: " + tight.toMix().grams() + " g");
    assertThat(tight.shortMost().grams()).isPositive();
    assertThat(mended.shortMost().grams()).isNotPositive();
  }

  @Test
  void aScreenIsFilledAgainOnANewDayAndAfterAnotherPaste() {
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
    assertThat(twoDays.the(PasteUse.class).fillings()).isEqualTo(2);
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
  @Property(tries = 15)
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

  /** Factors 20 → 30 °C for 60, 80 and 100 kJ/mol: 2.252, 2.953, 3.870. */
  @Test
  void tenDegreesWarmerLivesShrinkByArrhenius() {
    PasteAge warm = aged(DYE + ", amount: 100 g, alkali: in paste", 10, 30);
    assertThat(warm.lifeMinutes().high()).isCloseTo(60 / 2.252, within(0.02));
    assertThat(warm.lifeMinutes().best()).isCloseTo(60 / 2.953, within(0.02));
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
    assertThat(worked.the(NeverMixed.class).pastes()).containsExactly("green");
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
    assertThat(age.mixing()).contains("mix 2 fresh ones", age.lastUse().text(), "alkali out");
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
