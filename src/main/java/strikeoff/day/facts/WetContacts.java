package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.Contact;
import strikeoff.day.DayRun;
import strikeoff.day.Reached;
import strikeoff.day.facts.Causes.Cause;
import strikeoff.day.facts.Causes.Pair;
import strikeoff.day.facts.Trials.Outcome;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Footprint;
import strikeoff.layout.Tube;
import strikeoff.plan.Design;
import strikeoff.units.Area;

/** Tells each cause of contacts once, by its worst pair, with what clears it. */
final class WetContacts {

  private static final int MOST_MARKS = 40;

  /** Areas that are the same but for rounding. */
  private static final double WHOLE = 0.999;

  private final DayRun day;
  private final Trials trials;
  private final Tube tube;

  /**
   * What is printed wet on wet every day comes after what is not; then the surest; a colour on its
   * own motif says more than a neighbour's edge.
   */
  private final Comparator<Pair> worstLast =
      Comparator.comparing((Pair p) -> !wetOnWet(p))
          .thenComparing(p -> p.contact().chance())
          .thenComparing(p -> p.contact().sameMotif())
          .thenComparing(p -> p.contact().shortBest())
          .thenComparing(p -> p.contact().shortMost())
          .thenComparing(p -> -p.contact().later().id())
          .thenComparing(p -> -p.contact().earlier().id());

  private final Map<Design.Separation, Boolean> wetOnWet = new IdentityHashMap<>();

  WetContacts(DayRun day, Trials trials, Tube tube) {
    this.day = day;
    this.trials = trials;
    this.tube = tube;
  }

  private boolean wetOnWet(Pair pair) {
    Footprint film = pair.contact().earlier().footprint();
    return wetOnWet.computeIfAbsent(
        film.separation(), separation -> day.run().cloth().films().wetOnWet(film));
  }

  List<WetContact> all() {
    List<WetContact> all = new ArrayList<>();
    for (Map.Entry<Cause, List<Pair>> cause : Causes.of(day).entrySet()) {
      all.add(tell(cause.getKey(), cause.getValue()));
    }
    return all;
  }

  private WetContact tell(Cause cause, List<Pair> pairs) {
    Pair worst = pairs.stream().max(worstLast).orElseThrow();
    Contact contact = worst.contact();
    List<Pair> told = pairs.stream().filter(p -> told(p, worst)).toList();
    List<Pair> alike = pairs.stream().filter(p -> alike(p, worst)).toList();
    int impressions = day.impressions().size();
    Outcome surely = trials.waitFor(cause, pairs, true, impressions);
    Outcome ordinary = worst.likely() ? trials.waitFor(cause, pairs, false, impressions) : surely;
    Outcome wait = surely.cleared() && (surely.serves() || !ordinary.serves()) ? surely : ordinary;
    Optional<Outcome> everyOther = trials.everyOther(cause, true, impressions);
    boolean passesFirst = everyOther.isPresent() && better(everyOther.get(), wait);
    Reached safe = contact.safe();
    return new WetContact(
        contact.later().step(),
        Causes.colour(contact.later()),
        contact.earlier().step(),
        Causes.colour(contact.earlier()),
        contact.sameMotif(),
        !contact.sameMotif()
            && contact
                .later()
                .footprint()
                .printed()
                .intersects(contact.earlier().footprint().printed()),
        contact.chance(),
        alike.size(),
        BeforeSafe.of(safe, contact.later().laid()),
        wetOnWet(worst),
        new Area(alike.stream().mapToDouble(p -> p.contact().area().squareCm()).sum()),
        new Area(alike.stream().mapToDouble(WetContacts::most).sum()),
        alike.stream().allMatch(WetContacts::known),
        onRails(alike),
        contact.later().footprint().placement().name(),
        contact.earlier().footprint().placement().name(),
        contact.later().laid(),
        safe.best(),
        safe.latest(),
        wait.remedy(),
        wait.cleared(),
        wait.finish(),
        ways(wait, everyOther, passesFirst),
        ordinary,
        surely,
        everyOther,
        passesFirst,
        also(told, alike),
        pairs.size() - told.size(),
        contact.later().path(),
        List.of(
            new Related(Tie.FILM_BELOW, contact.earlier().path()),
            new Related(Tie.ITS_PASTE, contact.earlier().footprint().paste().path())),
        marks(told));
  }

  private static Design.Separation film(Pair pair) {
    return pair.contact().earlier().footprint().separation();
  }

  /**
   * The most wet film under the frame: by its film, or all of the image there, or all it prints.
   */
  private static double most(Pair pair) {
    return pair.contact()
        .printed()
        .map(Area::squareCm)
        .orElseGet(
            () -> Math.min(pair.contact().area().squareCm(), film(pair).printed().squareCm()));
  }

  private static boolean known(Pair pair) {
    return pair.contact().printed().isPresent()
        || film(pair).printed().squareCm() >= film(pair).rectangle().squareCm() * WHOLE;
  }

  private Optional<Area> onRails(List<Pair> pairs) {
    double rails = 0;
    for (Pair pair : pairs) {
      Contact contact = pair.contact();
      Optional<Area> mesh =
          contact.printed().isEmpty()
              ? Optional.empty()
              : FilmUnder.of(
                  contact.earlier().footprint(), contact.later().footprint().mesh(), tube);
      if (mesh.isEmpty()) {
        return Optional.empty();
      }
      rails += Math.max(0, contact.printed().get().squareCm() - mesh.get().squareCm());
    }
    return Optional.of(new Area(rails));
  }

  private static boolean told(Pair pair, Pair worst) {
    return pair.contact().sameMotif() == worst.contact().sameMotif();
  }

  /** The other colours that one wait clears in the same way. */
  private static List<WetContact.Colours> also(List<Pair> told, List<Pair> alike) {
    Set<Pair> those = new HashSet<>(alike);
    Map<List<String>, Integer> others = new LinkedHashMap<>();
    for (Pair pair : told) {
      if (!those.contains(pair)) {
        others.merge(
            List.of(Causes.colour(pair.contact().later()), Causes.colour(pair.contact().earlier())),
            1,
            Integer::sum);
      }
    }
    return others.entrySet().stream()
        .map(o -> new WetContact.Colours(o.getKey().get(0), o.getKey().get(1), o.getValue()))
        .toList();
  }

  private static boolean alike(Pair pair, Pair worst) {
    Contact one = pair.contact();
    Contact other = worst.contact();
    return told(pair, worst)
        && one.earlier().step() == other.earlier().step()
        && Causes.colour(one.earlier()).equals(Causes.colour(other.earlier()))
        && Causes.colour(one.later()).equals(Causes.colour(other.later()));
  }

  /** What to write, the better way first; only what clears the cause, unless nothing does. */
  private static List<Remedy> ways(Outcome wait, Optional<Outcome> passes, boolean passesFirst) {
    List<Remedy> ways = new ArrayList<>(List.of(wait.remedy()));
    passes.ifPresent(other -> ways.add(passesFirst ? 0 : 1, other.remedy()));
    return ways;
  }

  /** Nobody stays past closing time for it, or the run ends sooner. */
  private static boolean better(Outcome passes, Outcome wait) {
    if (wait.cleared() && passes.late().isEmpty() != wait.late().isEmpty()) {
      return passes.late().isEmpty();
    }
    if (passes.serves() != wait.serves()) {
      return passes.serves();
    }
    return !wait.cleared()
        || passes.finish().isPresent()
            && wait.finish().isPresent()
            && passes.finish().get().compareTo(wait.finish().get()) < 0;
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
