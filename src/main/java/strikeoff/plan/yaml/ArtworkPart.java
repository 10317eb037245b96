package strikeoff.plan.yaml;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.artwork.Wanted;
import strikeoff.plan.Artwork;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Script;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.ValueKinds;

/** Reads what a separation says of its film, and has the film measured. */
final class ArtworkPart {

  private static final int LONGEST_NAME = 500;
  private static final double MM_PER_CM = 10;

  /** Films are 30 to 1000 points a centimetre; beyond that a figure was meant otherwise. */
  private static final double FEWEST_PER_CM = 1;

  private static final double MOST_PER_CM = 4000;

  private static final Map<String, Artwork.Tone> TONES =
      Map.of(
          Artwork.Tone.DARK.word(),
          Artwork.Tone.DARK,
          Artwork.Tone.LIGHT.word(),
          Artwork.Tone.LIGHT);

  private static final Map<String, Boolean> READS = Map.of("right", false, "wrong", true);

  private final Draft draft;

  /** Names of pictures that were counted, each once. */
  private final Set<String> counted = new HashSet<>();

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
    Optional<String> file =
        f.optional(
            "artwork",
            ValueKinds.text("the name of a picture such as films/heron.png", LONGEST_NAME));
    Optional<Artwork.Tone> prints = f.optional("prints", ValueKinds.word("dark or light", TONES));
    Optional<Boolean> wrong = f.optional("reads", ValueKinds.word("right or wrong", READS));
    Optional<Double> resolution = f.optional("resolution", resolution());
    Optional<Length> margin = f.optional("margin", ValueKinds.quantity(Length.class));
    if (!f.has("artwork")) {
      for (String key : new String[] {"prints", "reads", "resolution", "margin"}) {
        if (f.has(key)) {
          f.wrong(key, "“" + key + "” says how artwork is read, and no artwork is named here");
        }
      }
      return Optional.empty();
    }
    if (file.isEmpty() || !sized) {
      return Optional.empty();
    }
    // Where another key has a mistake the film is looked at all the same: it may have one too.
    Looked looked =
        draft
            .artworks()
            .look(
                new Wanted(
                    file.get(),
                    prints.orElse(Artwork.Tone.DARK),
                    wrong.orElse(false),
                    resolution,
                    margin.orElse(new Length(0)),
                    size),
                draft.bounds(),
                counted.contains(file.get()) ? Long.MAX_VALUE : pointsLeft);
    if (looked instanceof Looked.Refused refused) {
      f.wrong("artwork", refused.why());
      return Optional.empty();
    }
    Looked.Seen seen = (Looked.Seen) looked;
    if (counted.add(file.get())) {
      pointsLeft -= seen.points();
    }
    return Optional.of(seen.artwork());
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
                  && v.value().perCm() >= FEWEST_PER_CM
                  && v.value().perCm() <= MOST_PER_CM
              ? Parsed.value(v.value().perCm() / MM_PER_CM)
              : Parsed.refused(words + " was expected; " + Script.quoted(text) + " is none");
        });
  }
}
