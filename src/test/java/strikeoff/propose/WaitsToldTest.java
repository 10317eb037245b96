package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Surety;
import strikeoff.plan.Step;

/** What a proposed run says that its waits are for: what comes after them, and no other step. */
class WaitsToldTest {

  private static String proposed(String wait, String fixing) {
    String plan =
        """
        plan: A row of cockle shells
        cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 60 cm, washed: yes}
        table: {length: 180 cm, width: 120 cm, railed: yes}
        hours: 09:00-17:00
        crew: [Wren]
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          one: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
        pastes:
          a: {medium: dye, group: dichlorotriazine, colour: "#6f7f45", amount: 200 g, recipe: {water: 165 g, dye: 6 g, soda ash: 4 g, urea: 20 g, sodium alginate: 5 g}}
        designs:
          shell: {size: 25 x 25 cm, separations: [{screen: one, paste: a, covers: 40 %}]}
        placements:
          row: {design: shell, series: 2, pitch: 52 cm, start: 14 cm, across: 17 cm}
        run:
          - mix: all
          - print: row
          - dry: WAIT
          - fix: FIXING
          - rinse: 20 °C
            for: 20 min
          - wash: 60 °C
            for: 15 min
        """
            .replace("WAIT", wait)
            .replace("FIXING", fixing);
    Proposal proposal =
        Proposer.proposed(SmallPlan.CHECKER, "row.yaml", plan, SmallPlan.shortest(300), 1);
    assertThat(proposal).as(plan + proposal).isInstanceOf(Proposal.Found.class);
    return ((Proposal.Found) proposal).text();
  }

  @Test
  void aBatchWantsThePrintDamp() {
    assertThat(proposed("5 min", "batch\n    temperature: 24 °C\n    for: 24 h"))
        .contains("- dry: until lift-safe")
        .contains(Reasons.WRAPPED)
        .doesNotContain("dry through", "get wet");
  }

  @Test
  void steamWetsNothing() {
    assertThat(proposed("5 min", "steam\n    temperature: 100 °C\n    for: 20 min"))
        .contains(Reasons.STEAM)
        .doesNotContain("get wet");
  }

  /**
   * Waits and minutes are those of the day as the check has it, which knows nothing of comments.
   */
  @ParameterizedTest
  @ValueSource(strings = {"ivo", "mina"})
  void aWaitIsToldAsTheRunHasIt(String name) throws IOException {
    String plan = Files.readString(Path.of("plans/class/" + name + ".yaml"));
    Proposal.Found found =
        (Proposal.Found)
            Proposer.proposed(
                SmallPlan.CHECKER,
                name + ".yaml",
                plan,
                new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(300), () -> 0),
                1);
    List<Task> tasks = found.after().facts().timeline().tasks();
    Step.Dry dry =
        (Step.Dry)
            found.after().plan().run().stream()
                .filter(Step.Dry.class::isInstance)
                .findFirst()
                .orElseThrow();
    Task wait =
        tasks.stream()
            .filter(task -> task.step() == dry.number() && task.kind() == Task.Kind.WAIT)
            .findFirst()
            .orElseThrow();
    assertThat(found.text())
        .contains(
            "- dry: until fix-safe   # about "
                + wait.end().since(wait.start()).toTheMinute()
                + ", on a slow day ");
  }

  /** A film that lies on the table while others are printed has dried meanwhile. */
  @Test
  void whereNobodyWaitsNoTimeIsTold() {
    Task wait =
        new Task(
            2,
            Task.Kind.WAIT,
            Doing.Wait.BEFORE_MOVING,
            new Moment(0),
            new Moment(90 * 60),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            Step.path(2));
    DryingTold told = new DryingTold(List.of(), List.of(wait));
    assertThat(told.of(1, Doing.Wait.BEFORE_MOVING)).isEmpty();
    assertThat(told.of(2, Doing.Wait.BETWEEN_COLOURS)).isEmpty();
    assertThat(told.of(2, Doing.Wait.BEFORE_MOVING))
        .isEqualTo("at once on an ordinary day, on a slow day about 90 min: ");
    assertThat(new DryingTold(List.of(wait), List.of(wait)).of(2, Doing.Wait.BEFORE_MOVING))
        .isEqualTo("about 90 min: ");
    assertThat(Reasons.isOwn(told.of(2, Doing.Wait.BEFORE_MOVING) + Reasons.STRETCHES)).isTrue();
  }
}
