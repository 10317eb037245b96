package strikeoff.artwork;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/** What an element says of how it is painted, by attributes, style sheets and its own style. */
final class SvgSaid {

  /** Attributes that are read apart. */
  static final Set<String> TAKEN = Set.of("id", "class", "style", "href", "rel", "type", "media");

  private static final String XLINK = "http://www.w3.org/1999/xlink";

  private static final Set<String> PAINTING =
      Set.of(
          "fill",
          "fill-rule",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "stroke-opacity");

  private SvgSaid() {}

  /** An attribute that is SVG's own and no editor's; null if there is none. */
  static String attribute(XMLStreamReader in, String name) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String space = in.getAttributeNamespace(i);
      if ((space == null || space.isEmpty()) && in.getAttributeLocalName(i).equals(name)) {
        return in.getAttributeValue(i);
      }
    }
    return null;
  }

  /** Properties by name, the one that wins of each (CSS Cascading Level 3, 6). */
  static Map<String, String> of(XMLStreamReader in, SvgStyles styles) throws SvgNotDrawn {
    Map<String, String> said = new LinkedHashMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String space = in.getAttributeNamespace(i);
      String name = in.getAttributeLocalName(i);
      if ((space == null || space.isEmpty())
          && SvgRefusals.isProperty(name)
          && !in.getAttributeValue(i).isBlank()) {
        said.put(name, in.getAttributeValue(i));
      }
    }
    said.putAll(styles.of(in.getLocalName(), attribute(in, "class"), attribute(in, "id")));
    String own = attribute(in, "style");
    if (own != null) {
      try {
        said.putAll(SvgStyles.said(own));
      } catch (SvgNotDrawn e) {
        throw new SvgNotDrawn("style", e.getMessage());
      }
    }
    return said;
  }

  /** True if nothing of an element is painted, whatever it is. */
  static boolean isUnseen(Map<String, String> said, boolean shape) throws SvgNotDrawn {
    return said.getOrDefault("display", "").strip().equals("none")
        || (said.containsKey("opacity") && SvgRefusals.isNothing(said.get("opacity")))
        || (shape && isHidden(said));
  }

  private static boolean isHidden(Map<String, String> said) {
    String visibility = said.getOrDefault("visibility", "").strip();
    return visibility.equals("hidden") || visibility.equals("collapse");
  }

  /** True if a shape that says so, or lies in what says so, is filled or clips by that rule. */
  static boolean evenOdd(Map<String, String> said, boolean around) {
    String fill = said.getOrDefault("fill-rule", around ? "evenodd" : "nonzero").strip();
    String clip = said.getOrDefault("clip-rule", around ? "evenodd" : "nonzero").strip();
    return !fill.equals("nonzero") || !clip.equals("nonzero");
  }

  /** A property's value where it paints; empty where it has no effect. */
  static String kept(String element, boolean root, boolean inClip, String name, String value)
      throws SvgNotDrawn {
    if (name.equals("visibility") && !value.equals("visible")) {
      throw new SvgNotDrawn("delete what is hidden, or hide each shape");
    }
    if (name.equals("display") && value.equals("none") && (inClip || root)) {
      throw new SvgNotDrawn(root ? "nothing would be drawn: take it off" : SvgRefusals.CUT);
    }
    if (name.equals("opacity") && value.equals("0") && root) {
      throw new SvgNotDrawn("nothing would be drawn: take it off");
    }
    if (name.equals("overflow")
        && value.equals("visible")
        && !root
        && (element.equals("svg") || element.equals("symbol"))) {
      throw new SvgNotDrawn(SvgRefusals.CUT);
    }
    if (name.equals("clip-path") && !value.equals("none")) {
      boolean may =
          element.equals("g") || element.equals("a") || SvgPlaces.SHAPES.contains(element);
      if (!may || inClip) {
        throw new SvgNotDrawn(SvgRefusals.CUT);
      }
      return "url(#" + value.replaceAll("url\\(\\s*[\"']?#|[\"']?\\s*\\)", "") + ")";
    }
    return PAINTING.contains(name) && !inClip ? value : "";
  }

  /** The id of what a copy copies; empty of other elements. */
  static Optional<String> copied(XMLStreamReader in, String element) throws SvgNotDrawn {
    String plain = attribute(in, "href");
    String linked = in.getAttributeValue(XLINK, "href");
    if (element.equals("a")) {
      return Optional.empty();
    }
    if (plain != null && linked != null) {
      throw new SvgNotDrawn("href", "it has both “href” and “xlink:href”: delete one");
    }
    String href = plain == null ? linked : plain;
    if (!element.equals("use")) {
      if (href != null) {
        throw new SvgNotDrawn("href", "name only what is in this drawing, by a copy");
      }
      return Optional.empty();
    }
    if (href == null || !href.strip().matches("#[^\\s\"'()]+")) {
      throw new SvgNotDrawn("href", "name only what is in this drawing, as #leaf");
    }
    return Optional.of(href.strip().substring(1));
  }
}
