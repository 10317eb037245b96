package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import strikeoff.artwork.facts.SizeOfArtwork;
import strikeoff.plan.Artwork.Sized;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.UnitSystem;

/** Says how large films are, and what it may come of that they are of another size. */
public final class FilmSizeSpeech {

  /** In mm. */
  private static final double TENTH_OF_INCH = 2.54;

  /** A point of a coarse film, in mm. */
  private static final double ROUNDING = 0.1;

  private FilmSizeSpeech() {}

  /** How long and wide they are. */
  public static String is(SizeOfArtwork size, Measures units) {
    return size.is().along().fineText(units) + " by " + size.is().across().fineText(units);
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
  public static String outputAgain(SizeOfArtwork size) {
    boolean one = size.files().size() == 1;
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
    if (size.turned()) {
      all.add(" It lies across: turn it by 90°.");
    }
    size.strip()
        .ifPresent(
            strip ->
                all.add(
                    " If a strip with marks runs round it, have a `margin` of "
                        + asWritten(strip, units)
                        + " cut off."));
    size.resolution()
        .ifPresent(
            points ->
                all.add(
                    " If only its resolution is wrong, write `resolution: "
                        + points.written()
                        + "`."));
    return String.join("", all);
  }

  /** To a whole millimetre or tenth of an inch where it is one but for rounding. */
  private static String asWritten(Length length, Measures units) {
    double step = units.of(MeasureKind.LENGTH) == UnitSystem.METRIC ? 1 : TENTH_OF_INCH;
    Length round = new Length(Math.round(length.mm() / step) * step);
    return Math.abs(round.mm() - length.mm()) < ROUNDING
        ? round.fineText(units)
        : length.fineText(units);
  }

  public static String farText(SizeOfArtwork size, Measures units) {
    return ArtworkSpeech.toTenths(size.far(), units);
  }

  public static String table(SizeOfArtwork size) {
    return SequenceSpeech.laid(size.railed());
  }
}
