package strikeoff.day.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** A run that is only tried comes to what the simulation makes of it. */
class RehearsalTest {

  /** With days that differ. */
  private static final Policy POLICY = PolicyReader.builtIn();

  private static PrintPlan plan(String name) throws IOException {
    String text = Files.readString(Path.of("plans", name));
    return DemoFilms.plan(text, POLICY);
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
  void itEndsAsSimulatedAndLacksNothing(String name) throws IOException {
    PrintPlan plan = plan(name);
    Timeline simulated = timeline(plan);
    for (Surety surety : Surety.values()) {
      Rehearsed rehearsed = rehearsal(plan, surety).of(plan.run());
      assertThat(rehearsed.finish()).isEqualTo(simulated.finish());
      assertThat(rehearsed.shortfall().isNothing()).isTrue();
    }
  }

  @Test
  void whatIsMovedWetIsToldByHowMuchTooEarly() throws IOException {
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
  void workAfterClosingAndFramesOnWetFilmAreTold() throws IOException {
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
  void slowDryingEndsLaterAndWhatWasTriedBeforeChangesNothing() throws IOException {
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
}
