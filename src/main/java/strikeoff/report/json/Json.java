package strikeoff.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;

/** Writes JSON for people to read as well: two blanks a level, line ends {@code \n}. */
public final class Json {

  private final JsonGenerator out;

  private Json(JsonGenerator out) {
    this.out = out;
  }

  /** What fills an object or a list. */
  public interface Part {
    /** Writes it. */
    void write(Json json) throws IOException;
  }

  /** What fills the object of one thing of many. */
  public interface Each<T> {
    /** Writes it. */
    void write(Json json, T one) throws IOException;
  }

  /** A whole document: an object. */
  public static String document(Part content) {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withArrayEmptySeparator("")
            .withObjectEmptySeparator("");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(separators)
            .withArrayIndenter(indenter)
            .withObjectIndenter(indenter);
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.setPrettyPrinter(printer);
      out.writeStartObject();
      content.write(new Json(out));
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  /** A text; a lone half of a character pair, which UTF-8 can't say, becomes a question mark. */
  public Json put(String name, String value) throws IOException {
    out.writeStringField(name, whole(value));
    return this;
  }

  /** A whole number. */
  public Json put(String name, long value) throws IOException {
    out.writeNumberField(name, value);
    return this;
  }

  /** A number; null if it is without bound or unknown. */
  public Json put(String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      out.writeNumberField(name, value);
    } else {
      out.writeNullField(name);
    }
    return this;
  }

  /** Yes or no. */
  public Json put(String name, boolean value) throws IOException {
    out.writeBooleanField(name, value);
    return this;
  }

  /** A list of texts. */
  public Json put(String name, Collection<String> values) throws IOException {
    out.writeArrayFieldStart(name);
    for (String value : values) {
      out.writeString(whole(value));
    }
    out.writeEndArray();
    return this;
  }

  /** An object under a name. */
  public Json object(String name, Part content) throws IOException {
    out.writeObjectFieldStart(name);
    content.write(this);
    out.writeEndObject();
    return this;
  }

  /** A list under a name, which {@code content} fills. */
  public Json list(String name, Part content) throws IOException {
    out.writeArrayFieldStart(name);
    content.write(this);
    out.writeEndArray();
    return this;
  }

  /** A list of objects under a name, one for each of some things. */
  public <T> Json each(String name, Iterable<T> all, Each<T> content) throws IOException {
    out.writeArrayFieldStart(name);
    for (T one : all) {
      item(json -> content.write(json, one));
    }
    out.writeEndArray();
    return this;
  }

  /** An object in a list. */
  public Json item(Part content) throws IOException {
    out.writeStartObject();
    content.write(this);
    out.writeEndObject();
    return this;
  }

  private static String whole(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isSurrogate(text.charAt(i))) {
        return new String(
            text.getBytes(java.nio.charset.StandardCharsets.UTF_8),
            java.nio.charset.StandardCharsets.UTF_8);
      }
    }
    return text;
  }
}
