package strikeoff.drying;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.policy.Fibre;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;

/** The limits of some families as the rules folder has them, with two fibres of known pick-up. */
public final class TestPolicy {

  private static final Pattern AMOUNT = Pattern.compile("([0-9.]+) *(%|min|h|days|s)?");

  private TestPolicy() {}

  public static Policy of(String... families) {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (String family : families) {
      read(family, limits);
    }
    return new Policy(
        limits,
        Map.of(),
        List.of(),
        List.of(
            new Fibre("cotton", List.of(), new Share(1), true, new Share(1.0), "test"),
            new Fibre("polyester", List.of(), new Share(0), false, new Share(0.1), "test")),
        List.of());
  }

  private static void read(String family, Map<String, Limit> limits) {
    try {
      JsonNode tree = new YAMLMapper().readTree(Path.of("rules", family, "limits.yaml").toFile());
      tree.get("limits")
          .fields()
          .forEachRemaining(
              e ->
                  limits.put(
                      e.getKey(),
                      new Limit(
                          e.getKey(),
                          quantity(e.getValue().get("value").asText()),
                          e.getValue().get("why").asText(),
                          e.getValue().get("source").asText())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Quantity quantity(String text) {
    Matcher m = AMOUNT.matcher(text);
    if (!m.matches()) {
      throw new IllegalArgumentException(text);
    }
    double number = Double.parseDouble(m.group(1));
    if (m.group(2) == null) {
      return new Ratio(number);
    }
    return switch (m.group(2)) {
      case "%" -> new Share(number / 100);
      case "s" -> Span.ofSeconds(number);
      case "min" -> new Span(number);
      case "h" -> new Span(number * 60);
      default -> new Span(number * 1440);
    };
  }
}
