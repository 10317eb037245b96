package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.artwork.facts.FilmResolution;
import strikeoff.artwork.facts.SizeOfArtwork;
import strikeoff.plan.Artwork.Sized;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;

/** Says how large films are, and what it may come of that they are of another size. */
public final class FilmSizeSpeech {

  private FilmSizeSpeech() {}

  /** How long and wide they are. */
  public static String is(SizeOfArtwork size, Measures units) {
    return size.drawn().along().fineText(units) + " by " + size.drawn().across().fineText(units);
  }

  /** The plan's size may be wrong instead, where all films agree; to end a sentence. */
  public static String sizeInstead(SizeOfArtwork size, Measures units) {
    return size.planMayBeWrong()
        ? "; or if "
            + (size.files().size() == 1 ? "the film is" : "the films are")
            + " right, write `size: "
            + size.is().along().fineText(units)
            + " x "
            + size.is().across().fineText(units)
            + "` "
            + sizedAt(size)
        : "";
  }

  /** Where the size is written that may be wrong. */
  private static String sizedAt(SizeOfArtwork size) {
    Sized sized = size.sized();
    if (sized instanceof Sized.ByStudio studio) {
      return "in " + studio.source();
    }
    if (sized instanceof Sized.ByDesign) {
      return "for " + size.design();
    }
    List<String> numbers = size.numbers().stream().map(String::valueOf).toList();
    return (numbers.size() == 1 ? "for separation " : "for separations ")
        + Phrase.list(numbers)
        + " of "
        + size.design();
  }

  /** What to do about the films; to be followed by what else may be wrong. */
  public static String outputAgain(SizeOfArtwork size, Measures units) {
    boolean one = size.files().size() == 1;
    if (size.turned()) {
      return one ? "It lies across: turn it by 90°" : "They lie across: turn them by 90°";
    }
    if (size.onlyStrip()) {
      return "If a strip with marks runs round "
          + (one ? "it" : "them")
          + ", have it cut off: write `margin: "
          + margin(size, units)
          + "`"
          + (one ? "" : " beside each of them");
    }
    Optional<FilmResolution> plain = size.resolution().filter(FilmResolution::plain);
    if (plain.isPresent()) {
      return "If only "
          + (one ? "its" : "their")
          + " resolution is wrong, write `resolution: "
          + plain.get().written()
          + "`; otherwise output "
          + (one ? "it" : "them")
          + " at 100 %";
    }
    if (size.isAnother()) {
      return "No output stretches a film so far: "
          + (one ? "it is another one" : "they are other ones")
          + ". Take "
          + (one ? "the one" : "those")
          + " drawn for "
          + size.design();
    }
    if (size.otherShape()) {
      return (one ? "It is " : "They are ")
          + size.along().text()
          + " as long and "
          + size.across().text()
          + " as wide as wanted, which no one scale mends. Take the "
          + (one ? "film" : "films")
          + " drawn for "
          + size.design()
          + "; or if "
          + (one ? "this is the one, and was" : "these are the ones, and were")
          + " stretched, output "
          + (one ? "it" : "them")
          + " at 100 % both ways";
    }
    return "Output " + (one ? "it" : "them") + " at 100 %";
  }

  /** What else may be behind it, each with what to write: figures that bring the wanted size. */
  public static String otherwise(SizeOfArtwork size, Measures units) {
    List<String> all = new ArrayList<>();
    if (size.strip().isPresent() && !size.onlyStrip()) {
      all.add(" If a strip with marks runs round it, write `margin: " + margin(size, units) + "`.");
    }
    size.resolution()
        .filter(points -> !points.plain() && size.strip().isEmpty())
        .ifPresent(
            points ->
                all.add(
                    " If only its resolution is wrong, write `resolution: "
                        + points.written()
                        + "`."));
    return String.join("", all);
  }

  private static String margin(SizeOfArtwork size, Measures units) {
    return size.wholeMargin(units).orElseThrow().writtenText(units);
  }

  public static String farText(SizeOfArtwork size, Measures units) {
    return ArtworkSpeech.toTenths(size.far(), units);
  }

  public static String table(SizeOfArtwork size) {
    return SequenceSpeech.laid(size.railed());
  }
}
