package strikeoff.plan.yaml;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import strikeoff.yaml.Node;

/**
 * The schema of plans in a studio that owns screens and pastes: they may be named without being
 * described, or described in part.
 */
final class StockSchema {

  private StockSchema() {}

  static void into(ObjectNode schema, Stock stock) {
    schema.remove("$id");
    ObjectNode definitions = (ObjectNode) schema.get("$defs");
    owned(definitions, "screen", stock.screens(), h -> SchemaTree.reference("screenPart"));
    owned(definitions, "paste", stock.pastes(), StockSchema::paste);
    if (!stock.films().isEmpty()) {
      ((ObjectNode) definitions.get("filmName"))
          .set("examples", SchemaTree.list(stock.films().keySet()));
    }
  }

  private static void owned(
      ObjectNode definitions,
      String kind,
      Map<String, Stock.Held> held,
      Function<Stock.Held, ObjectNode> part) {
    if (held.isEmpty()) {
      return;
    }
    ObjectNode properties = ((ObjectNode) definitions.get(kind + "s")).putObject("properties");
    held.forEach(
        (name, one) -> {
          String said =
              "The studio has it: "
                  + one.source()
                  + ". What stands here goes before that. Left out: it is as the studio says.";
          ObjectNode described = properties.putObject(name).put("description", said);
          described.setAll(part.apply(one));
        });
    ((ObjectNode) definitions.get(kind + "Name")).set("examples", SchemaTree.list(held.keySet()));
  }

  /** A plan's own words win over the studio's, so these must fit the ones that it leaves. */
  private static ObjectNode paste(Stock.Held held) {
    ObjectNode part = SchemaTree.reference("pastePart");
    if (has(held, "medium", "dye")) {
      // Its reactive group stands in the stock, where paint can have none.
      only(part, "dye").put("label", false);
    } else if (has(held, "label", "")) {
      only(part, "paint").put("group", false);
    } else {
      ObjectNode dye = part.putObject("if");
      only(dye, "dye");
      dye.set("required", SchemaTree.list(List.of("medium")));
      ObjectNode then = part.putObject("then");
      then.set("required", SchemaTree.list(List.of("group")));
      then.putObject("properties").put("label", false);
      part.putObject("else").putObject("properties").put("group", false);
    }
    return part;
  }

  private static ObjectNode only(ObjectNode schema, String medium) {
    ObjectNode properties = schema.putObject("properties");
    properties.putObject("medium").put("const", medium);
    return properties;
  }

  private static boolean has(Stock.Held held, String key, String value) {
    Node.Entry entry =
        held.node() instanceof Node.Mapping mapping ? mapping.entries().get(key) : null;
    return entry != null
        && (value.isEmpty()
            || entry.value() instanceof Node.Scalar scalar && scalar.text().equals(value));
  }
}
