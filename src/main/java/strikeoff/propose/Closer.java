package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strikeoff.day.Impression;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * Colours that come sooner on those under them than in the plan's own run. What is dry to the touch
 * by an estimate may be felt to be young all the same, so a printer is to know how young.
 */
final class Closer {

  /** More pairs are counted. */
  private static final int MOST = 4;

  private record Pair(String under, String over) {}

  private Closer() {}

  /**
   * @param now impressions of the plan's own run, in the order of laying
   * @param then the same of the proposed run
   * @param share of its age now up to which a film is told as younger
   * @return one sentence, or none
   */
  static List<String> of(List<Impression> now, List<Impression> then, Share share) {
    Map<Pair, Span> before = youngest(now);
    Map<Pair, Span> after = youngest(then);
    List<Pair> closer =
        after.keySet().stream()
            .filter(before::containsKey)
            .filter(p -> after.get(p).minutes() < share.fraction() * before.get(p).minutes())
            .sorted(Comparator.comparing(after::get))
            .toList();
    if (closer.isEmpty()) {
      return List.of();
    }
    String told =
        closer.stream()
            .limit(MOST)
            .map(
                p ->
                    p.over
                        + " goes on "
                        + p.under
                        + " from "
                        + after.get(p).text()
                        + " old on, in yours from "
                        + before.get(p).text())
            .collect(Collectors.joining("; "));
    int more = closer.size() - MOST;
    return List.of(
        "On the same print "
            + told
            + (more > 0 ? "; " + more + " more pairs of colours come closer too." : "."));
  }

  /** How old at least a colour is when the next one's frame lies on it, on any one print. */
  private static Map<Pair, Span> youngest(List<Impression> run) {
    Map<Integer, List<Impression>> prints = new LinkedHashMap<>();
    for (Impression film : run) {
      prints.computeIfAbsent(film.footprint().placement().id(), id -> new ArrayList<>()).add(film);
    }
    Map<Pair, Span> youngest = new LinkedHashMap<>();
    prints.values().stream().map(Closer::inOrder).forEach(films -> look(films, youngest));
    return youngest;
  }

  private static List<Impression> inOrder(Collection<Impression> films) {
    return films.stream().sorted(Comparator.comparing(Impression::laid)).toList();
  }

  private static void look(List<Impression> films, Map<Pair, Span> youngest) {
    for (int i = 1; i < films.size(); i++) {
      Impression under = films.get(i - 1);
      Impression over = films.get(i);
      youngest.merge(
          new Pair(under.footprint().paste().name(), over.footprint().paste().name()),
          over.laid().since(under.lifted()),
          (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }
  }
}
