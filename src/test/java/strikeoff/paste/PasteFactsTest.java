package strikeoff.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.day.Moment;
import strikeoff.speech.PasteSpeech;
import strikeoff.speech.PasteUseSpeech;
import strikeoff.units.Measures;

/**
 * What is told of pastes. {@link NeedTest} works the need out by hand: three reeds of 264 cm² in
 * two pulls of 50 g/m², one washing out, a tenth wasted: at most 95.2 g.
 */
class PasteFactsTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green, deposit: 50 g/m²";
  private static final String PRINT = "- mix: all\n- print: reeds\n";

  @Test
  void whatIsLeftOverIsToldByTheMostCarefulEstimate() {
    PasteUse use = use(DYE + ", amount: 100 g");
    double most = use.needGrams().high();
    assertThat(most).isCloseTo(95.2, within(0.1));
    assertThat(use.over().grams()).isCloseTo(100 - most, within(1e-6));
    assertThat(use.overShare().fraction()).isCloseTo((100 - most) / most, within(1e-6));
    assertThat(use.more().grams()).isZero();
    assertThat(use.amountKnown()).isTrue();
    assertThat(use.path().text()).isEqualTo("pastes.green.amount");
    assertThat(PasteUseSpeech.basis(use)).isEqualTo("weighed on a strike-off");
    assertThat(PasteUseSpeech.emptyAt(use)).isEqualTo("by the best estimate it just suffices");
    assertThat(PasteUseSpeech.washed(use)).isEqualTo("once");
  }

  /**
   * A little colour needs many times what lies on the cloth. 30 g/m² on 792 cm², half as much again
   * for a second pull, are 3.6 g. A bead of 2 g along each of 24 cm leaves a quarter, 12 g, and
   * three quarters go back; 4 g fill the mesh and 4.5 g cling to the blade.
   */
  @Test
  void theNeedIsToldInItsParts() {
    PasteUse use = use("medium: dye, group: DCT, colour: green, deposit: 30 g/m², amount: 9 g");
    assertThat(use.leftGrams().best())
        .isCloseTo(use.needGrams().best() / 1.1 - use.onClothGrams().best() - 36, within(1e-9));
    Matcher grams =
        Pattern.compile("([\\d.]+) g ").matcher(PasteUseSpeech.parts(use, Measures.METRIC));
    List<Double> told = new ArrayList<>();
    while (grams.find()) {
      told.add(Double.valueOf(grams.group(1)));
    }
    assertThat(told).hasSize(4);
    assertThat(told.get(0)).isCloseTo(0.03 * 79.2 * 1.5, within(0.05));
    assertThat(told.get(1)).isCloseTo(12 + 4 + 4.5, within(0.6));
    assertThat(told.get(2)).isCloseTo(36, within(0.6));
    assertThat(told.stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(use.needGrams().best(), within(0.6));
    assertThat(PasteUseSpeech.parts(use, Measures.METRIC))
        .contains("where a screen is washed out once (what fills");
  }

  @Test
  void withoutAnAmountNothingIsMissingAndNothingLeft() {
    PasteUse use = use(DYE);
    assertThat(use.amountKnown()).isFalse();
    assertThat(use.shortLeast().grams()).isZero();
    assertThat(use.shortMost().grams()).isZero();
    assertThat(use.more().grams()).isZero();
    assertThat(use.over().grams()).isZero();
    assertThat(use.toMix().grams()).isEqualTo(100);
    assertThat(use.path().text()).isEqualTo("pastes.green");
    assertThat(use(DYE + ", recipe: {dye: 3 g, water: 90 g}").path().text())
        .isEqualTo("pastes.green.recipe");
    assertThat(PasteUseSpeech.basis(use("medium: dye, group: DCT, colour: green")))
        .isEqualTo("estimated from the mesh");
  }

  /**
   * 1960 g/m² and pull: 232.8 g, at most 46.6 more, and 56.4 g in the screen, at most 24.1 more:
   * with a tenth 375.9 at the most, and above 200 g one weighs in tens.
   */
  @Test
  void muchPasteIsWeighedInCoarserSteps() {
    PasteUse use = use("medium: dye, group: DCT, colour: green, deposit: 1960 g/m², amount: 150 g");
    assertThat(use.toMix().grams()).isEqualTo(380);
    assertThat(use.more().grams()).isEqualTo(230);
    assertThat(use.shortLeast().grams()).isCloseTo(use.needGrams().low() - 150, within(1e-6));
    // one print takes 77.6 g, and 56.4 g are in the screen
    assertThat(PasteUseSpeech.emptyAt(use))
        .isEqualTo("by the best estimate the pot is empty at reeds 2");
    // 30 g/m² and pull: 3.6 g, 56.4 and 24.1 more with a tenth are 92.5: little is weighed in fives
    PasteUse little = use("medium: dye, group: DCT, colour: green, deposit: 30 g/m², amount: 9 g");
    assertThat(little.toMix().grams()).isEqualTo(95);
  }

  @Test
  void washesAreToldInWords() {
    String day = "- end of day\n- print: reeds\n  only: ";
    PasteUse three =
        Worked.reeds(
                DYE, "- mix: all\n- print: reeds\n  only: [1]\n" + day + "[2]\n" + day + "[3]\n")
            .the(PasteUse.class);
    assertThat(PasteUseSpeech.washed(three)).isEqualTo("3 times");
    PasteUse two =
        Worked.reeds(DYE, "- mix: all\n- print: reeds\n  only: [1, 2]\n" + day + "[3]\n")
            .the(PasteUse.class);
    assertThat(PasteUseSpeech.washed(two)).isEqualTo("twice");
  }

  /**
   * The limits are 1.5 and 9, and 2 and 4 g in 100 ml of paste of 1.05 g/ml. With 98 g of the rest,
   * g grams make (98 + g) / 1.05 ml: g = 0.015 · 98 / (1.05 − 0.015) = 1.420, and so on.
   */
  @Test
  void thickenerIsAskedForWithWhatItAddsItself() {
    Worked worked =
        Worked.reeds(DYE + ", recipe: {dye: 3 g, urea: 10 g, alginate: 2 g, water: 85 g}", PRINT);
    ThickenerStrength strength = worked.the(ThickenerStrength.class);
    assertThat(strength.share().best()).isCloseTo(0.021, within(1e-9));
    assertThat(strength.gramsForThin().grams()).isCloseTo(1.4203, within(1e-3));
    assertThat(strength.gramsForThick().grams()).isCloseTo(9.1875, within(1e-3));
    ThickenerOnMesh mesh = worked.the(ThickenerOnMesh.class);
    assertThat(mesh.gramsForCoarse().grams()).isCloseTo(1.9029, within(1e-3));
    assertThat(mesh.gramsForFine().grams()).isCloseTo(3.8812, within(1e-3));
    assertThat(mesh.related()).hasSize(1);
    // water and dye without any thickener is coloured water
    assertThat(
            Worked.reeds(DYE + ", recipe: {dye: 3 g, water: 97 g}", PRINT)
                .the(ThickenerStrength.class)
                .share()
                .high())
        .isZero();
  }

  @Test
  void onlyTheCoarsestAndTheFinestMeshAreAskedAbout() {
    Worked worked =
        Worked.of(
            """
            plan: test
            cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
            screens:
              coarse: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 34/cm}
              middle: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
              fine: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 77/cm}
            pastes:
              green: {medium: dye, group: DCT, colour: green, recipe: {dye: 3 g, alginate: 2 g, water: 95 g}}
            designs:
              reeds:
                size: 30 x 22 cm
                separations:
                  - {screen: middle, paste: green, covers: 40 %}
                  - {screen: fine, paste: green, covers: 30 %}
                  - {screen: coarse, paste: green, covers: 20 %}
            placements:
              reeds: {design: reeds, at: "10 cm, 30 cm"}
            """);
    assertThat(worked.all(ThickenerOnMesh.class))
        .extracting(ThickenerOnMesh::screen)
        .containsExactlyInAnyOrder("coarse", "fine");
  }

  @Test
  void aThickenerThatStoodTooBrieflyStandsOn() {
    ThickenerHistory warm =
        Worked.reeds(DYE + ", thickener: {stood: 20 min, age: 1 day, kept: room}", PRINT)
            .the(ThickenerHistory.class);
    // an hour is the policy's shortest
    assertThat(warm.standMore().minutes()).isEqualTo(40);
    assertThat(warm.keptWarm()).isTrue();
    ThickenerHistory cold =
        Worked.reeds(DYE + ", thickener: {stood: 12 h, age: 1 day, kept: cold}", PRINT)
            .the(ThickenerHistory.class);
    assertThat(cold.standMore().minutes()).isZero();
    assertThat(cold.keptWarm()).isFalse();
  }

  @Test
  void aRecipeThatIsTooMuchSaysSo() {
    RecipeSum sum =
        Worked.reeds(DYE + ", amount: 50 g, recipe: {dye: 3 g, urea: 10 g, water: 87 g}", PRINT)
            .the(RecipeSum.class);
    assertThat(sum.missing().grams()).isCloseTo(-50, within(1e-9));
    assertThat(sum.offShare().fraction()).isCloseTo(1, within(1e-9));
    assertThat(PasteSpeech.difference(sum, Measures.METRIC)).isEqualTo("50 g too much");
  }

  /** An hour with alkali in it: the third print comes two hours after the others. */
  @Test
  void whatIsPrintedAfterThePastesLifeIsNamed() {
    PasteAge age =
        Worked.reeds(
                DYE + ", alkali: in paste",
                "- mix: all\n- print: reeds\n  only: [1, 2]\n- dry: 2 h\n- print: reeds\n  only: [3]\n")
            .the(PasteAge.class);
    assertThat(age.marks()).containsExactly("reeds 3");
    assertThat(age.lastPlacement()).isEqualTo("reeds 3");
    assertThat(age.lastUse().since(age.mixedAt()).minutes())
        .isCloseTo(age.age().minutes(), within(1e-9));
    assertThat(age.overMost().minutes()).isCloseTo(age.age().minutes() - 60, within(1e-6));
    assertThat(age.overLeast().minutes()).isCloseTo(age.age().minutes() - 60, within(1e-6));
    assertThat(age.lastUse().since(age.mixFrom()).minutes()).isCloseTo(60, within(1e-6));
    assertThat(age.batches()).hasSize(2);
    assertThat(PasteSpeech.mixing(age))
        .startsWith("No one batch lasts")
        .contains("leave the alkali out");
    assertThat(age.related()).hasSize(1);
  }

  @Test
  void farFromTheRoomOfTheStatedLifeNobodyKnows() {
    assertThat(room(35, "").the(KeptInRoom.class).beyond()).isZero();
    assertThat(room(35, "").all(PasteAge.class)).hasSize(1);
    KeptInRoom hot = room(36, "").the(KeptInRoom.class);
    assertThat(hot.beyond()).isPositive();
    assertThat(hot.pastes()).containsExactly("green");
    assertThat(hot.room().celsius()).isEqualTo(36);
    assertThat(hot.known().celsius()).isEqualTo(20);
    assertThat(room(36, "").all(PasteAge.class)).isEmpty();
    assertThat(room(36, ", kept: cold").all(KeptInRoom.class)).isEmpty();
    assertThat(room(36, ", kept: cold").all(PasteAge.class)).hasSize(1);
    assertThat(room(4, "").the(KeptInRoom.class).beyond()).isPositive();
  }

  @Test
  void pasteIsMixedOnceAndBeforeItIsUsed() {
    FirstPrint never = Worked.reeds(DYE, "- print: reeds\n").the(FirstPrint.class);
    assertThat(never.pastes()).containsExactly("green");
    assertThat(never.mixings()).isZero();
    assertThat(never.related()).hasSize(1);
    FirstPrint late = Worked.reeds(DYE, "- print: reeds\n- mix: green\n").the(FirstPrint.class);
    assertThat(late.pastes()).containsExactly("green");
    assertThat(late.ready()).isGreaterThan(late.firstUse());
    assertThat(late.minutesAhead()).isPositive();
    assertThat(late.related()).hasSize(1);
    Worked sound = Worked.reeds(DYE, PRINT);
    assertThat(sound.the(FirstPrint.class).mixings()).isEqualTo(1);
    assertThat(sound.the(FirstPrint.class).minutesAhead()).isZero();
    assertThat(sound.the(Mixing.class).prints()).isPositive();
    Mixing idle = Worked.reeds(DYE, "- mix: green\n").the(Mixing.class);
    assertThat(idle.pastes()).containsExactly("green");
    assertThat(idle.prints()).isZero();
  }

  @Test
  void pasteMixedBeforeTheDayIsOneBatchOfThatAge() {
    Worked worked = Worked.reeds(DYE + ", amount: 60 g, mixed before: 2 h", "- print: reeds\n");
    assertThat(worked.the(FirstPrint.class).mixedBefore()).isTrue();
    assertThat(worked.the(PasteUse.class).batches()).isEqualTo(1);
    Moment start = worked.facts().timeline().start();
    assertThat(start.since(worked.the(PasteAge.class).mixedAt()).minutes()).isEqualTo(120);
  }

  private static Worked room(int celsius, String kept) {
    return Worked.reeds(
        """
        room: {temperature: %d °C}
        pastes:
          green: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, at: "10 cm, 30 cm"}
        run:
          - mix: all
          - print: reeds
        """
            .formatted(celsius, DYE + kept));
  }

  private static PasteUse use(String paste) {
    return Worked.reeds(paste, PRINT).the(PasteUse.class);
  }
}
