package strikeoff.report.drawing;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Visible;

/**
 * An SVG element with its attributes and children. It writes itself escaped, numbers with a decimal
 * point and at most two decimals, attributes in the order they were given.
 */
public final class Svg implements Content {

  private final String name;
  private final List<Attribute> attributes = new ArrayList<>(6);
  private final List<Part> children = new ArrayList<>();

  /**
   * An attribute.
   *
   * @param plain true for what cannot mean anything else in XML, such as a number
   */
  private record Attribute(String name, String value, boolean plain) {}

  /** What stands inside an element. */
  private sealed interface Part permits Svg.Child, Svg.Words {}

  private record Child(Svg element) implements Part {}

  private record Words(String words) implements Part {}

  private Svg(String name) {
    this.name = name;
  }

  /** An empty element; the name is one of ours, never a plan's. */
  public static Svg of(String name) {
    return new Svg(name);
  }

  /** A group with a class that the style sheet knows. */
  static Svg group(String cssClass) {
    return of("g").with("class", cssClass);
  }

  /** A drawing window onto the given rectangle. */
  static Svg window(double x, double y, double width, double height) {
    return of("svg")
        .with("viewBox", number(x) + " " + number(y) + " " + number(width) + " " + number(height));
  }

  static Svg rect(double x, double y, double width, double height) {
    return of("rect").with("x", x).with("y", y).with("width", width).with("height", height);
  }

  static Svg line(double x1, double y1, double x2, double y2) {
    return of("path").with(new Attribute("d", "M" + pair(x1, y1) + "L" + pair(x2, y2), true));
  }

  static Svg path(String data) {
    return of("path").with("d", data);
  }

  static Svg use(String id) {
    return of("use").with("href", "#" + id);
  }

  static Svg text(double x, double y, String words) {
    return of("text").with("x", x).with("y", y).add(words);
  }

  public Svg with(String attribute, String value) {
    return with(new Attribute(attribute, value, false));
  }

  public Svg with(String attribute, double value) {
    return with(new Attribute(attribute, number(value), true));
  }

  private Svg with(Attribute next) {
    for (int i = 0; i < attributes.size(); i++) {
      if (attributes.get(i).name().equals(next.name())) {
        attributes.set(i, next);
        return this;
      }
    }
    attributes.add(next);
    return this;
  }

  /** A name that a screen reader says and a pointer shows. */
  Svg titled(String words) {
    children.add(0, new Child(of("title").add(words)));
    return this;
  }

  public Svg add(Svg child) {
    children.add(new Child(child));
    return this;
  }

  public Svg add(String words) {
    children.add(new Words(words));
    return this;
  }

  @Override
  public void writeTo(TemplateOutput out) {
    Pen pen = new Pen(out);
    write(pen);
    pen.flush();
  }

  @Override
  public String toString() {
    StringOutput out = new StringOutput();
    writeTo(out);
    return out.toString();
  }

  /**
   * Writes a drawing in stretches: not each word by itself, nor all in one text, which one letter
   * outside Latin 1 would make twice as long and slow to encode.
   */
  private static final class Pen {
    private static final int STRETCH = 4096;

    private final TemplateOutput out;
    private StringBuilder text = new StringBuilder(STRETCH + 512);

    Pen(TemplateOutput out) {
      this.out = out;
    }

    StringBuilder text() {
      if (text.length() >= STRETCH) {
        flush();
        text = new StringBuilder(STRETCH + 512);
      }
      return text;
    }

    void flush() {
      // Each word was made visible when it was escaped; nobody need look at all of them again.
      out.writeBinaryContent(text.toString().getBytes(StandardCharsets.UTF_8));
    }
  }

  private void write(Pen pen) {
    StringBuilder out = pen.text();
    out.append('<').append(name);
    for (Attribute attribute : attributes) {
      out.append(' ').append(attribute.name()).append("=\"");
      if (attribute.plain()) {
        out.append(attribute.value());
      } else {
        escape(attribute.value(), out);
      }
      out.append('"');
    }
    if (children.isEmpty()) {
      out.append("/>");
      return;
    }
    out.append('>');
    for (Part child : children) {
      if (child instanceof Child inside) {
        inside.element().write(pen);
      } else if (child instanceof Words words) {
        escape(words.words(), pen.text());
      }
    }
    pen.text().append("</").append(name).append('>');
  }

  /** At most two decimals, always a point, no trailing zeros, never a minus zero. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a coordinate: " + value);
    }
    long hundredths = Math.round(value * 100);
    long rest = Math.abs(hundredths % 100);
    if (rest == 0) {
      return Long.toString(hundredths / 100);
    }
    StringBuilder text = new StringBuilder(12);
    if (hundredths < 0) {
      text.append('-');
    }
    text.append(Math.abs(hundredths / 100)).append('.').append(rest / 10);
    if (rest % 10 != 0) {
      text.append(rest % 10);
    }
    return text.toString();
  }

  static String pair(double x, double y) {
    return number(x) + " " + number(y);
  }

  /** Whole texts and stretches are copied at once, where appending a part would go by letters. */
  private static void escape(String words, StringBuilder out) {
    String text = Visible.of(words);
    int length = text.length();
    int written = 0;
    for (int i = 0; i < length; i++) {
      String instead = instead(text.charAt(i));
      if (instead != null) {
        out.append(text.substring(written, i)).append(instead);
        written = i + 1;
      }
    }
    out.append(written == 0 ? text : text.substring(written));
  }

  /** What is written for a character that means something else in XML; null for all others. */
  private static String instead(char c) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '"' -> "&quot;";
      case '\'' -> "&#39;";
      default -> null;
    };
  }
}
