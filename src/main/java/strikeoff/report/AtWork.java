package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.day.AboutStep;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.document.PlanPath;
import strikeoff.findings.Finding;
import strikeoff.findings.Place;
import strikeoff.findings.Severity;
import strikeoff.plan.Step;
import strikeoff.report.page.DaySheet.Job;

/**
 * Puts findings into the jobs that they strike in, for whoever prints by a sheet and sees no
 * report: the risks that are left in a plan, and what hands have to mind there. What strikes in no
 * one step stays in the report.
 */
final class AtWork {

  private final Checked.Judged judged;
  private final int day;

  private AtWork(Checked.Judged judged, int day) {
    this.judged = judged;
    this.day = day;
  }

  /** A day's jobs with what is found in them. */
  static List<Job> in(List<Job> jobs, Checked.Judged judged, int day) {
    AtWork work = new AtWork(judged, day);
    List<Job> all = new ArrayList<>(jobs);
    for (Finding finding : judged.findings()) {
      if (finding.severity() == Severity.RISK || finding.rule().atWork()) {
        work.struck(all, finding)
            .ifPresent(at -> all.set(at, minding(all.get(at), words(finding))));
      }
    }
    return all;
  }

  private static Job minding(Job job, String words) {
    List<String> mind = new ArrayList<>(job.mind());
    mind.add(words);
    return job.minding(mind);
  }

  /** The job that first prints what is marked, or else the step's first one, a print if it can. */
  private Optional<Integer> struck(List<Job> jobs, Finding finding) {
    Optional<Integer> step = step(finding);
    Optional<Impression> print = firstMarked(finding, step);
    Predicate<Job> strikes =
        print.isPresent()
            ? job -> print.get().laid().day() == day && prints(job, print.get())
            : job -> step.filter(number -> number == job.step() && begins(number)).isPresent();
    List<Job> struck = jobs.stream().filter(job -> !job.isAhead()).filter(strikes).toList();
    return struck.stream()
        .filter(job -> !job.prints().placements().isEmpty())
        .findFirst()
        .or(() -> struck.stream().findFirst())
        .map(jobs::indexOf);
  }

  private static boolean prints(Job job, Impression print) {
    return job.step() == print.step()
        && job.prints().placements().contains(print.footprint().placement().id());
  }

  private Optional<Impression> firstMarked(Finding finding, Optional<Integer> step) {
    Set<String> marked = Set.copyOf(finding.marks());
    return judged.facts().timeline().impressions().stream()
        .filter(print -> step.map(number -> number == print.step()).orElse(true))
        .filter(print -> marked.contains(print.footprint().placement().name()))
        .findFirst();
  }

  /** Whether this day is the first that the step has work on. */
  private boolean begins(int step) {
    return judged.facts().timeline().tasks().stream()
        .filter(task -> task.step() == step && task.kind() != Task.Kind.CLOSED)
        .findFirst()
        .filter(task -> task.start().day() == day)
        .isPresent();
  }

  /** By where it stands in the plan, or by what it is about; empty if by neither. */
  private Optional<Integer> step(Finding finding) {
    List<Place> places = new ArrayList<>(List.of(finding.place()));
    places.addAll(finding.related());
    Stream<Integer> written =
        places.stream()
            .flatMap(
                place ->
                    judged.plan().run().stream()
                        .filter(step -> isWithin(place.path(), step.path()))
                        .map(Step::number));
    Stream<Integer> about =
        finding.evidence().stream()
            .filter(AboutStep.class::isInstance)
            .map(fact -> ((AboutStep) fact).doing().number());
    return Stream.concat(written, about).findFirst();
  }

  private static boolean isWithin(PlanPath place, PlanPath step) {
    PlanPath at = place;
    while (!at.equals(step) && !at.equals(PlanPath.ROOT)) {
      at = at.parent();
    }
    return at.equals(step);
  }

  /**
   * What was found, with its figures, and what hands do about it: the first sentence of each. What
   * is to be written into the plan is no use at the table.
   */
  private static String words(Finding finding) {
    String does = sentence(finding.remedy());
    if (finding.severity() != Severity.RISK) {
      return does;
    }
    String found = "Risk: " + sentence(finding.message());
    return does.contains("`") ? found : found + " " + does;
  }

  private static String sentence(String words) {
    return words.split("(?<=[.]) (?=\\p{Lu})", 2)[0];
  }
}
