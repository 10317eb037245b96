package strikeoff.report.outcome;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.paste.PasteUse;
import strikeoff.units.Measures;
import strikeoff.units.Range;

/**
 * The main figures of a plan.
 *
 * @param placements copies of designs on the cloth
 * @param start when the run starts; empty if the plan has none
 * @param finish when it ends; empty if the plan has none
 * @param workSeconds that people work
 * @param waitingSeconds that people wait inside opening hours
 * @param busy how busy everybody and everything is; empty if the plan has no run
 * @param lays how often each screen is laid, by its name
 * @param pastes in the order of the plan's needs
 * @param materials what to buy and to weigh; empty if nobody asked, or an earlier version told it
 * @param measures in whose units they are told; JSON, whose numbers are metric, leaves it out
 */
public record Figures(
    int placements,
    Optional<Moment> start,
    Optional<Moment> finish,
    long workSeconds,
    long waitingSeconds,
    List<InUse> busy,
    Map<String, Integer> lays,
    List<Paste> pastes,
    Optional<Supplies> materials,
    Measures measures) {

  public Figures {
    lays = Collections.unmodifiableMap(new LinkedHashMap<>(lays));
    busy = List.copyOf(busy);
    pastes = List.copyOf(pastes);
  }

  /**
   * Somebody or something in use.
   *
   * @param kind person, cloth, station, sink, fan, hair-dryer, drying place or screen
   * @param percent of the days at the table, to a tenth
   */
  public record InUse(String kind, String name, long seconds, double percent) {

    static InUse of(Busy busy) {
      return new InUse(
          busy.resource().kind().text(),
          busy.resource().name(),
          Math.round(busy.busy().seconds()),
          tenth(100 * busy.share().fraction()));
    }
  }

  /**
   * What a paste comes to, in grams, to a tenth.
   *
   * @param low need by the kindest estimate
   * @param best need by the best estimate
   * @param high need by the most careful estimate
   * @param mixed what is mixed, by the best estimate; empty if the plan leaves it open
   */
  public record Paste(String name, double low, double best, double high, Optional<Double> mixed) {}

  /** Lays of all screens. */
  public int allLays() {
    return lays.values().stream().mapToInt(Integer::intValue).sum();
  }

  Figures with(Supplies supplies) {
    return new Figures(
        placements,
        start,
        finish,
        workSeconds,
        waitingSeconds,
        busy,
        lays,
        pastes,
        Optional.of(supplies),
        measures);
  }

  static Figures of(Checked.Judged judged) {
    Timeline run = judged.facts().timeline();
    boolean runs = !run.tasks().isEmpty();
    List<Paste> pastes = new ArrayList<>();
    for (PasteUse use : judged.facts().pastes().uses()) {
      Range need = use.needGrams();
      pastes.add(
          new Paste(
              use.paste(),
              tenth(need.low()),
              tenth(need.best()),
              tenth(need.high()),
              use.mixedGrams().map(m -> tenth(m.best()))));
    }
    return new Figures(
        judged.facts().layout().placements().size(),
        runs ? Optional.of(run.start()) : Optional.empty(),
        runs ? Optional.of(run.finish()) : Optional.empty(),
        Math.round(run.handsOn().seconds()),
        Math.round(run.waiting().seconds()),
        busy(run),
        run.laysByScreen(),
        pastes,
        Optional.empty(),
        judged.plan().measures());
  }

  private static List<InUse> busy(Timeline run) {
    return run.evidence().stream()
        .filter(RunFigures.class::isInstance)
        .flatMap(figures -> ((RunFigures) figures).busy().stream())
        .filter(busy -> busy.busy().seconds() > 0)
        .map(InUse::of)
        .toList();
  }

  static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
