package strikeoff.day.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.day.PrintDay;
import strikeoff.layout.Layout;
import strikeoff.paste.Lives;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.speech.RoomSpeech;

/** A run that is only tried comes to what the simulation makes of it. */
class RehearsalTest {

  /** With days that differ. */
  private static final Policy POLICY = PolicyReader.builtIn();

  private static PrintPlan plan(String name) {
    return plan(Path.of("plans", name));
  }

  private static Timeline timeline(PrintPlan plan) {
    return Timeline.of(plan, Layout.of(plan, POLICY), POLICY);
  }

  private static Rehearsal rehearsal(PrintPlan plan, Surety surety) {
    return Rehearsal.of(
        plan, Layout.of(plan, POLICY), POLICY, new Lives(plan, POLICY)::least, surety);
  }

  @ParameterizedTest
  @ValueSource(strings = {"estuary-curtains.yaml", "first-border.yaml", "class/mina.yaml"})
  void itEndsAsSimulatedAndLacksNothing(String name) {
    PrintPlan plan = plan(name);
    Timeline simulated = timeline(plan);
    for (Surety surety : Surety.values()) {
      Rehearsed rehearsed = rehearsal(plan, surety).of(plan.run());
      assertThat(rehearsed.finish()).isEqualTo(simulated.finish());
      assertThat(rehearsed.shortfall().isNothing()).isTrue();
    }
  }

  @Test
  void whatIsMovedWetIsToldByHowMuchTooEarly() {
    PrintPlan plan = plan("mistakes/moved-wet.yaml");
    Rehearsed sure = rehearsal(plan, Surety.SURE).of(plan.run());
    Rehearsed likely = rehearsal(plan, Surety.LIKELY).of(plan.run());
    assertThat(sure.shortfall().clothUpWet())
        .isGreaterThan(likely.shortfall().clothUpWet())
        .isEqualTo(
            (long)
                sure.tooSoon().stream()
                    .filter(soon -> soon.what() == Rehearsed.What.CLOTH_UP)
                    .mapToDouble(soon -> soon.by().seconds())
                    .sum());
    ClothTakenUp worst =
        timeline(plan).evidence().stream()
            .filter(ClothTakenUp.class::isInstance)
            .map(ClothTakenUp.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(sure.tooSoon())
        .anyMatch(
            soon ->
                soon.step() == worst.step()
                    && soon.by().seconds() == worst.early().slow().seconds());
  }

  @Test
  void workAfterClosingAndFramesOnWetFilmAreTold() {
    PrintPlan otis = plan("class/otis.yaml");
    assertThat(rehearsal(otis, Surety.SURE).of(otis.run()).shortfall().framesOnWet()).isPositive();
    PrintPlan plan = plan("estuary-curtains.yaml");
    List<Step> withoutNights = new ArrayList<>();
    for (Step step : plan.run()) {
      if (!(step instanceof Step.EndOfDay)) {
        withoutNights.add(step.at(withoutNights.size() + 1));
      }
    }
    Rehearsed rehearsed = rehearsal(plan, Surety.SURE).of(withoutNights);
    assertThat(rehearsed.shortfall().afterClosing()).isPositive();
    assertThat(rehearsed.lateSteps()).isNotEmpty();
  }

  @Test
  void slowDryingEndsLaterAndWhatWasTriedBeforeChangesNothing() {
    PrintPlan plan = plan("first-border.yaml");
    Rehearsal rehearsal = rehearsal(plan, Surety.SURE);
    Rehearsed first = rehearsal.of(plan.run());
    assertThat(rehearsal.slowFinish(plan.run())).isGreaterThan(first.finish());
    List<Step> other = new ArrayList<>(plan.run());
    other.set(
        2,
        new Step.Dry(
            3,
            ((Step.Dry) other.get(2)).until(),
            Optional.of(PrintDay.air(2.0).orElseThrow()),
            Optional.empty(),
            other.get(2).path()));
    Rehearsed blown = rehearsal.of(other);
    assertThat(blown.finish()).isLessThan(first.finish());
    assertThat(rehearsal.of(plan.run()).finish()).isEqualTo(first.finish());
    assertThat(rehearsal(plan, Surety.SURE).of(other).finish()).isEqualTo(blown.finish());
  }

  /** A wait that is felt lasts longer on a slow day, and the screen stands beside it. */
  @Test
  void aScreenThatStandsTooLongOnASlowDayIsTold() {
    // The file's own example: a leaf dries until it is felt dry, then its screen prints again.
    PrintPlan plan = plan(Path.of("rules/drying/may-dry-in-screen/example.yaml"));
    IdleScreen slow = idle(plan);
    assertThat(slow.slow()).isTrue();
    assertThat(slow.longest()).isEqualTo(slow.slowly());
    double most = POLICY.drying().inMesh(Medium.PAINT).amount();
    Rehearsal sure = rehearsal(plan, Surety.SURE);
    Rehearsed ordinary = sure.of(plan.run());
    assertThat(ordinary.shortfall().inMesh()).isZero();
    assertThat(sure.surely(plan.run(), ordinary).shortfall().inMesh())
        .isEqualTo((long) Math.ceil(slow.longest().seconds() - 60 * most));
    Rehearsal likely = rehearsal(plan, Surety.LIKELY);
    assertThat(likely.surely(plan.run(), likely.of(plan.run())).shortfall().isNothing()).isTrue();
  }

  @Test
  void aScreenThatStandsTooLongOnAnyDayIsToldOnceWithBothFigures() {
    PrintPlan plan = plan(Path.of("rules/drying/may-dry-in-screen/example.yaml"));
    List<Step> still = new ArrayList<>(plan.run());
    Step.Dry dry = (Step.Dry) still.get(2);
    Optional<Draught> breath = Optional.of(PrintDay.air(0.3).orElseThrow());
    still.set(2, new Step.Dry(3, dry.until(), breath, Optional.empty(), dry.path()));
    IdleScreen both = idle(plan.with(still));
    assertThat(both.slow()).isFalse();
    assertThat(both.slowly()).isGreaterThan(both.longest());
    assertThat(RoomSpeech.worst(both)).endsWith("; where films dry slowly " + both.slowly().text());
  }

  private static PrintPlan plan(Path path) {
    try {
      return DemoFilms.plan(Files.readString(path), POLICY);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static IdleScreen idle(PrintPlan plan) {
    List<IdleScreen> idle =
        timeline(plan).evidence().stream()
            .filter(IdleScreen.class::isInstance)
            .map(IdleScreen.class::cast)
            .toList();
    assertThat(idle).hasSize(1);
    return idle.get(0);
  }
}
