package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.plan.Storage;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.speech.ScreenSpeech;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;

/** Every expected value is worked out by hand in the comment beside it. */
class ScreenFactsTest {

  private static final Policy POLICY = PolicyReader.builtIn();
  private static final double EXACT = 1e-9;

  @Test
  void marginsAreMeasuredToTheInsideOfTheFrame() {
    // 54 − 2 · 4 = 46 inside, (46 − 36) / 2 = 5; 74 − 8 = 66, (66 − 54) / 2 = 6
    FrameMargin margin = FrameMargin.of(screen(54, 74, 36, 54, 60), POLICY);
    assertThat(margin.well().cm()).isCloseTo(5, within(EXACT));
    assertThat(margin.side().cm()).isCloseTo(6, within(EXACT));
    assertThat(margin.frameLengthNeeded().cm()).isCloseTo(54, within(EXACT));
  }

  @Test
  void aFrameTooSmallTellsTheOneNeeded() {
    // inside 36, image 34: 1 cm at each end; 34 + 2 · 3 + 2 · 4 = 48. The blade of 26 spans the 20
    // alone, so it is pulled along
    FrameMargin margin = FrameMargin.of(screen(44, 44, 34, 20, 26), POLICY);
    assertThat(margin.way()).isEqualTo(PullWay.ALONG);
    assertThat(margin.least().cm()).isCloseTo(1, within(EXACT));
    assertThat(margin.frameLengthNeeded().cm()).isCloseTo(48, within(EXACT));
  }

  @Test
  void aBladeIsPulledTheWayThatItSpans() {
    // image 36 by 54 in a frame of 54 by 74, so 46 by 66 inside: 40 spans the 36 alone, with
    // (40 − 36) / 2 = 2 over it and (46 − 40) / 2 = 3 to the rails; paste lies in (66 − 54) / 2 = 6
    Screen screen = screen(54, 74, 36, 54, 40);
    SqueegeeFit fit = SqueegeeFit.of(screen, POLICY).orElseThrow();
    assertThat(fit.way()).isEqualTo(PullWay.ACROSS);
    assertThat(fit.imageSpan().cm()).isCloseTo(36, within(EXACT));
    assertThat(fit.overlap().cm()).isCloseTo(2, within(EXACT));
    assertThat(fit.room().cm()).isCloseTo(3, within(EXACT));
    assertThat(fit.wanted().cm()).isCloseTo(40, within(EXACT));
    FrameMargin margin = FrameMargin.of(screen, POLICY);
    assertThat(margin.well().cm()).isCloseTo(6, within(EXACT));
    assertThat(margin.side().cm()).isCloseTo(5, within(EXACT));
  }

  @Test
  void aBladeThatSpansNeitherWayIsMeasuredWhereItLacksLess() {
    SqueegeeFit fit = SqueegeeFit.of(screen(54, 74, 36, 54, 30), POLICY).orElseThrow();
    assertThat(fit.way()).isEqualTo(PullWay.ACROSS);
    assertThat(fit.shortBy().cm()).isCloseTo(6, within(EXACT));
    assertThat(screen(54, 74, 36, 54, 30).pullWays()).isEmpty();
  }

  @Test
  void aBladeThatSpansBothWaysIsPulledTheRoomierOne() {
    // inside 36 by 36, image 33 by 20, blade 34: across it has 8 at each end and 1.5 at the sides,
    // along 1.5 at each end and 8 at the sides; wanted are 3 and 2. Over the image 0.5 and 7 of 2
    Screen screen = screen(44, 44, 33, 20, 34);
    assertThat(screen.pullWays()).containsExactly(PullWay.ALONG, PullWay.ACROSS);
    // along lacks 1.5 in all, across 0.5 + 1.5
    assertThat(FrameMargin.of(screen, POLICY).way()).isEqualTo(PullWay.ALONG);
    // pulled across without a known blade: 0.5 of side alone
    Screen unknown = screen(44, 44, 33, 20, Optional.empty());
    assertThat(FrameMargin.of(unknown, POLICY).way()).isEqualTo(PullWay.ACROSS);
  }

  @Test
  void aSqueegeeIsMeasuredAgainstImageAndFrame() {
    // (60 − 54) / 2 = 3 over the image, (66 − 60) / 2 = 3 to the rails; wanted 54 + 2 · 2
    SqueegeeFit fit = SqueegeeFit.of(screen(54, 74, 36, 54, 60), POLICY).orElseThrow();
    assertThat(fit.overlap().cm()).isCloseTo(3, within(EXACT));
    assertThat(fit.room().cm()).isCloseTo(3, within(EXACT));
    assertThat(fit.wanted().cm()).isCloseTo(58, within(EXACT));
  }

  @Test
  void aDetailIsCountedInOpenings() {
    // 43/cm with 80 µm: openings of 232.56 − 80 = 152.56 µm; 0.25 mm is 1.639 of them. Of the
    // meshes sold, 48/cm with 70 µm has openings of 138 µm and 54/cm with 64 µm of 121: two of
    // those are 0.242 mm
    DetailOnMesh detail = detail(0.25);
    assertThat(detail.openings()).isCloseTo(1.639, within(0.001));
    assertThat(detail.holds().mm()).isCloseTo(0.30512, within(1e-5));
    assertThat(ScreenSpeech.mending(detail, Measures.METRIC))
        .isEqualTo("Use a mesh of 54/cm with threads of 64 µm, or draw nothing finer than 0.31 mm");
  }

  @Test
  void aDetailThatNoMeshForPasteHoldsSaysSo() {
    // 91/cm with 48 µm: 2 · (109.89 − 48) µm = 123.8 µm,
    // told as 0.13 mm
    DetailOnMesh detail = detail(0.05);
    assertThat(detail.finestHolds().mm()).isCloseTo(0.13, within(1e-9));
    assertThat(detail.better()).isEmpty();
    assertThat(ScreenSpeech.mending(detail, Measures.METRIC))
        .contains("0.13 mm", "91/cm with threads of 48 µm");
  }

  @Test
  void aDepositComesFromTheMeshUnlessItWasWeighed() {
    Screen screen = screen(54, 74, 36, 54, 60);
    // theoretical volume 51.6 cm³/m² at 1.05 g/mL: 54.2 g/m²
    Deposit estimate = Deposit.of(screen, paste(Optional.empty()), cotton(180), POLICY);
    assertThat(estimate.gramsPerSquareMetre().best()).isCloseTo(54.2, within(0.1));
    assertThat(estimate.gramsPerSquareMetre().low()).isLessThan(45);
    assertThat(estimate.gramsPerSquareMetre().high()).isGreaterThan(70);
    assertThat(estimate.measured()).isFalse();
    Deposit weighed = Deposit.of(screen, paste(Optional.of(new ArealMass(62))), cotton(60), POLICY);
    assertThat(weighed.afterPulls(2).best()).isEqualTo(93);
    assertThat(weighed.gramsPerSquareMetre().isExact()).isTrue();
    assertThat(weighed.measured()).isTrue();
  }

  @Test
  void lightClothTakesLessFromTheMeshAndHeavyClothMore() {
    Screen screen = screen(54, 74, 36, 54, 60);
    Paste paste = paste(Optional.empty());
    // 51.6 cm³/m² at 1.05 g/mL is 54.2 g/m²; lawn takes 85 % of it, canvas 120 % (common practice)
    assertThat(best(screen, paste, 70)).isCloseTo(46.1, within(0.1));
    assertThat(best(screen, paste, 400)).isCloseTo(65.0, within(0.1));
    assertThat(best(screen, paste, 100)).isEqualTo(best(screen, paste, 300));
    Deposit onLawn = Deposit.of(screen, paste, cotton(70), POLICY);
    Deposit onCanvas = Deposit.of(screen, paste, cotton(400), POLICY);
    assertThat(onLawn.gramsPerSquareMetre().low()).isEqualTo(onCanvas.gramsPerSquareMetre().low());
  }

  private static double best(Screen screen, Paste paste, double mass) {
    return Deposit.of(screen, paste, cotton(mass), POLICY).gramsPerSquareMetre().best();
  }

  private static Cloth cotton(double mass) {
    return PlainParts.cloth(
        Map.of("cotton", new Share(1)),
        new ArealMass(mass),
        Length.ofCm(300),
        Length.ofCm(140),
        false,
        new Colour(255, 255, 255, "white"));
  }

  private static DetailOnMesh detail(double mm) {
    Screen screen = screen(44, 44, 20, 20, 26);
    Design.Separation separation =
        new Design.Separation(
            1,
            "s",
            "green",
            cm(0),
            cm(0),
            cm(20),
            cm(20),
            new Area(100),
            1,
            true,
            Optional.empty(),
            Optional.of(new Length(mm)),
            Optional.empty(),
            path("designs.leaf.separations[0]"));
    Design leaf =
        new Design("leaf", cm(20), cm(20), List.of(separation), List.of(), path("designs.leaf"));
    return DetailOnMesh.of(leaf, separation, screen, new UsualMeshes(POLICY), POLICY).orElseThrow();
  }

  private static Paste paste(Optional<ArealMass> deposit) {
    return new Paste(
        "green",
        Medium.DYE,
        List.of("dichlorotriazine"),
        null,
        true,
        Optional.empty(),
        List.of(),
        false,
        Optional.empty(),
        Storage.ROOM,
        Optional.empty(),
        deposit,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        path("pastes.green"));
  }

  private static Screen screen(double l, double w, double imageL, double imageW, double blade) {
    return screen(l, w, imageL, imageW, Optional.of(cm(blade)));
  }

  private static Screen screen(
      double l, double w, double imageL, double imageW, Optional<Length> blade) {
    return new Screen(
        "s",
        cm(l),
        cm(w),
        cm(4),
        cm(imageL),
        cm(imageW),
        new MeshCount(43),
        new Length(0.08),
        blade,
        path("screens.s"));
  }

  private static Length cm(double cm) {
    return Length.ofCm(cm);
  }

  private static PlanPath path(String text) {
    return new PlanPath(text);
  }
}
