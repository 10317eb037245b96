package strikeoff.colour;

/**
 * One printed layer, and what it does to what lies under it.
 *
 * <p>This is an estimate for looking at, not a colour match: three broad bands stand for the
 * spectrum, the named colour is taken for the paste's look on white cloth, and both layers for full
 * cover. So what white shows through the gaps of an opaque film is in its named colour already, and
 * a dark one has fewer gaps than its grade would allow.
 *
 * @param onWhite its look on white cloth
 * @param hiding share of what lies under it that it hides
 * @param tints true if the rest shows through it, false if it shows beside it, as through an opaque
 *     film with gaps
 * @param strength how much of it is there, in proportion to the layer that gave {@code onWhite}
 */
record Coat(Reflectance onWhite, double hiding, boolean tints, double strength) {

  Coat {
    if (!(hiding >= 0 && hiding <= 1) || !(strength >= 0)) {
      throw new IllegalArgumentException("no coat of hiding " + hiding + ", strength " + strength);
    }
  }

  static Coat transparent(Reflectance onWhite) {
    return translucent(onWhite, 0);
  }

  /** Hides a part and tints the rest. */
  static Coat translucent(Reflectance onWhite, double hiding) {
    return new Coat(onWhite, hiding, true, 1);
  }

  static Coat opaque(Reflectance onWhite, double hiding) {
    return new Coat(onWhite, hiding, false, 1);
  }

  Coat times(double factor) {
    return new Coat(onWhite, hiding, tints, strength * factor);
  }

  /**
   * The look of this coat over a surface. Where it tints, coats add K/S band by band (Kubelka–Munk,
   * single constant), so the order of two that hide nothing changes nothing.
   */
  Reflectance over(Reflectance under) {
    if (!tints && hiding > 0) {
      return beside(under);
    }
    Reflectance tinted = tints ? tinted(under) : under;
    return hiding == 0 ? tinted : tinted.hiddenBy(onWhite, Math.min(1, hiding * strength));
  }

  /** Film and gaps make up the look on white, whatever the film itself is. */
  private Reflectance beside(Reflectance under) {
    double darkest = Math.min(onWhite.red(), Math.min(onWhite.green(), onWhite.blue()));
    double gaps = Math.min(1 - hiding, darkest);
    Reflectance film =
        gaps < 1
            ? new Reflectance(
                (onWhite.red() - gaps) / (1 - gaps),
                (onWhite.green() - gaps) / (1 - gaps),
                (onWhite.blue() - gaps) / (1 - gaps))
            : onWhite;
    return under.hiddenBy(film, Math.min(1, (1 - gaps) * strength));
  }

  private Reflectance tinted(Reflectance under) {
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
