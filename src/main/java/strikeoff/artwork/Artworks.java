package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import strikeoff.document.Bounds;
import strikeoff.document.Sha256;
import strikeoff.document.Underway;
import strikeoff.plan.Artwork;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Length;

/**
 * The pictures of a plan, each read once however often the plan is tried. What was measured is kept
 * by a file's bytes, so that plans that share a film measure it once. Threads may share it.
 */
public final class Artworks {

  /** Of a file that is there. */
  static final String UNREAD =
      "this file can't be read; look whether it may be, and whether the disk is there";

  private final Shelf shelf;

  /** Of this plan, by all that is asked. */
  private final Map<Wanted, Looked> looked = new ConcurrentHashMap<>();

  /** By what a picture of this plan was measured. */
  private final Map<Wanted, PictureKey> keys = new ConcurrentHashMap<>();

  /** Of all plans of a run. */
  private final Map<PictureKey, PictureMeasures> measured;

  private final Map<FilmPairing, Joint> joints;

  /** Of earlier runs. */
  private final KeptMeasures kept;

  /** Whether edges are followed, so that somebody can draw what a film prints. */
  private final boolean traced;

  private Artworks(
      Shelf shelf,
      Map<PictureKey, PictureMeasures> measured,
      Map<FilmPairing, Joint> joints,
      KeptMeasures kept,
      boolean traced) {
    this.shelf = shelf;
    this.measured = measured;
    this.joints = joints;
    this.kept = kept;
    this.traced = traced;
  }

  /** What came of a picture. */
  public sealed interface Looked {

    /**
     * It was measured.
     *
     * @param points how many it has, margin and all
     */
    record Seen(Artwork artwork, long points) implements Looked {}

    /** It can't be taken in, for this reason: words for whoever wrote the plan. */
    record Refused(String why) implements Looked {}
  }

  /** Of a plan that lies in no folder, as one from standard input. */
  public static Artworks nowhere() {
    return new Artworks(
        Shelf.NONE, new ConcurrentHashMap<>(), new ConcurrentHashMap<>(), KeptMeasures.NONE, true);
  }

  /**
   * Those beside a plan, with all that was measured so far; the same where they are those already,
   * and what was read once isn't read again. The plan may be one that isn't written yet.
   */
  public Artworks beside(Path plan) {
    Path folder = plan.toAbsolutePath().getParent();
    Shelf there =
        folder != null && (Files.isRegularFile(plan) || Files.notExists(plan))
            ? new FolderShelf(folder, FolderShelf.PLAN)
            : Shelf.NONE;
    return there.equals(shelf) ? this : new Artworks(there, measured, joints, kept, traced);
  }

  /** Those of a plan that is still to be written, into that folder. */
  public Artworks below(Path folder) {
    return new Artworks(new FolderShelf(folder, FolderShelf.PLAN), measured, joints, kept, traced);
  }

  /**
   * Those that come with the program.
   *
   * @param folder of its resources, between slashes
   */
  public Artworks packaged(String folder) {
    return new Artworks(new PackagedShelf(folder), measured, joints, kept, traced);
  }

  /** The same that take what earlier runs measured, and keep for later ones what they measure. */
  public Artworks keeping(KeptMeasures measures) {
    return measures == kept ? this : new Artworks(shelf, measured, joints, measures, traced);
  }

  /** The same where nobody draws what films print: their edges need not be followed. */
  public Artworks untraced() {
    return traced ? new Artworks(shelf, measured, joints, kept, false) : this;
  }

  /**
   * Reads and measures a picture.
   *
   * @param pointsLeft how many more a plan's pictures may have
   */
  public Looked look(Wanted wanted, Bounds bounds, long pointsLeft) {
    Looked known = looked.get(wanted);
    if (known == null) {
      try {
        known = read(wanted, bounds, pointsLeft);
        looked.put(wanted, known);
      } catch (UnreadablePicture e) {
        return new Looked.Refused(e.getMessage());
      } catch (IOException e) {
        return new Looked.Refused(UNREAD);
      }
    }
    return known;
  }

  /** Where a picture lies or would lie; empty for what can't lie beside the plan. */
  public Optional<Path> path(String file) {
    return shelf.path(file);
  }

  /** The SHA-256 of a picture's bytes, or why there is none. */
  public String digest(String file, Bounds bounds) {
    return shelf.digest(file, bounds.artworkMib());
  }

  private InputStream open(Wanted wanted, Bounds bounds) throws IOException, UnreadablePicture {
    Shelf where = wanted.studio().map(StudioFolder::shelf).orElse(shelf);
    return where.open(wanted.file(), bounds.artworkMib());
  }

  private Looked.Seen read(Wanted wanted, Bounds bounds, long pointsLeft)
      throws IOException, UnreadablePicture {
    try (InputStream in = open(wanted, bounds)) {
      Picture picture = Pictures.head(in, wanted);
      long points = (long) picture.columns() * picture.rows();
      if (points > bounds.megapixels() * 1_000_000L) {
        throw tooLarge(picture, "at most " + bounds.megapixels() + " million are taken in");
      }
      if (points > pointsLeft) {
        throw tooLarge(
            picture,
            "with those before it the plan has more than the "
                + bounds.artworkMegapixels()
                + " million that are taken in");
      }
      Underway.more(Underway.Much.FILMS, 1);
      Underway.more(Underway.Much.POINTS, points);
      Placing placing = Placing.of(picture, wanted);
      PictureKey key =
          new PictureKey(
              bytes(wanted, bounds),
              wanted.prints(),
              wanted.wrong(),
              picture.columns(),
              picture.rows(),
              placing.alongMargin(),
              placing.acrossMargin(),
              wanted.size(),
              traced);
      PictureMeasures one = measured.get(key);
      if (one == null) {
        Optional<PictureMeasures> known =
            kept.find(key.text()).flatMap(MeasureBytes::picture).filter(key::isOf);
        if (known.isEmpty()) {
          OpenPoints exposure = points(picture, wanted, placing);
          one = PictureMeasures.of(exposure, wanted, traced);
          kept.keep(key.text(), MeasureBytes.of(one));
        } else {
          one = known.get();
        }
        measured.put(key, one);
      }
      keys.put(wanted, key);
      return new Looked.Seen(one.artwork(wanted, placing), points);
    }
  }

  /** After its head, by which most of what can't be taken in is told, and with no need of these. */
  private String bytes(Wanted wanted, Bounds bounds) throws IOException, UnreadablePicture {
    try (InputStream in = open(wanted, bounds)) {
      return Sha256.of(in);
    }
  }

  private static OpenPoints points(Picture picture, Wanted wanted, Placing placing)
      throws IOException, UnreadablePicture {
    OpenPoints points = new OpenPoints(picture, placing.alongMargin(), placing.acrossMargin());
    HeldPoints held = new HeldPoints(points, wanted, placing);
    picture.read(wanted.prints(), held);
    held.end();
    return points;
  }

  /**
   * How films meet that were looked at.
   *
   * @param films by the number of their separation
   * @param pairs of such numbers, the two films to compare; those of the others that print there
   *     may follow
   * @param limits by what that is measured
   * @return of each pair; films of different grids lie on the finer one
   */
  public List<Joint> joints(
      Map<Integer, LaidFilm> films, List<int[]> pairs, JointLimits limits, Bounds bounds) {
    Map<Wanted, Bits> read = new HashMap<>();
    KnownEdges edges = new KnownEdges();
    List<Joint> all = new ArrayList<>();
    for (int[] pair : pairs) {
      List<LaidFilm> laid = Arrays.stream(pair).mapToObj(films::get).toList();
      joint(laid, limits, read, edges, bounds)
          .ifPresent(joint -> all.add(joint.between(pair[0], pair[1])));
    }
    return all;
  }

  private Optional<Joint> joint(
      List<LaidFilm> films,
      JointLimits limits,
      Map<Wanted, Bits> read,
      KnownEdges edges,
      Bounds bounds) {
    List<PictureKey> all = films.stream().map(film -> keys.get(film.film())).toList();
    LaidFilm first = films.get(0);
    List<Length> apart =
        films.stream()
            .flatMap(f -> Stream.of(f.x().minus(first.x()), f.y().minus(first.y())))
            .toList();
    FilmPairing both =
        new FilmPairing(all.get(0), all.get(1), all.subList(2, all.size()), apart, limits);
    if (!joints.containsKey(both)) {
      kept.find(both.text())
          .flatMap(MeasureBytes::joint)
          .ifPresent(known -> joints.put(both, known));
    }
    if (!joints.containsKey(both)) {
      PictureMeasures one = measured.get(both.one());
      PictureMeasures other = measured.get(both.other());
      double reach = Math.max(Widths.WIDEST, limits.off().mm());
      Canvas canvas = Canvas.of(first, one, films.get(1), other, reach);
      boolean alike =
          first.fillsAs(films.get(1))
              && one.columns() == other.columns()
              && one.rows() == other.rows();
      if (alike && near(one.cells(), other.cells(), canvas, reach).isNowhere()) {
        joints.put(both, FilmJoints.none(canvas.along(), canvas.across()));
      } else {
        List<Bits> bits = new ArrayList<>();
        for (LaidFilm film : films) {
          film(film.film(), read, bounds).ifPresent(bits::add);
        }
        if (bits.size() < films.size()) {
          return Optional.empty();
        }
        TwoFilms two = canvas.lay(films, bits);
        FilmsNear where =
            alike
                ? near(one.cells(), other.cells(), canvas, reach)
                : near(
                    CellCount.of(two.one(), canvas.size(), false),
                    CellCount.of(two.other(), canvas.size(), false),
                    canvas,
                    reach);
        Joint joint =
            FilmJoints.of(two, where, canvas.along(), canvas.across(), limits(limits, alike), edges)
                .knownTo(
                    new Length(
                        Math.max(
                            one.coarsest(first.film().size()),
                            other.coarsest(films.get(1).film().size()))));
        joints.put(both, canvas.on(films.get(1), joint));
        kept.keep(both.text(), MeasureBytes.of(joints.get(both)));
      }
    }
    return Optional.of(joints.get(both));
  }

  /** Films on other rectangles may have any size. */
  private static JointLimits limits(JointLimits limits, boolean alike) {
    return alike ? limits : limits.ofOneSize();
  }

  private static FilmsNear near(PrintedCells one, PrintedCells other, Canvas grid, double reach) {
    return FilmsNear.of(one, other, grid.columns(), grid.rows(), reach);
  }

  /** Each is read once for all its pairs; empty if it went or changed meanwhile. */
  private Optional<Bits> film(Wanted wanted, Map<Wanted, Bits> read, Bounds bounds) {
    if (!read.containsKey(wanted)) {
      try (InputStream in = open(wanted, bounds)) {
        Picture picture = Pictures.head(in, wanted);
        PictureMeasures known = measured.get(keys.get(wanted));
        Bits bits = points(picture, wanted, Placing.of(picture, wanted)).bits();
        if (bits.columns() != known.columns() || bits.rows() != known.rows()) {
          return Optional.empty();
        }
        read.put(wanted, wanted.wrong() ? bits.mirrored() : bits);
      } catch (IOException | UnreadablePicture e) {
        return Optional.empty();
      }
    }
    return Optional.of(read.get(wanted));
  }

  private static UnreadablePicture tooLarge(Picture picture, String bound) {
    return new UnreadablePicture(
        "a picture of "
            + picture.columns()
            + " x "
            + picture.rows()
            + " points; "
            + bound
            + (picture instanceof SvgDrawing
                ? "; write a lower “resolution”, as 300/in"
                : "; save it at fewer points an inch"));
  }
}
