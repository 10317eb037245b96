package strikeoff.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Evidence.Related;
import strikeoff.timeline.Causes.Cause;
import strikeoff.timeline.Causes.Pair;
import strikeoff.timeline.Trials.Outcome;
import strikeoff.units.Area;

/** Tells each cause of contacts once, by its worst pair, with what clears it. */
final class WetContacts {

  private static final int MOST_MARKS = 40;

  /** A colour on its own motif says more than a neighbour's edge; then the worst. */
  private static final Comparator<Pair> WORST_LAST =
      Comparator.comparing(Pair::certain)
          .thenComparing(Pair::likely)
          .thenComparing(p -> p.contact().sameMotif())
          .thenComparing(p -> p.contact().shortBest())
          .thenComparing(p -> p.contact().shortMost())
          .thenComparing(p -> -p.contact().later().id())
          .thenComparing(p -> -p.contact().earlier().id());

  private final Timeline.Day day;
  private final Trials trials;

  WetContacts(Timeline.Day day, Trials trials) {
    this.day = day;
    this.trials = trials;
  }

  List<WetContact> all() {
    List<WetContact> all = new ArrayList<>();
    for (Map.Entry<Cause, List<Pair>> cause : Causes.of(day).entrySet()) {
      all.add(tell(cause.getKey(), cause.getValue()));
    }
    return all;
  }

  private WetContact tell(Cause cause, List<Pair> pairs) {
    Pair worst = pairs.stream().max(WORST_LAST).orElseThrow();
    boolean certain = worst.certain();
    Contact contact = worst.contact();
    List<Pair> told = pairs.stream().filter(p -> told(p, worst)).toList();
    List<Pair> alike = pairs.stream().filter(p -> alike(p, worst)).toList();
    int impressions = day.impressions().size();
    Outcome surely = trials.waitFor(cause, pairs, true, impressions);
    Outcome wait = worst.likely() ? trials.waitFor(cause, pairs, false, impressions) : surely;
    String pause = cure(wait, surely);
    Optional<Outcome> everyOther = trials.everyOther(cause, !worst.likely(), impressions);
    String passes =
        everyOther.map(o -> said(o) + slowToo(o, cause, worst.likely(), impressions)).orElse("");
    boolean passesFirst = everyOther.isPresent() && endsSooner(everyOther.get(), wait);
    Reached safe = contact.safe();
    return new WetContact(
        contact.later().step(),
        Causes.colour(contact.later()),
        contact.earlier().step(),
        Causes.colour(contact.earlier()),
        contact.sameMotif(),
        certain,
        alike.size(),
        contact.shortLeast(),
        contact.shortBest(),
        contact.shortMost(),
        new Area(alike.stream().mapToDouble(p -> p.contact().area().squareCm()).sum()),
        contact.later().footprint().placement().name(),
        contact.earlier().footprint().placement().name(),
        contact.later().laid(),
        safe.best(),
        safe.latest(),
        wait.remedy(),
        wait.cleared(),
        wait.finish(),
        passesFirst ? passes : pause,
        everyOther.isEmpty()
            ? ""
            : passesFirst && !wait.cleared()
                ? ""
                : " Or write " + (passesFirst ? pause : passes) + ".",
        also(told, alike),
        further(pairs.size() - told.size()),
        contact.later().path(),
        List.of(
            new Related("the film below", contact.earlier().path()),
            new Related("its paste", contact.earlier().footprint().paste().path())),
        marks(told));
  }

  private static boolean told(Pair pair, Pair worst) {
    return pair.certain() == worst.certain()
        && pair.contact().sameMotif() == worst.contact().sameMotif();
  }

  /** The other colours that one wait clears in the same way. */
  private static String also(List<Pair> told, List<Pair> alike) {
    Set<Pair> those = new HashSet<>(alike);
    Map<String, Integer> others = new LinkedHashMap<>();
    for (Pair pair : told) {
      if (!those.contains(pair)) {
        String colours =
            Causes.colour(pair.contact().later())
                + " on "
                + Causes.colour(pair.contact().earlier());
        others.merge(colours, 1, Integer::sum);
      }
    }
    List<String> said = new ArrayList<>();
    others.forEach((colours, n) -> said.add(colours + (n == 1 ? " once" : " " + n + " times")));
    return said.isEmpty() ? "" : " Too early as well: " + String.join("; ", said) + ".";
  }

  private static boolean alike(Pair pair, Pair worst) {
    Contact one = pair.contact();
    Contact other = worst.contact();
    return told(pair, worst)
        && one.earlier().step() == other.earlier().step()
        && Causes.colour(one.earlier()).equals(Causes.colour(other.earlier()))
        && Causes.colour(one.later()).equals(Causes.colour(other.later()));
  }

  private String slowToo(Outcome passes, Cause cause, boolean likely, int impressions) {
    return likely
        ? trials
            .everyOther(cause, true, impressions)
            .map(s -> passes.remedy().andFor(s.remedy()))
            .orElse("")
        : "";
  }

  private static boolean endsSooner(Outcome passes, Outcome wait) {
    return !wait.cleared()
        || passes.finish().isPresent()
            && wait.finish().isPresent()
            && passes.finish().get().compareTo(wait.finish().get()) < 0;
  }

  private static String cure(Outcome wait, Outcome surely) {
    return wait.cleared()
        ? said(wait) + (surely.cleared() ? wait.remedy().andFor(surely.remedy()) : "")
        : "a longer wait in another place; none here clears it";
  }

  private static String said(Outcome outcome) {
    return outcome.remedy().text()
        + outcome
            .finish()
            .map(f -> " (the run then ends " + f.text() + outcome.late() + ")")
            .orElse("");
  }

  private static String further(int pairs) {
    return pairs == 0
        ? ""
        : " That clears " + pairs + " further " + (pairs == 1 ? "contact" : "contacts") + " too.";
  }

  private static List<String> marks(List<Pair> pairs) {
    Set<String> names = new LinkedHashSet<>();
    for (Pair pair : pairs) {
      names.add(pair.contact().later().footprint().placement().name());
      names.add(pair.contact().earlier().footprint().placement().name());
      if (names.size() >= MOST_MARKS) {
        break;
      }
    }
    return List.copyOf(names);
  }
}
