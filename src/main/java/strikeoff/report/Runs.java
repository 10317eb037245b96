package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.GivenUp;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.speech.Numbering;

/** Says many placements in few words. */
final class Runs {

  private static final int MOST = 8;

  /** More marks of one finding hide the drawing; the finding's words name them all. */
  private static final int MOST_MARKS = 60;

  private Runs() {}

  /** The named placements by arrangement; a whole one as {@code all 6 herons}. */
  static String placements(List<String> names, Layout layout) {
    List<String> parts = new ArrayList<>();
    byArrangement(names, layout)
        .forEach(
            (arrangement, placements) -> {
              int all = layout.of(arrangement).size();
              if (placements.size() == all && all > 1) {
                parts.add("all " + all + " of " + arrangement);
              } else {
                List<Integer> sorted =
                    placements.stream().map(Placement::number).sorted().distinct().toList();
                parts.add(arrangement + " " + Numbering.runs(sorted));
              }
            });
    if (parts.size() <= MOST) {
      return String.join("; ", parts);
    }
    return String.join("; ", parts.subList(0, MOST)) + "; and " + (parts.size() - MOST) + " more";
  }

  /**
   * Where to draw a mark: at each named placement, but once, at its first, for an arrangement that
   * is concerned as a whole.
   */
  static List<String> marked(List<String> names, Layout layout) {
    List<String> marked = new ArrayList<>();
    byArrangement(names, layout)
        .forEach(
            (arrangement, placements) -> {
              boolean whole = placements.size() == layout.of(arrangement).size();
              placements.stream().limit(whole ? 1 : MOST_MARKS).forEach(p -> marked.add(p.name()));
            });
    return marked;
  }

  private static Map<String, List<Placement>> byArrangement(List<String> names, Layout layout) {
    GivenUp.ifAsked();
    Map<String, List<Placement>> grouped = new LinkedHashMap<>();
    names.stream()
        .distinct()
        .flatMap(name -> layout.named(name).stream())
        .forEach(p -> grouped.computeIfAbsent(p.arrangement(), key -> new ArrayList<>()).add(p));
    return grouped;
  }
}
