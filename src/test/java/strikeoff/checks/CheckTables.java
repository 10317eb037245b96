package strikeoff.checks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every topic's checks, in the order of the table made from them. */
public final class CheckTables {

  private CheckTables() {}

  /** Checks by topic. A new topic adds one line here. */
  public static Map<String, List<Check>> all() {
    Map<String, List<Check>> tables = new LinkedHashMap<>();
    tables.put("Colour", strikeoff.colour.ColourCheckTest.checks());
    return Collections.unmodifiableMap(tables);
  }
}
