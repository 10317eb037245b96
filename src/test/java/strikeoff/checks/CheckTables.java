package strikeoff.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.bath.FixingTest;
import strikeoff.bath.SoakTest;
import strikeoff.care.CareCheckTest;
import strikeoff.chemistry.SodaSolutionTest;
import strikeoff.chemistry.SodaTest;
import strikeoff.chemistry.WaterTest;
import strikeoff.cloth.ClothCheckTest;
import strikeoff.colour.ColourCheckTest;
import strikeoff.colour.ColourOracleTest;
import strikeoff.drying.EvaporationCheckTest;
import strikeoff.drying.MoistAirCheckTest;
import strikeoff.drying.MoistAirOracleTest;
import strikeoff.paste.RecipeTest;
import strikeoff.paste.SpoonsTest;
import strikeoff.screens.MeshCheckTest;
import strikeoff.units.UnitsCheckTest;
import strikeoff.units.UnitsOracleTest;

/** Every topic's checks, in the order of the table made from them. */
public final class CheckTables {

  private CheckTables() {}

  /** Checks by topic. A new topic adds one line here. */
  public static Map<String, List<Check>> all() {
    Map<String, List<Check>> tables = new LinkedHashMap<>();
    tables.put("Units", UnitsCheckTest.checks());
    tables.put("Screens and mesh", MeshCheckTest.checks());
    tables.put("Powders by the spoon", SpoonsTest.checks());
    tables.put("Recipes", RecipeTest.checks());
    tables.put("Moist air", MoistAirCheckTest.checks());
    tables.put("Evaporation and drying", EvaporationCheckTest.checks());
    tables.put("Water and the carbonate constants", WaterTest.checks());
    tables.put("pH of soda", SodaSolutionTest.checks());
    tables.put("Sodas, solubility and rates", SodaTest.checks());
    tables.put("Soda baths", SoakTest.checks());
    tables.put("Fixing", FixingTest.checks());
    tables.put("Cloth", ClothCheckTest.checks());
    tables.put("Colour", ColourCheckTest.checks());
    tables.put("Care", CareCheckTest.checks());
    return Collections.unmodifiableMap(tables);
  }

  /** Other programs that were asked over grids. */
  public static List<Oracle> oracles() {
    List<Oracle> oracles = new ArrayList<>();
    oracles.addAll(UnitsOracleTest.oracles());
    oracles.addAll(MoistAirOracleTest.oracles());
    oracles.addAll(ColourOracleTest.oracles());
    return List.copyOf(oracles);
  }
}
