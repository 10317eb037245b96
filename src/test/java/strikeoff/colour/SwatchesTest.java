package strikeoff.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Design;
import strikeoff.policy.Limit;
import strikeoff.sequence.Sketch;
import strikeoff.speech.ColourSpeech;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

class SwatchesTest {

  private static Sketch shells() {
    return new Sketch()
        .dye("sand", 0xd9b77e)
        .dye("rust", 0xb5653a)
        .paint("cream", 0xfff6e0)
        .design("shell", "sand 80%", "rust 40%", "cream 10%")
        .at("shells", "shell", 0, 50);
  }

  @Test
  void onWhiteClothADyeLooksAsNamedAndSofterOnceWashed() {
    Swatch rust = shells().swatches().of("rust");
    assertThat(rust.onGround().hex()).isEqualTo("#b5653a");
    assertThat(Lab.of(rust.washed()).lightness()).isGreaterThan(rust.lightness() + 3);
    assertThat(rust.placements()).containsExactly("shells 1", "shells 2");
  }

  @Test
  void onADyedGroundADyeComesOutDarkerThanEither() {
    Swatches swatches = shells().ground(0xa8c0d0).swatches();
    double look = swatches.of("sand").onGroundLab().lightness();
    assertThat(look).isLessThan(swatches.groundLab().lightness());
    assertThat(look).isLessThan(swatches.of("sand").lightness());
  }

  @Test
  void opaquePaintNearlyHidesItsGroundAndIsNotSoftened() {
    Swatch cream = shells().ground(0x203040).swatches().of("cream");
    assertThat(cream.onGroundLab().difference(cream.lab())).isLessThan(3);
    assertThat(cream.washed()).isEqualTo(cream.onGround());
  }

  @Test
  void aBlendKeepsLessDye() {
    Share half = new Share(0.5);
    Swatch cotton = shells().swatches().of("rust");
    Swatch blend = shells().fibres(Map.of("cotton", half, "polyester", half)).swatches().of("rust");
    assertThat(Lab.of(blend.washed()).lightness())
        .isGreaterThan(Lab.of(cotton.washed()).lightness());
    assertThat(blend.onGround()).isEqualTo(cotton.onGround());
  }

  @Test
  void eachPairOfOverlappingSeparationsGivesAnOverprintWithItsModel() {
    List<Overprint> overprints = shells().swatches().overprints();
    assertThat(overprints).hasSize(3);
    Overprint dyes = overprints.get(0);
    assertThat(dyes.model()).isEqualTo(Overprint.Model.ABSORPTIONS_ADD);
    assertThat(ColourSpeech.text(dyes.model()))
        .contains("estimate", "order of printing changes nothing");
    assertThat(dyes.least().squareCm()).isEqualTo(80);
    assertThat(dyes.expected().squareCm()).isCloseTo(128, within(1e-9));
    assertThat(dyes.most().squareCm()).isEqualTo(160);
    assertThat(overprints.get(1).model()).isEqualTo(Overprint.Model.UPPER_HIDES);
  }

  @Test
  void yellowOverBlueGivesGreen() {
    Overprint overprint =
        new Sketch()
            .dye("yellow", 0xf4d03f)
            .dye("blue", 0x4a86c8)
            .design("leaf", "yellow 60%", "blue 60%")
            .at("leaves", "leaf", 0)
            .swatches()
            .overprints()
            .get(0);
    assertThat(Lab.of(overprint.look()).hueDegrees()).isBetween(110.0, 180.0);
  }

  @Test
  void pastesThatNothingPrintsGiveNoFacts() {
    Swatches swatches = shells().dye("spare", 0xd9b77f).swatches();
    assertThat(swatches.swatches()).hasSize(4);
    assertThat(facts(swatches, ColourOnGround.class)).hasSize(3);
    assertThat(facts(swatches, NearLooks.class)).isEmpty();
  }

  @Test
  void pastesThatPassIntoEachOtherAreOneGroup() {
    Sketch sketch = new Sketch().dye("red", 0xb03030);
    String[] all = new String[41];
    all[0] = "red";
    for (int i = 1; i <= 40; i++) {
      all[i] = "grey" + i;
      sketch.dye(all[i], 0x808080 + 0x010101 * (i % 8));
    }
    List<NearLooks> alike =
        facts(sketch.design("shell", all).at("shells", "shell", 0).swatches(), NearLooks.class);
    assertThat(alike).hasSize(1);
    assertThat(alike.get(0).pastes()).hasSize(40).doesNotContain("red");
    assertThat(alike.get(0).difference().value()).isZero();
    assertThat(ColourSpeech.named(alike.get(0))).hasSize(7).endsWith("34 more");
  }

  @Test
  void aDyeLighterThanItsGroundIsMeasured() {
    Swatches swatches = shells().ground(0x305080).swatches();
    ColourOnGround sand = facts(swatches, ColourOnGround.class).get(0);
    assertThat(sand.paste()).isEqualTo("sand");
    assertThat(sand.lighter().value()).isGreaterThan(40);
    assertThat(sand.missed().value()).isGreaterThan(30);
    assertThat(sand.path().text()).isEqualTo("pastes.sand.colour");
  }

  @Test
  void whiteOnAnotherMotifIsJudgedByThatMotif() {
    ColourOnGround white = white(0xb03030, 0);
    assertThat(white.difference().value()).isLessThan(1);
    assertThat(white.over()).containsExactly("red");
    // L* 100 on L* 40: ΔE00 is no less than the difference in lightness weighted by S_L = 1.4
    assertThat(white.differenceOver().value()).isGreaterThan(30);
  }

  @Test
  void whiteThatReachesPastItsMotifOrLiesOnWhiteDoesNotStandOut() {
    assertThat(white(0xb03030, 5).differenceOver().value()).isZero();
    assertThat(white(0xffffff, 0).differenceOver().value()).isLessThan(1);
  }

  /** A white motif anchored on one of another colour, and shifted from it. */
  private static ColourOnGround white(int under, double dx) {
    Swatches swatches =
        new Sketch()
            .dye("red", under)
            .paint("white", 0xffffff)
            .design("star", "red 40%")
            .design("eye", "white 5%")
            .at("stars", "star", 0, 50)
            .anchored("eyes", "eye", "stars", dx)
            .swatches();
    return facts(swatches, ColourOnGround.class).get(1);
  }

  @Test
  void aStrongerMixThatWouldShowIsWorkedOut() {
    Swatches pale =
        new Sketch()
            .dye("shadow", 0xf2f2f2)
            .design("shell", "shadow")
            .at("shells", "shell", 0)
            .swatches();
    ColourOnGround shadow = facts(pale, ColourOnGround.class).get(0);
    assertThat(shadow.washedDifference().value()).isLessThan(3);
    assertThat(ColourSpeech.strengthening(shadow))
        .matches("mixed [123](\\.\\d)? times as strong.*");
  }

  @Test
  void theNearestOtherPasteStandsBesideAnOverlap() {
    Swatches swatches =
        new Sketch()
            .dye("yellow", 0xf4d03f)
            .dye("blue", 0x4a86c8)
            .dye("red", 0xb03030)
            .dye("green", 0x467536)
            .design("leaf", "yellow 60%", "blue 60%", "green 10%")
            .design("berry", "red")
            .at("leaves", "leaf", 0)
            .at("berries", "berry", 100)
            .swatches();
    ThirdColour yellowAndBlue = facts(swatches, ThirdColour.class).get(0);
    assertThat(yellowAndBlue.paste()).isEqualTo("green");
    assertThat(yellowAndBlue.path().text()).isEqualTo("designs.leaf.separations[1]");
  }

  @Test
  void fromAfarAMotifLiesBetweenItsColourAndTheGround() {
    Sketch sketch =
        new Sketch()
            .dye("ink", 0x2b3440)
            .design("fine", "ink 10%")
            .design("heavy", "ink 90%")
            .at("fines", "fine", 0)
            .at("heavies", "heavy", 100);
    List<MotifLook> motifs = sketch.swatches().motifs();
    assertThat(motifs).extracting(MotifLook::design).containsExactly("fine", "heavy");
    assertThat(motifs.get(0).difference()).isPositive().isLessThan(motifs.get(1).difference());
    assertThat(Lab.of(motifs.get(1).mean().orElseThrow()).lightness())
        .isGreaterThan(sketch.swatches().of("ink").lightness());
  }

  /** A paste is named by its look on white cloth, whatever hides there what. */
  @Test
  void aCoveringPasteLooksOnWhiteAsItIsNamed() {
    for (String hex : List.of("#000000", "#1f2f50", "#30343a", "#b5653a", "#f2e6c0", "#ffffff")) {
      Swatch paint =
          new Sketch()
              .paint("paint", Integer.parseInt(hex.substring(1), 16))
              .design("shell", "paint")
              .at("shells", "shell", 0)
              .swatches()
              .of("paint");
      assertThat(paint.onGround().hex()).isEqualTo(hex);
    }
  }

  @Test
  void aCoveringDyeHidesLessOnceItIsWashed() {
    // Black on white is black, so its film has no gaps. At wash-off two fifths leave
    // (order/softening). Black over white then reflects 40 % of the light, which sRGB's curve
    // (IEC 61966-2-1) writes as 255 · (1.055 · 0.4^(1/2.4) − 0.055) = 170.
    Swatch black =
        new Sketch()
            .coveringDye("black", 0x000000)
            .design("shell", "black")
            .at("shells", "shell", 0)
            .swatches()
            .of("black");
    assertThat(black.washed().hex()).isEqualTo("#aaaaaa");
  }

  @Test
  void aFewPastesAlikeAreAllNamedWithTheirLooks() {
    NearLooks alike =
        facts(
                new Sketch()
                    .dye("ash", 0x808080)
                    .dye("red", 0xb03030)
                    .dye("smoke", 0x818181)
                    .design("shell", "ash", "red", "smoke")
                    .at("shells", "shell", 0)
                    .swatches(),
                NearLooks.class)
            .get(0);
    assertThat(ColourSpeech.named(alike)).containsExactly("ash", "smoke");
    assertThat(ColourSpeech.shown(alike)).containsExactly("#808080", "#818181");
  }

  @Test
  void pastesThatWereNotAllComparedAreToldAsPerhapsMore() {
    List<Swatch> greys =
        new Sketch()
            .dye("one", 0x808080)
            .dye("two", 0x808080)
            .dye("three", 0x808080)
            .design("shell", "one", "two", "three")
            .at("shells", "shell", 0)
            .swatches()
            .swatches();
    PlanPath anywhere = new PlanPath("pastes");
    Limit apart = new Limit("order/told-apart", new Ratio(2), "", "");
    assertThat(ColourSpeech.named(new Likeness(greys, apart, 3).facts(s -> anywhere).get(0)))
        .containsExactly("one", "two", "three");
    assertThat(ColourSpeech.named(new Likeness(greys, apart, 1).facts(s -> anywhere).get(0)))
        .endsWith("perhaps others");
  }

  @Test
  void howMuchLighterAColourIsThanItsGroundIsTheDifferenceOfTheirLightness() {
    // Greys by CIE 15: #777777 has L* 50.0, #303030 has L* 19.9.
    Swatches swatches =
        new Sketch()
            .ground(0x303030)
            .paint("grey", 0x777777)
            .design("shell", "grey")
            .at("shells", "shell", 0)
            .swatches();
    ColourOnGround grey = facts(swatches, ColourOnGround.class).get(0);
    assertThat(grey.lightness().value()).isCloseTo(50.0, within(0.11));
    assertThat(grey.lighter().value()).isCloseTo(30.1, within(0.11));
  }

  @Test
  void anOverlapIsNotComparedWithItsOwnColours() {
    Swatches swatches =
        new Sketch()
            .dye("coal", 0x101010)
            .dye("night", 0x141420)
            .dye("straw", 0xf4e6a0)
            .design("leaf", "coal", "night")
            .design("berry", "straw")
            .at("leaves", "leaf", 0)
            .at("berries", "berry", 100)
            .swatches();
    assertThat(facts(swatches, ThirdColour.class))
        .extracting(ThirdColour::paste)
        .containsExactly("straw");
  }

  @Test
  void whiteLiesOnTheColoursListedBeforeItOnItsMotifOnly() {
    assertThat(whiteOnAMotif("red 40%", "white 5%").over()).containsExactly("red");
    assertThat(whiteOnAMotif("white 5%", "red 40%").over()).isEmpty();
  }

  private static ColourOnGround whiteOnAMotif(String... separations) {
    return facts(
            new Sketch()
                .dye("red", 0xb03030)
                .paint("white", 0xffffff)
                .design("star", separations)
                .at("stars", "star", 0)
                .swatches(),
            ColourOnGround.class)
        .get(1);
  }

  @Test
  void whiteLiesOnAnotherMotifOnlyIfThatIsPrintedFirst() {
    assertThat(whiteOver(twoMotifs().run().print("stars").print("eyes").swatches()))
        .containsExactly("red");
    assertThat(whiteOver(twoMotifs().run().print("eyes").print("stars").swatches())).isEmpty();
    assertThat(whiteOver(twoMotifs().run().print("eyes").swatches())).isEmpty();
    assertThat(whiteOver(twoMotifs().run().print("stars").swatches())).isEmpty();
    // Of several times that something is printed the first one counts.
    Swatches again = twoMotifs().run().print("eyes").print("stars").print("eyes").swatches();
    assertThat(whiteOver(again)).isEmpty();
  }

  /** White in the place of a red motif, anchored to nothing. */
  private static Sketch twoMotifs() {
    return new Sketch()
        .dye("red", 0xb03030)
        .paint("white", 0xffffff)
        .design("star", "red 40%")
        .design("eye", "white 5%")
        .at("stars", "star", 0)
        .at("eyes", "eye", 0);
  }

  @Test
  void whiteLiesOnWhatItsAnchorIsAnchoredTo() {
    Swatches swatches =
        new Sketch()
            .dye("red", 0xb03030)
            .dye("blue", 0x3050a0)
            .paint("white", 0xffffff)
            .design("star", "red 40%")
            .design("ring", "blue 20%")
            .design("eye", "white 5%")
            .at("stars", "star", 50)
            .anchored("rings", "ring", "stars", 30)
            .anchored("eyes", "eye", "rings", -30)
            .swatches();
    assertThat(whiteOver(swatches)).containsExactly("red");
  }

  private static List<String> whiteOver(Swatches swatches) {
    return facts(swatches, ColourOnGround.class).stream()
        .filter(fact -> fact.paste().equals("white"))
        .findFirst()
        .orElseThrow()
        .over();
  }

  @Test
  void noMixIsStrongEnoughForPaintOrForADyeOfTheGroundsColour() {
    Swatches swatches =
        new Sketch()
            .dye("clear", 0xffffff)
            .paint("white", 0xffffff)
            .dye("ink", 0x202020)
            .design("shell", "clear", "white", "ink")
            .at("shells", "shell", 0)
            .swatches();
    assertThat(facts(swatches, ColourOnGround.class))
        .extracting(ColourSpeech::strengthening)
        .containsExactly(
            "no stronger mix of it would show",
            "no stronger mix of it would show",
            "as strong as it is, it shows");
  }

  @Test
  void designsThatNothingPlacesHaveNoLookAndNoOverprints() {
    Swatches swatches = shells().design("spare", "sand", "rust").swatches();
    assertThat(swatches.motifs()).extracting(MotifLook::design).containsExactly("shell");
    assertThat(swatches.overprints()).extracting(Overprint::design).containsOnly("shell");
  }

  @Test
  void separationsShareWhatTheirRectanglesShare() {
    // 10 by 10 cm each and printed all over: 4 cm out along the cloth, 6 by 10 cm are common.
    SharedArea partly = SharedArea.guessed(square(3), square(7));
    assertThat(partly.most().squareCm()).isCloseTo(60, within(1e-9));
    assertThat(partly.least().squareCm()).isCloseTo(60, within(1e-9));
    assertThat(partly.isPossible()).isTrue();
    assertThat(SharedArea.guessed(square(0), square(10)).isPossible()).isFalse();
    assertThat(SharedArea.guessed(square(0), square(14)).isPossible()).isFalse();
  }

  private static Design.Separation square(double x) {
    return new Design.Separation(
        1,
        "screen",
        "paste",
        Length.ofCm(x),
        Length.ofCm(0),
        Length.ofCm(10),
        Length.ofCm(10),
        new Area(100),
        1,
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new PlanPath("designs"));
  }

  private static <T extends Evidence> List<T> facts(Swatches swatches, Class<T> kind) {
    return swatches.evidence().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
