package strikeoff.rulebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kie.api.KieBase;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import strikeoff.document.ShortOfMemory;
import strikeoff.rulebook.Reporter.Report;
import strikeoff.rulebook.Reporter.TooManyReports;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleThread;

/** One run of own rules, on a thread that nobody waits for longer than agreed. */
final class WatchedRun {

  /** More than the findings that anybody reads; one rule that fires so often goes round. */
  private static final int MOST_FIRINGS = 50_000;

  private static final long GRACE_MILLIS = 200;

  /** The thread is called so, and by the rule while one fires, for whoever looks at threads. */
  private static final String NAME = "own rules";

  private final Reporter reporter = new Reporter();
  private volatile Optional<String> firing = Optional.empty();
  private volatile Throwable thrown;
  private volatile KieSession session;
  private volatile Optional<String> goingRound = Optional.empty();
  private String failure = "";
  private boolean endless;
  private boolean late;

  private WatchedRun() {}

  static WatchedRun of(KieBase base, List<?> facts, long millis) {
    WatchedRun run = new WatchedRun();
    RuleThread thread = new RuleThread(() -> run.fire(base, facts), NAME);
    thread.start();
    run.await(thread, millis);
    return run;
  }

  private void await(RuleThread thread, long millis) {
    try {
      thread.join(millis);
      if (thread.isAlive()) {
        Optional.ofNullable(session).ifPresent(KieSession::halt);
        thread.end();
        thread.join(GRACE_MILLIS);
        endless = true;
        late = true;
        failure = "it had not ended after " + millis / 1000.0 + " s; it isn't run again";
      } else if (thread.tooMany().isPresent()) {
        endless = true;
        firing = thread.tooMany();
        failure =
            "its conditions find more than "
                + RuleThread.MOST_COMBINATIONS
                + " combinations of facts; it isn't run again";
      } else if (thrown != null && Rulebook.rootOf(thrown) instanceof TooManyReports) {
        endless = true;
        failure = Rulebook.rootOf(thrown).getMessage() + "; it isn't run again";
      } else if (thrown != null && ShortOfMemory.caused(thrown)) {
        // It would take the memory of every plan that follows, and of those beside it.
        endless = true;
        failure = "it needs more memory than there is; it isn't run again";
      } else if (thrown != null) {
        failure = said(Rulebook.rootOf(thrown));
      } else if (reporter.overrun()) {
        // The rule caught what was thrown at it.
        endless = true;
        failure = new TooManyReports().getMessage() + "; it isn't run again";
      } else if (goingRound.isPresent()) {
        endless = true;
        firing = goingRound;
        failure = "it fired more than " + MOST_FIRINGS + " times; it isn't run again";
      }
    } catch (InterruptedException e) {
      // The plan was given up, and its rules with it.
      thread.end();
      Thread.currentThread().interrupt();
      failure = "the run was interrupted";
    }
  }

  /** Never empty: a rule can throw what says nothing of itself, or throws when asked. */
  private static String said(Throwable root) {
    String name = root.getClass().getSimpleName();
    try {
      String words = String.valueOf(root).lines().findFirst().orElse("").strip();
      return words.isEmpty() ? "it failed" + (name.isEmpty() ? "" : " with a " + name) : words;
    } catch (RuntimeException | Error e) {
      return "it failed" + (name.isEmpty() ? "" : " with a " + name);
    }
  }

  private void fire(KieBase base, List<?> facts) {
    try {
      KieSession running = base.newKieSession();
      session = running;
      try {
        fire(running, facts);
      } finally {
        // The base keeps every session that isn't disposed of, and all that it filled memory with.
        session = null;
        running.dispose();
      }
    } catch (Throwable e) {
      // Everything: a rule's code can throw what isn't declared.
      thrown = e;
    }
  }

  private void fire(KieSession running, List<?> facts) {
    running.addEventListener(new Firings());
    running.setGlobal(Reporter.GLOBAL, reporter);
    facts.forEach(running::insert);
    running.fireAllRules();
  }

  List<Report> reports() {
    return reporter.reports();
  }

  /** What went wrong, if anything. */
  Optional<String> failure() {
    return failure.isEmpty() ? Optional.empty() : Optional.of(failure);
  }

  /** True if it would go on for ever. */
  boolean endless() {
    return endless;
  }

  /** True if it took longer than agreed. */
  boolean late() {
    return late;
  }

  /** The rule that failed, if that is known. */
  Optional<String> culprit() {
    return firing;
  }

  /** Remembers which rule is firing, and ends the run when one fires too often. */
  private final class Firings extends DefaultAgendaEventListener {

    private final Map<String, Integer> counts = new HashMap<>();

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
      String id = OwnRules.idOf(event.getMatch().getRule().getName());
      firing = Optional.of(id);
      if (counts.merge(id, 1, Integer::sum) > MOST_FIRINGS) {
        goingRound = firing;
        event.getKieRuntime().halt();
      }
      Thread.currentThread().setName("own rule " + id);
    }

    @Override
    public void afterMatchFired(AfterMatchFiredEvent event) {
      firing = Optional.empty();
      Thread.currentThread().setName(NAME);
    }
  }
}
