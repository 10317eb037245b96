package strikeoff.colour;

import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.units.Ratio;

/** Mixes the looks of pastes on one cloth, by the policy's shares of hiding and of softening. */
final class Palette {

  private final Reflectance ground;
  private final double hiding;
  private final double kept;
  private final double taken;
  private final double shown;
  private final double strongest;
  private final double spread;

  Palette(Cloth cloth, Policy policy) {
    ground = Reflectance.of(cloth.ground());
    hiding = policy.limit("order/hiding-share").amount();
    kept = 1 - policy.limit("order/softening").amount();
    shown = policy.limit("order/shows-from").amount();
    strongest = policy.limit("order/strongest-mix").amount();
    spread = policy.limit("order/light-spread").amount();
    taken =
        cloth.fibres().entrySet().stream()
            .mapToDouble(
                f -> f.getValue().fraction() * policy.fibre(f.getKey()).takesDye().fraction())
            .sum();
  }

  Reflectance ground() {
    return ground;
  }

  /** Yule and Nielsen's n of cloth. */
  double spread() {
    return spread;
  }

  Coat wet(Paste paste) {
    Reflectance onWhite = Reflectance.of(paste.colour());
    return paste.transparent() ? Coat.transparent(onWhite) : Coat.opaque(onWhite, hiding);
  }

  /** What wash-off leaves on a fibre that takes dye whole. */
  Coat softened(Paste paste) {
    return paste.medium() == Medium.DYE ? wet(paste).times(kept) : wet(paste);
  }

  /** What wash-off leaves on this cloth: on a blend, only its dyeable share holds any. */
  Coat washed(Paste paste) {
    return paste.medium() == Medium.DYE ? softened(paste).times(Math.min(1, taken)) : wet(paste);
  }

  Colour onGround(Coat coat) {
    return coat.over(ground).colour();
  }

  Colour onGround(Coat lower, Coat upper) {
    return upper.over(lower.over(ground)).colour();
  }

  /** How much stronger a paste must be mixed to show on the ground after wash-off, in words. */
  String strengthening(Paste paste) {
    if (!paste.transparent()) {
      return "no stronger mix of it would show";
    }
    Lab groundLab = Lab.of(ground);
    for (int tenths = 10; tenths <= strongest * 10; tenths++) {
      Colour look = onGround(softened(paste).times(tenths / 10.0));
      if (Lab.of(look).difference(groundLab) >= shown) {
        return tenths == 10
            ? "as strong as it is, it shows"
            : "mixed " + new Ratio(tenths / 10.0).text() + " times as strong, it would show";
      }
    }
    return "no stronger mix of it would show";
  }
}
