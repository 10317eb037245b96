package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.of;
import static strikeoff.day.TinyDay.prints;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.IdleHand;
import strikeoff.day.facts.IdleScreen;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.TableDay;
import strikeoff.day.facts.Timeline;
import strikeoff.units.Span;

/** What plans/README.md says of waits and screens, each point with a tiny plan worked by hand. */
class ClockInWordsTest {

  @Test
  void aWaitBetweenColoursHoldsAcrossAMove() {
    // Blue off at 9:15:50; moved to 9:25:50, off there 9:26:40; moved back to 9:36:40. Blue has 90
    // min from its lift: ink at 10:45:50, off 10:46:40; moved to 10:56:40, and 90 min are over
    // there at 10:56:40.
    assertThat(
            prints(
                TinyDay.of("1", "- {print: pair, order: over all, dry between colours: 90 min}")))
        .containsExactly(
            "pair 1, a 09:15", "pair 2, a 09:25:50", "pair 1, b 10:45:50", "pair 2, b 10:56:40");
  }

  @Test
  void nobodyWaitsForWhatLiesApart() {
    // Frames at 20 cm and 80 cm don't meet: far's blue follows near's ink at once.
    assertThat(prints(TinyDay.of("1", "- {print: [near, far], dry between colours: 10 min}")))
        .containsExactly(
            "near 1, a 09:15", "near 1, b 09:25:50", "far 1, a 09:26:40", "far 1, b 09:37:30");
  }

  @Test
  void aPauseRunsBesideTheWaitBetweenColours() {
    assertThat(
            prints(TinyDay.of("1", "- {print: near, dry between colours: 10 min, pause: 4 min}")))
        .containsExactly("near 1, a 09:15", "near 1, b 09:25:50");
    assertThat(
            prints(TinyDay.of("1", "- {print: near, dry between colours: 4 min, pause: 10 min}")))
        .containsExactly("near 1, a 09:15", "near 1, b 09:25:50");
  }

  @Test
  void aPauseIsOverAfterAMove() {
    assertThat(prints(TinyDay.of("1", "- {print: pair, colours: a, pause: 5 min}")))
        .containsExactly("pair 1, a 09:15", "pair 2, a 09:25:50");
  }

  @Test
  void aNightCountsBeforeMovingAndBareClothMovesAtOnce() {
    String night = "- {print: near}\n- end of day\n- {print: pair, only: 2, before moving: 2 h}";
    assertThat(of(TinyDay.of("1", night), Task.Kind.MOVE).get(0)).endsWith(" 09:00-09:10");
    String bare = "- move on: 50 cm\n- {print: pair, only: 2, before moving: 2 h}";
    assertThat(of(TinyDay.of("1", bare), Task.Kind.WAIT)).isEmpty();
  }

  @Test
  void clothThatIsSewnFirstIsLaidOnceAfterIt() {
    assertThat(of(TinyDay.of("1", "- sew: centre\n- print: near"), Task.Kind.LOAD))
        .containsExactly("lay the cloth on the table 09:30-09:45");
  }

  @Test
  void theOrderOfScreensInThePlanChangesNothing() {
    // a is left first, so it is washed first, whichever way round they are named.
    String run = "- print: near\n- wash screen: ";
    assertThat(of(TinyDay.of("1", run + "[b, a]"), Task.Kind.WASH_SCREEN))
        .isEqualTo(of(TinyDay.of("1", run + "[a, b]"), Task.Kind.WASH_SCREEN))
        .first()
        .asString()
        .startsWith("wash out a");
  }

  @Test
  void aBatchIsWaitingOnEachOfItsDays() {
    Timeline day = TinyDay.of("1", "- print: near\n- {fix: batch, for: 24 h}\n- rinse: 20 °C");
    // From 9:16:40, less 20 min of washing screens, to 17:00; then from 9:00 to 9:16:40.
    assertThat(day.waiting().minutes() * 60).isEqualTo((8 * 60 - 20) * 60.0);
    List<TableDay> days =
        day.evidence().stream()
            .filter(RunFigures.class::isInstance)
            .flatMap(f -> ((RunFigures) f).days().stream())
            .toList();
    assertThat(days).allSatisfy(d -> assertThat(d.waiting().minutes()).isLessThanOrEqualTo(480));
    assertThat(Math.round(days.get(1).waiting().seconds())).isEqualTo(16 * 60 + 40);
  }

  @Test
  void silicateIsBrushedOnByHandAndThenLiesByItself() {
    for (String how : List.of("batch", "soak")) {
      Timeline day =
          TinyDay.of("1", "- print: near\n- {fix: " + how + ", for: 14 h, bath: {silicate: 1 L}}");
      List<Task> fixing = day.tasks().stream().filter(t -> t.kind() == Task.Kind.FIX).toList();
      assertThat(fixing).extracting(t -> t.people().isEmpty()).containsExactly(false, true);
      assertThat(fixing)
          .extracting(t -> t.end().since(t.start()))
          .containsExactly(new Span(15), new Span(14 * 60));
    }
  }

  @Test
  void withoutByTheFirstWorksAndTheOtherIsTold() {
    Timeline day = TinyDay.of("[Wren, Tam]", "- {print: near, dry between colours: 9 min}");
    assertThat(day.tasks()).noneMatch(t -> t.people().contains("Tam"));
    assertThat(day.evidence())
        .filteredOn(IdleHand.class::isInstance)
        .map(IdleHand.class::cast)
        .singleElement()
        .satisfies(hand -> assertThat(hand.person()).isEqualTo("Tam"))
        // Too short a wait to wash a's screen in: she would begin at 9:15:50, and wash both by
        // 9:35:50; Wren begins when all is printed, 9:25:40.
        .satisfies(hand -> assertThat(Math.round(hand.saves().seconds())).isEqualTo(9 * 60 + 50));
  }

  @Test
  void screensAreWashedInWaitsThatAreLongEnough() {
    // a is left at 9:15:50, and Wren washes it while the cloth waits until 9:30:50.
    assertThat(
            of(
                TinyDay.of("1", "- {print: near, dry between colours: 15 min}"),
                Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a 09:15:50-09:25:50", "wash out b 09:31:40-09:41:40");
  }

  @Test
  void eachScreenIsWashedBeforeTheNextOneIfThePlanSaysSo() {
    String run = "- {print: near, wash between colours: yes}";
    assertThat(prints(TinyDay.of("1", run)))
        .containsExactly("near 1, a 09:15", "near 1, b 09:25:50");
  }

  /** Both frames at once, or each film by itself: blue on 2 is off 50 s after blue on 1. */
  @Test
  void onePrinterWaitsOnceAndSeveralForEachPrint() {
    assertThat(prints(TinyDay.of("1", "- {print: two, dry between colours: 10 min}")))
        .containsExactly(
            "two 1, a 09:15", "two 2, a 09:15:50", "two 1, b 09:26:40", "two 2, b 09:27:30");
    String both = "- {print: two, dry between colours: 10 min, by: [Wren, Tam]}";
    assertThat(prints(TinyDay.of("[Wren, Tam]", both)))
        .containsExactly(
            "two 1, a 09:15", "two 2, a 09:15:50", "two 1, b 09:25:50", "two 2, b 09:26:40");
    String byStation = "- {print: two, dry between colours: 10 min, order: by station}";
    assertThat(prints(TinyDay.of("1", byStation)))
        .containsExactly(
            "two 1, a 09:15", "two 1, b 09:25:50", "two 2, a 09:26:40", "two 2, b 09:37:30");
  }

  /** Numbers 2, 3, 1 lie one behind the other along the cloth. */
  @Test
  void everyOtherCountsAlongTheClothAndThePassesAreWaitedBetween() {
    String run =
        "- {print: loose, colours: a, every other: yes, dry between passes: 10 min, pause: 4 min}";
    assertThat(prints(TinyDay.of("1", run)))
        // 1 is off at 9:20:40; the pause runs beside the wait.
        .containsExactly("loose 2, a 09:15", "loose 1, a 09:19:50", "loose 3, a 09:30:40");
  }

  /** Back there at 9:36:40: in still air the ten minutes are long over, with a fan they begin. */
  @Test
  void inMovedAirTheTimeIsThatForWhichTheAirMoves() {
    String over = "- {print: pair, order: over all, dry between colours: ";
    assertThat(prints(TinyDay.of("1", over + "10 min}"))).contains("pair 1, b 09:36:40");
    assertThat(prints(TinyDay.of("1", over + "{for: 10 min, air: fan}}")))
        .contains("pair 1, b 09:46:40");
  }

  /** Blue is frame-safe 10 min after its frame is off, by the printer's own strike-off. */
  @Test
  void aStateIsWaitedForAsLongAsTheFilmsTake() {
    String run = "- {print: near, dry between colours: until frame-safe}";
    assertThat(prints(TinyDay.of("1", run, PrintDay.POLICY)))
        .containsExactly("near 1, a 09:15", "near 1, b 09:25:50");
  }

  /** Off at 9:15:50 and frame-safe at 9:25:50; the next frame touches 20 s after it is fetched. */
  @Test
  void aFilmDriesFromTheLiftAndAFrameTouchesOnceItIsLaid() {
    String wait = "- {print: near, dry between colours: 9 min ";
    assertThat(TinyDay.of("1", wait + "40 s}", PrintDay.POLICY).contacts()).isEmpty();
    assertThat(TinyDay.of("1", wait + "39 s}", PrintDay.POLICY).contacts())
        .singleElement()
        .satisfies(c -> assertThat(TinyDay.clock(c.safe().best())).isEqualTo("09:25:50"))
        .satisfies(c -> assertThat(TinyDay.clock(c.later().laid())).isEqualTo("09:25:49"));
  }

  /** Screen a prints blue on the heron and ink on the dot. */
  @Test
  void aScreenThatHoldsAnotherPasteIsWashedAndDriesBeforeItPrints() {
    assertThat(prints(TinyDay.of("1", "- {print: [near, dots], colours: a}")))
        .containsExactly("near 1, a 09:15", "dots 1, a 09:55:50");
  }

  @Test
  void aPrintStepLeavesToALaterStepWhatThatWashes() {
    String run = "- print: near\n- {mix: gold}\n- wash screen: b";
    assertThat(of(TinyDay.of("1", run), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a 09:16:40-09:26:40", "wash out b 09:36:40-09:46:40");
  }

  /** Each frame of 44 cm lies on the films of its neighbours, 20 cm off, which are ink or blue. */
  @Test
  void aWaitBetweenColoursHoldsForANeighboursFilmToo() {
    String run = "- {print: loose, order: by station, dry between colours: 10 min}";
    assertThat(prints(TinyDay.of("1", run)))
        .containsExactly(
            "loose 2, a 09:15",
            "loose 2, b 09:25:50",
            "loose 3, a 09:36:40",
            "loose 3, b 09:47:30",
            "loose 1, a 09:58:20",
            "loose 1, b 10:09:10");
  }

  /** The nearer of side, 2, lies 10 cm from edge: its frame reaches 12 cm past its image. */
  @Test
  void aWaitBetweenColoursHoldsForAnotherPlacementOfTheStepToo() {
    String run = "- {print: [edge, side], dry between colours: 10 min}";
    assertThat(prints(TinyDay.of("1", run)))
        .containsExactly(
            "edge 1, a 09:15",
            "edge 1, b 09:25:50",
            "side 2, a 09:36:40",
            "side 1, a 09:37:30",
            "side 2, b 09:48:20",
            "side 1, b 09:49:10");
  }

  /** Ink is off at 9:16:40. */
  @Test
  void theWaitBeforeMovingCountsFromTheLastLift() {
    String run = "- print: near\n- {print: pair, only: 2, before moving: 2 h}";
    assertThat(of(TinyDay.of("1", run), Task.Kind.MOVE))
        .containsExactly("move on to 288 cm 11:16:40-11:26:40");
  }

  /** From 9:16:40, when the second is off, for both of them. */
  @Test
  void theAirMovesOnceForTheSameFilms() {
    String run = "- {print: two, dry between colours: {for: 10 min, air: fan}}";
    assertThat(prints(TinyDay.of("1", run)))
        .containsExactly(
            "two 1, a 09:15", "two 2, a 09:15:50", "two 1, b 09:26:40", "two 2, b 09:27:30");
  }

  /** The dye is left first, at 9:15:50, and would dry last. */
  @Test
  void screensOfPaintAreWashedBeforeThoseOfDye() {
    assertThat(of(TinyDay.of("1", "- print: [leaves, near]"), Task.Kind.WASH_SCREEN))
        .containsExactly(
            "wash out a 09:17:30-09:27:30",
            "wash out b 09:27:30-09:37:30",
            "wash out d 09:37:30-09:47:30");
  }

  /** Both are needed again for far, which is printed by 9:18:20. */
  @Test
  void whatIsNeededAgainWithItsPasteIsNotWashed() {
    assertThat(of(TinyDay.of("1", "- print: near\n- print: far"), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a 09:18:20-09:28:20", "wash out b 09:28:20-09:38:20");
  }

  @Test
  void whatIsNeededAgainWithAnotherPasteIsWashed() {
    Timeline day = TinyDay.of("1", "- {print: near, colours: a}\n- print: dots");
    assertThat(of(day, Task.Kind.WASH_SCREEN)).first().isEqualTo("wash out a 09:15:50-09:25:50");
    assertThat(prints(day)).containsExactly("near 1, a 09:15", "dots 1, a 09:55:50");
  }

  /** Tam washes for the step, unless she is mixing until 9:50, when the wait is over. */
  @Test
  void inAWaitWhoeverWashesForTheStepWashesElseTheFirstWhoseHandsAreFree() {
    String print = "- {print: near, dry between colours: 15 min, washes: Tam}";
    assertThat(TinyDay.hands(TinyDay.of("[Wren, Tam]", print), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a: Tam", "wash out b: Tam");
    String mixing = "- {mix: gold, by: Tam, takes: 50 min}\n";
    assertThat(TinyDay.hands(TinyDay.of("[Wren, Tam]", mixing + print), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a: Wren", "wash out b: Tam");
  }

  /** Washing begins at 9:16:40 and comes to b at 9:46:40, long after paint has dried in a mesh. */
  @Test
  void severalScreensAreLaidInWaterFirst() {
    Timeline day = TinyDay.of("1", "- print: near\n- {wash screen: [a, b], takes: 1 h}");
    assertThat(of(day, Task.Kind.WASH_SCREEN)).last().asString().contains("09:46:40");
    assertThat(day.evidence()).noneMatch(IdleScreen.class::isInstance);
    Timeline apart =
        TinyDay.of(
            "1",
            "- print: near\n- {wash screen: a, takes: 30 min}\n- {mix: gold, takes: 1 min}\n"
                + "- {wash screen: b, takes: 30 min}");
    assertThat(apart.evidence()).anyMatch(IdleScreen.class::isInstance);
  }

  /** The copies lie in the order 2, 3, 1 along the cloth: first 2 and 1, then 3. */
  @Test
  void aColourMakesBothPassesBeforeTheNextAndByStationAPassHasAllItsColours() {
    String every = "- {print: loose, every other: yes";
    assertThat(prints(TinyDay.of("1", every + "}")))
        .extracting(print -> print.replaceFirst(" 09.*", ""))
        .containsExactly(
            "loose 2, a", "loose 1, a", "loose 3, a", "loose 2, b", "loose 1, b", "loose 3, b");
    assertThat(prints(TinyDay.of("1", every + ", order: by station}")))
        .extracting(print -> print.replaceFirst(" 09.*", ""))
        .containsExactly(
            "loose 2, a", "loose 2, b", "loose 1, a", "loose 1, b", "loose 3, a", "loose 3, b");
  }
}
