package strikeoff.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Span;

/** Print steps for tests, to be changed further by {@link PrintStep#change()}. */
public final class PrintSteps {

  private PrintSteps() {}

  /** Printed by the first of the crew alone, without any wait. */
  public static PrintStep plain(
      int number,
      List<String> arrangements,
      List<Integer> only,
      List<Integer> separations,
      PrintOrder order,
      PlanPath path) {
    return new PrintStep(
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
        Begins.IN_TURN,
        path);
  }
}
