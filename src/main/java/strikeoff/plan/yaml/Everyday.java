package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strikeoff.yaml.Fields;

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

  /** For each thing that a plan describes the keys that people call otherwise: word, then key. */
  private static final Map<String, Map<String, String>> KEYS =
      Map.of(
          "cloth",
          keys(
              "ground: colour, color, background",
              "mass: weight, gsm, grammage, mass per area",
              "fibre: fabric, material",
              "washed: prewashed, pre-washed, scoured"),
          "screen",
          keys(
              "frame: size, outside",
              "image: image area, open area, print area",
              "mesh: count, mesh count, threads",
              "squeegee: blade, squeegee width"),
          "paste",
          keys(
              "medium: type, kind",
              "group: class, dye group, dye class",
              "amount: quantity, weight, mass, volume, mixed"),
          "design",
          keys("separations: colours, colors, layers, screens"),
          "separation",
          keys("covers: cover, coverage, area", "at: position, offset"),
          "placement",
          keys(
              "design: motif, pattern",
              "pitch: spacing",
              "mirrored: mirror, flip, flipped",
              "turn: rotate, rotation, rotated"),
          "placement of no kind",
          keys("series: count, number, copies"),
          "table",
          keys("stations: boards"),
          "room",
          keys("temperature: temp", "humidity: rh, relative humidity"),
          "heat",
          keys("for: takes, time, duration, minutes", "temperature: temp, heat"));

  private Everyday() {}

  private static Map<String, String> keys(String... lines) {
    Map<String, String> keys = new LinkedHashMap<>();
    for (String line : lines) {
      String key = line.substring(0, line.indexOf(':'));
      for (String word : line.substring(key.length() + 1).split(",")) {
        keys.put(word.strip(), key);
      }
    }
    return keys;
  }

  /** Has the keys of a thing known by what people call them, to be asked back. */
  static Fields called(String what, Fields fields) {
    KEYS.get(what).forEach(fields::calls);
    return fields;
  }

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
