package strikeoff.drying;

import java.util.LinkedHashMap;
import java.util.Map;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/** A policy under which all days are alike, for tests of the clock that take drying as given. */
public final class SteadyDays {

  private SteadyDays() {}

  public static Policy of(Policy policy) {
    Map<String, Limit> limits = new LinkedHashMap<>(policy.limits());
    limits.replaceAll(
        (name, limit) ->
            name.startsWith("drying/") && name.endsWith("-spread")
                ? new Limit(
                    name,
                    limit.value() instanceof Share ? new Share(0) : new Ratio(0),
                    limit.why(),
                    limit.source())
                : name.equals("drying/skin-slowest")
                    ? new Limit(name, new Share(1), limit.why(), limit.source())
                    : limit);
    return new Policy(
        limits, policy.defaults(), policy.groups(), policy.fibres(), policy.substances());
  }
}
