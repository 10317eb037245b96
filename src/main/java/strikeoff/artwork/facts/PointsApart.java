package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * Films of one page of a design that differ in their points, where nothing says how many some of
 * them have to an inch. Those are taken for as large as the plan wants them, whatever they came out
 * at; of one resolution they differ in size. Drawings have no points of their own.
 *
 * @param kinds the films by how many points they have, those of which there are most first
 * @param odd the files that say nothing and aren't of the most; all that say nothing if no kind is
 *     of the most
 * @param worst the files that differ most from the first kind
 * @param scale how large those are of that kind, if all are of one resolution
 * @param by how far its far edge lies off then
 * @param tolerance how far a frame can be off on this table
 * @param writes what each odd file has to a centimetre if it is as large as the plan wants it
 */
public record PointsApart(
    String design,
    List<Kind> kinds,
    List<String> odd,
    List<String> worst,
    Share scale,
    Length by,
    boolean railed,
    Length tolerance,
    List<PerCm> writes,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /** Points either way that come from rounding a side up or down. */
  private static final int ROUNDING = 1;

  public PointsApart {
    kinds = List.copyOf(kinds);
    odd = List.copyOf(odd);
    worst = List.copyOf(worst);
    writes = List.copyOf(writes);
    related = List.copyOf(related);
  }

  /**
   * Films that have the same points, but for rounding.
   *
   * @param columns points along, of the first of them
   * @param rows points across
   */
  public record Kind(List<String> files, int columns, int rows) {

    public Kind {
      files = List.copyOf(files);
    }
  }

  /**
   * A film's resolution.
   *
   * @param points to a centimetre along
   */
  public record PerCm(String file, double points) {}

  /** A rectangle's films of one kind. */
  private record Alike(List<Separation> films) {

    Artwork first() {
      return film(films.get(0));
    }

    int columns() {
      return first().columns();
    }

    int rows() {
      return first().rows();
    }

    boolean has(Separation other) {
      return Math.abs(columns() - film(other).columns()) <= ROUNDING
          && Math.abs(rows() - film(other).rows()) <= ROUNDING;
    }

    /** How large it is of another kind, at one resolution. */
    double scaleOf(Alike other) {
      return (double) columns() / other.columns();
    }

    /** How far its far edge lies from that of another one, in mm. */
    double from(Alike other) {
      Separation on = films.get(0);
      return Math.max(
          Math.abs(scaleOf(other) - 1) * on.length().mm(),
          Math.abs((double) rows() / other.rows() - 1) * on.width().mm());
    }

    boolean isOfPage(Alike other, Share samePage) {
      return Math.min(scaleOf(other), other.scaleOf(this)) >= 1 - samePage.fraction();
    }

    List<String> files() {
      return films.stream().map(f -> film(f).file()).distinct().toList();
    }
  }

  /**
   * Of each rectangle and page that has such films.
   *
   * @param sizes of the design's films, in its order: one that is off by its shape is told of that
   * @param samePage by how much less one may have for both to be of one page
   */
  static List<PointsApart> of(
      Design design, List<SizeOfArtwork> sizes, boolean railed, Length tolerance, Share samePage) {
    List<Separation> open = new ArrayList<>();
    List<Separation> films =
        design.separations().stream().filter(s -> s.artwork().isPresent()).toList();
    for (int i = 0; i < films.size(); i++) {
      if (!sizes.get(i).isOff() && !film(films.get(i)).drawn()) {
        open.add(films.get(i));
      }
    }
    List<PointsApart> all = new ArrayList<>();
    for (List<Separation> here : Separation.byRectangle(open)) {
      List<Alike> kinds = kinds(here);
      while (!kinds.isEmpty()) {
        // Those of another resolution are no part of it: half as many points, or twice.
        Alike most = kinds.get(0);
        List<Alike> page = kinds.stream().filter(k -> k.isOfPage(most, samePage)).toList();
        kinds.removeAll(page);
        of(design, page, railed, tolerance).ifPresent(all::add);
      }
    }
    return all;
  }

  /** Those of which there are most come first, of them the larger one. */
  private static List<Alike> kinds(List<Separation> films) {
    List<Alike> kinds = new ArrayList<>();
    for (Separation film : films) {
      kinds.stream()
          .filter(kind -> kind.has(film))
          .findFirst()
          .ifPresentOrElse(
              kind -> kind.films().add(film),
              () -> kinds.add(new Alike(new ArrayList<>(List.of(film)))));
    }
    kinds.sort(
        Comparator.comparingInt((Alike k) -> -k.files().size())
            .thenComparingInt(k -> -k.columns())
            .thenComparingInt(k -> -k.rows()));
    return kinds;
  }

  private static Optional<PointsApart> of(
      Design design, List<Alike> kinds, boolean railed, Length tolerance) {
    Alike most = kinds.get(0);
    boolean clear = kinds.size() > 1 && most.files().size() > kinds.get(1).files().size();
    List<Separation> odd =
        kinds.stream()
            .skip(clear ? 1 : 0)
            .flatMap(k -> k.films().stream())
            .filter(f -> film(f).says().isEmpty())
            .toList();
    if (kinds.size() < 2 || odd.isEmpty()) {
      return Optional.empty();
    }
    Alike farthest =
        kinds.stream()
            .skip(1)
            .filter(k -> !clear || k.films().stream().anyMatch(odd::contains))
            .max(Comparator.comparingDouble(k -> k.from(most)))
            .orElseThrow();
    return Optional.of(
        new PointsApart(
            design.name(),
            kinds.stream().map(k -> new Kind(k.files(), k.columns(), k.rows())).toList(),
            odd.stream().map(f -> film(f).file()).distinct().toList(),
            farthest.files(),
            new Share(farthest.scaleOf(most)),
            new Length(farthest.from(most)),
            railed,
            tolerance,
            odd.stream()
                .map(f -> new PerCm(film(f).file(), film(f).columns() / f.length().cm()))
                .distinct()
                .toList(),
            Stream.concat(odd.stream().skip(1), rest(kinds, odd))
                .map(f -> new Related(Tie.OTHER_FILM, f.path().key("artwork")))
                .toList(),
            odd.get(0).path().key("artwork")));
  }

  private static Stream<Separation> rest(List<Alike> kinds, List<Separation> odd) {
    return kinds.stream().flatMap(k -> k.films().stream()).filter(f -> !odd.contains(f));
  }

  private static Artwork film(Separation separation) {
    return separation.artwork().orElseThrow();
  }
}
