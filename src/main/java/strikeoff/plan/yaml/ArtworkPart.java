package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.artwork.JointLimits;
import strikeoff.artwork.LaidFilm;
import strikeoff.artwork.PoseBounds;
import strikeoff.artwork.Resolution;
import strikeoff.artwork.StudioFolder;
import strikeoff.artwork.Wanted;
import strikeoff.document.PlanPath;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Joint;
import strikeoff.policy.Defaults;
import strikeoff.policy.Limits;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Numbers;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.ValueKinds;

/** Reads what a separation says of its film, and has the film measured. */
final class ArtworkPart {

  static final Expected<String> NAME =
      ValueKinds.text("the name of a picture such as films/heron.png", Wanted.LONGEST_NAME);

  private static final double MM_PER_CM = 10;
  private static final double MM_PER_INCH = 25.4;

  private static final Map<String, Artwork.Tone> TONES =
      Map.of(
          Artwork.Tone.DARK.word(),
          Artwork.Tone.DARK,
          Artwork.Tone.LIGHT.word(),
          Artwork.Tone.LIGHT);

  private static final Map<String, Boolean> READS = Map.of("right", false, "wrong", true);

  /** Films of a design that are compared, two by two: ten films have so many pairs. */
  private static final int MOST_PAIRS = 45;

  /** Wider gaps are none between two colours, in mm. */
  private static final double FAR = 4;

  private final Draft draft;

  /** What was asked of each separation's film. */
  private final Map<PlanPath, Wanted> wanted = new HashMap<>();

  /** What was counted, each once: a film in another size is measured anew. */
  private final Set<Wanted> counted = new HashSet<>();

  private long pointsLeft;

  ArtworkPart(Draft draft) {
    this.draft = draft;
    this.pointsLeft = draft.bounds().artworkMegapixels() * 1_000_000L;
  }

  /**
   * The film as it was measured; empty if none is named, or it can't be taken in, which is told.
   *
   * @param size the rectangle that it fills
   * @param sized true if that was read without a mistake
   */
  Optional<Artwork> artwork(Fields f, Pair size, boolean sized) {
    Optional<Stock.Film> taken = Optional.ofNullable(draft.films().get(f.path()));
    Optional<Wanted> wants = wanted(f, size, taken.map(Stock.Film::folder));
    boolean named = f.has("film");
    if (named
        && f.optional(
                "film",
                ValueKinds.nameIn("a film's name", "film of the studio", draft.names().films()))
            .isPresent()
        && taken.isEmpty()) {
      f.wrong("film", "“film” and “artwork” name a picture each; keep one of them");
      return Optional.empty();
    }
    if (!f.has("artwork")) {
      for (String key : new String[] {"prints", "reads", "resolution", "margin"}) {
        if (f.has(key) && !named) {
          f.wrong(key, "“" + key + "” says how artwork is read, and no artwork is named here");
        }
      }
    }
    if (wants.isEmpty() || !sized) {
      return Optional.empty();
    }
    // Where another key has a mistake the film is looked at all the same: it may have one too.
    Wanted one = wants.get();
    long left = counted.contains(one) ? Long.MAX_VALUE : pointsLeft;
    Looked looked = draft.artworks().look(one, draft.bounds(), left);
    if (looked instanceof Looked.Refused refused) {
      if (taken.isPresent()) {
        f.wrong("film", taken.get().held().source() + ", " + one.file() + ": " + refused.why());
      } else {
        f.wrong("artwork", refused.why());
      }
      return Optional.empty();
    }
    Looked.Seen seen = (Looked.Seen) looked;
    if (counted.add(one)) {
      pointsLeft -= seen.points();
    }
    wanted.put(f.path(), one);
    if (!f.has("resolution")) {
      taken(f, seen.artwork(), size);
    }
    return Optional.of(seen.artwork());
  }

  /**
   * What is said of a film and how it is read; empty if none is named, or not so that a file can
   * be.
   *
   * @param size the rectangle that it fills
   * @param studio of a film of an inventory, where that lies
   */
  Optional<Wanted> wanted(Fields f, Pair size, Optional<StudioFolder> studio) {
    Optional<String> file = f.optional("artwork", NAME);
    Assumptions assumptions = draft.assumptions();
    Defaults.Separation usual = assumptions.standard().separation();
    Expected<Artwork.Tone> tone = ValueKinds.word("dark or light", TONES);
    Expected<Boolean> read = ValueKinds.word("right or wrong", READS);
    Expected<Length> strip = QuantityKinds.quantity(Length.class);
    Optional<Artwork.Tone> prints =
        how(
            f,
            "prints",
            tone,
            () ->
                assumptions.orWords(
                    f, "prints", tone, usual.prints(), "the tone of a film that prints"));
    Optional<Boolean> wrong =
        how(
            f,
            "reads",
            read,
            () -> assumptions.orWords(f, "reads", read, usual.reads(), "how a film is looked at"));
    // What stands in for a mistake of the plan would cut off what nobody asked for.
    Optional<Double> resolution =
        f.optional("resolution", resolution()).filter(r -> f.sound("resolution"));
    Optional<Length> margin =
        how(
                f,
                "margin",
                strip,
                () ->
                    assumptions.or(
                        f, "margin", strip, usual.margin(), "the strip cut off a film all round"))
            .map(m -> f.sound("margin") ? m : new Length(0));
    return file.map(
        name ->
            new Wanted(
                studio,
                name,
                prints.orElseThrow(),
                wrong.orElseThrow(),
                resolution,
                margin.orElseThrow(),
                size));
  }

  /** Where the size of a separation's rectangle is written. */
  Artwork.Sized sized(Fields f) {
    Stock.Film taken = draft.films().get(f.path());
    if (!f.has("size")) {
      return f.has("at") ? new Artwork.Sized.ByPlace() : new Artwork.Sized.ByDesign();
    }
    // What a film of the studio brings along shows where the plan names that film.
    return taken != null
            && f.item("size").orElseThrow().key().equals(f.item("film").orElseThrow().node().at())
        ? new Artwork.Sized.ByStudio(taken.held().source())
        : new Artwork.Sized.BySeparation();
  }

  /** How a film is read; where none is named, only what the plan says of it. */
  private static <T> Optional<T> how(
      Fields f, String key, Expected<T> expected, Supplier<T> assumed) {
    return f.has("artwork") ? Optional.of(assumed.get()) : f.optional(key, expected);
  }

  /** Points of a film that the plan leaves to the file. */
  private void taken(Fields f, Artwork film, Pair size) {
    double mm = film.says().orElse(size).along().mm();
    draft
        .assumptions()
        .derived(
            f.path().key("resolution"),
            "the resolution of a film",
            Numbers.plain(film.columns() / mm * MM_PER_INCH, 0) + "/in",
            film.says().isPresent() ? "the film's file" : "its size, as its file says none");
  }

  /**
   * How the films of a design meet, where they come near to each other.
   *
   * @param off how far a frame can be off
   */
  List<Joint> joints(List<Design.Separation> separations, Length off) {
    List<int[]> pairs = new ArrayList<>();
    Map<Integer, LaidFilm> films = new HashMap<>();
    for (Design.Separation other : separations) {
      for (Design.Separation one : separations.subList(0, other.number() - 1)) {
        if (pairs.size() < MOST_PAIRS && canMeet(one, other)) {
          int[] thirds =
              separations.stream()
                  .filter(third -> third != one && third != other && printsSomewhere(third))
                  .filter(third -> isBeside(one, third) && isBeside(other, third))
                  .mapToInt(Design.Separation::number)
                  .toArray();
          pairs.add(
              IntStream.concat(IntStream.of(one.number(), other.number()), Arrays.stream(thirds))
                  .toArray());
          Arrays.stream(pairs.get(pairs.size() - 1))
              .forEach(i -> films.put(i, laid(separations.get(i - 1))));
        }
      }
    }
    Limits.Artwork limits = draft.policy().artwork();
    JointLimits by =
        new JointLimits(
            limits.stripLeast(),
            limits.bareStrip(),
            off,
            new PoseBounds(limits.filmMovedMost(), limits.samePage(), limits.filmSkewedMost()));
    return draft.artworks().joints(films, pairs, by, draft.bounds());
  }

  private LaidFilm laid(Design.Separation separation) {
    return new LaidFilm(wanted.get(separation.path()), separation.x(), separation.y());
  }

  private boolean canMeet(Design.Separation one, Design.Separation other) {
    return !one.paste().equals(other.paste())
        && edged(one).flatMap(a -> edged(other).filter(b -> near(one, a, other, b))).isPresent();
  }

  /** True if two rectangles lie over each other, or near. */
  private static boolean isBeside(Design.Separation one, Design.Separation other) {
    return one.x().mm() < other.x().plus(other.length()).mm() + FAR
        && other.x().mm() < one.x().plus(one.length()).mm() + FAR
        && one.y().mm() < other.y().plus(other.width()).mm() + FAR
        && other.y().mm() < one.y().plus(one.width()).mm() + FAR;
  }

  private static boolean printsSomewhere(Design.Separation separation) {
    return separation.artwork().flatMap(Artwork::reach).isPresent();
  }

  /** Where a film prints; empty without one, and where it is grey, since grey has no edges. */
  private Optional<Artwork.Reach> edged(Design.Separation separation) {
    return separation
        .artwork()
        .filter(film -> draft.policy().fine(film).isPresent())
        .flatMap(Artwork::reach);
  }

  private static boolean near(
      Design.Separation one, Artwork.Reach a, Design.Separation other, Artwork.Reach b) {
    double x = other.x().mm() - one.x().mm();
    double y = other.y().mm() - one.y().mm();
    return a.left().mm() < x + b.right().mm() + FAR
        && x + b.left().mm() < a.right().mm() + FAR
        && a.near().mm() < y + b.far().mm() + FAR
        && y + b.near().mm() < a.far().mm() + FAR;
  }

  /** Points a millimetre. */
  private static Expected<Double> resolution() {
    String words = "a resolution such as 600/in or 240/cm";
    return ValueKinds.scalar(
        words,
        1.0,
        text -> {
          String plain = text.replaceFirst("(?i)\\s*(?:dpi|ppi)\\s*$", "/in");
          if (!plain.equals(text)) {
            return Parsed.refused(
                words + " was expected; for " + Script.quoted(text) + " write " + plain);
          }
          return Quantities.parse(text, MeshCount.class) instanceof Parsed.Value<MeshCount> v
                  && Resolution.canBe(v.value().perCm() / MM_PER_CM)
              ? Parsed.value(v.value().perCm() / MM_PER_CM)
              : Parsed.refused(words + " was expected; " + Script.quoted(text) + " is none");
        });
  }
}
