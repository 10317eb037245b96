package strikeoff.policy;

import strikeoff.units.Quantity;

/**
 * A threshold that rules compare facts with.
 *
 * @param name {@code family/what}, for example {@code paste/life-with-alkali}
 * @param value with its unit
 * @param why one sentence
 * @param source published source, {@code common practice, no source} or {@code from memory}
 */
public record Limit(String name, Quantity value, String why, String source) {

  /** The value in its dimension's base unit: mm, g, L, min, °C, g/L, a share of 1 … */
  public double amount() {
    return value.base();
  }
}
