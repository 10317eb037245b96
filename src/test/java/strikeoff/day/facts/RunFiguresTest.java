package strikeoff.day.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import strikeoff.day.PrintDay;
import strikeoff.day.Resource;
import strikeoff.day.Task;
import strikeoff.day.TinyDay;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.Until;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.HoursSpeech;
import strikeoff.units.Measures;

/** Where the time goes, worked by hand. */
class RunFiguresTest {

  private static PrintDay herons() {
    return new PrintDay(Medium.DYE)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .series("herons", "heron", 3, 60, 20);
  }

  @Test
  void theChainOfOneSetIsEverythingInItsOrder() {
    RunFigures figures =
        of(
            herons()
                .print(
                    "herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(12), Until.NO_WAIT));
    // load 15; three impressions of 50 s; dry 12; three more; wash s2 10 min, since s1 is washed in
    // the wait
    assertThat(figures.chain().links())
        .extracting(
            l ->
                DaySpeech.text(l.doing(), Measures.METRIC)
                    + " "
                    + l.times()
                    + " "
                    + l.span().minutes())
        .containsExactly(
            "lay the cloth on the table 1 15.0",
            "printing with s1 3 2.5",
            "dry between colours 1 12.0",
            "printing with s2 3 2.5",
            "wash out s2 1 10.0");
    assertThat(HoursSpeech.shortenFirst(figures, Measures.METRIC))
        .isEqualTo("lay the cloth on the table, 15 min");
    // 9:00 to 9:42; Wren works all of it but 2 of the 12 min; s1 prints 2.5, is washed 10 and dries
    // 30
    assertThat(figures.days())
        .singleElement()
        .satisfies(
            s -> {
              assertThat(s.starts().clock()).isEqualTo("09:00");
              assertThat(s.ends().clock()).isEqualTo("09:42");
              assertThat(s.handsOn().minutes()).isEqualTo(40);
              assertThat(s.waiting().minutes()).isEqualTo(2);
            });
    assertThat(busy(figures, Resource.person("Wren")).share().fraction())
        .isCloseTo(40.0 / 42, offset(1e-9));
    assertThat(busy(figures, Resource.person("Tam")).busy().minutes()).isZero();
    assertThat(busy(figures, Resource.CLOTH).busy().minutes()).isCloseTo(20, offset(1e-9));
    assertThat(busy(figures, Resource.screen("s1")).busy().minutes()).isCloseTo(42.5, offset(1e-9));
  }

  @Test
  void whoMixesForThePrinterIsInTheChainAndNotThePrintersWait() {
    RunFigures figures =
        of(
            new PrintDay(Medium.DYE)
                .unmixedPaste("blue")
                .unmixedPaste("ink")
                .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
                .series("herons", "heron", 1, 60, 20)
                .mixedBy("Tam", "blue", "ink")
                .print("herons"));
    // Tam mixes blue to 9:10 and ink to 9:20 while Wren lays the cloth to 9:15 and prints blue by
    // 9:15:50: then Wren waits for ink, so that not the cloth but the mixing decides.
    assertThat(figures.chain().links())
        .extracting(link -> DaySpeech.text(link.doing(), Measures.METRIC))
        .containsExactly("mix blue", "mix ink", "printing with s2", "wash out s1", "wash out s2");
    assertThat(figures.waitedFor()).isEmpty();
  }

  /**
   * By hand: two prints of 50 s with a frame of 110 by 60 cm, which takes Wren and a second one.
   */
  @Test
  void whoLendsAHandIsBusyToo() {
    RunFigures figures =
        of(
            new PrintDay(Medium.DYE)
                .paste("blue")
                .design("border", 90, 40, 10, "s1=blue")
                .series("border", "border", 2, 110, 10)
                .print("border"));
    double second =
        figures.busy().stream()
            .filter(b -> b.resource().kind() == Resource.Kind.PERSON)
            .filter(b -> !b.resource().name().equals("Wren"))
            .mapToDouble(b -> b.busy().seconds())
            .sum();
    assertThat(second).isCloseTo(2 * 50, offset(1e-6));
    // Wren lays the cloth for 15 min, prints, and washes out for 10 min.
    assertThat(figures.days().get(0).handsOn().seconds())
        .isCloseTo(25 * 60 + 2 * 2 * 50, offset(1e-6));
  }

  /**
   * By hand: laid, printed and batched by 9:16:40, both screens washed until 9:36:40; on the next
   * day rinsed from 9:16:40 for 20 min. Of both days something is done to the cloth all the time.
   */
  @Test
  void aClothThatLiesBatchedOvernightIsBusyForNoMoreThanTheDaysAtTheTable() {
    Timeline day = TinyDay.of("1", "- print: near\n- {fix: batch, for: 24 h}\n- rinse: 20 °C");
    Busy cloth = busy(PrintDay.figures(day), Resource.CLOTH);
    assertThat(cloth.busy().seconds()).isCloseTo(24 * 3600 + 36 * 60 + 40, offset(1e-6));
    assertThat(cloth.share().fraction()).isCloseTo(1, offset(1e-9));
  }

  @Test
  void theNightIsInTheChainButNothingToShorten() {
    RunFigures figures =
        of(
            herons()
                .print("herons")
                .endOfDay()
                .dry(PrintDay.until(Until.Dryness.FIX_SAFE), null)
                .sew());
    assertThat(figures.days()).extracting(TableDay::day).containsExactly(1, 2);
    assertThat(figures.chain().links())
        .extracting(CriticalChain.Link::kind)
        .contains(Task.Kind.CLOSED)
        .endsWith(Task.Kind.SEW);
    assertThat(figures.chain().longest().orElseThrow().kind()).isEqualTo(Task.Kind.SEW);
  }

  private static Busy busy(RunFigures figures, Resource resource) {
    return figures.busy().stream()
        .filter(b -> b.resource().equals(resource))
        .findFirst()
        .orElseThrow();
  }

  private static RunFigures of(PrintDay day) {
    return PrintDay.figures(day.timeline());
  }
}
