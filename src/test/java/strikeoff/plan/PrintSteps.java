package strikeoff.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Span;

/** Print steps for tests, to be changed further by {@link Step.Print#change()}. */
public final class PrintSteps {

  private PrintSteps() {}

  /** Printed by the first of the crew alone, without any wait. */
  public static Step.Print plain(
      int number,
      List<String> arrangements,
      List<Integer> only,
      List<Integer> separations,
      Step.Order order,
      PlanPath path) {
    return new Step.Print(
        number,
        arrangements,
        only,
        separations,
        order,
        false,
        new Span(0),
        Wait.NONE,
        Wait.NONE,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Wait.NONE,
        false,
        Until.NO_WAIT,
        Map.of(),
        Optional.empty(),
        Step.Begins.IN_TURN,
        path);
  }
}
