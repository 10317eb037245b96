package strikeoff.studio;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.yaml.PlanSchema;
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
    String definitions = PlanSchema.definitions(builtIn);
    String text = template();
    text = entries(text, "limits", builtIn.limits().values(), StudioSchema::limit);
    text = entries(text, "defaults", settable(builtIn), d -> standard(d).orElseThrow());
    text = entries(text, "severities", rules, r -> rule(r, "severity"));
    text = entries(text, "off", rules, r -> rule(r, "reason"));
    return text.replace(
            mark("rules"),
            rules.stream().map(r -> PlanSchema.quoted(r.id())).collect(Collectors.joining(", ")))
        .replace(
            mark("families"),
            rules.stream()
                .map(RuleInfo::family)
                .distinct()
                .sorted()
                .map(PlanSchema::quoted)
                .collect(Collectors.joining(", ")))
        .replace(mark("others"), PlanSchema.quoted(others ? otherFamilies(rules) : "^(?!)"))
        .replace(mark("quantities") + ": true", quantities(builtIn))
        .replace(
            mark("definitions") + ": true",
            definitions.substring(1, definitions.length() - 1).strip());
  }

  private static <T> String entries(
      String text, String key, Collection<T> all, Function<T, String> entry) {
    String properties =
        all.stream()
            .map(entry)
            .collect(Collectors.joining(",\n        ", "\n        ", "\n      "));
    return text.replace(mark(key) + ": true", properties);
  }

  private static String limit(Limit limit) {
    String value = quantity(limit.value());
    return entry(
        limit.name(),
        limit.why() + " Left out: " + limit.value().text() + " (" + limit.source() + ").",
        "\"anyOf\": [{"
            + value
            + "}, {\"type\": \"object\", \"properties\": {\"value\": {"
            + value
            + "}, \"why\": {\"$ref\": \"#/$defs/why\"}, \"source\": {\"$ref\": \"#/$defs/source\"}},"
            + " \"additionalProperties\": false, \"required\": [\"value\"]}]");
  }

  private static List<Default> settable(Policy builtIn) {
    List<Default> settable = new ArrayList<>();
    builtIn.defaults().values().stream()
        .filter(d -> standard(d).isPresent())
        .forEach(settable::add);
    return settable;
  }

  private static Optional<String> standard(Default standard) {
    String said = "Left out: " + standard.value() + " (" + standard.source() + ").";
    if (standard.value().matches("yes|no")) {
      return Optional.of(entry(standard.name(), said, "\"$ref\": \"#/$defs/yesNo\""));
    }
    return Quantities.parseAny(standard.value())
        .toOptional()
        .map(q -> entry(standard.name(), said, quantity(q)));
  }

  private static String rule(RuleInfo rule, String value) {
    return entry(
        rule.id(),
        rule.summary() + ". Usually: " + rule.severity().text() + ".",
        "\"$ref\": \"#/$defs/" + value + "\"");
  }

  private static String entry(String name, String description, String schema) {
    return PlanSchema.quoted(name)
        + ": {\"description\": "
        + PlanSchema.quoted(description.strip().replaceAll("\\s+", " "))
        + ", "
        + schema
        + "}";
  }

  private static String quantity(Quantity like) {
    return "\"$ref\": \"#/$defs/" + name(like) + "\"";
  }

  private static String name(Quantity like) {
    return "like " + Quantities.dimension(like).toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What a value of each dimension looks like that limits and defaults have. */
  private static String quantities(Policy builtIn) {
    Map<String, Quantity> used = new TreeMap<>();
    builtIn.limits().values().forEach(l -> used.putIfAbsent(name(l.value()), l.value()));
    for (Default standard : builtIn.defaults().values()) {
      Quantities.parseAny(standard.value())
          .toOptional()
          .ifPresent(q -> used.putIfAbsent(name(q), q));
    }
    return used.entrySet().stream()
        .map(e -> entry(e.getKey(), written(e.getValue()), form(e.getValue())))
        .collect(Collectors.joining(",\n    "));
  }

  private static String written(Quantity like) {
    String expected = Quantities.expected(like.getClass());
    return Phrase.capital(expected) + ".";
  }

  private static String form(Quantity like) {
    String text =
        "\"type\": \"string\", \"pattern\": "
            + PlanSchema.quoted(WrittenForms.of(like.getClass()))
            + ", \"patternErrorMessage\": "
            + PlanSchema.quoted(written(like).replaceFirst("[.]$", " was expected."));
    return like instanceof Ratio
        ? "\"anyOf\": [{\"type\": \"number\", \"minimum\": 0}, {" + text + "}]"
        : text;
  }

  /** Rules of one's own are in families that no built-in rule is in. */
  private static String otherFamilies(Collection<RuleInfo> rules) {
    return rules.stream()
        .map(RuleInfo::family)
        .distinct()
        .sorted()
        .collect(Collectors.joining("|", "^(?!(?:", ")/)[^/]+/"));
  }

  private static String mark(String name) {
    return "\"@" + name + "@\"";
  }

  private static String template() {
    try (InputStream in = StudioSchema.class.getResourceAsStream("studio-schema.json")) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: studio-schema.json");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
