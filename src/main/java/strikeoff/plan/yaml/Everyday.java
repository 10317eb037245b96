package strikeoff.plan.yaml;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Words that people write for what this plan language calls otherwise, and how it says them. */
final class Everyday {

  private static final Map<String, String> STEPS =
      Map.ofEntries(
          Map.entry("steam", "fix: steam"),
          Map.entry("soak", "fix: soak"),
          Map.entry("batch", "fix: batch"),
          Map.entry("iron", "heat-set: iron"),
          Map.entry("press", "heat-set: press"),
          Map.entry("heat", "heat-set: iron"),
          Map.entry("wait", "dry: 30 min"),
          Map.entry("wash out", "wash screen: all"),
          Map.entry("wash screens", "wash screen: all"),
          Map.entry("overnight", "end of day"));

  /** Trade names of colours, each with a named colour that comes near. */
  private static final Map<String, String> COLOURS =
      Map.ofEntries(
          Map.entry("cream", "cornsilk"),
          Map.entry("ecru", "bisque"),
          Map.entry("off-white", "ivory"),
          Map.entry("natural", "linen"),
          Map.entry("sand", "tan"),
          Map.entry("ochre", "peru"),
          Map.entry("mustard", "goldenrod"),
          Map.entry("rust", "sienna"),
          Map.entry("burgundy", "maroon"),
          Map.entry("charcoal", "darkslategray"));

  private Everyday() {}

  /** The step that was meant, as a plan writes it. */
  static Optional<String> step(String word) {
    return of(STEPS, word);
  }

  /** A known colour near the one that was named. */
  static Optional<String> colour(String word) {
    return of(COLOURS, word);
  }

  private static Optional<String> of(Map<String, String> words, String word) {
    return Optional.ofNullable(words.get(word.toLowerCase(Locale.ROOT)));
  }
}
