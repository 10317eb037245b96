package strikeoff.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.layout.FilmUnder;
import strikeoff.layout.Placement;
import strikeoff.layout.Tube;
import strikeoff.units.Span;

/**
 * Before when no prints are done since each motif is printed colour after colour, and one beside
 * another waits for it. All of it is in seconds.
 *
 * @param mix for one paste
 * @param lay to fetch a frame and lay it
 * @param sew for one seam
 * @param mixed pastes that are mixed in the run
 * @param shifts by which the later of two is told
 */
record MotifByMotif(
    Tube tube, int people, long mix, long lay, long sew, Set<String> mixed, Shifts shifts) {

  /** What comes before a colour takes its time on each motif. */
  Soonest all(long before, List<PrintTimes> own, int last) {
    Map<Integer, List<PrintTimes>> byMotif = new LinkedHashMap<>();
    own.forEach(f -> byMotif.computeIfAbsent(f.placement(), id -> new ArrayList<>()).add(f));
    Soonest most = null;
    for (List<PrintTimes> motif : byMotif.values()) {
      Soonest term = motif(before, motif, last);
      most = shifts.later(most, term);
    }
    most = shifts.later(most, beside(before, List.copyOf(byMotif.values()), last));
    int colours = byMotif.values().stream().mapToInt(List::size).min().orElse(1);
    for (int colour = 2; colour <= colours; colour++) {
      most = shifts.later(most, colour(before, own, byMotif, colour, last));
    }
    return most;
  }

  private Soonest motif(long before, List<PrintTimes> motif, int last) {
    long takes = 0;
    long dry = 0;
    for (int i = 0; i < motif.size(); i++) {
      takes += motif.get(i).takes();
      dry = Math.max(dry, takes + dry(List.of(motif.get(i)), last));
      // The next frame is fetched while the film dries.
      takes += i + 1 == motif.size() ? 0 : Math.max(0, motif.get(i).frame() - lay);
    }
    long begins = begun(before, motif);
    Placement placement = motif.get(0).print().placement();
    return new Soonest(
        begins + dry,
        begins + motif.stream().mapToLong(PrintTimes::takes).sum(),
        dry(List.of(motif.get(motif.size() - 1)), last),
        new Bound.Motif(placement.name(), motif.size(), Span.ofSeconds(takes)));
  }

  /** Of two motifs each of whose frames lies on the other's print one waits for the other. */
  private Soonest beside(long before, List<List<PrintTimes>> motifs, int last) {
    Soonest most = null;
    for (int i = 0; i < motifs.size(); i++) {
      for (int j = i + 1; j < motifs.size(); j++) {
        PrintTimes one = motifs.get(i).get(0);
        PrintTimes other = motifs.get(j).get(0);
        if (liesOn(one, other) && liesOn(other, one)) {
          Soonest term =
              shifts.sooner(
                  after(before, one, motifs.get(j), last),
                  after(before, other, motifs.get(i), last));
          most = shifts.later(most, term);
        }
      }
    }
    return most;
  }

  private boolean liesOn(PrintTimes frame, PrintTimes image) {
    return frame.from() < image.to()
        && image.from() < frame.to()
        && FilmUnder.lies(image.print(), frame.print().frame(), tube);
  }

  private Soonest after(long before, PrintTimes first, List<PrintTimes> motif, int last) {
    long begins = begun(before, List.of(first));
    Soonest then = motif(0, motif, last);
    long waits = first.takes() + Math.max(0, first.frame() - lay);
    long without = begun(0, motif);
    return new Soonest(
        begins + waits + then.plain() - without,
        begins + first.takes() + then.worked() - without,
        then.after(),
        new Bound.Motif(
            first.print().placement().name()
                + " and "
                + motif.get(0).print().placement().name()
                + " beside it",
            motif.size(),
            Span.ofSeconds(begins + waits + then.plain() - without)));
  }

  /** When the first of some prints begins: its paste was mixed before. */
  private long begun(long before, List<PrintTimes> motif) {
    boolean mixes = mixed.contains(motif.get(0).print().paste().name());
    return Math.max(before, mixes ? up(before + mix, people) : 0);
  }

  /** Nothing of a colour and later ones begins before the colours before it on some motif. */
  private Soonest colour(
      long before,
      List<PrintTimes> own,
      Map<Integer, List<PrintTimes>> byMotif,
      int colour,
      int last) {
    long first = Long.MAX_VALUE;
    long under = Long.MAX_VALUE;
    for (List<PrintTimes> motif : byMotif.values()) {
      long takes = 0;
      for (PrintTimes film : motif.subList(0, colour - 1)) {
        takes += film.takes() + Math.max(0, film.frame() - lay);
      }
      under = Math.min(under, takes);
      first = Math.min(first, takes + begun(before, motif));
    }
    List<PrintTimes> later =
        own.stream().filter(f -> f.print().separation().number() >= colour).toList();
    long printed = printed(later);
    return new Soonest(
        first + printed + dry(later, last),
        before + printed,
        dry(later, last),
        new Bound.Colours(colour, Span.ofSeconds(under), Span.ofSeconds(printed), people));
  }

  /** How long all hands take to print films, of which those of one screen follow each other. */
  long printed(List<PrintTimes> own) {
    Map<String, Long> screens = new HashMap<>();
    own.forEach(f -> screens.merge(f.print().screen().name(), f.takes(), Long::sum));
    long longest = screens.values().stream().mapToLong(Long::longValue).max().orElse(0);
    return Math.max(longest, up(own.stream().mapToLong(PrintTimes::takes).sum(), people));
  }

  /** How long after the last of some prints the cloth is ready for the last steps. */
  long dry(List<PrintTimes> own, int last) {
    return Math.max(leastFix(own), last == 0 ? 0 : leastLift(own) + last * sew);
  }

  static long leastLift(List<PrintTimes> own) {
    return own.stream().mapToLong(PrintTimes::lift).min().orElse(0);
  }

  static long leastFix(List<PrintTimes> own) {
    return own.stream().mapToLong(PrintTimes::fix).min().orElse(0);
  }

  static long up(long work, int people) {
    return (work + people - 1) / people;
  }
}
