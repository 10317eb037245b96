package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.chemistry.SodaSolution;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/**
 * A soda bath and what it does. Amounts are anhydrous soda; a spoon or a cup makes them a range,
 * through the powder's bulk density.
 *
 * @param step number of the fix step
 * @param sodaGrams soda ash, or what gives the same alkali
 * @param bicarbonateGrams baking soda
 * @param waterLitres water poured in
 * @param sodaGramsPerLitre soda ash for each litre of water
 * @param temperature of the bath
 * @param pH of it before cloth goes in; empty outside what the model was checked for
 * @param ionicStrength mol/kg; empty likewise
 * @param dissolves how much soda ash the water takes up at that temperature
 * @param cloth dry mass of the cloth
 * @param liquorRatio litres of bath for each kilogram of dry cloth
 * @param sodaToCloth soda ash as a share of the dry cloth's mass
 * @param dyes dye pastes that it fixes or prepares the cloth for
 * @param alkaliPastes those of them that hold their own alkali
 * @param proteinFibres fibres of the cloth that strong alkali harms: silk, wool
 * @param sodaToAdd soda ash that brings even the lowest estimate up to the weakest bath allowed
 * @param waterToWeaken water in all that brings even the highest estimate down to the strongest
 *     bath allowed
 * @param waterToDissolve water in all that dissolves all of it at that temperature
 * @param waterToCover water in all that gives the cloth room to move
 * @param sodaForThat soda ash that keeps the bath's strength in that water, at least the weakest
 *     allowed
 * @param path of the bath
 */
public record Soak(
    int step,
    Range sodaGrams,
    Range bicarbonateGrams,
    Range waterLitres,
    Range sodaGramsPerLitre,
    Temperature temperature,
    Optional<Range> pH,
    Optional<Ratio> ionicStrength,
    Concentration dissolves,
    Mass cloth,
    Ratio liquorRatio,
    Share sodaToCloth,
    List<String> dyes,
    List<String> alkaliPastes,
    List<String> proteinFibres,
    Mass sodaToAdd,
    Volume waterToWeaken,
    Volume waterToDissolve,
    Volume waterToCover,
    Mass sodaForThat,
    PlanPath path)
    implements Evidence {

  public Soak {
    dyes = List.copyOf(dyes);
    alkaliPastes = List.copyOf(alkaliPastes);
    proteinFibres = List.copyOf(proteinFibres);
  }

  /** True if the bath is there for dye. */
  public boolean forDye() {
    return !dyes.isEmpty();
  }

  public boolean alkaliInPaste() {
    return !alkaliPastes.isEmpty();
  }

  public boolean hasAlkali() {
    return sodaGrams.high() > 0 || bicarbonateGrams.high() > 0;
  }

  public boolean bakingSoda() {
    return bicarbonateGrams.high() > 0;
  }

  public boolean proteinFibre() {
    return !proteinFibres.isEmpty();
  }

  /** True if soda stays on the bottom even by the lowest estimate of its mass. */
  public boolean undissolved() {
    return sodaGramsPerLitre.low() > dissolves.gramsPerLitre();
  }

  /** The lowest credible pH; not a number where the model does not hold. */
  public double lowestPh() {
    return pH.map(Range::low).orElse(Double.NaN);
  }

  /** The highest credible pH; not a number where the model does not hold. */
  public double highestPh() {
    return pH.map(Range::high).orElse(Double.NaN);
  }

  /** The pH to show, with its range. */
  public String acidity() {
    return pH.map(r -> Ratio.toTenth(r.low()) + " to " + Ratio.toTenth(r.high()))
        .orElse(
            "not estimated outside "
                + new Temperature(SodaSolution.COLDEST)
                + " to "
                + new Temperature(SodaSolution.HOTTEST)
                + " and "
                + new Ratio(SodaSolution.STRONGEST)
                + " mol/kg");
  }
}
