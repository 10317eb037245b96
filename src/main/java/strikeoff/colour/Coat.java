package strikeoff.colour;

/**
 * One printed layer, and what it does to what lies under it.
 *
 * <p>This is an estimate for looking at, not a colour match: three broad bands stand for the
 * spectrum, the named colour is taken for the paste's look on white cloth, and both layers for full
 * cover.
 *
 * @param onWhite its look on white cloth
 * @param hiding share of what lies under it that it hides; empty cover, 0, for a transparent paste,
 *     which adds its absorption instead
 * @param strength how much of it is there, in proportion to the layer that gave {@code onWhite}
 */
record Coat(Reflectance onWhite, double hiding, double strength) {

  Coat {
    if (!(hiding >= 0 && hiding <= 1) || !(strength >= 0)) {
      throw new IllegalArgumentException("no coat of hiding " + hiding + ", strength " + strength);
    }
  }

  static Coat transparent(Reflectance onWhite) {
    return new Coat(onWhite, 0, 1);
  }

  static Coat opaque(Reflectance onWhite, double hiding) {
    return new Coat(onWhite, hiding, 1);
  }

  boolean isTransparent() {
    return hiding == 0;
  }

  Coat times(double factor) {
    return new Coat(onWhite, hiding, strength * factor);
  }

  /**
   * The look of this coat over a surface. Transparent coats add K/S band by band (Kubelka–Munk,
   * single constant), so their order changes nothing; an opaque one covers.
   */
  Reflectance over(Reflectance under) {
    if (!isTransparent()) {
      return under.hiddenBy(onWhite, Math.min(1, hiding * strength));
    }
    return new Reflectance(
        added(under.red(), onWhite.red()),
        added(under.green(), onWhite.green()),
        added(under.blue(), onWhite.blue()));
  }

  private double added(double under, double own) {
    return KubelkaMunk.reflectance(
        KubelkaMunk.absorptionOfBand(under) + strength * KubelkaMunk.absorptionOfBand(own));
  }
}
