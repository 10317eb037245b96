package strikeoff.plan.yaml;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;

/**
 * A JSON Schema as a tree. It is read from a file with marks such as {@code @length@}, the marks
 * are filled in with what the program knows, and what is said of each property is completed.
 */
public final class SchemaTree {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern MARK = Pattern.compile("@([^@]+)@");
  private static final int MOST_SHOWN = 2;

  private SchemaTree() {}

  /** An object without anything in it. */
  public static ObjectNode object() {
    return JSON.createObjectNode();
  }

  /** A schema that refers to a definition. */
  public static ObjectNode reference(String definition) {
    return object().put("$ref", "#/$defs/" + definition);
  }

  /** A list of texts. */
  public static ArrayNode list(Iterable<String> texts) {
    ArrayNode list = JSON.createArrayNode();
    texts.forEach(list::add);
    return list;
  }

  /**
   * Reads a schema of the program's own.
   *
   * @param beside the class that the file lies beside
   * @param marks what each mark stands for; several texts where it is an item of a list
   * @throws IllegalStateException if the file is missing, or has a mark that nothing fills
   */
  public static ObjectNode read(Class<?> beside, String file, Map<String, List<String>> marks) {
    try (InputStream in = beside.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + file);
      }
      return (ObjectNode) filled(JSON.readTree(in), marks);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode filled(JsonNode node, Map<String, List<String>> marks) {
    if (node.isTextual()) {
      return new TextNode(filled(node.textValue(), marks));
    }
    if (node.isArray()) {
      ArrayNode list = JSON.createArrayNode();
      for (JsonNode item : node) {
        Matcher mark = MARK.matcher(item.asText());
        if (mark.matches()) {
          known(mark.group(1), marks).forEach(list::add);
        } else {
          list.add(filled(item, marks));
        }
      }
      return list;
    }
    if (node.isObject()) {
      ObjectNode object = object();
      node.properties()
          .forEach(e -> object.set(filled(e.getKey(), marks), filled(e.getValue(), marks)));
      return object;
    }
    return node;
  }

  private static String filled(String text, Map<String, List<String>> marks) {
    return MARK.matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(known(m.group(1), marks).get(0)));
  }

  private static List<String> known(String mark, Map<String, List<String>> marks) {
    List<String> texts = marks.get(mark);
    if (texts == null) {
      throw new IllegalStateException("nothing fills the mark " + mark + " of a schema");
    }
    return texts;
  }

  /**
   * Completes what is said of each property: how it is written, what is taken if it is left out, or
   * that it must be there. An editor shows this and nothing of what the property refers to.
   */
  public static void describe(ObjectNode schema) {
    describe(schema, schema);
  }

  private static void describe(JsonNode node, JsonNode schema) {
    if (node.path("properties").isObject() && node.has("additionalProperties")) {
      List<String> required =
          StreamSupport.stream(node.path("required").spliterator(), false)
              .map(JsonNode::textValue)
              .toList();
      for (Map.Entry<String, JsonNode> property : node.path("properties").properties()) {
        describe((ObjectNode) property.getValue(), schema, required.contains(property.getKey()));
      }
    }
    node.forEach(child -> describe(child, schema));
  }

  private static void describe(ObjectNode property, JsonNode schema, boolean required) {
    JsonNode meant = schema.at(property.path("$ref").asText().replace("#", ""));
    List<String> said = new ArrayList<>();
    said.add(of("description", property, meant).asText());
    String shown = shown(of("examples", property, meant));
    JsonNode standard = of("default", property, meant);
    if (standard.asText().matches("\\d+")) {
      property.set("default", IntNode.valueOf(standard.asInt()));
    }
    int leftOut = said.get(0).indexOf("Left out: ");
    if (!shown.isEmpty()) {
      String written = "Written as " + shown + ".";
      if (leftOut > 0) {
        said.set(
            0, said.get(0).substring(0, leftOut) + written + " " + said.get(0).substring(leftOut));
      } else {
        said.add(written);
      }
    }
    if (required) {
      said.add("It must be there.");
    } else if (leftOut < 0 && !standard.isMissingNode()) {
      said.add("Left out: " + standard.asText() + ".");
    }
    property.put("description", String.join(" ", said));
  }

  private static JsonNode of(String keyword, JsonNode property, JsonNode meant) {
    return property.has(keyword) ? property.get(keyword) : meant.path(keyword);
  }

  /** Examples as a plan writes them. Numbers show nothing that a description doesn't say. */
  private static String shown(JsonNode examples) {
    List<String> shown = new ArrayList<>();
    for (JsonNode example : examples) {
      if (!example.isNumber() && shown.size() < MOST_SHOWN) {
        String text = example.asText();
        shown.add(text.startsWith("#") ? "\"" + text + "\"" : text);
      }
    }
    return String.join(" or ", shown);
  }

  /** The schema's text; ends with a line end. */
  public static String text(ObjectNode schema) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    try {
      return JSON.writer(
                  new DefaultPrettyPrinter(
                          Separators.createDefaultInstance()
                              .withObjectFieldValueSpacing(Spacing.AFTER))
                      .withObjectIndenter(lines))
              .writeValueAsString(schema)
          + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
