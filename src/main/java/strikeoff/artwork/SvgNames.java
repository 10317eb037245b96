package strikeoff.artwork;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import strikeoff.document.GivenUp;

/**
 * What has to be known of a drawing before the first of its shapes is: its style sheets, which may
 * stand below, and what of its store ({@code defs}) nothing names.
 */
final class SvgNames {

  /** Deeper than any editor lays groups. */
  static final int DEEPEST = 100;

  private static final Pattern NAMED = Pattern.compile("#([^\\s\"'()]+)");

  final SvgStyles styles = new SvgStyles();

  /** Elements by their ids. */
  final Map<String, String> elements = new HashMap<>();

  private final Set<String> twice = new HashSet<>();
  private final Set<String> named = new HashSet<>();

  /** Ids in each part of the store, by the element's number. */
  private final Map<Integer, Set<String>> stored = new HashMap<>();

  private final BitSet unused = new BitSet();
  private boolean views;

  private record Open(String name, int number, boolean stored) {}

  private SvgNames() {}

  static SvgNames of(XMLStreamReader in, SvgWrong wrong)
      throws XMLStreamException, UnreadablePicture {
    SvgNames names = new SvgNames();
    names.read(in, wrong);
    for (Map.Entry<Integer, Set<String>> part : names.stored.entrySet()) {
      if (part.getValue().stream().noneMatch(names.named::contains)) {
        names.unused.set(part.getKey());
      }
    }
    names.stored.clear();
    names.twice.retainAll(names.named);
    return names;
  }

  /** True of the element of that number, counted in the file's order, if nothing draws it. */
  boolean isUnused(int number) {
    return unused.get(number);
  }

  /** True if two elements have that id and something names it. */
  boolean isTwice(String id) {
    return twice.contains(id);
  }

  /** True if a part has coordinates of its own, so that a percentage may be of anything. */
  boolean hasViews() {
    return views;
  }

  private void read(XMLStreamReader in, SvgWrong wrong)
      throws XMLStreamException, UnreadablePicture {
    Deque<Open> open = new ArrayDeque<>();
    int number = 0;
    while (in.hasNext()) {
      GivenUp.ifAsked();
      int event = in.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        open.pop();
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        String name = in.getLocalName();
        if (number == 0 && !(name.equals("svg") && SvgLook.isOurs(in))) {
          throw new UnreadablePicture(
              "this is XML, but no SVG drawing; save the film as PNG or SVG");
        }
        boolean store =
            !open.isEmpty()
                && (open.peek().name().equals("defs")
                    || name.equals("symbol")
                    || name.equals("clipPath"));
        views |= !open.isEmpty() && (name.equals("svg") || name.equals("symbol"));
        if (store) {
          stored.put(number, new HashSet<>());
        }
        open.push(new Open(name, number++, store));
        if (open.size() > DEEPEST + 1) {
          throw new UnreadablePicture(
              "this drawing has more than "
                  + DEEPEST
                  + " parts in each other; save the film as PNG");
        }
        attributes(in, open);
        if (name.equals("style") && SvgLook.isOurs(in)) {
          sheet(in, wrong);
          open.pop();
        }
      }
    }
  }

  private void attributes(XMLStreamReader in, Deque<Open> open) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String value = in.getAttributeValue(i);
      if (in.getAttributeLocalName(i).equals("id")) {
        if (elements.put(value, in.getLocalName()) != null) {
          twice.add(value);
        }
        for (Open each : open) {
          if (each.stored()) {
            stored.get(each.number()).add(value);
          }
        }
      } else {
        name(value);
      }
    }
  }

  private void name(String text) {
    if (text.indexOf('#') >= 0) {
      Matcher matcher = NAMED.matcher(text);
      while (matcher.find()) {
        named.add(matcher.group(1));
      }
    }
  }

  private void sheet(XMLStreamReader in, SvgWrong wrong) throws XMLStreamException {
    int line = in.getLocation().getLineNumber();
    String type = SvgSaid.attribute(in, "type");
    String media = SvgSaid.attribute(in, "media");
    String sheet = in.getElementText();
    name(sheet);
    try {
      if (type != null && !type.isBlank() && !type.strip().equals("text/css")) {
        throw new SvgNotDrawn("write it as text/css");
      }
      if (media != null && !media.strip().equals("all")) {
        throw new SvgNotDrawn("write it for all media");
      }
      styles.add(sheet);
    } catch (SvgNotDrawn e) {
      wrong.tell(line, "style", e.getMessage());
    }
  }
}
