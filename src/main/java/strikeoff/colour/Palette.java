package strikeoff.colour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Range;
import strikeoff.units.Ratio;

/** Mixes the looks of pastes on one cloth, by the policy's shares of hiding and of softening. */
final class Palette {

  private final Reflectance ground;
  private final double hiding;
  private final Range translucent;
  private final Limit mostLighter;
  private final Limit veryDark;
  private final Limit fairlyDark;
  private final double kept;
  private final double taken;
  private final double shown;
  private final double strongest;
  private final double spread;

  Palette(Cloth cloth, Policy policy) {
    ground = Reflectance.of(cloth.ground());
    hiding = policy.order().hidingShare().fraction();
    translucent =
        new Range(
            policy.order().translucentHidesLeast().fraction(),
            policy.order().translucentHidesUsual().fraction(),
            policy.order().translucentHidesMost().fraction());
    mostLighter = policy.order().lighterThanGround();
    veryDark = policy.order().veryDark();
    fairlyDark = policy.order().fairlyDark();
    kept = 1 - policy.order().softening().fraction();
    shown = policy.order().showsFrom().amount();
    strongest = policy.order().strongestMix().value();
    spread = policy.order().lightSpread().value();
    taken =
        cloth.fibres().entrySet().stream()
            .mapToDouble(
                f -> f.getValue().fraction() * policy.fibre(f.getKey()).takesDye().fraction())
            .sum();
  }

  /** By how much L* a colour is lighter than what lies under it. */
  Limit mostLighter() {
    return mostLighter;
  }

  /** L* up to which nothing translucent shows on it. */
  Limit veryDark() {
    return veryDark;
  }

  /** L* up to which what is translucent comes out dull on it. */
  Limit fairlyDark() {
    return fairlyDark;
  }

  Reflectance ground() {
    return ground;
  }

  /** Yule and Nielsen's n of cloth. */
  double spread() {
    return spread;
  }

  Coat wet(Paste paste) {
    return coat(paste, hides(paste).best());
  }

  /** Its look on the ground at the least and at the most that it hides, wet. */
  List<Colour> extremes(Paste paste) {
    Range hides = hides(paste);
    return List.of(onGround(coat(paste, hides.low())), onGround(coat(paste, hides.high())));
  }

  /** The same paste mixed to another colour. */
  Coat wet(Paste paste, Reflectance own) {
    return coat(paste, own, hides(paste).best());
  }

  private static Coat coat(Paste paste, double hides) {
    return coat(paste, Reflectance.of(paste.colour()), hides);
  }

  private static Coat coat(Paste paste, Reflectance own, double hides) {
    return paste.transparent() ? Coat.translucent(own, hides) : Coat.opaque(own, hides);
  }

  /** The share of what lies under it that it hides: of dye nothing. */
  private Range hides(Paste paste) {
    if (paste.translucent()) {
      return translucent;
    }
    return Range.exactly(paste.transparent() ? 0 : hiding);
  }

  /** As if it were of an opaque grade. */
  Coat opaque(Paste paste) {
    return Coat.opaque(Reflectance.of(paste.colour()), hiding);
  }

  /**
   * True for a colour lighter than what lies under it that comes out as a shade of that: one that
   * hides nothing, or hides too little of something very dark.
   */
  boolean isTooLight(Paste paste, Lab own, Lab under) {
    return isLighter(paste, own, under)
        && (!paste.translucent() || under.lightness() <= veryDark.amount());
  }

  /** True for a translucent colour lighter than what lies under it, where that is not very dark. */
  boolean isDulled(Paste paste, Lab own, Lab under) {
    return isLighter(paste, own, under) && !isTooLight(paste, own, under);
  }

  private boolean isLighter(Paste paste, Lab own, Lab under) {
    return paste.transparent() && own.lightness() - under.lightness() > mostLighter.amount();
  }

  /** What wash-off leaves on a fibre that takes dye whole. */
  Coat softened(Paste paste) {
    return softened(paste, wet(paste));
  }

  private Coat softened(Paste paste, Coat wet) {
    return paste.medium() == Medium.DYE ? wet.times(kept) : wet;
  }

  /** L* up to which a deeper tone of a paste's colour shows on the ground, wet and washed. */
  OptionalInt showsDeeper(Paste paste) {
    Lab below = Lab.of(ground);
    return Tones.deeper(
        paste.colour(),
        tone -> {
          Coat coat = wet(paste, tone);
          return showsOn(below, coat, ground)
              && showsOn(below, softened(paste, coat), ground)
              && !isTooLight(paste, Lab.of(tone), below);
        });
  }

  /** L* from which on a paler ground lets the paste show, wet and washed, and not dull. */
  OptionalInt showsOnPaler(Paste paste) {
    return Tones.paler(
        ground,
        paler -> {
          Lab below = Lab.of(paler);
          return showsOn(below, wet(paste), paler)
              && showsOn(below, softened(paste), paler)
              && !isTooLight(paste, Lab.of(paste.colour()), below)
              && !(isDulled(paste, Lab.of(paste.colour()), below)
                  && below.lightness() < fairlyDark.amount());
        });
  }

  private boolean showsOn(Lab below, Coat coat, Reflectance under) {
    return Lab.of(coat.over(under).colour()).difference(below) >= shown;
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

  /** How many times as strong a paste shows on the ground after wash-off; empty if no mix does. */
  Optional<Ratio> strengthening(Paste paste) {
    if (!paste.transparent() || paste.translucent()) {
      return Optional.empty();
    }
    Lab groundLab = Lab.of(ground);
    for (int tenths = 10; tenths <= strongest * 10; tenths++) {
      Colour look = onGround(softened(paste).times(tenths / 10.0));
      if (Lab.of(look).difference(groundLab) >= shown) {
        return Optional.of(new Ratio(tenths / 10.0));
      }
    }
    return Optional.empty();
  }
}
