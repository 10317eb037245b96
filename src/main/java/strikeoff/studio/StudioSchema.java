package strikeoff.studio;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.yaml.PlanSchema;
import strikeoff.plan.yaml.SchemaTree;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Phrase;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;
import strikeoff.units.WrittenForms;

/**
 * The JSON Schema (2020-12) of a policy file, for editors that complete and explain. Its keys stand
 * in {@code studio-schema.json}; limits, defaults and rules are filled in with what each of them
 * means, and what describes a table, a screen or a paste is the plan's own schema of it.
 */
public final class StudioSchema {

  private StudioSchema() {}

  /**
   * The schema's text; ends with a line end.
   *
   * @param builtIn what policies change
   * @param rules all rules that a policy may name
   * @param others true if the studio may have rules besides, of families that aren't built in
   */
  public static String text(Policy builtIn, Collection<RuleInfo> rules, boolean others) {
    List<String> families = rules.stream().map(RuleInfo::family).distinct().sorted().toList();
    ObjectNode schema =
        SchemaTree.read(
            StudioSchema.class,
            "studio-schema.json",
            Map.of(
                "rules",
                rules.stream().map(RuleInfo::id).toList(),
                "families",
                families,
                "others",
                List.of(others ? otherThan(families) : "^(?!)")));
    ObjectNode definitions = (ObjectNode) schema.get("$defs");
    quantities(builtIn).forEach(definitions::set);
    definitions.setAll(PlanSchema.definitions(builtIn));
    ObjectNode limits = entries(schema, "limits");
    builtIn.limits().values().forEach(l -> limits.set(l.name(), limit(l)));
    ObjectNode defaults = entries(schema, "defaults");
    for (Default<?> standard : builtIn.defaults().values()) {
      standard(standard).ifPresent(value -> defaults.set(standard.name(), value));
    }
    ObjectNode severities = entries(schema, "severities");
    ObjectNode off = entries(schema, "off");
    for (RuleInfo rule : rules) {
      severities.set(
          rule.id(), rule(rule, "What that counts as here.", "severity", rule.severity().text()));
      off.set(rule.id(), rule(rule, "Why that isn't judged here.", "reason", "it is judged"));
    }
    SchemaTree.describe(schema);
    return SchemaTree.text(schema);
  }

  private static ObjectNode entries(ObjectNode schema, String key) {
    return ((ObjectNode) schema.get("properties").get(key)).putObject("properties");
  }

  private static ObjectNode limit(Limit limit) {
    String usual = limit.value().text() + " (" + limit.source() + ")";
    ObjectNode described = described(limit.why() + " Left out: " + usual + ".");
    described.put("default", limit.value().text());
    ObjectNode explained = SchemaTree.object().put("type", "object");
    ObjectNode keys = explained.putObject("properties");
    keys.putObject("value")
        .put("description", "The value that holds here, with its unit.")
        .setAll(quantity(limit.value()));
    keys.set("why", SchemaTree.reference("why"));
    keys.set("source", SchemaTree.reference("source"));
    explained.put("additionalProperties", false).set("required", SchemaTree.list(List.of("value")));
    described.putArray("anyOf").add(quantity(limit.value())).add(explained);
    return described;
  }

  /** A value that a studio may set; the others follow from what a plan is about. */
  private static Optional<ObjectNode> standard(Default<?> standard) {
    Optional<ObjectNode> value =
        standard.value() instanceof Boolean
            ? Optional.of(SchemaTree.reference("yesNo"))
            : measured(standard).map(StudioSchema::quantity);
    String said =
        "What is taken for "
            + standard.name()
            + " where a plan leaves it open. Left out: "
            + standard.text()
            + " ("
            + standard.source()
            + ").";
    return value.map(schema -> described(said).put("default", standard.text()).setAll(schema));
  }

  /** What it measures; a number of things is a plain number. */
  private static Optional<Quantity> measured(Default<?> standard) {
    return standard.value() instanceof Quantity quantity
        ? Optional.of(quantity)
        : Optional.of(standard.value())
            .filter(Integer.class::isInstance)
            .map(number -> new Ratio((Integer) number));
  }

  private static ObjectNode rule(RuleInfo rule, String asked, String value, String leftOut) {
    return described(rule.summary() + ". " + asked + " Left out: " + leftOut + ".")
        .setAll(SchemaTree.reference(value));
  }

  private static ObjectNode described(String description) {
    return SchemaTree.object().put("description", description.strip().replaceAll("\\s+", " "));
  }

  private static ObjectNode quantity(Quantity like) {
    return SchemaTree.reference(name(like));
  }

  private static String name(Quantity like) {
    return "like " + Quantities.dimension(like).toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What a value of each dimension looks like that limits and defaults have. */
  private static Map<String, ObjectNode> quantities(Policy builtIn) {
    Map<String, ObjectNode> used = new TreeMap<>();
    builtIn.limits().values().forEach(l -> used.putIfAbsent(name(l.value()), form(l.value())));
    for (Default<?> standard : builtIn.defaults().values()) {
      measured(standard).ifPresent(q -> used.putIfAbsent(name(q), form(q)));
    }
    return used;
  }

  private static ObjectNode form(Quantity like) {
    String expected = Phrase.capital(Quantities.expected(like.getClass()));
    ObjectNode form = described(expected + ".");
    ObjectNode text = form;
    if (like instanceof Ratio) {
      text = SchemaTree.object();
      form.putArray("anyOf").addObject().put("type", "number").put("minimum", 0);
      form.withArray("anyOf").add(text);
    }
    text.put("type", "string")
        .put("pattern", WrittenForms.of(like.getClass()))
        .put("patternErrorMessage", expected + " was expected.");
    return form;
  }

  /** Rules of one's own are in families that no built-in rule is in. */
  private static String otherThan(List<String> families) {
    return families.stream().collect(Collectors.joining("|", "^(?!(?:", ")/)[^/]+/"));
  }
}
