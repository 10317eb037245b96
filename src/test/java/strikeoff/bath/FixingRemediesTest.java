package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.day.Task;
import strikeoff.document.Edit;
import strikeoff.paste.MixedGroups;
import strikeoff.plan.DyeFixing;
import strikeoff.speech.BathSpeech;
import strikeoff.speech.FixSpeech;
import strikeoff.speech.HeatSpeech;
import strikeoff.speech.PasteSpeech;
import strikeoff.units.Measures;

/** What fixing needs beyond time and warmth, and what is offered where something lacks. By hand. */
class FixingRemediesTest {

  private static final String UREA =
      "{medium: dye, group: DCT, colour: green, recipe: {dye: 4 g, urea: 20 g, alginate: 6 g,"
          + " baking soda: 4 g, water: 166 ml}}";

  private static final String PLAIN = UREA.replace("urea: 20 g, ", "");

  private static final String PAINT = "{medium: paint, colour: green, amount: 200 g}";

  private static String batch(String wait) {
    return "- mix: all\n- print: reeds\n"
        + wait
        + "- fix: batch\n  temperature: 24 °C\n  for: 24 h\n";
  }

  @Test
  void whatDriesBeforeItsBatchIsToldWithItsUrea() {
    DriedBeforeBatch dry = reeds(UREA, batch("- dry: 12 h\n")).the(DriedBeforeBatch.class);
    assertThat(dry.wrapped().dry()).isEqualTo(3);
    assertThat(BathSpeech.driedThrough(dry.wrapped())).isEqualTo("all 3 prints have");
    assertThat(BathSpeech.urea(dry)).isEqualTo("it holds urea");
    assertThat(dry.wrapped().sooner()).hasSize(1);
    assertThat(reeds(UREA, batch("")).all(DriedBeforeBatch.class)).isEmpty();
    assertThat(reeds(PLAIN, batch("- dry: 12 h\n")).all(DriedBeforeBatch.class)).isEmpty();
    UreaNeed need = reeds(PLAIN, batch("- dry: 12 h\n")).the(UreaNeed.class);
    assertThat(need.wrapped().anyDry()).isTrue();
    assertThat(reeds(PLAIN, batch("")).the(UreaNeed.class).wrapped().anyDry()).isFalse();
  }

  @Test
  void aPinchOfUreaIsNone() {
    UreaNeed pinch = reeds(UREA.replace("urea: 20 g", "urea: 2 g"), batch("")).the(UreaNeed.class);
    assertThat(BathSpeech.held(pinch, Measures.METRIC))
        .isEqualTo("only 11 g of urea in a kilogram");
    // 5 g in 200 g are 25 g in a kilogram
    assertThat(reeds(UREA.replace("urea: 20 g", "urea: 5 g"), batch("")).all(UreaNeed.class))
        .isEmpty();
  }

  /** 50 to 100 g in a kilogram beside 180 g of other parts: x / (180 + x). */
  @Test
  void ureaIsWeighedForTheRecipeAtHand() {
    UreaNeed need = reeds(PLAIN, batch("")).the(UreaNeed.class);
    assertThat(BathSpeech.take(need, Measures.METRIC))
        .startsWith("9.5 to 20 g of urea into the recipe of green: 50 to 100 g");
    assertThat(180 / (1000 / 50.0 - 1)).isCloseTo(9.47, within(0.01));
    assertThat(need.edits()).hasSize(1);
  }

  /** Three images of 30 by 22 cm at 60 cm: each takes four soles of 200 cm², or one platen. */
  @Test
  void clockAndCardCountTheSameSpots() {
    for (String with : List.of("iron", "press", "oven")) {
      Worked worked =
          reeds(PAINT, "- mix: all\n- print: reeds\n- dry: 1 day\n- heat-set: " + with + "\n");
      double minutes = with.equals("iron") ? 12 * 5 : with.equals("press") ? 3 * 5 : 5;
      assertThat(
              worked.facts().timeline().tasks().stream()
                  .filter(t -> t.kind() == Task.Kind.HEAT_SET)
                  .mapToDouble(t -> t.end().since(t.start()).minutes())
                  .sum())
          .as(with)
          .isCloseTo(minutes, within(0.1));
      if (!with.equals("oven")) {
        assertThat(worked.the(IronTime.class).total().minutes()).isEqualTo(minutes);
      }
    }
  }

  @Test
  void smallMotifsFarApartAreIronedOneByOne() {
    String small = "size: 4 x 4 cm";
    String run = "- mix: all\n- print: reeds\n- dry: 1 day\n- heat-set: iron\n";
    Worked apart = Worked.of(plan(PAINT, run).replace("size: 30 x 22 cm", small));
    assertThat(apart.the(IronTime.class).spots()).isEqualTo(3);
    Worked near =
        Worked.of(
            plan(PAINT, run)
                .replace("size: 30 x 22 cm", small)
                .replace("pitch: 60 cm, start: 10 cm", "pitch: 4.5 cm, start: 14.2 cm"));
    assertThat(near.the(IronTime.class).spots()).isEqualTo(1);
  }

  @Test
  void noHeatServesAcrylic() {
    HeatSetting acrylic = heated("acrylic", 150);
    assertThat(acrylic.serves()).isFalse();
    assertThat(HeatSpeech.cooling(acrylic, Measures.METRIC))
        .startsWith("No heat both sets green and spares the cloth");
    assertThat(acrylic.coolingEdits(Measures.METRIC)).isEmpty();
    assertThat(acrylic.heatingEdits(Measures.METRIC)).isEmpty();
    HeatSetting silk = heated("silk", 150);
    assertThat(silk.serves()).isTrue();
    // 4 min at 150 °C are 4 · 2^(10/25) = 5.3 at 140
    assertThat(HeatSpeech.cooling(silk, Measures.METRIC))
        .isEqualTo("Set it to 140 °C at most, for 5 min 30 s at least");
  }

  @Test
  void setPaintIsFollowedIntoEveryBath() {
    Worked worked =
        reeds(
            PAINT,
            "- mix: all\n- print: reeds\n- dry: 1 day\n- wash: 95 °C\n- dry: 1 day\n"
                + "- print: reeds\n- dry: 1 day\n- heat-set: oven\n- wash: 70 °C\n");
    assertThat(worked.the(PaintInHotWater.class).temperature().celsius()).isEqualTo(70);
  }

  @Test
  void noGroupIsLeftLongerInTheCold() {
    FixTime cold =
        reeds(UREA, batch("").replace("24 °C", "16 °C").replace("24 h", "4 h")).the(FixTime.class);
    assertThat(FixSpeech.mending(cold, Measures.METRIC)).isEqualTo("Keep it at 21 °C for 12 h");
    FixTime fair =
        reeds(UREA, batch("").replace("24 °C", "19 °C").replace("24 h", "4 h")).the(FixTime.class);
    assertThat(FixSpeech.mending(fair, Measures.METRIC))
        .matches("Leave it .* longer, or keep it at 21 °C for 12 h");
    assertThat(fair.edits()).hasSize(2);
  }

  /** An hour at 20 °C: by the law four fifths, by a batch's hours a tenth. */
  @Test
  void aSoakAsCoolAsTheRoomIsNotLeftLonger() {
    String soak =
        "- mix: all\n- print: reeds\n- dry: 1 day\n- fix: soak\n"
            + "  bath: {soda ash: 200 g, salt: 500 g, water: 5 L}\n  temperature: 20 °C\n  for: 1 h\n";
    String paste = PLAIN.replace("baking soda: 4 g, ", "");
    FixTime cool = reeds(paste, soak).the(FixTime.class);
    assertThat(cool.fixed()).isCloseTo(0.8, within(0.03));
    assertThat(cool.atWorst()).isLessThan(0.15);
    assertThat(FixSpeech.mending(cool, Measures.METRIC)).isEqualTo("Keep it at 32 °C for 30 min");
    FixTime warm =
        reeds(paste, soak.replace("20 °C", "28 °C").replace("1 h", "20 min")).the(FixTime.class);
    assertThat(FixSpeech.mending(warm, Measures.METRIC))
        .matches("Leave it .* longer, or keep it at 32 °C for 30 min");
  }

  @Test
  void dryHeatIsToldBesideDyeThatNothingFixes() {
    DyePrinted baked =
        reeds(UREA, "- mix: all\n- print: reeds\n- dry: 1 day\n- heat-set: oven\n")
            .the(DyePrinted.class, AsRulesAsk::neverFixed);
    assertThat(BathSpeech.heat(baked)).startsWith(" Dry heat, as of step 4, fixes such dye only");
    assertThat(
            BathSpeech.heat(
                reeds(UREA, "- mix: all\n- print: reeds\n")
                    .the(DyePrinted.class, AsRulesAsk::neverFixed)))
        .isEmpty();
  }

  @Test
  void aHotFixingBatchBecomesSteam() {
    Worked worked = reeds(UREA.replace("DCT", "MCT"), batch(""));
    FixTemperature cold = worked.the(FixTemperature.class);
    assertThat(cold.tooWarmToKeep()).isTrue();
    assertThat(cold.edits(Measures.METRIC).get(0))
        .filteredOn(Edit.Write.class::isInstance)
        .map(e -> ((Edit.Write) e).value())
        .containsExactly(DyeFixing.STEAM.text(), "24 min");
  }

  @Test
  void aPotOfTwoGroupsIsTold() {
    MixedGroups mixed = reeds(UREA.replace("DCT", "[DCT, MCT]"), batch("")).the(MixedGroups.class);
    assertThat(PasteSpeech.windows(mixed, Measures.METRIC))
        .endsWith("no temperature serves all of them");
    assertThat(reeds(UREA, batch("")).all(MixedGroups.class)).isEmpty();
  }

  private static HeatSetting heated(String fibre, int celsius) {
    return Worked.of(
            plan(
                    PAINT,
                    "- mix: all\n- print: reeds\n- dry: 1 day\n- heat-set: oven\n  temperature: "
                        + celsius
                        + " °C\n  for: 4 min\n")
                .replace("fibre: cotton", "fibre: " + fibre))
        .the(HeatSetting.class);
  }

  private static Worked reeds(String paste, String run) {
    return Worked.of(plan(paste, run));
  }

  private static String plan(String paste, String run) {
    return """
        plan: test
        cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
        room: {temperature: 20 °C, humidity: 50 %}
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
        pastes:
          green: PASTE
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run:
        RUN
        """
        .replace("PASTE", paste)
        .replace("RUN", run.stripTrailing().indent(2).stripTrailing());
  }
}
