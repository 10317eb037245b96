package strikeoff.plan.yaml;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.yaml.Node;

/**
 * The schema of plans in a studio that owns screens and pastes: they may be named without being
 * described, or described in part.
 */
final class StockSchema {

  private StockSchema() {}

  static String into(String schema, Stock stock) {
    String text = schema.replaceFirst("  \"[$]id\": .*\n", "");
    text = owned(text, "screen", stock.screens(), h -> "\"$ref\": \"#/$defs/screenPart\"");
    return owned(text, "paste", stock.pastes(), StockSchema::paste);
  }

  private static String owned(
      String schema, String kind, Map<String, Stock.Held> held, Function<Stock.Held, String> part) {
    if (held.isEmpty()) {
      return schema;
    }
    String others = "\"additionalProperties\": {\"$ref\": \"#/$defs/" + kind + "\"}";
    String properties =
        held.entrySet().stream()
            .map(
                e ->
                    PlanSchema.quoted(e.getKey())
                        + ": {\"description\": "
                        + PlanSchema.quoted("The studio has it: " + e.getValue().source() + ".")
                        + ", "
                        + part.apply(e.getValue())
                        + "}")
            .collect(Collectors.joining(",\n        ", "\"properties\": {\n        ", "\n      }"));
    String names =
        held.keySet().stream()
            .map(PlanSchema::quoted)
            .collect(Collectors.joining(", ", ", \"examples\": [", "]"));
    String name = "\"description\": \"Name of a " + kind + ".\"";
    return schema.replace(others, properties + ", " + others).replace(name, name + names);
  }

  /** A plan's own words win over the studio's, so these must fit the ones that it leaves. */
  private static String paste(Stock.Held held) {
    boolean dye = has(held, "medium", "dye");
    if (dye) {
      // Its reactive group stands in the stock, where paint can have none.
      return "\"$ref\": \"#/$defs/pastePart\", \"properties\":"
          + " {\"medium\": {\"const\": \"dye\"}, \"label\": false}";
    }
    String paint = "\"properties\": {\"medium\": {\"const\": \"paint\"}, \"group\": false}";
    return "\"$ref\": \"#/$defs/pastePart\", "
        + (has(held, "label", "")
            ? paint
            : "\"if\": {\"properties\": {\"medium\": {\"const\": \"dye\"}},"
                + " \"required\": [\"medium\"]}, \"then\": {\"required\": [\"group\"],"
                + " \"properties\": {\"label\": false}},"
                + " \"else\": {\"properties\": {\"group\": false}}");
  }

  private static boolean has(Stock.Held held, String key, String value) {
    Node.Entry entry =
        held.node() instanceof Node.Mapping mapping ? mapping.entries().get(key) : null;
    return entry != null
        && (value.isEmpty()
            || entry.value() instanceof Node.Scalar scalar && scalar.text().equals(value));
  }
}
