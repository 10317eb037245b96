package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.speech.SequenceSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

class MediaPassesTest {

  /** Leaves in dye at 0 and 100 cm; dots in paint over the first leaf and far from both. */
  private static Sketch leavesAndDots() {
    return new Sketch()
        .dye("green", 0x336633)
        .paint("white", 0xffffff)
        .design("leaf", "green 60%")
        .design("dot", "white 60%")
        .at("leaves", "leaf", 0, 100)
        .at("dots", "dot", 0, 300);
  }

  @Test
  void paintOverUnfixedDyeIsOneFactOfThePaintStep() {
    PaintOverDye fact =
        leavesAndDots().run().print("leaves").print("dots").soak().fact(PaintOverDye.class);
    assertThat(fact.path().text()).isEqualTo("run[1]");
    assertThat(SequenceSpeech.places(fact)).isEqualTo("dots 1");
    assertThat(fact.paints()).containsExactly("white");
    assertThat(fact.dyes()).containsExactly("green");
    assertThat(fact.fix().map(s -> StepSpeech.numbered(s, Measures.METRIC)))
        .contains("step 3 (fix by soak)");
    assertThat(fact.related()).singleElement().extracting("path.text").isEqualTo("run[0]");
  }

  @Test
  void areasThatCannotPassEachOtherInTheirRectanglesSurelyMeet() {
    PaintOverDye fact =
        leavesAndDots().run().print("leaves").print("dots").fact(PaintOverDye.class);
    assertThat(fact.certain()).isTrue();
    assertThat(fact.most().squareCm()).isEqualTo(240);
    assertThat(fact.fix()).isEmpty();
  }

  @Test
  void areasThatFitBesideEachOtherMayMiss() {
    Sketch sketch = leavesAndDots().design("dot", "white 40%");
    PaintOverDye fact = sketch.run().print("leaves").print("dots").fact(PaintOverDye.class);
    assertThat(fact.certain()).isFalse();
    assertThat(fact.most().squareCm()).isEqualTo(160);
  }

  @Test
  void coloursOfOneMotifWithATrapSurelyMeet() {
    Sketch sketch =
        new Sketch()
            .dye("green", 0x336633)
            .paint("white", 0xffffff)
            .design("leaf", "green 10%", "white 10% 1mm")
            .at("leaves", "leaf", 0);
    PaintOverDye fact = sketch.run().print("leaves").fact(PaintOverDye.class);
    assertThat(fact.certain()).isTrue();
    assertThat(fact.related()).isEmpty();
  }

  @Test
  void dyeThatIsFixedFirstIsNoMatter() {
    PrintDay day = leavesAndDots().run().print("leaves").soak().rinse().wash().print("dots");
    assertThat(day.facts(PaintOverDye.class)).isEmpty();
  }

  @Test
  void paintBesideTheDyeIsNoPaintOverIt() {
    PrintDay day = leavesAndDots().run().print("leaves").printOnly("dots", 2);
    assertThat(day.facts(PaintOverDye.class)).isEmpty();
  }

  @Test
  void dyeOverPaintIsAFactEvenWhenThePaintIsSet() {
    DyeOverPaint fact =
        leavesAndDots().run().print("dots").heatSet().print("leaves").fact(DyeOverPaint.class);
    assertThat(fact.path().text()).isEqualTo("run[2]");
    assertThat(SequenceSpeech.places(fact)).isEqualTo("leaves 1");
    assertThat(fact.dyes()).containsExactly("green");
  }

  @Test
  void theFirstBathThatReachesUnsetPaintIsToldOfOnce() {
    PaintInBath fact =
        leavesAndDots()
            .run()
            .print("leaves")
            .print("dots")
            .soak()
            .rinse()
            .wash()
            .heatSet()
            .fact(PaintInBath.class);
    assertThat(StepSpeech.numbered(fact.step(), Measures.METRIC)).isEqualTo("step 3 (fix by soak)");
    assertThat(SequenceSpeech.places(fact)).isEqualTo("dots 1, 2");
    assertThat(fact.heats()).isZero();
    assertThat(fact.heatSet().map(s -> StepSpeech.numbered(s, Measures.METRIC)))
        .contains("step 6 (heat-set with iron)");
  }

  @Test
  void paintThatIsHeatSetBeforeTheBathIsSafe() {
    PrintDay day = leavesAndDots().run().print("dots").heatSet().wash();
    assertThat(day.fact(PaintInBath.class).heats()).isEqualTo(1);
  }

  @Test
  void steamIsNoBath() {
    PrintDay day = leavesAndDots().run().print("dots").steam().heatSet();
    assertThat(day.facts(PaintInBath.class)).isEmpty();
  }

  @Test
  void aPrintAfterFixingTellsWhatCameBetween() {
    PrintAfterFix fact =
        leavesAndDots()
            .run()
            .print("leaves")
            .soak()
            .rinse()
            .dry(600)
            .print("dots")
            .fact(PrintAfterFix.class);
    assertThat(fact.rinsed()).isTrue();
    assertThat(fact.washed()).isFalse();
    assertThat(fact.isPaint()).isTrue();
    assertThat(StepSpeech.numbered(fact.fix(), Measures.METRIC)).isEqualTo("step 2 (fix by soak)");
  }

  @Test
  void theClothDriesFromTheEndOfTheLastBathToTheFirstFrame() {
    PrintAfterBath fact =
        leavesAndDots()
            .run()
            .print("leaves")
            .soak()
            .rinse()
            .wash()
            .dry(90)
            .print("dots")
            .fact(PrintAfterBath.class);
    assertThat(StepSpeech.numbered(fact.bath(), Measures.METRIC))
        .isEqualTo("step 4 (wash at 60 °C)");
    assertThat(fact.dried().minutes()).isEqualTo(90);
  }

  @Test
  void onlyTheFirstPrintAfterABathIsToldOf() {
    PrintDay day =
        leavesAndDots().run().print("leaves").wash().printOnly("dots", 1).printOnly("dots", 2);
    assertThat(StepSpeech.numbered(day.fact(PrintAfterBath.class).step(), Measures.METRIC))
        .isEqualTo("step 3 (print dots)");
  }

  @Test
  void aPrintSharesNoMoreThanItPrintsItselfHoweverMuchLiesUnderIt() {
    Sketch sketch = leavesAndDots().at("leaves", "leaf", 0, 1, 2);
    PaintOverDye fact = sketch.run().print("leaves").printOnly("dots", 1).fact(PaintOverDye.class);
    assertThat(fact.most().squareCm()).isEqualTo(240);
  }

  @Test
  void aPlanThatPilesEverythingUpIsCutShort() {
    double[] pile = new double[1100];
    Sketch sketch = leavesAndDots().at("leaves", "leaf", pile).at("dots", "dot", pile);
    PaintOverDye fact = sketch.run().print("leaves").print("dots").fact(PaintOverDye.class);
    assertThat(SequenceSpeech.places(fact)).startsWith("dots 1–").endsWith(" and perhaps more");
  }

  /** Whether white surely meets green where each prints a tenth of one motif. */
  private static boolean surelyMeet(String first, String then) {
    return new Sketch()
        .dye("green", 0x336633)
        .paint("white", 0xffffff)
        .design("leaf", first, then)
        .at("leaves", "leaf", 0)
        .run()
        .print("leaves")
        .fact(PaintOverDye.class)
        .certain();
  }

  @Test
  void anOutlineSurelyMeetsTheColoursOfItsMotif() {
    assertThat(surelyMeet("green 10% key", "white 10%")).isTrue();
    assertThat(surelyMeet("green 10%", "white 10% key")).isTrue();
    assertThat(surelyMeet("green 10% 1mm", "white 10%")).isTrue();
    assertThat(surelyMeet("green 10%", "white 10%")).isFalse();
    assertThat(surelyMeet("green 10%", "white 10% 0mm")).isFalse();
  }

  @Test
  void anOutlineMayMissWhatAnotherMotifPrints() {
    PaintOverDye fact =
        leavesAndDots()
            .design("leaf", "green 10% key")
            .design("dot", "white 10% key")
            .run()
            .print("leaves")
            .print("dots")
            .fact(PaintOverDye.class);
    assertThat(fact.certain()).isFalse();
    assertThat(fact.marks()).containsExactly("dots 1");
  }

  @Test
  void theUnsetPaintThatABathReachesIsNamed() {
    PaintInBath fact =
        leavesAndDots()
            .run()
            .print("leaves")
            .print("dots")
            .wash()
            .heatSet()
            .fact(PaintInBath.class);
    assertThat(fact.paints()).containsExactly("white");
    assertThat(fact.marks()).containsExactly("dots 1", "dots 2");
    assertThat(fact.related()).extracting("path.text").containsExactly("run[1]");
  }

  @Test
  void dyeAfterAWashIsNoPaint() {
    PrintAfterFix fact =
        leavesAndDots()
            .run()
            .printOnly("leaves", 1)
            .soak()
            .wash()
            .printOnly("leaves", 2)
            .fact(PrintAfterFix.class);
    assertThat(fact.isPaint()).isFalse();
    assertThat(fact.washed()).isTrue();
    assertThat(fact.rinsed()).isTrue();
  }

  @Test
  void aWashBeforeTheFixingOrAfterThePrintIsNotBetweenThem() {
    PrintAfterFix fact =
        leavesAndDots()
            .run()
            .printOnly("leaves", 1)
            .wash()
            .soak()
            .printOnly("leaves", 2)
            .wash()
            .fact(PrintAfterFix.class);
    assertThat(fact.washed()).isFalse();
  }

  @Test
  void dyeThatIsPiledOnPaintIsCutShortToo() {
    double[] pile = new double[1100];
    Sketch sketch = leavesAndDots().at("leaves", "leaf", pile).at("dots", "dot", pile);
    DyeOverPaint fact = sketch.run().print("dots").print("leaves").fact(DyeOverPaint.class);
    assertThat(SequenceSpeech.places(fact)).startsWith("leaves 1–").endsWith(" and perhaps more");
  }
}
