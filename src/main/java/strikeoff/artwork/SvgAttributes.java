package strikeoff.artwork;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/** What of an element's attributes is drawn, in plain numbers and words. */
final class SvgAttributes {

  private static final Set<String> SIZES =
      Set.of("x", "y", "width", "height", "viewBox", "preserveAspectRatio");

  private final XMLStreamReader in;
  private final double[] box;
  private final SvgPlaces places;
  private final SvgWrong wrong;

  /**
   * @param in stands on each element in turn
   * @param box the root's
   * @param views true if parts have boxes of their own
   */
  SvgAttributes(XMLStreamReader in, double[] box, boolean views, SvgWrong wrong) {
    this.in = in;
    this.box = box;
    this.places =
        new SvgPlaces(
            views ? new double[] {Double.NaN, Double.NaN} : new double[] {box[2], box[3]});
    this.wrong = wrong;
  }

  private void tell(String name, String advice) {
    wrong.tell(in.getLocation().getLineNumber(), name, advice);
  }

  Map<String, String> of(String element, boolean root, boolean inClip, Map<String, String> said)
      throws SvgNotDrawn {
    Map<String, String> all = new LinkedHashMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String name = in.getAttributeLocalName(i);
      String space = in.getAttributeNamespace(i);
      boolean plain = space == null || space.isEmpty();
      try {
        if (name.equals("base") && !plain) {
          tell("xml:base", "delete it");
        } else if (plain && SvgRefusals.places(name)) {
          if (!root || !SIZES.contains(name)) {
            put(all, name, places.plain(element, name, in.getAttributeValue(i)));
          }
        } else if (plain && !SvgSaid.TAKEN.contains(name) && !SvgRefusals.isProperty(name)) {
          SvgRefusals.requireHarmless(name);
        }
      } catch (SvgNotDrawn e) {
        tell(name, e.getMessage());
      }
    }
    Optional<String> copied = SvgSaid.copied(in, element);
    for (Map.Entry<String, String> each : said.entrySet()) {
      try {
        String value = SvgRefusals.property(each.getKey(), each.getValue(), places.hundred());
        put(all, each.getKey(), SvgSaid.kept(element, root, inClip, each.getKey(), value));
      } catch (SvgNotDrawn e) {
        tell(each.getKey(), e.getMessage());
      }
    }
    if (!root) {
      all = SvgPlaces.together(element, all);
    } else {
      all.put("width", String.valueOf(box[2]));
      all.put("height", String.valueOf(box[3]));
      all.put("viewBox", box[0] + " " + box[1] + " " + box[2] + " " + box[3]);
    }
    String id = SvgSaid.attribute(in, "id");
    put(all, "id", id == null ? "" : id);
    put(all, "href", copied.map(of -> "#" + of).orElse(""));
    return all;
  }

  private static void put(Map<String, String> all, String name, String value) {
    if (!value.isEmpty()) {
      all.put(name, value);
    }
  }
}
