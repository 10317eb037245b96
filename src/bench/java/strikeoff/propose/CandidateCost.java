package strikeoff.propose;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.day.facts.Surety;
import strikeoff.paste.Lives;
import strikeoff.plan.Step;

/**
 * Tells what one run costs that a search tries, without what it has checked, beside a check of the
 * plan: processor time of one thread, the least of some rounds. The runs are those of a search with
 * nobody to refuse them, each also on a slow day, tried anew in its order by a rehearsal that knows
 * nothing yet.
 */
public final class CandidateCost {

  private static final double HOT = 60;
  private static final int FROM_EACH = 900;
  private static final int ROUNDS = 5;
  private static final int CHECKS = 40;

  private final Rehearsal rehearsal;
  private final PasteLeft stock;
  private final List<List<Step>> tried = new ArrayList<>();

  private CandidateCost(Rehearsal rehearsal, PasteLeft stock) {
    this.rehearsal = rehearsal;
    this.stock = stock;
  }

  /**
   * @param args a plan that is readable, and how many runs to try
   */
  public static void main(String[] args) throws IOException {
    Checker checker = Checker.builtIn().withoutTrials().beside(Path.of(args[0]));
    String text = Files.readString(Path.of(args[0]));
    Checked.Judged judged = (Checked.Judged) checker.check(args[0], text);
    int runs = Integer.parseInt(args[1]);
    RunWanted asked =
        new RunWanted(Surety.SURE, true, false, false, OptionalLong.of(runs), () -> 0);
    Leeway leeway = Leeway.of(judged.plan(), judged.facts().layout(), checker.policy(), asked);
    Order order = new Order(leeway);
    CandidateCost search =
        new CandidateCost(
            rehearsal(judged, checker), new PasteLeft(judged.plan(), checker.policy()));
    search.anneal(
        new Beginnings(leeway, order, search.rehearsal, search.stock).all(() -> true),
        new Moves(leeway, order, new SplittableRandom(4_711)),
        runs);
    double check = Double.MAX_VALUE;
    double once = Double.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      check = Math.min(check, millis(CHECKS, () -> checks(checker, args[0], text)));
      Rehearsal fresh = rehearsal(judged, checker);
      once = Math.min(once, millis(search.tried.size(), () -> search.again(fresh)));
    }
    System.out.printf(
        Locale.ROOT,
        "| a run that is tried, of %d | %.3f ms | a check of the plan | %.3f ms | %.2f | |%n",
        search.tried.size(),
        once,
        check,
        once / check);
  }

  private static void checks(Checker checker, String name, String text) {
    for (int i = 0; i < CHECKS; i++) {
      checker.check(name, text);
    }
  }

  private void again(Rehearsal fresh) {
    for (List<Step> run : tried) {
      fresh.surely(run, fresh.of(run));
    }
  }

  private static double millis(int times, Runnable work) {
    long begun = cpu();
    work.run();
    return (cpu() - begun) / 1e6 / times;
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static Rehearsal rehearsal(Checked.Judged judged, Checker checker) {
    return Rehearsal.of(
        judged.plan(),
        judged.facts().layout(),
        checker.policy(),
        new Lives(judged.plan(), checker.policy())::least,
        Surety.SURE);
  }

  private void anneal(List<Candidate> beginnings, Moves moves, int runs) {
    SplittableRandom random = new SplittableRandom(1);
    List<Candidate> starts = new ArrayList<>(beginnings);
    starts.forEach(start -> tried.add(start.run()));
    starts.sort(Comparator.comparingDouble(Candidate::cost));
    for (int from = 0; tried.size() < runs; from = (from + 1) % starts.size()) {
      Candidate now = starts.get(from);
      for (int i = 0; i < FROM_EACH && tried.size() < runs; i++) {
        double highest =
            now.cost()
                - HOT * Math.pow(0.01, (double) i / FROM_EACH) * Math.log(1 - random.nextDouble());
        Optional<List<Step>> next = moves.next(now.run(), now.rehearsed());
        if (next.isPresent()) {
          Candidate candidate = candidate(next.get());
          now = candidate.cost() <= highest ? candidate : now;
        }
      }
    }
  }

  private Candidate candidate(List<Step> run) {
    tried.add(run);
    Rehearsed rehearsed = rehearsal.surely(run, rehearsal.of(run));
    return Candidate.of(run, rehearsed, rehearsal, stock);
  }
}
