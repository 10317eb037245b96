package strikeoff.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.AirSpeed;
import strikeoff.units.Span;

/** Two people and more at one table, worked by hand. */
class TogetherTest {

  @Test
  void theSecondColourFollowsBehindTheFirst() {
    Timeline day =
        herons(3, "s1=blue", "s2=ink")
            .printTogether(
                "herons", Step.Order.BY_COLOUR, false, 0, PrintDay.minutes(12), Until.NO_WAIT)
            .timeline();
    // Wren: blue from 9:15:00, 9:15:50, 9:16:40 to 9:17:30. Tam: ink on heron 1 12 min after its
    // blue is lifted at 9:15:50, from 9:27:50; then on 2 and 3, each 50 s later, to 9:30:20.
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().placement().number())
        .containsExactly("Wren 1", "Wren 2", "Wren 3", "Tam 1", "Tam 2", "Tam 3");
    assertThat(day.impressions())
        .extracting(i -> i.lifted().since(Moment.of(1, 555)).seconds())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
        .containsExactly(50.0, 100.0, 150.0, 820.0, 870.0, 920.0);
    // Wren washes blue's screen out from 9:17:30 to 9:27:30; then nobody works till 9:27:50
    assertThat(day.waiting().minutes()).isCloseTo(20 / 60.0, offset(1e-9));
  }

  /**
   * A permutation flow shop whose jobs are alike: with times p on m machines n jobs take Σp +
   * (n−1)·max p (textbook result for identical jobs). Pulls of 10 s make the machines differ.
   */
  @Test
  void alikeMotifsThroughThreeScreensTakeWhatTheFlowShopFormulaSays() {
    Timeline day =
        herons(5, "s1=blue", "s2=ink", "s3=rust")
            .printBy(
                List.of("Wren", "Tam", "Ada"),
                "herons",
                Step.Order.BY_COLOUR,
                false,
                0,
                Until.NO_WAIT,
                Until.NO_WAIT)
            .timeline();
    Impression last = day.impressions().get(day.impressions().size() - 1);
    // every impression takes 50 s: 3 · 50 + 4 · 50 = 350 s
    assertThat(last.lifted().since(Moment.of(1, 555)).seconds()).isCloseTo(350, offset(1e-6));
  }

  @Test
  void stationByStationTheyShareTheScreens() {
    Timeline day =
        herons(2, "s1=blue", "s2=ink")
            .printTogether("herons", Step.Order.BY_STATION, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Wren: blue 1 from 0 to 50 s, ink 1 to 100 s; Tam needs blue's screen: blue 2 from 50 s, ink 2
    // from 100 s to 150 s.
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().screen().name())
        .containsExactly("Wren s1", "Wren s2", "Tam s1", "Tam s2");
    assertThat(day.impressions().get(3).lifted().since(Moment.of(1, 555)).seconds())
        .isCloseTo(150, offset(1e-6));
  }

  /** Tam has no colour of the herons to print, so the shells need not wait till they are done. */
  @Test
  void whoIsFreeRunsAheadToTheNextArrangement() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .design("shell", 20, 20, 5, "s2=ink")
            .series("herons", "heron", 3, 60, 20)
            .placed("shells", "shell", 20, 100, 80, 100)
            .printTogether(
                "herons, shells", Step.Order.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // herons lie at 20 to 60 cm across with frames to 70 cm, the shells' frames begin at 95 cm:
    // Wren's blue to 50, 100 and 150 s, beside it Tam's ink to 50 and 100 s
    assertThat(lifts(day))
        .containsExactly(
            "Wren herons 1 50",
            "Tam shells 1 50",
            "Wren herons 2 100",
            "Tam shells 2 100",
            "Wren herons 3 150");
  }

  /** A shell is set from its heron, so it is printed when that is. */
  @Test
  void nobodyRunsAheadOfAnAnchorOrOfTheWait() {
    PrintDay day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .design("shell", 20, 20, 5, "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .anchored("shells", "shell", "herons", 80)
            .printTogether(
                "herons, shells",
                Step.Order.BY_COLOUR,
                false,
                0,
                PrintDay.minutes(12),
                Until.NO_WAIT);
    // heron 1 is lifted at 50 s and let dry 12 min, to 770 s; heron 2 50 s later
    assertThat(lifts(day.timeline()))
        .containsExactly(
            "Wren herons 1 50", "Wren herons 2 100", "Tam shells 1 820", "Tam shells 2 870");
  }

  private static List<String> lifts(Timeline day) {
    return day.impressions().stream()
        .map(
            i ->
                i.person()
                    + " "
                    + i.footprint().placement().name()
                    + " "
                    + Math.round(i.lifted().since(Moment.of(1, 555)).seconds()))
        .toList();
  }

  @Test
  void aScreenThatBothNeedAtOnceIsToldByName() {
    Timeline day =
        herons(2, "s1=blue", "s1=ink")
            .printTogether("herons", Step.Order.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(day.evidence())
        .filteredOn(e -> e instanceof CannotStart)
        .singleElement()
        .satisfies(
            e -> {
              CannotStart stuck = (CannotStart) e;
              assertThat(stuck.why()).isEqualTo(CannotStart.Why.SCREEN_TWICE);
              assertThat(stuck.waitsFor())
                  .isEqualTo("screen s1, which holds blue for Wren while Tam needs it for ink");
            });
    assertThat(day.impressions()).hasSize(4);
  }

  @Test
  void coloursThatTheStepLeavesOutNeedNoScreen() {
    // Blue, which goes through ink's screen too, is printed another time.
    Timeline day =
        herons(2, "s1=blue", "s1=ink", "s2=rust")
            .step(
                n ->
                    new Step.Print(
                        n,
                        List.of("herons"),
                        List.of(),
                        List.of(2, 3),
                        Step.Order.BY_COLOUR,
                        false,
                        new Span(0),
                        Wait.NONE,
                        Wait.NONE,
                        Optional.of("Wren"),
                        List.of("Tam"),
                        Optional.empty(),
                        Wait.NONE,
                        new PlanPath("run[0]")))
            .timeline();
    assertThat(day.evidence()).noneMatch(CannotStart.class::isInstance);
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().screen().name())
        .containsExactlyInAnyOrder("Wren s1", "Wren s1", "Tam s2", "Tam s2");
  }

  @Test
  void aFanBesideThemIsInUseForAsLongAsTheyPrint() {
    Draught fan = new Draught(Draught.By.FAN, new AirSpeed(2));
    Timeline day =
        herons(3, "s1=blue", "s2=ink")
            .printInAir(
                List.of("Wren", "Tam"),
                "herons",
                Step.Order.BY_COLOUR,
                false,
                0,
                new Wait(PrintDay.minutes(12), Optional.of(fan)),
                Until.NO_WAIT)
            .timeline();
    // From 9:15:00 to 9:30:20, as above, since the wait is a stated one.
    assertThat(day.evidence())
        .filteredOn(RunFigures.class::isInstance)
        .flatExtracting(e -> ((RunFigures) e).busy())
        .map(Busy.class::cast)
        .filteredOn(b -> b.resource().kind() == Resource.Kind.FAN)
        .singleElement()
        .satisfies(b -> assertThat(b.busy().seconds()).isCloseTo(920, offset(1e-6)));
  }

  private static PrintDay herons(int count, String... colours) {
    return new PrintDay(Medium.DYE)
        .table(400)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .paste("rust", 10, 60)
        .design("heron", 30, 40, 10, colours)
        .series("herons", "heron", count, 60, 20);
  }
}
