package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.speech.SequenceSpeech;

class ColourOrderTest {

  private static Sketch pastes() {
    return new Sketch()
        .dye("sand", 0xd9b77e)
        .dye("rust", 0xb5653a)
        .dye("ink", 0x2b3440)
        .paint("cream", 0xfff6e0);
  }

  @Test
  void lightBeforeDarkIsNoMatter() {
    PrintDay day = pastes().design("shell", "sand", "rust", "ink").at("shells", "shell", 0).run();
    assertThat(day.print("shells").facts(DarkBeforeLight.class)).isEmpty();
  }

  @Test
  void darkFirstInTheDesignsListIsTheListsFault() {
    DarkBeforeLight fact =
        pastes()
            .design("shell", "ink", "sand", "rust")
            .at("shells", "shell", 0, 50)
            .run()
            .print("shells")
            .fact(DarkBeforeLight.class);
    assertThat(fact.path().text()).isEqualTo("designs.shell.separations[0]");
    assertThat(fact.dark()).isEqualTo("ink");
    assertThat(fact.light()).isEqualTo("sand");
    assertThat(fact.better()).containsExactly("sand", "rust", "ink");
    assertThat(SequenceSpeech.places(fact)).isEqualTo("shells 1, 2");
    assertThat(fact.step().value()).isBetween(50.0, 60.0);
  }

  @Test
  void anOrderThatThePrintStepTurnsRoundIsTheStepsFault() {
    DarkBeforeLight fact =
        pastes()
            .design("shell", "sand", "ink")
            .at("shells", "shell", 0)
            .run()
            .printColours("shells", 2, 1)
            .fact(DarkBeforeLight.class);
    assertThat(fact.path().text()).isEqualTo("run[0].colours");
  }

  @Test
  void ordersThatDifferAreTwoFacts() {
    PrintDay day =
        pastes()
            .design("shell", "ink", "sand", "rust")
            .at("shells", "shell", 0)
            .at("more", "shell", 100)
            .run()
            .print("shells")
            .printColours("more", 1, 3, 2);
    assertThat(day.facts(DarkBeforeLight.class)).hasSize(2);
  }

  @Test
  void opaqueLightPaintMayComeAfterDark() {
    PrintDay day =
        pastes().design("shell", "ink", "cream").at("shells", "shell", 0).run().print("shells");
    assertThat(day.facts(DarkBeforeLight.class)).isEmpty();
  }

  @Test
  void anOutlinePrintedFirstIsAMatterOfTheKeyAlone() {
    PrintDay day =
        pastes()
            .design("shell", "ink key", "sand", "rust")
            .at("shells", "shell", 0)
            .run()
            .print("shells");
    assertThat(day.facts(DarkBeforeLight.class)).isEmpty();
    KeyBeforeOthers fact = day.fact(KeyBeforeOthers.class);
    assertThat(fact.key()).isEqualTo("ink");
    assertThat(fact.after()).containsExactly("sand", "rust");
    assertThat(fact.better()).containsExactly("sand", "rust", "ink");
    assertThat(fact.path().text()).isEqualTo("designs.shell.separations[0]");
  }

  @Test
  void anOutlinePrintedLastIsNoMatter() {
    PrintDay day =
        pastes().design("shell", "sand", "ink key").at("shells", "shell", 0).run().print("shells");
    assertThat(day.facts(KeyBeforeOthers.class)).isEmpty();
  }

  @Test
  void theSameColoursInSeparateMotifsAreNoMatter() {
    PrintDay day =
        pastes()
            .design("dark", "ink")
            .design("light", "sand")
            .at("darks", "dark", 0)
            .at("lights", "light", 0)
            .run()
            .print("darks")
            .print("lights");
    assertThat(day.facts(DarkBeforeLight.class)).isEmpty();
  }

  @Test
  void theNarrowestTrapOfADesignStandsForIt() {
    Sketch sketch =
        pastes().design("shell", "sand 1.5mm", "rust 0.5mm", "ink key").at("shells", "shell", 0);
    TrapWidth railed = sketch.run().fact(TrapWidth.class);
    assertThat(railed.pastes()).containsExactly("rust");
    assertThat(railed.tolerance().mm()).isEqualTo(1);
    assertThat(railed.widen().mm()).isEqualTo(0.5);
    assertThat(sketch.byEye().run().fact(TrapWidth.class).tolerance().mm()).isEqualTo(2);
  }

  private static PrintDay inOneMotif(String... separations) {
    return pastes().design("shell", separations).at("shells", "shell", 0).run().print("shells");
  }

  @Test
  void coloursBesideEachOtherInAMotifMayComeInAnyOrder() {
    for (String[] halves :
        new String[][] {{"left", "right"}, {"right", "left"}, {"near", "far"}, {"far", "near"}}) {
      PrintDay day = inOneMotif("ink " + halves[0], "sand " + halves[1]);
      assertThat(day.facts(DarkBeforeLight.class)).isEmpty();
      PrintDay outline = inOneMotif("ink key " + halves[0], "sand " + halves[1]);
      assertThat(outline.facts(KeyBeforeOthers.class)).isEmpty();
    }
    assertThat(inOneMotif("ink left", "sand").facts(DarkBeforeLight.class)).hasSize(1);
    assertThat(inOneMotif("ink key far", "sand").facts(KeyBeforeOthers.class)).hasSize(1);
  }

  @Test
  void onlyWhatAnOutlineLiesUnderIsToldWithIt() {
    KeyBeforeOthers fact =
        inOneMotif("ink key left", "sand right", "rust").fact(KeyBeforeOthers.class);
    assertThat(fact.after()).containsExactly("rust");
  }

  @Test
  void theBetterOrderIsLightThenDarkThenPaintThenOutlines() {
    KeyBeforeOthers fact =
        pastes()
            .paint("chalk", 0xffffff)
            .design("shell", "chalk key", "cream", "rust", "sand")
            .at("shells", "shell", 0, 50)
            .run()
            .print("shells")
            .fact(KeyBeforeOthers.class);
    assertThat(fact.better()).containsExactly("sand", "rust", "cream", "chalk");
    assertThat(SequenceSpeech.betterOrder(fact))
        .isEqualTo("sand, then rust, then cream, then chalk");
    assertThat(fact.marks()).containsExactly("shells 1", "shells 2");
  }

  @Test
  void bothOrdersAreToldAsTheyWouldBeWritten() {
    DarkBeforeLight fact = inOneMotif("ink", "rust", "sand").fact(DarkBeforeLight.class);
    assertThat(SequenceSpeech.printedOrder(fact)).isEqualTo("ink, then rust, then sand");
    assertThat(SequenceSpeech.betterOrder(fact)).isEqualTo("sand, then rust, then ink");
    assertThat(fact.marks()).containsExactly("shells 1");
  }

  @Test
  void anOrderThatComesOfTwoStepsIsTheFaultOfWhereTheyStand() {
    DarkBeforeLight fact =
        pastes()
            .design("shell", "sand", "ink")
            .at("shells", "shell", 0)
            .run()
            .printColours("shells", 2)
            .printColours("shells", 1)
            .fact(DarkBeforeLight.class);
    assertThat(fact.path().text()).isEqualTo("run[0]");
    assertThat(fact.related()).extracting("path.text").containsExactly("run[1]");
  }

  @Test
  void theTableIsToldWithATrapAndOnlyPlacedDesignsHaveOne() {
    Sketch sketch =
        pastes()
            .design("shell", "sand 1mm", "rust")
            .design("spare", "sand 1mm", "rust")
            .at("shells", "shell", 0, 50);
    TrapWidth railed = sketch.run().fact(TrapWidth.class);
    assertThat(railed.design()).isEqualTo("shell");
    assertThat(SequenceSpeech.table(railed)).isEqualTo("on a railed table");
    assertThat(railed.marks()).containsExactly("shells 1", "shells 2");
    assertThat(SequenceSpeech.table(sketch.byEye().run().fact(TrapWidth.class)))
        .isEqualTo("laid by eye");
  }
}
