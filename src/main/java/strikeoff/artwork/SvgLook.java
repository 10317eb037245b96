package strikeoff.artwork;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.namespace.QName;
import javax.xml.stream.Location;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.XMLEvent;
import strikeoff.document.GivenUp;
import strikeoff.units.Script;

/**
 * Looks an SVG file through before it is drawn (SVG 2), and keeps of it only what a film needs:
 * shapes, groups, copies and clips, with the attributes that shape them. What would change a film
 * unseen is told by name and place; what belongs to an editor alone is left out. Nothing is fetched
 * and no entity is replaced.
 */
final class SvgLook {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** What is drawn by more is none, or was traced from a photograph. */
  private static final int MOST_PARTS = 50_000;

  private static final int DEEPEST = 100;
  private static final int MOST_TOLD = 5;

  /**
   * Letters of all outlines to clip by: where they cross each other, each crossing takes memory.
   */
  private static final int MOST_CLIPPING = 4_000;

  private static final Set<String> DRAWN =
      Set.of(
          "svg",
          "g",
          "defs",
          "symbol",
          "use",
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "clipPath",
          "style");

  private static final Set<String> OUTLINES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

  /** Groups in a clip would draw nothing, silently. */
  private static final Set<String> CLIPPING =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "use");

  private static final String CUT = "cut the shapes themselves, or save the film as PNG";

  private static final Set<String> SIZES =
      Set.of("x", "y", "width", "height", "viewBox", "preserveAspectRatio");

  private static final Set<String> PASSED_OVER = Set.of("title", "desc", "metadata");

  private final XMLStreamReader in;
  private final XMLEventFactory events = XMLEventFactory.newDefaultFactory();
  private final List<XMLEvent> kept = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();

  /** Letters of outlines by their names, and names of those that clips copy. */
  private final Map<String, Integer> outlines = new HashMap<>();

  private final List<String> clipCopies = new ArrayList<>();
  private int more;
  private int parts;
  private int clipping;
  private int clips;
  private Optional<SvgSize> size = Optional.empty();

  private SvgLook(XMLStreamReader in) {
    this.in = in;
  }

  /**
   * What is left to draw.
   *
   * @param events of a document whose root is as large as its coordinates
   */
  record Kept(SvgSize size, List<XMLEvent> events) {}

  /**
   * Looks a file through.
   *
   * @throws UnreadablePicture that names all that a film can't have
   */
  static Kept through(byte[] file) throws UnreadablePicture {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    List<String> told = List.of();
    try {
      SvgLook look = new SvgLook(factory.createXMLStreamReader(new ByteArrayInputStream(file)));
      told = look.wrong;
      look.look();
      look.requireNothingWrong();
      return new Kept(look.size.orElseThrow(), look.kept);
    } catch (XMLStreamException e) {
      // Without its DOCTYPE a file may well break them: that is told then.
      if (!told.isEmpty()) {
        throw wrong(told, 0);
      }
      throw new UnreadablePicture(
          "this drawing is no SVG that can be read: "
              + place(e.getLocation())
              + " breaks the rules of XML; save it again");
    }
  }

  private static String place(Location at) {
    return at == null ? "it" : "line " + at.getLineNumber();
  }

  private void look() throws XMLStreamException, UnreadablePicture {
    int depth = 0;
    while (in.hasNext()) {
      GivenUp.ifAsked();
      int event = in.next();
      switch (event) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (begins(depth)) {
            depth++;
          }
        }
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          clips -= in.getLocalName().equals("clipPath") ? 1 : 0;
          kept.add(events.createEndElement(new QName(SVG, in.getLocalName()), null));
        }
        case XMLStreamConstants.DTD -> tell("DOCTYPE", "delete it, with all in its brackets");
        case XMLStreamConstants.ENTITY_REFERENCE ->
            tell("&" + in.getLocalName() + ";", "write it out");
        default -> {
          // Text counts in a style alone, which is read as a whole; remarks count nowhere.
        }
      }
    }
  }

  private void requireNothingWrong() throws UnreadablePicture {
    if (!wrong.isEmpty()) {
      throw wrong(wrong, more);
    }
    for (String copied : clipCopies) {
      if (!outlines.containsKey(copied)) {
        throw new UnreadablePicture(
            "this drawing clips by “#" + copied + "”, which is no outline; " + CUT);
      }
      clipping += outlines.get(copied);
    }
    if (clipping > MOST_CLIPPING) {
      throw new UnreadablePicture(
          "this drawing clips by outlines of more than " + MOST_CLIPPING + " letters; " + CUT);
    }
  }

  private static UnreadablePicture wrong(List<String> wrong, int more) {
    return new UnreadablePicture(
        "this drawing holds what a film can't: "
            + String.join("; ", wrong)
            + (more > 0 ? "; and " + more + " more of the like" : ""));
  }

  /** False if an element was passed over with all in it. */
  private boolean begins(int depth) throws XMLStreamException, UnreadablePicture {
    String name = in.getLocalName();
    String space = in.getNamespaceURI();
    boolean ours = space == null || space.isEmpty() || space.equals(SVG);
    if (depth == 0) {
      if (!ours || !name.equals("svg")) {
        throw new UnreadablePicture("this is XML, but no SVG drawing; save the film as PNG or SVG");
      }
      size = Optional.of(SvgSize.of(in));
      kept.add(events.createStartElement(new QName(SVG, name), root().iterator(), null));
      return true;
    }
    if (!ours || PASSED_OVER.contains(name)) {
      passOver();
      return false;
    }
    boolean drawn = clips > 0 ? CLIPPING.contains(name) : DRAWN.contains(name);
    if (!drawn) {
      tell(name, DRAWN.contains(name) ? CUT : SvgRefusals.ofElement(name));
      passOver();
      return false;
    }
    if (++parts > MOST_PARTS || depth > DEEPEST) {
      throw new UnreadablePicture(
          "this drawing has more than "
              + (depth > DEEPEST ? DEEPEST + " parts in each other" : MOST_PARTS + " parts")
              + "; save the film as PNG");
    }
    QName element = new QName(SVG, name);
    clips += name.equals("clipPath") ? 1 : 0;
    kept.add(events.createStartElement(element, attributes(name).iterator(), null));
    String id = in.getAttributeValue(null, "id");
    if (id != null && OUTLINES.contains(name)) {
      outlines.put(id, letters("d") + letters("points"));
    }
    if (name.equals("style")) {
      String sheet = in.getElementText();
      SvgRefusals.inSheet(sheet).forEach(this::tell);
      kept.add(events.createCharacters(sheet));
      kept.add(events.createEndElement(element, null));
      return false;
    }
    return true;
  }

  /** What the root hands down to its shapes, and its own coordinates for a size. */
  private List<Attribute> root() {
    List<Attribute> attributes = attributes("svg");
    attributes.removeIf(a -> SIZES.contains(a.getName().getLocalPart()));
    double[] box = size.orElseThrow().box();
    attributes.add(events.createAttribute("width", String.valueOf(box[2])));
    attributes.add(events.createAttribute("height", String.valueOf(box[3])));
    attributes.add(
        events.createAttribute("viewBox", box[0] + " " + box[1] + " " + box[2] + " " + box[3]));
    return attributes;
  }

  private List<Attribute> attributes(String element) {
    List<Attribute> attributes = new ArrayList<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String name = in.getAttributeLocalName(i);
      String space = in.getAttributeNamespace(i);
      String value = in.getAttributeValue(i);
      boolean plain = space == null || space.isEmpty();
      if (plain && name.equals("style")) {
        SvgRefusals.inStyle(value).forEach(this::tell);
        attributes.add(events.createAttribute("style", value));
      } else if (name.equals("href") && (plain || space.equals(XLINK))) {
        if (!element.equals("use") || !value.startsWith("#")) {
          tell("href", "name only what is in this drawing, as #leaf");
        }
        if (clips > 0) {
          clipCopies.add(value.substring(Math.min(1, value.length())));
        }
        attributes.add(events.createAttribute("href", value));
      } else if (plain) {
        Optional<String> why = SvgRefusals.ofAttribute(name, value);
        why.ifPresent(w -> tell(name, w));
        if (why.isEmpty() && SvgRefusals.shapes(name)) {
          attributes.add(events.createAttribute(name, value));
        }
      } else if (name.equals("base")) {
        tell("xml:base", "delete it");
      }
    }
    clipping += clips > 0 ? letters("d") + letters("points") : 0;
    return attributes;
  }

  private int letters(String name) {
    String value = in.getAttributeValue(null, name);
    return value == null ? 0 : value.length();
  }

  private void passOver() throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      GivenUp.ifAsked();
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
  }

  private void tell(String name, String advice) {
    if (wrong.size() == MOST_TOLD) {
      more++;
      return;
    }
    wrong.add(place(in.getLocation()) + " " + Script.quoted(name) + " (" + advice + ")");
  }
}
