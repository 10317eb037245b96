package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
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
 * @param sodaGramsPerLitre soda ash for each litre of water; like salt to a tenth of a gram, as it
 *     is told
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
 * @param sodaToAdd soda ash that brings even the lowest estimate up to what the soak wants
 * @param waterToWeaken water in all that brings even the highest estimate down to the strongest
 *     bath allowed, and gives the cloth room to move
 * @param saltForWeaker salt that keeps its strength in that water
 * @param waterToCover water in all that gives the cloth room to move
 * @param sodaForThat soda ash that keeps the bath's strength in that water, or the usual strength
 *     where that is too weak or too strong
 * @param saltForThat salt that keeps its strength in that water
 * @param saltGramsPerLitre salt for each litre of water
 * @param commonSaltGramsPerLitre the same without Glauber's salt
 * @param saltThatDissolves as much common salt as the water takes up
 * @param saltToAdd salt that brings it up to what keeps dye on the print
 * @param silicate true if it holds silicate liquid, brushed or padded on rather than filled in a
 *     tub
 * @param onPrint true if dye lies on the cloth already
 * @param groundLightness L* of the cloth's colour
 * @param weakest how little soda ash a bath for a print may hold for each litre
 * @param strongest how much
 * @param roomy litres for each kilogram of cloth in which it moves
 * @param salty salt for each litre that keeps dye on the print
 * @param dissolvable common salt for each litre that dissolves
 * @param writing how what it is to hold is written into the plan
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
    Mass saltForWeaker,
    Volume waterToCover,
    Mass sodaForThat,
    Mass saltForThat,
    Range saltGramsPerLitre,
    Range commonSaltGramsPerLitre,
    Mass saltThatDissolves,
    Mass saltToAdd,
    boolean silicate,
    boolean onPrint,
    Ratio groundLightness,
    Limit weakest,
    Limit strongest,
    Limit roomy,
    Limit salty,
    Limit dissolvable,
    BathEdits writing,
    PlanPath path)
    implements Evidence {

  /** Soda ash in all that brings even the lowest estimate up to the weakest bath allowed. */
  public Mass sodaThen() {
    return new Mass(sodaGrams.best() + sodaToAdd.grams());
  }

  /** Salt in all that keeps dye on the print. */
  public Mass saltThen() {
    return new Mass(saltGramsPerLitre.best() * waterLitres.best() + saltToAdd.grams());
  }

  /** Soda as it is told, to a tenth of a gram: what is told as the limit is not beyond it. */
  public Range sodaAsTold() {
    return sodaGramsPerLitre.told(1);
  }

  /** The same of salt. */
  public Range saltAsTold() {
    return saltGramsPerLitre.told(1);
  }

  /** The same of common salt. */
  public Range commonSaltAsTold() {
    return commonSaltGramsPerLitre.told(1);
  }

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
    return sodaGrams.high() > 0 || bicarbonateGrams.high() > 0 || silicate;
  }

  public boolean bakingSoda() {
    return bicarbonateGrams.high() > 0;
  }

  public boolean proteinFibre() {
    return !proteinFibres.isEmpty();
  }

  /** The same as edits. */
  public List<List<Edit>> refill() {
    Optional<Edit> water = writing.water(waterToCover);
    Optional<Edit> soda = writing.soda(sodaForThat);
    return saltForThat.grams() > 0
        ? BathEdits.together(water, soda, writing.salt(saltForThat))
        : BathEdits.together(water, soda);
  }

  /** More water, and salt for it, as edits. */
  public List<List<Edit>> weaken() {
    Optional<Edit> water = writing.water(waterToWeaken);
    return saltForWeaker.grams() > 0
        ? BathEdits.together(water, writing.salt(saltForWeaker))
        : BathEdits.together(water);
  }

  /** Soda enough, as an edit. */
  public List<List<Edit>> moreSoda() {
    return BathEdits.together(writing.soda(sodaThen()));
  }

  /** Salt enough, as an edit. */
  public List<List<Edit>> moreSalt() {
    return BathEdits.together(writing.salt(saltThen()));
  }

  /** No more salt than dissolves, as an edit. */
  public List<List<Edit>> lessSalt() {
    return BathEdits.together(writing.saltAtMost(saltThatDissolves));
  }

  /** Soda ash in place of baking soda, as edits. */
  public List<List<Edit>> sodaForBakingSoda() {
    return BathEdits.together(writing.water(waterToCover), writing.soda(sodaForThat)).stream()
        .map(edits -> Stream.concat(writing.withoutBakingSoda().stream(), edits.stream()).toList())
        .toList();
  }

  /** True if soda stays on the bottom even by the lowest estimate of its mass. */
  public boolean undissolved() {
    return sodaGramsPerLitre.low() > dissolves.gramsPerLitre();
  }

  /** The lowest credible pH; not a number where the model does not hold. */
  public double lowestPh() {
    return pH.map(Range::low).orElse(Double.NaN);
  }

  /** True if it is alkaline, but too strong or too salty for its pH to be known. */
  public boolean alkalineBeyondModel() {
    return hasAlkali() && pH.isEmpty() && (silicate || sodaGrams.low() > 0);
  }

  /** The highest credible pH; not a number where the model does not hold. */
  public double highestPh() {
    return pH.map(Range::high).orElse(Double.NaN);
  }
}
