package strikeoff.policy;

import java.util.List;

/**
 * What limits of one family must be to one another, whatever a studio sets them to.
 *
 * @param rising names of limits of which none may be more than the next
 * @param aboveZero names of limits that can't be nothing
 */
public record LimitOrder(List<List<String>> rising, List<String> aboveZero) {

  public LimitOrder {
    rising = rising.stream().map(List::copyOf).toList();
    aboveZero = List.copyOf(aboveZero);
  }
}
