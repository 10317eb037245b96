package strikeoff.colour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence.Related;
import strikeoff.policy.Limit;
import strikeoff.units.Ratio;

/** Groups swatches that hardly differ on the ground, one group however many pairs it holds. */
final class Likeness {

  private final List<Swatch> swatches;
  private final int[] group;
  private final Map<Integer, Double> closest = new LinkedHashMap<>();
  private final Limit apart;
  private boolean whole = true;

  /**
   * @param apart CIEDE2000 from which on two are told apart
   * @param mostPairs how many pairs are looked at
   */
  Likeness(List<Swatch> swatches, Limit apart, long mostPairs) {
    this.swatches = swatches;
    this.apart = apart;
    group = new int[swatches.size()];
    long left = mostPairs;
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
      for (int j = 0; j < i && whole; j++) {
        whole = left-- > 0;
        double difference = swatches.get(j).onGroundLab().difference(swatches.get(i).onGroundLab());
        if (difference < apart.amount()) {
          join(j, i, difference);
        }
      }
    }
  }

  private void join(int one, int other, double difference) {
    int first = Math.min(first(one), first(other));
    int then = Math.max(first(one), first(other));
    double least =
        Math.min(
            difference,
            Math.min(
                closest.getOrDefault(first, Double.POSITIVE_INFINITY),
                closest.getOrDefault(then, Double.POSITIVE_INFINITY)));
    group[then] = first;
    closest.put(first, least);
  }

  private int first(int at) {
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  /** One fact for each group of two or more, in the plan's order. */
  List<NearLooks> facts(Function<Swatch, PlanPath> path) {
    Map<Integer, List<Swatch>> groups = new LinkedHashMap<>();
    for (int i = 0; i < group.length; i++) {
      groups.computeIfAbsent(first(i), n -> new ArrayList<>()).add(swatches.get(i));
    }
    List<NearLooks> facts = new ArrayList<>();
    groups.forEach(
        (first, alike) -> {
          if (alike.size() > 1) {
            facts.add(
                new NearLooks(
                    alike.stream().map(Swatch::paste).toList(),
                    alike.stream().map(s -> s.onGround().hex()).toList(),
                    Ratio.toTenth(closest.get(first)),
                    apart,
                    whole,
                    List.of(new Related(alike.get(0).paste(), path.apply(alike.get(0)))),
                    path.apply(alike.get(1))));
          }
        });
    return facts;
  }
}
