package strikeoff.document;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.units.Spelling;

/**
 * How much of a plan is taken in before it is refused or cut short, so that no file, made by
 * mistake or by malice, costs more time and memory than a print day is worth. Every number is at
 * least 1.
 *
 * @param kib size of the file, in units of 1024 bytes
 * @param depth how deep lists and mappings may lie in each other; plans need seven
 * @param values keys, list items and values of the file
 * @param placements placements of all arrangements together
 * @param steps steps of the run
 * @param impressions frames laid in the run
 * @param findings findings told of one rule; of the others the last one says how many there are
 * @param megapixels millions of points of one picture
 * @param artworkMegapixels millions of points of all pictures of a plan
 * @param artworkMib size of one picture's file, in units of 1024 times 1024 bytes
 */
public record Bounds(
    int kib,
    int depth,
    int values,
    int placements,
    int steps,
    int impressions,
    int findings,
    int megapixels,
    int artworkMegapixels,
    int artworkMib) {

  private static final int MOST = 1_000_000;

  /**
   * Pairs of a print and what lies under it that one kind of fact looks at. A plan that can be
   * printed has far fewer; it is no matter of the trade, so nobody sets it.
   */
  public static final long PAIRS = 1_000_000;

  /** More would exhaust the stack. */
  private static final int DEEPEST = 200;

  /** More points than that can't be counted in whole numbers of 32 bits. */
  private static final int LARGEST_PICTURE = 2000;

  /** Far more than a crew prints by hand in a season. */
  public static final Bounds USUAL =
      new Bounds(1024, 40, 50_000, 10_000, 1000, 50_000, 100, 200, 1000, 64);

  /** The names under which {@link #with} knows them. */
  public static Set<String> names() {
    return USUAL.byName().keySet();
  }

  public Bounds {
    if (kib < 1
        || depth < 1
        || values < 1
        || placements < 1
        || steps < 1
        || impressions < 1
        || findings < 1
        || megapixels < 1
        || artworkMegapixels < 1
        || artworkMib < 1) {
      throw new IllegalArgumentException("a bound is at least 1");
    }
  }

  /** All of them, by name. */
  public Map<String, Integer> byName() {
    Map<String, Integer> all = new LinkedHashMap<>();
    all.put("kib", kib);
    all.put("depth", depth);
    all.put("values", values);
    all.put("placements", placements);
    all.put("steps", steps);
    all.put("impressions", impressions);
    all.put("findings", findings);
    all.put("megapixels", megapixels);
    all.put("artwork-megapixels", artworkMegapixels);
    all.put("artwork-mib", artworkMib);
    return all;
  }

  /**
   * The same with others of some names.
   *
   * @throws IllegalArgumentException if there is no such name, or a number below 1 or above a
   *     million, or a depth above 200, which would exhaust the stack, or a picture of more than
   *     2000 million points, which no array of ours counts
   */
  public Bounds with(Map<String, Integer> others) {
    Map<String, Integer> all = byName();
    for (Map.Entry<String, Integer> other : new TreeMap<>(others).entrySet()) {
      String name = other.getKey();
      int most = most(name);
      if (other.getValue() < 1 || other.getValue() > most) {
        throw new IllegalArgumentException(
            "the bound of " + name + " is a number from 1 to " + most);
      }
      all.put(name, other.getValue());
    }
    return new Bounds(
        all.get("kib"),
        all.get("depth"),
        all.get("values"),
        all.get("placements"),
        all.get("steps"),
        all.get("impressions"),
        all.get("findings"),
        all.get("megapixels"),
        all.get("artwork-megapixels"),
        all.get("artwork-mib"));
  }

  /**
   * The most that the bound of a name may be.
   *
   * @throws IllegalArgumentException if nothing is bounded by that name, in words for whoever wrote
   *     it
   */
  public static int most(String name) {
    if (!names().contains(name)) {
      String near = Spelling.didYouMean(name, names());
      throw new IllegalArgumentException(
          "nothing is bounded by the name “"
              + name
              + "”"
              + (near.isEmpty() ? "; there are " + String.join(", ", names()) : near));
    }
    return switch (name) {
      case "depth" -> DEEPEST;
      case "megapixels" -> LARGEST_PICTURE;
      default -> MOST;
    };
  }

  /** The size of the file in bytes, as far as an array reaches. */
  public int bytes() {
    return (int) Math.min(Integer.MAX_VALUE - 16L, kib * 1024L);
  }
}
