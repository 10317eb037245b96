package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FirstWashTest {

  private static final double EXACT = 1e-6;

  /** Motifs of 20 by 20 cm, dye and an outline in paint, at 0 and 100 cm. */
  private static Sketch leaves() {
    return new Sketch()
        .shrinking(0.06)
        .dye("green", 0x336633)
        .paint("gold", 0xc9a227)
        .design("leaf", "green 45%", "gold 12% key 1mm")
        .at("leaves", "leaf", 0, 100);
  }

  private static PrintDay washedBetween(Sketch sketch) {
    return sketch
        .run()
        .printColours("leaves", 1)
        .soak()
        .rinse()
        .wash()
        .dry(300)
        .printColours("leaves", 2)
        .wash();
  }

  @Test
  void aMotifShrinksWithItsClothAndItsStencilDoesNot() {
    AcrossFirstWash fact = washedBetween(leaves()).fact(AcrossFirstWash.class);
    assertThat(fact.earlier()).containsExactly("green");
    assertThat(fact.later()).containsExactly("gold");
    assertThat(fact.wash().number()).isEqualTo(4);
    assertThat(fact.path().text()).isEqualTo("run[5]");
    assertThat(fact.marks()).containsExactly("leaves 1", "leaves 2");
    assertThat(fact.keptAlong().cm()).isCloseTo(18.8, within(EXACT));
    assertThat(fact.keptAcross().cm()).isCloseTo(19.4, within(EXACT));
    assertThat(fact.farEdge().mm()).isCloseTo(12, within(EXACT));
    assertThat(fact.eitherEdge().mm()).isCloseTo(6, within(EXACT));
    assertThat(fact.takes().mm()).isEqualTo(1);
  }

  @Test
  void aWideTrapTakesWhatIsOff() {
    Sketch sketch = leaves().design("leaf", "green 45% 13mm", "gold 12% key 1mm");
    assertThat(washedBetween(sketch).fact(AcrossFirstWash.class).takes().mm()).isEqualTo(13);
  }

  @Test
  void whatIsLaidByEyeIsLaidNoFinerThanThat() {
    assertThat(washedBetween(leaves().byEye()).fact(AcrossFirstWash.class).takes().mm())
        .isEqualTo(2);
  }

  @Test
  void onlyWhatTheTwoShareIsOff() {
    Sketch sketch = leaves().design("leaf", "green 45%", "gold 12% left 1mm");
    AcrossFirstWash fact = washedBetween(sketch).fact(AcrossFirstWash.class);
    assertThat(fact.along().cm()).isCloseTo(10, within(EXACT));
    assertThat(fact.across().cm()).isCloseTo(20, within(EXACT));
    assertThat(fact.farEdge().mm()).isCloseTo(6, within(EXACT));
  }

  @Test
  void coloursInPartsOfTheirOwnDoNotMeet() {
    Sketch sketch = leaves().design("leaf", "green 45% right", "gold 12% left");
    assertThat(washedBetween(sketch).facts(AcrossFirstWash.class)).isEmpty();
  }

  @Test
  void clothThatWasWashedShrinksNoMore() {
    Sketch washed =
        new Sketch()
            .dye("green", 0x336633)
            .paint("gold", 0xc9a227)
            .design("leaf", "green 45%", "gold 12% key 1mm")
            .at("leaves", "leaf", 0);
    assertThat(washedBetween(washed).facts(AcrossFirstWash.class)).isEmpty();
    PrintDay first = leaves().run().wash().dry(300).printColours("leaves", 1).soak().wash();
    assertThat(first.printColours("leaves", 2).facts(AcrossFirstWash.class)).isEmpty();
  }

  @Test
  void aSecondWashShrinksNothing() {
    Sketch sketch = leaves().at("first", "leaf", 250);
    PrintDay day = sketch.run().print("first").soak().wash().dry(300);
    day.printColours("leaves", 1).soak().wash().dry(300).printColours("leaves", 2);
    assertThat(day.facts(AcrossFirstWash.class)).isEmpty();
  }

  @Test
  void motifsThatLieWholeOnOneSideOfItAreNoMatter() {
    PrintDay day = leaves().run().printOnly("leaves", 1).soak().wash().dry(300);
    assertThat(day.printOnly("leaves", 2).facts(AcrossFirstWash.class)).isEmpty();
  }
}
