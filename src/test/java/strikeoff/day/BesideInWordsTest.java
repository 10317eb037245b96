package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.hands;
import static strikeoff.day.TinyDay.of;
import static strikeoff.day.TinyDay.prints;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Timeline;

/**
 * What plans/README.md says of steps that begin when free or when done, each point with a tiny plan
 * worked by hand. The cloth is laid from 9:00 to 9:15; an impression takes 50 s, of which 20 s are
 * gone until its frame is laid.
 */
class BesideInWordsTest {

  private static Timeline day(String... steps) {
    StringBuilder run = new StringBuilder();
    for (String step : steps) {
      run.append("- ").append(step).append('\n');
    }
    return TinyDay.of("[Wren, Tam]", run.toString());
  }

  private static final List<String> MIXING =
      List.of("{mix: gold, by: Tam, takes: 30 min}", "{mix: sand, by: Tam, takes: 30 min}");

  @Test
  void aStepMayBeginBeforeTheOneAboveItHasBegun() {
    String print = "{print: near, colours: a";
    assertThat(prints(day(MIXING.get(0), MIXING.get(1), print + "}")))
        .containsExactly("near 1, a 09:30");
    assertThat(prints(day(MIXING.get(0), MIXING.get(1), print + ", begins: when free}")))
        .containsExactly("near 1, a 09:15");
  }

  @Test
  void nothingBelowWaitsForItToBegin() {
    String aside = MIXING.get(1).replace("}", ", begins: when free}");
    Timeline day = day(MIXING.get(0), aside, "{print: near, colours: a}");
    assertThat(prints(day)).containsExactly("near 1, a 09:15");
    assertThat(of(day, Task.Kind.MIX))
        .containsExactly("mix gold 09:00-09:30", "mix sand 09:30-10:00");
  }

  @Test
  void aSeamIsSewnAsSoonAsItsHandsAreFree() {
    String sew = "{sew: centre, begins: when free}";
    assertThat(of(day(MIXING.get(0), MIXING.get(1), sew), Task.Kind.SEW))
        .containsExactly("sew centre 09:00-09:30");
  }

  /** The film of near is left at 9:15:50; Wren washes its screen, and Tam mixes. */
  @Test
  void aPasteIsMixedBesideADryingStepOrAfterIt() {
    String mix = "{mix: gold, by: Tam";
    String print = "{print: near, colours: a}";
    assertThat(of(day(print, "{dry: 1 h}", mix + "}"), Task.Kind.MIX))
        .containsExactly("mix gold 09:15:50-09:25:50");
    assertThat(of(day(print, "{dry: 1 h}", mix + ", begins: when done}"), Task.Kind.MIX))
        .containsExactly("mix gold 10:15:50-10:25:50");
    assertThat(of(day(print, mix + ", begins: when done}", "{dry: 1 h}"), Task.Kind.MIX))
        .as("when the screen is washed")
        .containsExactly("mix gold 09:25:50-09:35:50");
  }

  /** Frames at 20 cm and 80 cm don't meet. */
  @Test
  void twoPrintDifferentThingsAtTheSameTime() {
    String near = "{print: near, colours: a}";
    String far = "{print: far, colours: b, by: Tam";
    assertThat(prints(day(near, far + "}")))
        .containsExactly("near 1, a 09:15", "far 1, b 09:15:50");
    Timeline day = day(near, far + ", begins: when free}");
    assertThat(prints(day)).containsExactly("near 1, a 09:15", "far 1, b 09:15");
    assertThat(hands(day, Task.Kind.PRINT)).containsExactly("near 1, a: Wren", "far 1, b: Tam");
  }

  /** The leaf's frame reaches 4 cm over that of near: it is fetched while that is lifted. */
  @Test
  void framesThatMeetComeOneAfterTheOther() {
    assertThat(
            prints(day("{print: near, colours: a}", "{print: leaves, by: Tam, begins: when free}")))
        .containsExactly("near 1, a 09:15", "leaves 1, d 09:15:30");
  }

  @Test
  void aScreenIsInOneHand() {
    assertThat(
            prints(
                day(
                    "{print: near, colours: a}",
                    "{print: far, colours: a, by: Tam, begins: when free}")))
        .containsExactly("near 1, a 09:15", "far 1, a 09:15:50");
  }

  /** Wren is free at 9:16:40, Tam, who prints the other colour, at 9:17:30; Ada washes. */
  @Test
  void severalGoOnToTheNextStepOneByOne() {
    String run =
        "- {print: two, by: [Wren, Tam]}\n- {print: leaves, by: [Wren, Tam]%s}\n"
            + "- {wash screen: all, by: Ada}";
    assertThat(prints(TinyDay.of("[Wren, Tam, Ada]", run.formatted(""))))
        .contains("two 2, b 09:16:40", "leaves 1, d 09:17:30");
    Timeline day = TinyDay.of("[Wren, Tam, Ada]", run.formatted(", begins: when free"));
    assertThat(prints(day)).contains("two 2, b 09:16:40", "leaves 1, d 09:16:40");
    assertThat(hands(day, Task.Kind.PRINT)).contains("two 2, b: Tam", "leaves 1, d: Wren");
  }

  /** Blue is off at 9:15:50; ink is another colour of this step, and waits for its film alone. */
  @Test
  void itsOwnWaitsHoldInIt() {
    String far = "{print: far, by: Tam, dry between colours: 10 min, begins: when free}";
    assertThat(prints(day("{print: leaves, by: Wren}", far)))
        .containsExactly("leaves 1, d 09:15", "far 1, a 09:15", "far 1, b 09:25:50");
  }

  /** Number 1 of two, and of loose those that lie second and third along the cloth. */
  @Test
  void eachPlacementMayHaveItsOwnNumbers() {
    assertThat(prints(day("{print: {two: 2, loose: [1, 3], dots: all}, colours: 1}")))
        .extracting(print -> print.replaceFirst(" 09.*", ""))
        .containsExactly("two 2, a", "loose 3, a", "loose 1, a", "dots 1, a");
    assertThat(prints(day("{print: {two: 1, far: all}, order: set by set, begins: when free}")))
        .extracting(print -> print.replaceFirst(" 09.*", ""))
        .containsExactly("two 1, a", "two 1, b", "far 1, a", "far 1, b");
  }

  @Test
  void whatMovesOrDriesTheClothComesBetween() {
    String near = "{print: near, colours: a}";
    assertThat(
            prints(
                day(near, "{dry: 10 min}", "{print: far, colours: b, by: Tam, begins: when free}")))
        .containsExactly("near 1, a 09:15", "far 1, b 09:25:50");
    Timeline day = day(near, "{print: pair, only: 2, colours: b, by: Tam, begins: when free}");
    assertThat(prints(day)).containsExactly("near 1, a 09:15", "pair 2, b 09:25:50");
  }
}
