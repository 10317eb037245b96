package strikeoff.checks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.bath.FixingTest;
import strikeoff.bath.SoakTest;
import strikeoff.chemistry.SodaSolutionTest;
import strikeoff.chemistry.SodaTest;
import strikeoff.chemistry.WaterTest;
import strikeoff.paste.RecipeTest;
import strikeoff.paste.SpoonsTest;

/** Every topic's checks, in the order of the table made from them. */
public final class CheckTables {

  private CheckTables() {}

  /** Checks by topic. A new topic adds one line here. */
  public static Map<String, List<Check>> all() {
    Map<String, List<Check>> tables = new LinkedHashMap<>();
    tables.put("Colour", strikeoff.colour.ColourCheckTest.checks());
    tables.put("water and carbonate constants", WaterTest.checks());
    tables.put("pH of soda", SodaSolutionTest.checks());
    tables.put("sodas and reaction rates", SodaTest.checks());
    tables.put("soda baths", SoakTest.checks());
    tables.put("fixing", FixingTest.checks());
    tables.put("recipes", RecipeTest.checks());
    tables.put("powders by the spoon", SpoonsTest.checks());
    return Collections.unmodifiableMap(tables);
  }
}
