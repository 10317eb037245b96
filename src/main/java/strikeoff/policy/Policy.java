package strikeoff.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.units.Share;

/**
 * The data that rules and derivations read: thresholds, defaults, and the tables of reactive
 * groups, fibres and substances. Nothing the trade may argue about stands in Java.
 *
 * @param limits by name
 * @param defaults by name
 */
public record Policy(
    Map<String, Limit> limits,
    Map<String, Default> defaults,
    List<ReactiveGroup> groups,
    List<Fibre> fibres,
    List<Substance> substances) {

  public Policy {
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    defaults = Collections.unmodifiableMap(new LinkedHashMap<>(defaults));
    groups = List.copyOf(groups);
    fibres = List.copyOf(fibres);
    substances = List.copyOf(substances);
  }

  /**
   * A limit by name.
   *
   * @throws IllegalArgumentException if the policy has none of that name: a fault of the tool
   */
  public Limit limit(String name) {
    Limit limit = limits.get(name);
    if (limit == null) {
      throw new IllegalArgumentException("the policy has no limit " + name);
    }
    return limit;
  }

  /** The reactive group of exactly that name. */
  public ReactiveGroup group(String name) {
    return named(groups, g -> g.name().equals(name), name);
  }

  /** The fibre of exactly that name. */
  public Fibre fibre(String name) {
    return named(fibres, f -> f.name().equals(name), name);
  }

  /**
   * True if there is so much of a fibre in a cloth that it sets a limit; some are felt at a smaller
   * share than others.
   */
  public boolean counts(Fibre fibre, Share share) {
    double least =
        fibre
            .countsFrom()
            .map(Share::fraction)
            .orElseGet(() -> limit("fixing/fibre-counts").amount());
    return share.fraction() >= least;
  }

  /** True if one of some fibres is cellulose. */
  public boolean anyCellulose(Set<String> fibres) {
    return fibres.stream().anyMatch(name -> fibre(name).cellulose());
  }

  /** The substance of exactly that name. */
  public Substance substance(String name) {
    return named(substances, s -> s.name().equals(name), name);
  }

  private static <T> T named(List<T> table, java.util.function.Predicate<T> isIt, String name) {
    return table.stream()
        .filter(isIt)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the policy has no entry " + name));
  }
}
