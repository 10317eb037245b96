package strikeoff.propose;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.layout.Tube;
import strikeoff.plan.Handling;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Span;

/**
 * Works out a finish that no run undercuts. All of it is in seconds.
 *
 * <p>An impression takes h from fetching its frame to lifting it, and its film takes F, λ and φ
 * from then on to be frame-safe, lift-safe and fix-safe: on an ordinary day in the fastest air that
 * may blow, all the time. No accepted run touches a film sooner, since a felt wait ends then at the
 * soonest, and one that is not felt has to outlast slow drying.
 *
 * <ul>
 *   <li>Windows of one table length along the cloth: each opened at the first frame not shown yet
 *       and dropping what it holds, they are as few as can be, n, and what opens them shares none.
 *       So at least n stretches lie on the table, and between two of them the cloth may move only
 *       when the last film of the first is lift-safe.
 *   <li>Films of a class, those with λ ≥ τ, are printed by at most P people at once, and in each
 *       stretch that holds one the last of them dries for τ. So the prints are fix-safe at best
 *       after b + W(τ)/P + (n − 1)(τ + move) + least φ, where b is what is done to the cloth before
 *       its first print. A stretch more than n holds some film too, and costs its λ and a move.
 *   <li>A seam that prints lie across takes the cloth off the table: sewing and laying it again. It
 *       may stand in for a move.
 * </ul>
 *
 * Where sewing before the work away from a seam is advised against, all but a few prints come
 * before it; see {@link #sewnLast}.
 */
final class Bounding {

  private final Leeway leeway;
  private final Policy policy;
  private final boolean sewnLast;
  private final int people;
  private final long load;
  private final long move;
  private final long sew;
  private final long mix;
  private final List<PrintTimes> films;
  private final LeastLays lays;
  private final MotifByMotif motifs;
  private final Shifts shifts;

  private Bounding(
      Leeway leeway,
      Rehearsal rehearsal,
      Policy policy,
      boolean sewnLast,
      boolean slowly,
      Moment from) {
    this.leeway = leeway;
    this.policy = policy;
    this.sewnLast = sewnLast;
    this.people = leeway.crew().size();
    Handling takes = leeway.plan().handling();
    this.load = PrintTimes.seconds(takes.load());
    this.move = PrintTimes.seconds(takes.move());
    this.sew = Math.min(PrintTimes.seconds(takes.sew()), leeway.leastSewing());
    // While the cloth is being fixed others may mix for what is printed on it next.
    boolean isFirst = leeway.phase().number() == 1;
    this.mix = isFirst ? Math.min(PrintTimes.seconds(takes.mix()), leeway.leastMixing()) : 0;
    this.films = new SoonestDry(leeway, rehearsal, slowly).films();
    long lay = PrintTimes.seconds(takes.lay());
    this.lays = new LeastLays(leeway.plan(), films);
    this.shifts = new Shifts(leeway.plan().hours(), from, work(), policy);
    this.motifs =
        new MotifByMotif(
            Tube.of(leeway.plan().cloth()),
            people,
            mix,
            lay,
            sew,
            Set.copyOf(leeway.mixed()),
            shifts);
  }

  /**
   * @param sewnLast true if runs are kept to sewing seams after the work away from them
   * @param sure true if runs are kept to end within the hours on a slow day too
   * @param from when the part that is arranged can begin at the soonest
   */
  static Bound of(
      Leeway leeway,
      Rehearsal rehearsal,
      Policy policy,
      boolean sewnLast,
      boolean sure,
      Moment from) {
    Bounding ordinary = new Bounding(leeway, rehearsal, policy, sewnLast, false, from);
    LastSteps last = new LastSteps(leeway, rehearsal, policy, ordinary.shifts);
    List<Integer> days = last.anyDay();
    if (sure) {
      Bounding slow = new Bounding(leeway, rehearsal, policy, sewnLast, true, from);
      // A slow day's night lies in the run: an end of the day that every day has. Only a wait that
      // lasts a night longer on a slow day would be none.
      if (slow.films.stream().allMatch(f -> f.fix() < last.shortestNight())) {
        days = last.days(slow.dry());
      }
    }
    return last.bound(ordinary.dry(), days);
  }

  /** What takes its time between two breaks; cloth that is sewn is laid once more. */
  private Shifts.Work work() {
    boolean sews = !leeway.across().isEmpty();
    long longest = Math.max(Math.max(move, mix), sews ? Math.max(sew, load) : 0);
    for (PrintTimes film : films) {
      longest = Math.max(longest, film.takes());
    }
    return new Shifts.Work(longest, load, mix * leeway.mixed().size());
  }

  private Soonest dry() {
    return films.isEmpty() ? new Soonest(0, 0, 0, new Bound.Hands(new Span(0), people)) : least();
  }

  private Soonest least() {
    List<Set<Integer>> seams =
        leeway.across().values().stream().filter(ids -> !ids.isEmpty()).toList();
    int beside = leeway.across().size() - seams.size();
    int fewest = lays.of(films);
    Soonest least = null;
    // What nothing lies across may be sewn at any time, also when all is printed.
    for (int last = 0; last <= beside; last++) {
      int sewn = seams.size() + beside - last;
      for (int laid = fewest; laid <= fewest + 1; laid++) {
        for (int instead = 0; instead <= Math.min(sewn, laid - 1); instead++) {
          least = shifts.sooner(least, term(laid, sewn, instead, last));
        }
      }
    }
    return sewnLast && seams.size() == 1 ? shifts.later(least, lastSewn(seams.get(0))) : least;
  }

  /**
   * @param laid how often the cloth is laid so that it shows something to print
   * @param sewn how many seams are sewn before the last print
   * @param instead how many of them where the cloth would be moved otherwise
   * @param last how many seams are sewn after it
   */
  private Soonest term(int laid, int sewn, int instead, int last) {
    // What is sewn first of all is laid once, when it is sewn.
    long before = load + (sewn - instead) * sew;
    long between = (laid - 1 - instead) * move + instead * (sew + load);
    Span sewing = Span.ofSeconds(sewn * (double) sew + instead * (double) load);
    Soonest most =
        shifts.later(hands(before + between, films, last), motifs.all(before, films, last));
    for (long tau : classes(films)) {
      List<PrintTimes> own = films.stream().filter(f -> f.lift() >= tau).toList();
      int holding = lays.of(own);
      long printed = motifs.printed(own);
      long begins = Math.max(before, MotifByMotif.up(before + mix * mixedFirst(own, laid), people));
      Drying drying = drying(tau, own, holding, laid, last);
      most =
          shifts.later(
              most,
              new Soonest(
                  begins + printed + drying.all() + between,
                  begins + printed + between,
                  drying.after(),
                  new Bound.Stretches(
                      laid,
                      Span.ofSeconds(laid == 1 ? 0 : tau),
                      Span.ofSeconds(printed),
                      people,
                      sewing)));
    }
    return most;
  }

  /**
   * What dries in lay after lay.
   *
   * @param all in every lay, one after the other
   * @param after the last print in any
   */
  private record Drying(long all, long after) {}

  /**
   * @param own films that take τ and more to be lift-safe
   * @param holding how many lays hold some of those
   * @param laid how many there are
   */
  private Drying drying(long tau, List<PrintTimes> own, int holding, int laid, int last) {
    long after = motifs.dry(own, last);
    if (laid <= holding) {
      return new Drying((holding - 1) * tau + after, after);
    }
    // Whichever lay comes last, one that holds some of them or another.
    long least = MotifByMotif.leastLift(films);
    long other = motifs.dry(films, last);
    long all = (holding - 1) * tau + (laid - holding - 1) * least;
    return new Drying(all + Math.min(least + after, tau + other), Math.min(after, other));
  }

  /** All hands are busy with mixing, printing and the cloth until the last print. */
  private Soonest hands(long cloth, List<PrintTimes> own, int last) {
    Set<String> mixed = new HashSet<>();
    own.stream()
        .map(f -> f.print().paste().name())
        .filter(leeway.mixed()::contains)
        .forEach(mixed::add);
    long work = cloth + mix * mixed.size() + own.stream().mapToLong(PrintTimes::takes).sum();
    long all = MotifByMotif.up(work, people);
    long after = motifs.dry(own, last);
    return new Soonest(all + after, all, after, new Bound.Hands(Span.ofSeconds(work), people));
  }

  /**
   * The seam is sewn when all but a few prints away from it are done; then what lies across it is
   * printed, each motif colour after colour.
   */
  private Soonest lastSewn(Set<Integer> across) {
    int few = Leeway.awayAfterSewing(policy);
    List<PrintTimes> away = films.stream().filter(f -> !across.contains(f.placement())).toList();
    List<PrintTimes> over = films.stream().filter(f -> across.contains(f.placement())).toList();
    if (away.isEmpty() || over.isEmpty()) {
      return null;
    }
    int all = lays.parted(away, over, few);
    if (all < 2) {
      return null;
    }
    Span sewing = Span.ofSeconds(sew + load);
    long handled = load + (all - 2) * move + sew + load;
    Soonest after = motifs.all(0, over, 0);
    Soonest most = null;
    for (long tau : classes(films)) {
      List<PrintTimes> own = films.stream().filter(f -> f.lift() >= tau).toList();
      List<PrintTimes> first = own.stream().filter(f -> !across.contains(f.placement())).toList();
      List<PrintTimes> then = own.stream().filter(f -> across.contains(f.placement())).toList();
      long work = own.stream().mapToLong(PrintTimes::takes).sum();
      long printed = motifs.printed(own);
      int holding = Math.max(1, lays.parted(first, then, few));
      Drying drying = drying(tau, own, holding, all, 0);
      Soonest term =
          new Soonest(
              handled + printed + drying.all(),
              handled + printed,
              drying.after(),
              new Bound.Stretches(
                  all, Span.ofSeconds(tau), Span.ofSeconds(printed), people, sewing));
      most = shifts.later(most, term);
      // What lies across is printed when all that dries before the sewing has dried.
      int beforehand = lays.without(first, few);
      long rest =
          work
              - then.stream().mapToLong(PrintTimes::takes).sum()
              - few * own.stream().mapToLong(PrintTimes::takes).max().orElse(0);
      if (beforehand == 0 || rest <= 0) {
        continue;
      }
      long up = MotifByMotif.up(rest, people);
      long laid = load + (beforehand - 1) * move + sew + load;
      most =
          shifts.later(
              most,
              new Soonest(
                  laid + up + beforehand * tau + after.plain() - MotifByMotif.up(mix, people),
                  laid + up + after.worked() - MotifByMotif.up(mix, people),
                  after.after(),
                  new Bound.Stretches(
                      beforehand + 1, Span.ofSeconds(tau), Span.ofSeconds(up), people, sewing)));
    }
    return most;
  }

  /** Times λ, each once. */
  private static Set<Long> classes(List<PrintTimes> own) {
    Set<Long> classes = new TreeSet<>();
    own.forEach(film -> classes.add(film.lift()));
    return classes;
  }

  /**
   * How many pastes are surely mixed before the last of some films is printed in the lay that holds
   * the first of them: in one lay all of theirs, of two those that neither does without.
   */
  private int mixedFirst(List<PrintTimes> own, int laid) {
    double least = films.stream().mapToDouble(PrintTimes::from).min().orElse(0);
    double most = films.stream().mapToDouble(PrintTimes::to).max().orElse(0);
    double table = leeway.plan().table().length().mm();
    int mixed = 0;
    int there = 0;
    for (String paste :
        own.stream().map(f -> f.print().paste().name()).collect(Collectors.toSet())) {
      List<PrintTimes> with =
          own.stream().filter(f -> f.print().paste().name().equals(paste)).toList();
      boolean surely =
          laid == 1
              || laid == 2
                  && with.stream().anyMatch(f -> f.to() > least + table + Length.TOLERANCE)
                  && with.stream().anyMatch(f -> f.from() < most - table - Length.TOLERANCE);
      boolean mixes = leeway.mixed().contains(paste);
      mixed += surely && mixes ? 1 : 0;
      there += mixes ? 0 : 1;
    }
    // Whichever is printed first was mixed before.
    return Math.max(mixed, there == 0 ? 1 : 0);
  }
}
