package strikeoff.artwork;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import strikeoff.document.GivenUp;

/**
 * Looks an SVG file through before it is drawn (SVG 2), and keeps of it only what is known to be
 * drawn right: shapes, groups, copies and clips, with plain numbers and colours, styles worked out.
 * What isn't painted at all is left out; anything else is told by name and line. Nothing is fetched
 * and no entity is replaced.
 */
final class SvgLook {

  /** The name of what SVG holds. */
  static final String SVG = "http://www.w3.org/2000/svg";

  /** What is drawn by more is none, or was traced from a photograph. */
  private static final int MOST_PARTS = 50_000;

  private static final Set<String> HOLDING = Set.of("svg", "g", "a", "defs", "symbol", "clipPath");

  /** What is in them is drawn only where something names it. */
  private static final Set<String> STORING = Set.of("defs", "symbol", "clipPath");

  private final XMLStreamReader in;
  private final List<SvgEvents.Tag> kept = new ArrayList<>();
  private final SvgWrong wrong;
  private final SvgNames names;
  private final Deque<Open> open = new ArrayDeque<>();
  private final Set<String> drawn = new HashSet<>();
  private final SvgCopies copies = new SvgCopies(drawn);
  private final SvgClips clips = new SvgClips();
  private int parts;
  private int number;
  private SvgSize size;
  private SvgAttributes attributes;

  private SvgLook(XMLStreamReader in, SvgNames names, SvgWrong wrong) {
    this.in = in;
    this.names = names;
    this.wrong = wrong;
  }

  /**
   * What is left to draw.
   *
   * @param tags of a document whose root is as large as its coordinates
   */
  record Kept(SvgSize size, List<SvgEvents.Tag> tags) {}

  /**
   * An element that hasn't ended.
   *
   * @param evenOdd true if what is in it may be filled, or clip, by that rule
   * @param holders its id and those of all around it; the nameless one is the drawing
   */
  private record Open(String name, boolean evenOdd, boolean inClip, List<String> holders) {}

  /**
   * Looks a file through.
   *
   * @throws UnreadablePicture that names all that a film can't have
   */
  static Kept through(byte[] file) throws UnreadablePicture {
    SvgWrong wrong = new SvgWrong();
    try {
      SvgNames names = SvgNames.of(SvgHead.reader(file, wrong), wrong);
      SvgLook look = new SvgLook(SvgHead.reader(file, new SvgWrong()), names, wrong);
      look.look();
      wrong.requireNothing();
      look.copies.check(wrong);
      look.clips.check(wrong);
      wrong.requireNothing();
      return new Kept(look.size, look.kept);
    } catch (XMLStreamException e) {
      // Without its DOCTYPE a file may well break them: that is told then.
      wrong.requireNothing();
      throw new UnreadablePicture(
          "this drawing is no SVG that can be read: "
              + (e.getLocation() == null ? "it" : "line " + e.getLocation().getLineNumber())
              + " breaks the rules of XML; save it again");
    }
  }

  /** True of an element of SVG, or of a file that never says what it is. */
  static boolean isOurs(XMLStreamReader in) {
    String space = in.getNamespaceURI();
    return space == null || space.isEmpty() || space.equals(SVG);
  }

  private void look() throws XMLStreamException, UnreadablePicture {
    while (in.hasNext()) {
      GivenUp.ifAsked();
      switch (in.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (!begins()) {
            passOver();
          }
        }
        case XMLStreamConstants.END_ELEMENT -> keep(open.pop().name(), null);
        case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
          if (in.getPITarget().equals("xml-stylesheet")) {
            tell("xml-stylesheet", SvgRefusals.OUTSIDE);
          }
        }
        case XMLStreamConstants.ENTITY_REFERENCE ->
            tell("&" + in.getLocalName() + ";", "write it out");
        default -> {
          // Text and remarks draw nothing; style sheets were read before.
        }
      }
    }
  }

  private void tell(String name, String advice) {
    wrong.tell(in.getLocation().getLineNumber(), name, advice);
  }

  /** False if an element is passed over with all in it. */
  private boolean begins() throws UnreadablePicture {
    String name = in.getLocalName();
    int mine = number++;
    if (open.isEmpty()) {
      size = SvgSize.of(in);
      attributes = new SvgAttributes(in, size.box(), names.hasViews(), wrong);
    } else if (!isOurs(in)) {
      if (in.getNamespaceURI().equals("http://www.w3.org/2001/XInclude")) {
        tell(name, SvgRefusals.OUTSIDE);
      }
      return false;
    } else if (SvgRefusals.NEVER_DRAWN.contains(name)
        || name.equals("style")
        || names.isUnused(mine)) {
      return false;
    }
    try {
      return element(name);
    } catch (SvgNotDrawn e) {
      tell(e.name().orElse(name), e.getMessage());
      return false;
    }
  }

  private boolean element(String name) throws SvgNotDrawn, UnreadablePicture {
    Open parent = open.peek();
    boolean inClip = parent != null && parent.inClip();
    boolean shape = SvgPlaces.SHAPES.contains(name);
    Map<String, String> said = SvgSaid.of(in, names.styles);
    boolean painted = parent != null && !inClip && !STORING.contains(name);
    if (painted && SvgSaid.isUnseen(said, shape)) {
      return false;
    }
    boolean holds = HOLDING.contains(name);
    if (!shape && !holds && !name.equals("use")) {
      throw new SvgNotDrawn(SvgRefusals.ofElement(name));
    }
    if (parent != null && !HOLDING.contains(parent.name())) {
      throw new SvgNotDrawn("nothing is drawn within a shape: delete it");
    }
    if (inClip && holds) {
      throw new SvgNotDrawn(SvgRefusals.CUT);
    }
    if (++parts > MOST_PARTS) {
      throw new UnreadablePicture(
          "this drawing has more than " + MOST_PARTS + " parts; save the film as PNG");
    }
    String id = SvgSaid.attribute(in, "id");
    List<String> holders = new ArrayList<>(parent == null ? List.of() : parent.holders());
    if (parent == null) {
      holders.add("");
    } else if (STORING.contains(name)) {
      holders.remove("");
    }
    if (id != null) {
      holders.add(id);
      drawn.add(id);
      if (names.isTwice(id)) {
        tell(id, "two parts have this id, and something names it: give each its own");
      }
    }
    boolean evenOdd = SvgSaid.evenOdd(said, parent != null && parent.evenOdd());
    Map<String, String> all = attributes.of(name, parent == null, inClip, said);
    if (shape) {
      copies.shape(holders);
    }
    if (name.equals("use")) {
      copy(all, holders, inClip);
    }
    clips.element(in.getLocation().getLineNumber(), name, id, inClip, evenOdd, all);
    String drawnAs = name.equals("a") ? "g" : name;
    open.push(new Open(drawnAs, evenOdd, inClip || name.equals("clipPath"), holders));
    keep(drawnAs, written(all));
    return true;
  }

  /** Nothing is drawn of what holds something wrong. */
  private void keep(String name, String[] said) {
    if (wrong.isNothing()) {
      kept.add(new SvgEvents.Tag(name, said));
    } else {
      kept.clear();
    }
  }

  private static String[] written(Map<String, String> all) {
    return all.entrySet().stream()
        .flatMap(each -> Stream.of(each.getKey(), each.getValue()))
        .toArray(String[]::new);
  }

  private void copy(Map<String, String> all, List<String> holders, boolean inClip)
      throws SvgNotDrawn {
    String of = all.getOrDefault("href", "#").substring(1);
    String target = names.elements.getOrDefault(of, "");
    if (target.equals("symbol")) {
      if (!all.containsKey("width") || !all.containsKey("height")) {
        throw new SvgNotDrawn("write the width and height of the copy");
      }
    } else {
      all.remove("width");
      all.remove("height");
    }
    if (!SvgPlaces.SHAPES.contains(target)
        && !Set.of("", "g", "a", "use", "symbol").contains(target)) {
      throw new SvgNotDrawn("copies of " + target + " aren't drawn here: draw it again");
    }
    if (inClip && (all.containsKey("x") || all.containsKey("y") || all.containsKey("transform"))) {
      throw new SvgNotDrawn(SvgRefusals.CUT);
    }
    copies.copy(holders, of, in.getLocation().getLineNumber());
  }

  private void passOver() throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      GivenUp.ifAsked();
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
        number++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
  }
}
