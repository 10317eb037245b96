package strikeoff.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import strikeoff.day.Doing;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.Numbering;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says what a block of work is, as one printer tells another. */
final class WorkWords {

  private static final String NEVER = "never in this air";

  private WorkWords() {}

  /** One line: what is done, on which placements, in which colour. */
  static String title(WorkBlock work, Measures units) {
    if (!work.prints()) {
      Set<String> words = new LinkedHashSet<>();
      work.tasks().forEach(t -> words.add(told(t, units)));
      return Phrase.capital(waiting(work) + String.join(", ", words));
    }
    return Phrase.capital(paste(work)) + " on " + placements(work.impressions());
  }

  /** As one tells it to whoever knows which cloth and whose paste is meant. */
  private static String told(Task task, Measures units) {
    if (task.kind() == Task.Kind.WAIT && task.doing() instanceof Doing.Mixed mixed) {
      return mixed.paste() + " is mixed";
    }
    if (task.doing() instanceof Doing.MoveCloth move) {
      return DaySpeech.ofTheCloth(move, units);
    }
    return DaySpeech.text(task.doing(), units);
  }

  /** What a wait's cause needs before it to read as a wait. */
  private static String waiting(WorkBlock work) {
    if (work.kind() != Task.Kind.WAIT) {
      return "";
    }
    Doing cause = work.first().doing();
    if (cause == Doing.Wait.BEFORE_MOVING) {
      return "wait ";
    }
    return cause instanceof Doing.Until ? "wait until " : "";
  }

  static String paste(WorkBlock work) {
    return work.impressions().get(0).footprint().paste().name();
  }

  static String screen(WorkBlock work) {
    return work.impressions().get(0).footprint().screen().name();
  }

  static String pulls(WorkBlock work) {
    int pulls = work.impressions().get(0).footprint().separation().pulls();
    return pulls == 1 ? "1\u00a0pull" : pulls + "\u00a0pulls";
  }

  /** As {@code herons 1, 3, 2}: in the order of printing, each once. */
  static String placements(List<Impression> impressions) {
    return impressions.get(0).footprint().placement().arrangement() + " " + numbers(impressions);
  }

  static String numbers(List<Impression> impressions) {
    return Numbering.runs(
        impressions.stream().map(i -> i.footprint().placement().number()).distinct().toList());
  }

  /**
   * When the slowest of the films reaches a state: the likely moment, then the safe one, which is
   * that of a slow day also where the run waits till they are felt.
   */
  static String reached(List<Impression> films, Function<Film, Reached> state, int day) {
    List<Reached> all = films.stream().map(i -> state.apply(i.film())).toList();
    Moment likely = all.stream().map(Reached::best).reduce(Moment::later).orElseThrow();
    if (likely.compareTo(Reached.NEVER) >= 0) {
      return NEVER;
    }
    String best = clock(likely, day);
    Moment slow = all.stream().map(Reached::slow).reduce(Moment::later).orElseThrow();
    if (slow.compareTo(Reached.NEVER) >= 0) {
      return best + ", perhaps never in this air";
    }
    String latest = clock(slow, day);
    return latest.equals(best) ? best : best + " (safe " + latest + ")";
  }

  static boolean isNever(String reached) {
    return reached.equals(NEVER);
  }

  /** The clock, with the day if it is another one, to the minute when it has come for sure. */
  static String clock(Moment moment, int day) {
    Moment told = moment.upToMinute();
    return told.day() == day ? told.clock() : told.text();
  }

  static Set<String> people(WorkBlock work) {
    Set<String> people = new LinkedHashSet<>();
    work.tasks().forEach(t -> people.addAll(t.people()));
    return people;
  }
}
