package strikeoff.plan.yaml;

import strikeoff.plan.Arrangement.Edge;
import strikeoff.plan.Cloth;
import strikeoff.units.Length;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.QuantityKinds;

/** What the cloth's allowances and selvedges leave free; placements that say nothing take that. */
final class FreeCloth {

  private static final String WHY = "what the cloth's allowances and selvedges leave free";
  private static final Expected<Length> PLACE = QuantityKinds.quantity(Length.class);

  private final Assumptions assumptions;
  private final Cloth cloth;

  FreeCloth(Assumptions assumptions, Cloth cloth) {
    this.assumptions = assumptions;
    this.cloth = cloth;
  }

  Length start(Fields f, String key, String words) {
    return take(f, key, cloth.startAllowance(), words);
  }

  Length end(Fields f, String key, String words) {
    return take(f, key, cloth.length().minus(cloth.endAllowance()), words);
  }

  Length near(Fields f) {
    return take(
        f, "near", cloth.selvedge().plus(cloth.nearAllowance()), "near side of the filled area");
  }

  Length far(Fields f) {
    Length edge = cloth.width().minus(cloth.selvedge()).minus(cloth.farAllowance());
    return take(f, "far", edge, "far side of the filled area");
  }

  Length inset(Fields f, Edge edge) {
    Length allowance = edge == Edge.NEAR ? cloth.nearAllowance() : cloth.farAllowance();
    return take(
        f, "inset", cloth.selvedge().plus(allowance), "distance of the border from the edge");
  }

  private Length take(Fields f, String key, Length free, String words) {
    return assumptions.orDerived(f, key, PLACE, free, free::text, words, WHY);
  }
}
