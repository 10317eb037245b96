package strikeoff.report.drawing;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An SVG element with its attributes and children. It writes itself escaped, numbers with a decimal
 * point and at most two decimals, attributes in the order they were given.
 */
public final class Svg implements Content {

  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Content> children = new ArrayList<>();

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
    return of("path").with("d", "M" + pair(x1, y1) + "L" + pair(x2, y2));
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
    attributes.put(attribute, value);
    return this;
  }

  public Svg with(String attribute, double value) {
    return with(attribute, number(value));
  }

  /** A name that a screen reader says and a pointer shows. */
  Svg titled(String words) {
    children.add(0, of("title").add(words));
    return this;
  }

  public Svg add(Svg child) {
    children.add(child);
    return this;
  }

  public Svg add(String words) {
    children.add(out -> out.writeContent(escaped(words)));
    return this;
  }

  @Override
  public void writeTo(TemplateOutput out) {
    out.writeContent("<" + name);
    attributes.forEach(
        (attribute, value) -> out.writeContent(" " + attribute + "=\"" + escaped(value) + "\""));
    if (children.isEmpty()) {
      out.writeContent("/>");
      return;
    }
    out.writeContent(">");
    children.forEach(child -> child.writeTo(out));
    out.writeContent("</" + name + ">");
  }

  @Override
  public String toString() {
    StringOutput out = new StringOutput();
    writeTo(out);
    return out.toString();
  }

  /** At most two decimals, always a point, no trailing zeros, never a minus zero. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a coordinate: " + value);
    }
    long hundredths = Math.round(value * 100);
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    String sign = hundredths < 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    String decimals = rest < 10 ? "0" + rest : rest % 10 == 0 ? "" + rest / 10 : "" + rest;
    return sign + whole + "." + decimals;
  }

  static String pair(double x, double y) {
    return number(x) + " " + number(y);
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> escaped.append(c < ' ' && c != '\n' && c != '\t' ? '\uFFFD' : c);
      }
    }
    return escaped.toString();
  }
}
