package strikeoff.plan.yaml;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.policy.Default;
import strikeoff.policy.Glossary;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeshCount;
import strikeoff.units.Phrase;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.WrittenForms;

/**
 * The JSON Schema (2020-12) of a plan, for editors that complete and explain. Its keys stand in
 * {@code plan-schema.json}; what units, fibres, dyes, substances and colours are called, and what
 * is taken where a plan leaves a value open, is filled in from what the reader knows. It finds what
 * one place of a plan shows; what takes the whole plan, such as a name that nothing has, only the
 * reader finds.
 *
 * <p>An editor offers what stands in an {@code enum}, so only the usual name of a thing stands
 * there. Its other names are taken by a {@code pattern} and told in its description. They are not
 * {@code deprecated}: nobody is asked to give them up.
 *
 * <p>Pieces of a plan to insert stand in {@code defaultSnippets}. The specification leaves such a
 * keyword to whoever knows it (JSON Schema 2020-12, core, 4.3.1); the YAML language server and the
 * editors that it serves do.
 */
public final class PlanSchema {

  private PlanSchema() {}

  /**
   * The schema's text; ends with a line end.
   *
   * @param policy whose tables name fibres, groups and substances, and whose defaults are told
   * @param stock what the studio owns, so that the plan needn't describe it
   */
  public static String text(Policy policy, Stock stock) {
    ObjectNode schema = filled(policy);
    if (!stock.equals(Stock.NONE)) {
      StockSchema.into(schema, stock);
    }
    SchemaTree.describe(schema);
    return SchemaTree.text(schema);
  }

  /** What schemas of parts of a plan refer to, as the value of their {@code $defs}. */
  public static ObjectNode definitions(Policy policy) {
    return (ObjectNode) filled(policy).get("$defs");
  }

  private static ObjectNode filled(Policy policy) {
    Map<String, List<String>> marks = forms();
    Glossary.all()
        .forEach(
            (word, meaning) ->
                marks.put("word " + word, List.of(Phrase.capital(word) + ": " + meaning)));
    for (Default<?> standard : policy.defaults().values()) {
      marks.put("default " + standard.name(), List.of(standard.text()));
    }
    names(marks, "colours", Colours.names(), c -> c, c -> List.of());
    names(marks, "fibres", policy.fibres(), f -> f.name(), f -> f.aliases());
    names(marks, "groups", policy.groups(), g -> g.name(), g -> g.aliases());
    names(marks, "substances", policy.substances(), s -> s.name(), s -> s.aliases());
    ObjectNode schema = SchemaTree.read(PlanSchema.class, "plan-schema.json", marks);
    ObjectNode definitions = (ObjectNode) schema.get("$defs");
    each(definitions, "blend", "share", marks.get("fibres"), "The share of %s in the cloth.");
    each(definitions, "amounts", "amount", marks.get("substances"), "How much %s there is in it.");
    return schema;
  }

  /** Keys for an editor to offer, all of one kind. */
  private static void each(
      ObjectNode definitions, String of, String kind, List<String> names, String said) {
    ObjectNode properties = (ObjectNode) definitions.get(of).get("properties");
    for (String name : names) {
      properties
          .putObject(name)
          .put("description", said.replace("%s", name) + " Left out: none.")
          .setAll(SchemaTree.reference(kind));
    }
  }

  private static Map<String, List<String>> forms() {
    Map<String, List<String>> forms = new HashMap<>();
    forms.put("length", List.of(WrittenForms.of(Length.class)));
    forms.put("lengthAboveZero", List.of(WrittenForms.aboveZero(Length.class)));
    forms.put("signedLength", List.of(WrittenForms.signed(Length.class)));
    forms.put("area", List.of(WrittenForms.aboveZero(Area.class)));
    forms.put("time", List.of(WrittenForms.of(Span.class)));
    forms.put("timeAboveZero", List.of(WrittenForms.aboveZero(Span.class)));
    forms.put("temperature", List.of(WrittenForms.of(Temperature.class)));
    forms.put("share", List.of(WrittenForms.of(Share.class)));
    forms.put("shareAboveZero", List.of(WrittenForms.aboveZero(Share.class)));
    forms.put("mass", List.of(WrittenForms.aboveZero(Mass.class)));
    forms.put("arealMass", List.of(WrittenForms.aboveZero(ArealMass.class)));
    forms.put("meshCount", List.of(WrittenForms.aboveZero(MeshCount.class)));
    forms.put("airSpeed", List.of(WrittenForms.of(AirSpeed.class)));
    forms.put("angle", List.of(WrittenForms.of(Angle.class)));
    forms.put("amount", List.of(WrittenForms.amount()));
    forms.put("size", List.of(WrittenForms.size()));
    forms.put("place", List.of(WrittenForms.place()));
    return forms;
  }

  /** The usual names for an editor to offer, and all names in any case, which the reader takes. */
  private static <T> void names(
      Map<String, List<String>> marks,
      String mark,
      List<T> table,
      Function<T, String> name,
      Function<T, List<String>> aliases) {
    TreeSet<String> usual = new TreeSet<>();
    TreeSet<String> others = new TreeSet<>();
    for (T entry : table) {
      usual.add(name.apply(entry));
      others.addAll(aliases.apply(entry));
    }
    TreeSet<String> all = new TreeSet<>();
    usual.forEach(n -> all.add(n.toLowerCase(Locale.ROOT)));
    others.forEach(n -> all.add(n.toLowerCase(Locale.ROOT)));
    marks.put(mark, List.copyOf(usual));
    marks.put(
        "others of " + mark,
        List.of("These names are read as well, in any case: " + String.join(", ", others) + "."));
    marks.put(
        "any case of " + mark,
        List.of(
            all.stream().map(PlanSchema::anyCase).collect(Collectors.joining("|", "^(?:", ")$"))));
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
}
