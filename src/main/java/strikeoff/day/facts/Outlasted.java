package strikeoff.day.facts;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.Beforehand;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Span;

/**
 * What a run lets stand for longer than it lives.
 *
 * @param pastes dye pastes that are printed older than that, by the shortest estimate
 * @param screens screens in which paste stands too long
 */
public record Outlasted(Set<String> pastes, Set<String> screens) {

  static final Outlasted NOTHING = new Outlasted(Set.of(), Set.of());

  public static Outlasted in(DayRun day, PrintPlan plan, Beforehand known) {
    Mixings mixings = new Mixings(plan, day.tasks(), day.start());
    Set<String> pastes = new LinkedHashSet<>();
    Map<String, Optional<Span>> lives = new HashMap<>();
    for (Impression impression : day.impressions()) {
      Paste paste = impression.footprint().paste();
      if (!pastes.contains(paste.name())) {
        Optional<Span> life =
            lives.computeIfAbsent(paste.name(), name -> known.lives().apply(paste));
        Moment laid = impression.laid();
        life.flatMap(l -> mixings.readyBefore(paste, laid))
            .map(laid::since)
            .filter(age -> age.compareTo(life.get()) > 0)
            .ifPresent(age -> pastes.add(paste.name()));
      }
    }
    Set<String> screens = new LinkedHashSet<>();
    IdleScreen.all(day.run(), plan, known.policy()).forEach(idle -> screens.addAll(idle.screens()));
    return new Outlasted(pastes, screens);
  }

  /** What stands too long here and not there. */
  public Outlasted without(Outlasted other) {
    Set<String> morePastes = new LinkedHashSet<>(pastes);
    morePastes.removeAll(other.pastes);
    Set<String> moreScreens = new LinkedHashSet<>(screens);
    moreScreens.removeAll(other.screens);
    return new Outlasted(morePastes, moreScreens);
  }

  public boolean isNothing() {
    return pastes.isEmpty() && screens.isEmpty();
  }
}
