package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.speech.SequenceSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

class SeamOrderTest {

  /** Four leaves, the third one across a seam at 110 cm. */
  private static Sketch leaves() {
    return new Sketch()
        .dye("green", 0x336633)
        .design("leaf", "green")
        .at("leaves", "leaf", 0, 50, 100, 150)
        .seam("centre", 110, false);
  }

  @Test
  void aPlacementAcrossASeamWaitsForIt() {
    PrintAcrossSeam fact = leaves().run().print("leaves").sew("centre").fact(PrintAcrossSeam.class);
    assertThat(fact.path().text()).isEqualTo("run[0]");
    assertThat(SequenceSpeech.numbers(fact)).isEqualTo("3");
    assertThat(fact.stepsBefore()).isEqualTo(1);
    assertThat(fact.rest()).containsExactly(1, 2, 4);
    assertThat(StepSpeech.numbered(fact.sewing(), Measures.METRIC))
        .isEqualTo("step 2 (sew centre)");
    assertThat(fact.marks()).containsExactly("leaves 3");
  }

  @Test
  void printedAfterTheSeamItIsInOrder() {
    PrintDay day = leaves().run().printOnly("leaves", 1, 2, 4).sew("centre").printOnly("leaves", 3);
    assertThat(day.facts(PrintAcrossSeam.class))
        .extracting(PrintAcrossSeam::stepsBefore)
        .containsExactly(-1);
    assertThat(day.fact(SeamSewn.class).awayAfter()).isZero();
    assertThat(day.fact(SeamSewn.class).acrossAfter()).isEqualTo(1);
  }

  @Test
  void aSeamSewnFirstLeavesAllOtherWorkForAfter() {
    SeamSewn fact = leaves().run().sew("centre").print("leaves").fact(SeamSewn.class);
    assertThat(fact.awayAfter()).isEqualTo(3);
    assertThat(fact.away()).isEqualTo(3);
    assertThat(StepSpeech.numbered(fact.lastAway(), Measures.METRIC))
        .isEqualTo("step 2 (print leaves)");
  }

  @Test
  void aSeamThatNothingSewsIsToldOfAtTheSeam() {
    PrintDay day = leaves().run().print("leaves");
    assertThat(day.facts(PrintAcrossSeam.class)).isEmpty();
    assertThat(day.fact(OpenSeam.class).path().text()).isEqualTo("seams.centre");
    assertThat(SequenceSpeech.places(day.fact(OpenSeam.class))).isEqualTo("leaves 3");
    assertThat(day.fact(OpenSeam.class).sewings()).isZero();
  }

  @Test
  void aSeamSewnBeforeThePrintDayIsNoMatter() {
    PrintDay day = leaves().seam("centre", 110, true).run().print("leaves");
    assertThat(day.facts(OpenSeam.class)).isEmpty();
    assertThat(day.facts(PrintAcrossSeam.class)).isEmpty();
  }

  @Test
  void aSeamThatNothingLiesAcrossMayBeSewnLater() {
    PrintDay day = leaves().seam("centre", 300, false).run().print("leaves");
    assertThat(day.fact(OpenSeam.class).printedAcross()).isFalse();
  }

  @Test
  void whatIsPrintedAwayFromASeamIsCountedOnBothSidesOfTheSewing() {
    SeamSewn fact =
        leaves()
            .run()
            .printOnly("leaves", 1, 2)
            .sew("centre")
            .printOnly("leaves", 3)
            .printOnly("leaves", 4)
            .fact(SeamSewn.class);
    assertThat(fact.awayBefore()).isEqualTo(2);
    assertThat(fact.awayAfter()).isEqualTo(1);
    assertThat(fact.away()).isEqualTo(3);
    assertThat(fact.acrossAfter()).isEqualTo(1);
    assertThat(fact.related()).extracting("path.text").containsExactly("seams.centre", "run[3]");
  }

  @Test
  void aSeamSewnAfterAllThatLiesAwayFromItNamesNoSuchPrint() {
    SeamSewn fact =
        leaves()
            .run()
            .printOnly("leaves", 1, 2, 4)
            .sew("centre")
            .printOnly("leaves", 3)
            .fact(SeamSewn.class);
    assertThat(fact.related()).extracting("path.text").containsExactly("seams.centre");
  }
}
