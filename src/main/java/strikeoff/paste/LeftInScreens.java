package strikeoff.paste;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.screens.Mesh;
import strikeoff.units.Range;

/**
 * Paste that a screen holds. Before the blade lies a bead of paste for as long as anybody prints,
 * at the last pull as at the first: without it the blade prints no more. Most of it is scraped back
 * into the pot before the screen is washed out. What clings to blade and rails, what fills the
 * mesh, and the rest of the bead are lost at each washing, and only then: not at a pause, nor
 * overnight while the screen lies flooded.
 */
final class LeftInScreens {

  /**
   * One filling of a screen.
   *
   * @param clings grams in mesh and on blade; they go down the sink when it is washed out
   * @param bead grams before the blade for as long as it prints
   * @param beadLost grams of the bead that are not scraped back before it is washed out
   */
  record Filling(Range clings, Range bead, Range beadLost) {}

  private final Policy policy;
  private final Map<Integer, Filling> byFirst = new HashMap<>();
  private final Map<Integer, Filling> byLast = new HashMap<>();
  private final Map<String, Impression> firstOn = new HashMap<>();

  private LeftInScreens(Policy policy) {
    this.policy = policy;
  }

  /** The filling that an impression is the first of. */
  Optional<Filling> filledFor(Impression impression) {
    return Optional.ofNullable(byFirst.get(impression.id()));
  }

  /** The filling that is scraped back and washed out after an impression, or in the end. */
  Optional<Filling> emptiedAfter(Impression impression) {
    return Optional.ofNullable(byLast.get(impression.id()));
  }

  static LeftInScreens of(Timeline timeline, Policy policy) {
    return of(timeline.tasks(), timeline.impressions(), policy);
  }

  /**
   * @param tasks in order of start
   * @param impressions in order of laying
   */
  static LeftInScreens of(List<Task> tasks, List<Impression> impressions, Policy policy) {
    LeftInScreens left = new LeftInScreens(policy);
    Map<String, Impression> lastOn = new LinkedHashMap<>();
    int next = 0;
    for (Task task : tasks) {
      if (task.kind() != Task.Kind.WASH_SCREEN || task.screen().isEmpty()) {
        continue;
      }
      for (; next < impressions.size() && before(impressions.get(next), task); next++) {
        left.print(impressions.get(next), lastOn);
      }
      Impression last = lastOn.remove(task.screen().get());
      if (last != null) {
        left.empty(last);
      }
    }
    for (; next < impressions.size(); next++) {
      left.print(impressions.get(next), lastOn);
    }
    lastOn.values().forEach(left::empty);
    return left;
  }

  private void print(Impression impression, Map<String, Impression> lastOn) {
    firstOn.putIfAbsent(screen(impression), impression);
    lastOn.put(screen(impression), impression);
  }

  private void empty(Impression last) {
    Impression first = firstOn.remove(screen(last));
    Screen screen = last.footprint().screen();
    Filling filling =
        new Filling(
            inMesh(screen, last.footprint().paste()).plus(onBlade()),
            bead(screen),
            notScrapedBack(screen));
    byFirst.put(first.id(), filling);
    byLast.put(last.id(), filling);
  }

  private static boolean before(Impression impression, Task washing) {
    return impression.lifted().compareTo(washing.start()) <= 0;
  }

  private static String screen(Impression impression) {
    return impression.footprint().screen().name();
  }

  /** It lies before the whole blade. */
  private Range bead(Screen screen) {
    return new Range(
            policy.paste().beadLeast().value(),
            policy.paste().beadUsual().value(),
            policy.paste().beadMost().value())
        .times(blade(screen));
  }

  /** One that is too long for its frame is told as that; paste is reckoned for one that goes in. */
  private static double blade(Screen screen) {
    double inside = Math.max(screen.insideLength().cm(), screen.insideWidth().cm());
    return Math.min(screen.squeegee().orElseGet(screen::imageWidth).cm(), inside);
  }

  /** What of the bead is not scraped back. */
  private Range notScrapedBack(Screen screen) {
    double blade = blade(screen);
    return new Range(
        policy.paste().beadLeast().value()
            * (1 - policy.paste().scrapedBackMost().fraction())
            * blade,
        policy.paste().beadUsual().value()
            * (1 - policy.paste().scrapedBackUsual().fraction())
            * blade,
        policy.paste().beadMost().value()
            * (1 - policy.paste().scrapedBackLeast().fraction())
            * blade);
  }

  private Range inMesh(Screen screen, Paste paste) {
    double squareMetres = screen.imageLength().cm() * screen.imageWidth().cm() / 10_000;
    return Mesh.of(screen)
        .theoreticalVolume()
        .times(Recipe.density(paste, policy) / 1000 * squareMetres);
  }

  private Range onBlade() {
    return new Range(
        policy.paste().leftOnBladeLeast().grams(),
        policy.paste().leftOnBladeUsual().grams(),
        policy.paste().leftOnBladeMost().grams());
  }
}
