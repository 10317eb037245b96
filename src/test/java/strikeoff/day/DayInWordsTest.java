package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.hands;
import static strikeoff.day.TinyDay.of;
import static strikeoff.day.TinyDay.prints;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.day.Task.Kind;
import strikeoff.day.facts.DayEnd;
import strikeoff.day.facts.TableDay;
import strikeoff.day.facts.Timeline;

/**
 * What plans/README.md says of people, steps and hours, each point with a tiny plan worked by hand.
 */
class DayInWordsTest {

  private static final String THREE = "[Wren, Tam, Ada]";

  @Test
  void aStepMayBeginBeforeTheLastOneEndsButNotBeforeItBegins() {
    Timeline day =
        TinyDay.of(
            THREE, "- {mix: gold, by: Tam, takes: 30 min}\n- print: near\n- {mix: sand, by: Ada}");
    assertThat(of(day, Kind.MIX)).containsExactly("mix gold 09:00-09:30", "mix sand 09:15-09:25");
    assertThat(prints(day)).first().isEqualTo("near 1, a 09:15");
  }

  @Test
  void mixingTakesWhatIsWrittenForAllOfThemTogether() {
    assertThat(of(TinyDay.of("1", "- {mix: [gold, sand], takes: 30 min}"), Kind.MIX))
        .containsExactly("mix gold 09:00-09:15", "mix sand 09:15-09:30");
    assertThat(of(TinyDay.of("1", "- mix: [sand, gold]"), Kind.MIX))
        .containsExactly("mix sand 09:00-09:10", "mix gold 09:10-09:20");
  }

  /** Gold is listed first; the shells, in sand, are printed first. Blue and ink are mixed. */
  @Test
  void allPastesAreMixedInTheOrderInWhichTheyAreFirstPrintedWith() {
    String all = "- {mix: all, by: Tam}\n";
    assertThat(of(TinyDay.of(THREE, all + "- print: [shells, stars]"), Kind.MIX))
        .containsExactly("mix sand 09:00-09:10", "mix gold 09:10-09:20");
    assertThat(of(TinyDay.of(THREE, all + "- print: [stars, shells]"), Kind.MIX))
        .containsExactly("mix gold 09:00-09:10", "mix sand 09:10-09:20");
  }

  @Test
  void allPlacementsArePrintedInTheOrderInWhichThePlanListsThem() {
    assertThat(prints(TinyDay.of("1", "- mix: all\n- print: all")))
        .extracting(print -> print.replaceFirst(" .*", ""))
        .startsWith("near", "near", "pair", "pair", "pair", "pair", "far", "far", "edge")
        .endsWith("dots", "stars", "shells", "banners", "banners");
  }

  /** Near's frames begin at 8 cm and edge's end at 127: a table of 120 cm shows both from 8 on. */
  @Test
  void sixtySetsAreLookedAtToLayTheCloth() {
    String near = "- print: near\n";
    String edge = "- print: edge";
    assertThat(of(TinyDay.of("1", near.repeat(59) + edge), Kind.MOVE)).isEmpty();
    assertThat(of(TinyDay.of("1", near.repeat(60) + edge), Kind.MOVE)).hasSize(1);
  }

  @Test
  void printsGoAlongTheClothAndFromTheNearEdge() {
    String run = "- {print: [loose, side], order: set by set, colours: a}";
    // Loose 1, 2, 3 lie at 60, 20 and 40 cm; side 1 and 2 at the same place along, 2 nearer.
    assertThat(prints(TinyDay.of("1", run)))
        .extracting(print -> print.replaceFirst(", .*", ""))
        .containsExactly("loose 2", "loose 3", "loose 1", "side 2", "side 1");
  }

  /** Tam mixes until 9:50, so Ada is free first; under "by" only those who are named there. */
  @Test
  void aLargeFrameIsLaidByTheFirstWithWhoeverIsFreeFirst() {
    String mixing = "- {mix: gold, by: Tam, takes: 50 min}\n";
    assertThat(hands(TinyDay.of(THREE, mixing + "- print: banners"), Kind.PRINT))
        .containsExactly("banners 1, wide: Wren, Ada", "banners 2, wide: Wren, Ada");
    Timeline named = TinyDay.of(THREE, mixing + "- {print: banners, by: [Wren, Tam]}");
    assertThat(hands(named, Kind.PRINT))
        .containsExactly("banners 1, wide: Wren, Tam", "banners 2, wide: Wren, Tam");
    assertThat(prints(named)).containsExactly("banners 1, wide 09:50", "banners 2, wide 09:50:50");
    assertThat(hands(TinyDay.of("Wren", "- print: banners"), Kind.PRINT))
        .as("nobody else is there, which a rule tells")
        .contains("banners 1, wide: Wren");
  }

  /**
   * Wren goes to the first station; Tam is free and takes the next, once Wren has left screen a.
   */
  @Test
  void ofSeveralTheNextTurnGoesToWhoeverIsFreeFirst() {
    assertThat(hands(TinyDay.of("[Wren, Tam]", "- {print: two, by: [Wren, Tam]}"), Kind.PRINT))
        .containsExactly("two 1, a: Wren", "two 2, a: Wren", "two 1, b: Tam", "two 2, b: Tam");
    String stations = "- {print: two, by: [Wren, Tam], order: by station}";
    assertThat(hands(TinyDay.of("[Wren, Tam]", stations), Kind.PRINT))
        .containsExactlyInAnyOrder(
            "two 1, a: Wren", "two 1, b: Wren", "two 2, a: Tam", "two 2, b: Tam");
  }

  /** Wren is done with blue at 9:15:50, Tam with ink at 9:16:40. */
  @Test
  void ofSeveralWhoeverIsFreeFirstWashes() {
    assertThat(
            hands(TinyDay.of("[Wren, Tam]", "- {print: near, by: [Wren, Tam]}"), Kind.WASH_SCREEN))
        .containsExactly("wash out a: Wren", "wash out b: Tam");
    String washes = "- {print: near, by: [Wren, Tam], washes: Ada}";
    assertThat(hands(TinyDay.of(THREE, washes), Kind.WASH_SCREEN))
        .containsExactly("wash out a: Ada", "wash out b: Ada");
  }

  /**
   * Beside Wren, Tam would print until 9:47:30 and only then mix for an hour. Without her Wren is
   * done at 10:18:10, when the paste is mixed and the shells can be printed.
   */
  @Test
  void whoHasOtherWorkStaysOutWhereTheRunEndsSoonerSo() {
    String wait = "dry between colours: 30 min, order: by station, washes: Ada";
    String mixing = "- {mix: sand, by: Tam, takes: 1 h}\n- {print: shells, washes: Ada}";
    Timeline day = TinyDay.of(THREE, "- {print: two, by: [Wren, Tam], " + wait + "}\n" + mixing);
    assertThat(of(day, Kind.MIX)).containsExactly("mix sand 09:15-10:15");
    assertThat(hands(day, Kind.PRINT)).allMatch(print -> print.endsWith(": Wren"));
    // With nothing else to do she helps.
    assertThat(
            hands(TinyDay.of(THREE, "- {print: two, by: [Wren, Tam], " + wait + "}"), Kind.PRINT))
        .contains("two 2, a: Tam");
  }

  /** Tam sews; Ada prints next, and lays the cloth for it. */
  @Test
  void whoPrintsNextLaysTheClothAgain() {
    String run =
        "- {print: near, colours: a}\n- {sew: centre, by: Tam}\n- {print: near, colours: b, by: Ada}";
    assertThat(hands(TinyDay.of(THREE, run), Kind.LOAD))
        .containsExactly("lay the cloth on the table: Wren", "lay the cloth on the table: Ada");
  }

  @Test
  void allOfASoakIsHandsOnAndABatchLiesByItself() {
    String print = "- {print: near, colours: a, washes: Ada}\n";
    String mix = ", for: 30 min, by: Tam}\n- {mix: gold, by: Tam}";
    String bath = ", bath: {soda ash: 200 g, water: 5 L}";
    assertThat(of(TinyDay.of(THREE, print + "- {fix: soak" + bath + mix), Kind.MIX))
        .containsExactly("mix gold 09:45:50-09:55:50");
    assertThat(of(TinyDay.of(THREE, print + "- {fix: batch" + mix), Kind.MIX))
        .containsExactly("mix gold 09:15:50-09:25:50");
  }

  /** Printed by 9:15:50, washed by 9:25:50, dry at 9:55:50. */
  @Test
  void theRunEndsWhenTheLastScreenIsDryAndTheDayWhenTheLastPersonStops() {
    Timeline day = TinyDay.of("1", "- {print: near, colours: a}");
    assertThat(TinyDay.clock(day.finish())).isEqualTo("09:55:50");
    assertThat(PrintDay.figures(day).days())
        .singleElement()
        .satisfies(s -> assertThat(TinyDay.clock(s.ends())).isEqualTo("09:25:50"));
  }

  /** Sixteen hours from 9:15:50 are over at 1:15:50, and nobody has gone home. */
  @Test
  void workGoesOnPastClosingAndMidnightUntilAnEndOfDay() {
    String night = "- {print: near, colours: a}\n- dry: 16 h\n- {print: near, colours: b}\n";
    Timeline day = TinyDay.of("1", night + "- end of day\n- {print: far, colours: a}");
    assertThat(day.impressions())
        .extracting(i -> i.laid().text())
        .containsExactly("day 1, 09:15", "day 2, 01:16", "day 2, 09:00");
    List<DayEnd> late =
        day.evidence().stream()
            .filter(DayEnd.class::isInstance)
            .map(DayEnd.class::cast)
            .filter(DayEnd::afterClosing)
            .toList();
    assertThat(late)
        .singleElement()
        .satisfies(d -> assertThat(d.day()).as("it is still that of the day before").isEqualTo(1))
        // until b is washed, 1:26:40
        .satisfies(d -> assertThat(d.over().seconds()).isEqualTo((8 * 60 + 26) * 60 + 40));
    assertThat(PrintDay.figures(day).days()).extracting(TableDay::day).containsExactly(1, 2);
  }

  @Test
  void whoPrintsWashesTheScreensOfTheStep() {
    Timeline day = TinyDay.of("[Wren, Tam]", "- {print: near, by: Tam}");
    assertThat(hands(day, Kind.WASH_SCREEN)).containsExactly("wash out a: Tam", "wash out b: Tam");
    assertThat(hands(day, Kind.LOAD)).containsExactly("lay the cloth on the table: Wren");
  }

  /** Two banners are printed from 9:15 to 9:16:40. */
  @Test
  void twoPeopleAreAtALargeFrameForAllOfThePrint() {
    Timeline day = TinyDay.of("[Wren, Tam]", "- print: banners\n- {mix: gold, by: Tam}");
    assertThat(of(day, Kind.MIX)).containsExactly("mix gold 09:16:40-09:26:40");
  }

  @Test
  void severalPlacementsArePrintedAsTheStepNamesThem() {
    assertThat(prints(TinyDay.of("1", "- {print: [far, near], colours: a}")))
        .containsExactly("far 1, a 09:15", "near 1, a 09:15:50");
  }

  @ParameterizedTest
  @CsvSource({
    "'rinse: 20 °C, for: 30 min', 09:30-09:45",
    "'wash: 60 °C, for: 30 min', 09:30-09:45",
    "'heat-set: oven, for: 30 min', 09:30-09:45",
    "'fix: soak, for: 30 min, bath: {soda ash: 200 g, water: 5 L}', 09:30-09:45",
    "'sew: centre', 09:30-09:45",
  })
  void clothThatIsWorkedOffTheTableFirstIsLaidOnceAfterIt(String step, String laid) {
    assertThat(of(TinyDay.of("1", "- {" + step + "}\n- print: near"), Kind.LOAD))
        .containsExactly("lay the cloth on the table " + laid);
  }

  /** From 9:15:50, or from 9:25:50 on where Ada washes the screen at the one sink before. */
  @ParameterizedTest
  @CsvSource({
    "'fix: steam', 09:45:50-09:55:50",
    "'heat-set: oven', 09:45:50-09:55:50",
    "'rinse: 20 °C', 09:55:50-10:05:50",
    "'wash: 60 °C', 09:55:50-10:05:50",
  })
  void steamingRinsingWashingAndHeatSettingAreHandsOn(String step, String mixed) {
    String run =
        "- {print: near, colours: a, washes: Ada}\n- {"
            + step
            + ", for: 30 min, by: Tam}\n- {mix: gold, by: Tam}";
    assertThat(of(TinyDay.of(THREE, run), Kind.MIX)).containsExactly("mix gold " + mixed);
  }
}
