package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.plan.Draught;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
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
  private final Rehearsal rehearsal;
  private final Policy policy;
  private final boolean sewnLast;
  private final boolean slowly;
  private final int people;
  private final long load;
  private final long move;
  private final long sew;
  private final long mix;
  private final long lay;
  private final List<Film> films = new ArrayList<>();

  private Bounding(
      Leeway leeway, Rehearsal rehearsal, Policy policy, boolean sewnLast, boolean slowly) {
    this.slowly = slowly;
    this.leeway = leeway;
    this.rehearsal = rehearsal;
    this.policy = policy;
    this.sewnLast = sewnLast;
    this.people = leeway.crew().size();
    Handling takes = leeway.plan().handling();
    this.load = seconds(takes.load());
    this.move = seconds(takes.move());
    this.sew = Math.min(seconds(takes.sew()), leeway.leastSewing());
    this.mix = Math.min(seconds(takes.mix()), leeway.leastMixing());
    this.lay = seconds(takes.lay());
    Map<Object, long[]> dried = new HashMap<>();
    for (Footprint footprint : leeway.layout().footprints()) {
      long[] times = dried.computeIfAbsent(footprint.separation(), s -> times(footprint));
      films.add(
          new Film(
              footprint,
              lay + seconds(pulled(takes, footprint)),
              times[0],
              times[1],
              concerned(footprint.paste().medium()) ? times[2] : 0));
    }
  }

  /**
   * One impression.
   *
   * @param takes from fetching the frame to lifting it
   */
  private record Film(Footprint print, long takes, long frame, long lift, long fix) {}

  /**
   * @param sewnLast true if runs are kept to sewing seams after the work away from them
   * @param sure true if runs are kept to end within the hours on a slow day too
   */
  static Bound of(
      Leeway leeway, Rehearsal rehearsal, Policy policy, boolean sewnLast, boolean sure) {
    Bounding ordinary = new Bounding(leeway, rehearsal, policy, sewnLast, false);
    List<Integer> days = ordinary.anyDay();
    if (sure) {
      Bounding slow = new Bounding(leeway, rehearsal, policy, sewnLast, true);
      // A slow day's night lies in the run: an end of the day that every day has. Only a wait that
      // lasts a night longer on a slow day would be none.
      if (slow.films.stream().allMatch(f -> f.fix() < slow.shortestNight())) {
        days = slow.days();
      }
    }
    return ordinary.bound(days);
  }

  private List<Integer> anyDay() {
    return leeway.last().stream().map(step -> 1).toList();
  }

  private long shortestNight() {
    Hours hours = leeway.plan().hours();
    long shortest = Long.MAX_VALUE;
    for (int day = 1; day <= hours.days().size() + 1; day++) {
      long closes = Moment.of(day, hours.of(day).closes()).seconds();
      long opens = Moment.of(day + 1, hours.of(day + 1).opens()).seconds();
      shortest = Math.min(shortest, opens - closes);
    }
    return shortest;
  }

  private static Span pulled(Handling takes, Footprint footprint) {
    return new Span(
        takes.pull().minutes() * footprint.separation().pulls() + takes.lift().minutes());
  }

  /** Never more than the clock counts. */
  private static long seconds(Span span) {
    return (long) Math.floor(span.seconds() + 1e-6);
  }

  private long[] times(Footprint footprint) {
    long[] times = new long[3];
    for (Dryness state : Dryness.values()) {
      long best = Long.MAX_VALUE / 8;
      for (Optional<Draught> air : leeway.airs()) {
        Optional<Span> dries = rehearsal.dries(footprint, state, air, slowly);
        best = Math.min(best, dries.map(Bounding::seconds).orElse(best));
      }
      times[state.ordinal()] = best;
    }
    return times;
  }

  /** Whether the first of the last steps waits for films of that medium. */
  private boolean concerned(Medium medium) {
    if (leeway.last().isEmpty() || leeway.last().get(0).needs().isEmpty()) {
      return false;
    }
    Step first = leeway.last().get(0);
    return first instanceof Step.Fix
        ? medium == Medium.DYE
        : !(first instanceof Step.HeatSet) || medium == Medium.PAINT;
  }

  /** So many seconds after the opening of day 1, of which so many are worked, and why. */
  private record Term(long plain, long worked, Bound.Binding because) {
    Term or(Term other) {
      return other != null && other.plain > plain ? other : this;
    }
  }

  private Term dry() {
    return films.isEmpty() ? new Term(0, 0, new Bound.Hands(new Span(0), people)) : least();
  }

  private long ready(Term dry) {
    Hours hours = leeway.plan().hours();
    long opens = Moment.of(1, hours.of(1).opens()).seconds();
    return Math.max(opens + dry.plain(), worked(dry.worked(), hours));
  }

  /** On which day each of the last steps begins at the soonest. */
  private List<Integer> days() {
    List<Integer> days = new ArrayList<>();
    long at = ready(dry());
    for (int i = 0; i < leeway.last().size(); i++) {
      long begins = begins(leeway.last().get(i), at, 1);
      days.add(new Moment(begins).day());
      at = begins + seconds(lasts(leeway.last().get(i)));
    }
    return days;
  }

  /**
   * @param days on which each of the last steps begins at the soonest
   */
  private Bound bound(List<Integer> days) {
    Term dry = dry();
    long ready = ready(dry);
    Bound.Binding because = dry.because();
    long at = ready;
    for (int i = 0; i < leeway.last().size(); i++) {
      Step step = leeway.last().get(i);
      long begins = begins(step, at, days.get(i));
      if (begins > at) {
        because = new Bound.Night(new Moment(begins), begins(step, at, 1) < begins);
      }
      at = begins + seconds(lasts(step));
    }
    return new Bound(new Moment(at), new Moment(ready), because);
  }

  /** When a step begins that is to be done within one day's hours. */
  private long begins(Step step, long from, int notBefore) {
    if (step instanceof Step.Fix fix && fix.how() == Step.Fixing.BATCH) {
      return from;
    }
    Hours hours = leeway.plan().hours();
    long few = Math.round(policy.time().fewMinutesOver().minutes() * 60);
    long at =
        notBefore > new Moment(from).day()
            ? Moment.of(notBefore, hours.of(notBefore).opens()).seconds()
            : from;
    int day = new Moment(at).day();
    long opening = Moment.of(day, hours.of(day).opens()).seconds();
    // Seconds are told by nobody.
    long closing = Moment.of(day, hours.of(day).closes()).seconds() + few + 59;
    if (at < opening) {
      return opening;
    }
    return at + seconds(lasts(step)) > closing
        ? Moment.of(day + 1, hours.of(day + 1).opens()).seconds()
        : at;
  }

  /** The clock when so many seconds of opening hours are over. */
  private static long worked(long seconds, Hours hours) {
    long left = seconds;
    for (int day = 1; ; day++) {
      long opens = Moment.of(day, hours.of(day).opens()).seconds();
      long closes = Moment.of(day, hours.of(day).closes()).seconds();
      if (left <= closes - opens) {
        return opens + left;
      }
      left -= closes - opens;
    }
  }

  private Span lasts(Step step) {
    if (step instanceof Step.Fix fix) {
      return fix.lasts();
    }
    if (step instanceof Step.Rinse rinse) {
      return rinse.lasts();
    }
    if (step instanceof Step.Wash wash) {
      return wash.lasts();
    }
    Step.HeatSet set = (Step.HeatSet) step;
    boolean first =
        leeway.last().stream().filter(Step.HeatSet.class::isInstance).findFirst().get() == set;
    return first ? rehearsal.heats(set) : set.lasts();
  }

  private Term least() {
    List<Set<Integer>> seams =
        leeway.across().values().stream().filter(ids -> !ids.isEmpty()).toList();
    int across = seams.size();
    List<Integer> openers = rounds(films, 1).get(0);
    int windows = openers.size();
    Term least = null;
    for (int stretches = windows; stretches <= windows + 1; stretches++) {
      for (int instead = 0; instead <= Math.min(across, stretches - 1); instead++) {
        Term term = term(stretches, openers, across, instead);
        least = least == null || term.plain() < least.plain() ? term : least;
      }
    }
    return sewnLast && across == 1 ? least.or(lastSewn(seams.get(0))) : least;
  }

  private Term term(int stretches, List<Integer> openers, int across, int instead) {
    int windows = openers.size();
    long before = load + (across - instead) * (sew + load);
    long between = (stretches - 1 - instead) * move + instead * (sew + load);
    Span sewing = Span.ofSeconds(across * (double) (sew + load));
    Term most = hands(before + between, films);
    for (long tau : classes(windows, films, openers)) {
      List<Film> own = films.stream().filter(f -> f.lift() >= tau).toList();
      long work = own.stream().mapToLong(Film::takes).sum();
      long fix = own.stream().mapToLong(Film::fix).min().orElse(0);
      long mixing = mix * surelyMixedFirst(own, stretches).size();
      long begins = Math.max(before, up(before + mixing, people));
      long dries = (windows - 1) * tau + (stretches - windows) * leastLift(films);
      long plain = begins + up(work, people) + dries + fix + between;
      most =
          most.or(
              new Term(
                  plain,
                  begins + up(work, people) + between,
                  new Bound.Stretches(
                      stretches,
                      Span.ofSeconds(stretches == 1 ? 0 : tau),
                      Span.ofSeconds(up(work, people)),
                      people,
                      sewing)));
    }
    return stretches == 1 ? most.or(motifs(before, films)) : most;
  }

  /** All hands are busy with mixing, printing and the cloth until the last print. */
  private Term hands(long cloth, List<Film> own) {
    Set<String> mixed = new HashSet<>();
    own.stream()
        .map(f -> f.print().paste().name())
        .filter(leeway.mixed()::contains)
        .forEach(mixed::add);
    long work = cloth + mix * mixed.size() + own.stream().mapToLong(Film::takes).sum();
    long fix = own.stream().mapToLong(Film::fix).min().orElse(0);
    long all = up(work, people);
    return new Term(all + fix, all, new Bound.Hands(Span.ofSeconds(work), people));
  }

  /** In one stretch: what comes before a colour takes its time on some motif. */
  private Term motifs(long before, List<Film> own) {
    Map<Integer, List<Film>> byMotif = new HashMap<>();
    own.forEach(
        f -> byMotif.computeIfAbsent(f.print().placement().id(), id -> new ArrayList<>()).add(f));
    Term most = null;
    for (List<Film> motif : byMotif.values()) {
      long takes = 0;
      for (int i = 0; i < motif.size(); i++) {
        boolean last = i + 1 == motif.size();
        // The next frame is fetched while the film dries.
        takes += motif.get(i).takes() + (last ? 0 : Math.max(0, motif.get(i).frame() - lay));
      }
      long fix = motif.get(motif.size() - 1).fix();
      boolean mixes = leeway.mixed().contains(motif.get(0).print().paste().name());
      long begins = Math.max(before, mixes ? up(before + mix, people) : 0);
      Placement placement = motif.get(0).print().placement();
      Term term =
          new Term(
              begins + takes + fix,
              begins + motif.stream().mapToLong(Film::takes).sum(),
              new Bound.Motif(placement.name(), motif.size(), Span.ofSeconds(takes)));
      most = most == null ? term : most.or(term);
    }
    int colours = byMotif.values().stream().mapToInt(List::size).min().orElse(1);
    for (int colour = 2; colour <= colours; colour++) {
      most = most.or(colour(before, own, byMotif, colour));
    }
    return most;
  }

  /** Nothing of a colour and later ones begins before the colours before it on some motif. */
  private Term colour(long before, List<Film> own, Map<Integer, List<Film>> byMotif, int colour) {
    long first = Long.MAX_VALUE;
    for (List<Film> motif : byMotif.values()) {
      long takes = 0;
      for (Film film : motif.subList(0, colour - 1)) {
        takes += film.takes() + Math.max(0, film.frame() - lay);
      }
      first = Math.min(first, takes);
    }
    List<Film> later = own.stream().filter(f -> f.print().separation().number() >= colour).toList();
    long work = later.stream().mapToLong(Film::takes).sum();
    long fix = later.stream().mapToLong(Film::fix).min().orElse(0);
    boolean mixes = leeway.mixed().contains(own.get(0).print().paste().name());
    long begins = Math.max(before, mixes ? up(before + mix, people) : 0);
    long all = begins + first + up(work, people);
    return new Term(
        all + fix,
        begins + up(work, people),
        new Bound.Colours(colour, Span.ofSeconds(first), Span.ofSeconds(up(work, people)), people));
  }

  /**
   * The seam is sewn when all but a few prints away from it are done; then what lies across it is
   * printed, each motif colour after colour.
   */
  private Term lastSewn(Set<Integer> across) {
    int few = (int) policy.seams().awayAfterSewing().value();
    List<Film> away =
        films.stream().filter(f -> !across.contains(f.print().placement().id())).toList();
    List<Film> over =
        films.stream().filter(f -> across.contains(f.print().placement().id())).toList();
    if (away.isEmpty() || over.isEmpty()) {
      return null;
    }
    // Whichever few come afterwards, the placements of one of these rounds are all among the rest.
    List<List<Integer>> rounds = rounds(away, few + 1);
    int windows = rounds.stream().mapToInt(List::size).min().orElse(0);
    if (windows == 0) {
      return null;
    }
    List<Integer> any = rounds.stream().flatMap(List::stream).toList();
    Term after = motifs(0, over);
    Term most = null;
    for (long tau : classes(windows, away, any)) {
      List<Film> own = away.stream().filter(f -> f.lift() >= tau).toList();
      long work =
          own.stream().mapToLong(Film::takes).sum()
              - few * own.stream().mapToLong(Film::takes).max().orElse(0);
      if (work <= 0) {
        continue;
      }
      long printed = up(work, people);
      long handled = load + printed + (windows - 1) * move + sew + load;
      Term term =
          new Term(
              handled + windows * tau + after.plain() - begun(),
              handled + after.worked() - begun(),
              new Bound.Stretches(
                  windows,
                  Span.ofSeconds(tau),
                  Span.ofSeconds(printed),
                  people,
                  Span.ofSeconds(sew + load)));
      most = most == null ? term : most.or(term);
    }
    return most;
  }

  /** What {@link #motifs} counts before its first frame where nothing is done before. */
  private long begun() {
    return up(mix, people);
  }

  private static long leastLift(List<Film> own) {
    return own.stream().mapToLong(Film::lift).min().orElse(0);
  }

  /**
   * Times λ that some film reaches of each placement that opens a window, so that as many stretches
   * hold films that dry so long; of one window all.
   */
  private Set<Long> classes(int windows, List<Film> own, List<Integer> openers) {
    Map<Integer, Long> longest = new HashMap<>();
    own.forEach(f -> longest.merge(f.print().placement().id(), f.lift(), Math::max));
    long all = Long.MAX_VALUE;
    if (windows > 1) {
      for (int id : openers) {
        all = Math.min(all, longest.get(id));
      }
    }
    Set<Long> classes = new TreeSet<>();
    for (Film film : own) {
      if (film.lift() <= all) {
        classes.add(film.lift());
      }
    }
    return classes;
  }

  /**
   * Ids of placements no two of which the table shows at once, as many as can be; then the same of
   * those that are left, and so on.
   */
  private List<List<Integer>> rounds(List<Film> all, int many) {
    Map<Integer, Envelope> frames = new HashMap<>();
    for (Film film : all) {
      frames
          .computeIfAbsent(film.print().placement().id(), id -> new Envelope())
          .expandToInclude(film.print().frame().getEnvelopeInternal());
    }
    List<List<Integer>> rounds = new ArrayList<>();
    for (int round = 0; round < many; round++) {
      List<Integer> openers = openers(frames);
      rounds.add(openers);
      frames.keySet().removeAll(openers);
    }
    return rounds;
  }

  private List<Integer> openers(Map<Integer, Envelope> frames) {
    double table = leeway.plan().table().length().mm();
    List<Integer> ids = new ArrayList<>(frames.keySet());
    ids.sort(
        Comparator.comparingDouble((Integer id) -> frames.get(id).getMinX())
            .thenComparing(id -> id));
    List<Integer> openers = new ArrayList<>();
    double shown = Double.NEGATIVE_INFINITY;
    for (int id : ids) {
      Envelope frame = frames.get(id);
      if (frame.getMaxX() > shown + Length.TOLERANCE) {
        openers.add(id);
        shown = frame.getMinX() + table;
      }
    }
    return openers;
  }

  /** Pastes of films that are printed in the first stretch, whichever that is. */
  private Set<String> surelyMixedFirst(List<Film> own, int stretches) {
    Set<String> mixed = new HashSet<>();
    double least = films.stream().mapToDouble(f -> from(f)).min().orElse(0);
    double most = films.stream().mapToDouble(f -> to(f)).max().orElse(0);
    double table = leeway.plan().table().length().mm();
    for (String paste : leeway.mixed()) {
      List<Film> with = own.stream().filter(f -> f.print().paste().name().equals(paste)).toList();
      boolean surely =
          stretches == 1
              ? !with.isEmpty()
              : stretches == 2
                  && with.stream().anyMatch(f -> to(f) > least + table + Length.TOLERANCE)
                  && with.stream().anyMatch(f -> from(f) < most - table - Length.TOLERANCE);
      if (surely) {
        mixed.add(paste);
      }
    }
    return mixed;
  }

  private static double from(Film film) {
    return film.print().frame().getEnvelopeInternal().getMinX();
  }

  private static double to(Film film) {
    return film.print().frame().getEnvelopeInternal().getMaxX();
  }

  private static long up(long work, int people) {
    return (work + people - 1) / people;
  }
}
