package strikeoff.day;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmark and tells two ratios of one run: the time for ten times the impressions, and
 * simulating against reading, both in processor time. Options are JMH's own. Ends with 1 if a ratio
 * is over its bound.
 */
public final class RunCost {

  private static final double MOST_GROWTH = 13;
  private static final double MOST_OF_READING = 2;

  private RunCost() {}

  public static void main(String[] args) throws RunnerException, CommandLineOptionException {
    Map<String, Double> scores = new LinkedHashMap<>();
    OptionsBuilder options = new OptionsBuilder();
    options.parent(new CommandLineOptions(args)).include(RunCostBench.class.getName());
    for (RunResult result : new Runner(options.build()).run()) {
      String method = result.getPrimaryResult().getLabel();
      String of = result.getParams().getParam("impressions");
      String contacts = result.getParams().getParam("contacts");
      double nanos = result.getSecondaryResults().get("nanos").getScore();
      double runs = result.getSecondaryResults().get("runs").getScore();
      scores.put(method + " " + of + " " + contacts, nanos / runs / 1e6);
    }
    boolean held = true;
    for (LongCloth.Contacts contacts : LongCloth.Contacts.values()) {
      held &= growth(scores, contacts, 1_000);
      held &= growth(scores, contacts, 10_000);
      held &=
          ratio("simulate : read", simulate(10_000, contacts), "read 10000 " + contacts, scores);
    }
    System.exit(held ? 0 : 1);
  }

  private static boolean growth(
      Map<String, Double> scores, LongCloth.Contacts contacts, int impressions) {
    return ratio(
        "growth", simulate(10 * impressions, contacts), simulate(impressions, contacts), scores);
  }

  private static String simulate(int impressions, LongCloth.Contacts contacts) {
    return "simulate " + impressions + " " + contacts;
  }

  private static boolean ratio(String what, String over, String under, Map<String, Double> scores) {
    if (!scores.containsKey(over) || !scores.containsKey(under)) {
      return true;
    }
    double most = what.equals("growth") ? MOST_GROWTH : MOST_OF_READING;
    double ratio = scores.get(over) / scores.get(under);
    System.out.printf(
        Locale.ROOT,
        "%-16s %-22s : %-22s = %8.2f ms : %8.2f ms = %5.2f (at most %.0f)%n",
        what,
        over,
        under,
        scores.get(over),
        scores.get(under),
        ratio,
        most);
    return ratio <= most;
  }
}
