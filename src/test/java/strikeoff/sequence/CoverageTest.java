package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.speech.SequenceSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

class CoverageTest {

  private static Sketch leaves() {
    return new Sketch()
        .dye("green", 0x336633)
        .dye("ink", 0x2b3440)
        .design("leaf", "green", "ink key")
        .at("leaves", "leaf", 0, 50, 100, 150)
        .anchored("veins", "leaf", "leaves", 200);
  }

  @Test
  void everythingPrintedOnceIsNoMatter() {
    PrintDay day = leaves().run().print("leaves").print("veins");
    assertThat(day.facts(PrintsOfArrangement.class))
        .extracting(PrintsOfArrangement::missing)
        .containsExactly(0, 0);
    assertThat(day.facts(PrintsOfStep.class)).extracting(PrintsOfStep::again).containsOnly(0);
    assertThat(day.facts(BaseOrder.class)).extracting(BaseOrder::early).containsOnly(0);
  }

  @Test
  void placementsLeftOutAreToldOfAtTheLastStepThatPrintsTheirNeighbours() {
    PrintsOfArrangement fact =
        leaves()
            .run()
            .print("veins")
            .printOnly("leaves", 1, 2)
            .fact(PrintsOfArrangement.class, prints -> prints.missing() > 0);
    assertThat(SequenceSpeech.what(fact)).isEqualTo("3, 4 in all colours");
    assertThat(fact.path().text()).isEqualTo("run[1]");
    assertThat(fact.missing()).isEqualTo(4);
    assertThat(fact.all()).isEqualTo(8);
  }

  @Test
  void aColourLeftOutIsNamed() {
    PrintsOfArrangement fact =
        leaves()
            .run()
            .print("veins")
            .printColours("leaves", 1)
            .fact(PrintsOfArrangement.class, prints -> prints.missing() > 0);
    assertThat(SequenceSpeech.what(fact)).isEqualTo("(all 4) in ink");
  }

  @Test
  void anArrangementThatNoStepPrintsIsToldOfAtItself() {
    PrintsOfArrangement fact =
        leaves()
            .run()
            .print("leaves")
            .fact(PrintsOfArrangement.class, prints -> prints.missing() > 0);
    assertThat(fact.arrangement()).isEqualTo("veins");
    assertThat(fact.path().text()).isEqualTo("placements.veins");
  }

  @Test
  void aPlanWithoutPrintsOnlyLaysOut() {
    assertThat(leaves().run().facts(PrintsOfArrangement.class)).isEmpty();
  }

  @Test
  void aSecondPrintOfTheSameColourIsToldOfAtTheLaterStep() {
    PrintsOfStep fact =
        leaves()
            .run()
            .print("veins")
            .print("leaves")
            .printOnly("leaves", 2)
            .fact(PrintsOfStep.class, prints -> prints.again() > 0);
    assertThat(SequenceSpeech.what(fact)).isEqualTo("2 in all colours");
    assertThat(fact.path().text()).isEqualTo("run[2]");
    assertThat(fact.before().map(s -> StepSpeech.numbered(s, Measures.METRIC)))
        .contains("step 2 (print leaves)");
  }

  @Test
  void whatIsSetFromAnotherPlacementComesAfterIt() {
    BaseOrder fact = leaves().run().print("veins").print("leaves").fact(BaseOrder.class);
    assertThat(SequenceSpeech.places(fact)).isEqualTo("veins 1–4");
    assertThat(fact.early()).isEqualTo(4);
    assertThat(fact.base()).isEqualTo("leaves");
    assertThat(StepSpeech.numbered(fact.step(), Measures.METRIC)).isEqualTo("step 1 (print veins)");
    assertThat(StepSpeech.numbered(fact.baseStep(), Measures.METRIC))
        .isEqualTo("step 2 (print leaves)");
    assertThat(fact.path().text()).isEqualTo("run[0]");
  }

  @Test
  void whereItIsArrangedIsToldBesideAStepThatLeavesSomethingOut() {
    PrintsOfArrangement left =
        leaves()
            .run()
            .print("veins")
            .printOnly("leaves", 1)
            .fact(PrintsOfArrangement.class, prints -> prints.missing() > 0);
    assertThat(left.related()).extracting("path.text").containsExactly("placements.leaves");
    assertThat(left.marks()).containsExactly("leaves 2", "leaves 3", "leaves 4");
    PrintsOfArrangement whole =
        leaves()
            .run()
            .print("leaves")
            .fact(PrintsOfArrangement.class, prints -> prints.missing() > 0);
    assertThat(whole.related()).isEmpty();
  }

  @Test
  void theFirstOfTwoPrintsIsToldUnlessItIsInTheSameStep() {
    PrintDay apart = leaves().run().print("veins").print("leaves").printColours("leaves", 1);
    PrintsOfStep fact = apart.fact(PrintsOfStep.class, prints -> prints.again() > 0);
    assertThat(fact.related()).extracting("path.text").containsExactly("run[1]");
    assertThat(SequenceSpeech.what(fact)).isEqualTo("(all 4) in green");
    assertThat(fact.again()).isEqualTo(4);
    PrintDay once = leaves().run().print("veins").printColours("leaves", 1, 1, 2);
    assertThat(once.fact(PrintsOfStep.class, prints -> prints.again() > 0).related()).isEmpty();
  }

  /** "The run leaves out one in all colours": there is nothing to count. */
  @Test
  void ofASingleCopyNoNumberIsTold() {
    String plan =
        """
        pastes:
          green: {medium: paint, colour: green}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
        placements:
          one: {design: reeds, at: "10 cm, 30 cm"}
          other: {design: reeds, at: "100 cm, 30 cm"}
        run: [mix: all, print: other]
        """;
    assertThat(Worked.reeds(plan).all(PrintsOfArrangement.class, prints -> prints.missing() > 0))
        .extracting(SequenceSpeech::what)
        .containsExactly("in all colours");
  }
}
