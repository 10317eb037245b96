package strikeoff.chemistry;

/**
 * Salt in water, mol/kg: common salt as chloride, Glauber's salt as sulphate. Sodium balances it.
 */
public record SaltWater(double chloride, double sulphate) {

  public static final SaltWater NONE = new SaltWater(0, 0);

  /** NaCl, g/mol. IUPAC atomic weights, as all of these. */
  public static final double COMMON_SALT = 58.4428;

  /** Na₂SO₄ without water, g/mol. */
  public static final double GLAUBERS_SALT = 142.0421;

  /**
   * Saltiest water the model is used for, mol/kg of ionic strength: about as much common salt as
   * dissolves.
   */
  public static final double STRONGEST = 6.2;

  double ionicStrength() {
    return chloride + 3 * sulphate;
  }
}
