package strikeoff.plan.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strikeoff.policy.Glossary;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.WrittenForms;

/**
 * The JSON Schema (2020-12) of a plan, for editors that complete and explain. Its keys stand in
 * {@code plan-schema.json}; what units, fibres, dyes, substances and colours are called is filled
 * in from what the reader knows. It finds what one place of a plan shows; what takes the whole
 * plan, such as a name that nothing has, only the reader finds.
 */
public final class PlanSchema {

  private PlanSchema() {}

  /**
   * The schema's text; ends with a line end.
   *
   * @param policy whose tables name fibres, groups and substances
   * @param stock what the studio owns, so that the plan needn't describe it
   */
  public static String text(Policy policy, Stock stock) {
    String text = filled(template(), policy);
    return stock.equals(Stock.NONE) ? text : StockSchema.into(text, stock);
  }

  /** What schemas of parts of a plan refer to, as the value of their {@code $defs}. */
  public static String definitions(Policy policy) {
    String text = filled(template(), policy);
    String key = "\n  \"$defs\": ";
    return text.substring(text.indexOf(key) + key.length(), text.lastIndexOf('}')).strip();
  }

  private static String filled(String template, Policy policy) {
    String text = template;
    for (Map.Entry<String, String> form : forms().entrySet()) {
      text = text.replace(quoted("@" + form.getKey() + "@"), quoted(form.getValue()));
    }
    for (Map.Entry<String, String> word : Glossary.all().entrySet()) {
      text = text.replace("@word " + word.getKey() + "@", spoken(word));
    }
    text = fill(text, "colours", Colours.names());
    text = fill(text, "fibres", names(policy.fibres(), f -> f.name(), f -> f.aliases()));
    text = fill(text, "groups", names(policy.groups(), g -> g.name(), g -> g.aliases()));
    return fill(text, "substances", names(policy.substances(), s -> s.name(), s -> s.aliases()));
  }

  /** A word of the trade with its meaning, inside a string of JSON. */
  private static String spoken(Map.Entry<String, String> word) {
    String said = quoted(word.getKey() + ": " + word.getValue());
    return said.substring(1, 2).toUpperCase(Locale.ROOT) + said.substring(2, said.length() - 1);
  }

  private static Map<String, String> forms() {
    Map<String, String> forms = new LinkedHashMap<>();
    forms.put("length", WrittenForms.of(Length.class));
    forms.put("lengthAboveZero", WrittenForms.aboveZero(Length.class));
    forms.put("signedLength", WrittenForms.signed(Length.class));
    forms.put("area", WrittenForms.aboveZero(Area.class));
    forms.put("time", WrittenForms.of(Span.class));
    forms.put("timeAboveZero", WrittenForms.aboveZero(Span.class));
    forms.put("temperature", WrittenForms.of(Temperature.class));
    forms.put("share", WrittenForms.of(Share.class));
    forms.put("shareAboveZero", WrittenForms.aboveZero(Share.class));
    forms.put("mass", WrittenForms.aboveZero(Mass.class));
    forms.put("arealMass", WrittenForms.aboveZero(ArealMass.class));
    forms.put("meshCount", WrittenForms.aboveZero(MeshCount.class));
    forms.put("airSpeed", WrittenForms.of(AirSpeed.class));
    forms.put("angle", WrittenForms.of(Angle.class));
    forms.put("amount", WrittenForms.amount());
    forms.put("size", WrittenForms.size());
    forms.put("place", WrittenForms.place());
    return forms;
  }

  private static <T> List<String> names(
      List<T> table,
      java.util.function.Function<T, String> name,
      java.util.function.Function<T, List<String>> aliases) {
    TreeSet<String> names = new TreeSet<>();
    for (T entry : table) {
      names.add(name.apply(entry).toLowerCase(Locale.ROOT));
      aliases.apply(entry).forEach(a -> names.add(a.toLowerCase(Locale.ROOT)));
      // As the table writes them too, so that an editor offers DCT rather than dct.
      names.addAll(aliases.apply(entry));
    }
    return new ArrayList<>(names);
  }

  /** The names for an editor to offer, and the same ones in any case, which the reader takes. */
  private static String fill(String text, String mark, List<String> names) {
    String anyCase =
        names.stream()
            .map(n -> n.toLowerCase(Locale.ROOT))
            .distinct()
            .map(PlanSchema::anyCase)
            .collect(Collectors.joining("|", "^(?:", ")$"));
    return text.replace(
            quoted("@" + mark + "@"),
            names.stream().map(PlanSchema::quoted).collect(Collectors.joining(", ")))
        .replace(quoted("@any case of " + mark + "@"), quoted(anyCase));
  }

  private static String anyCase(String name) {
    StringBuilder form = new StringBuilder();
    for (char c : name.toCharArray()) {
      if (c >= 'a' && c <= 'z') {
        form.append('[').append(c).append((char) (c - 'a' + 'A')).append(']');
      } else {
        form.append("()[]{}.*+?^$|\\/".indexOf(c) < 0 ? "" : "\\").append(c);
      }
    }
    return form.toString();
  }

  /** As a string of JSON. */
  public static String quoted(String text) {
    StringBuilder json = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c < ' ') {
                json.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                json.append(c == '"' || c == '\\' ? "\\" : "").appendCodePoint(c);
              }
            });
    return json.append('"').toString();
  }

  private static String template() {
    try (InputStream in = PlanSchema.class.getResourceAsStream("plan-schema.json")) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: plan-schema.json");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
