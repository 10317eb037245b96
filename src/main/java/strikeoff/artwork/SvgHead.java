package strikeoff.artwork;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Opens an SVG file so that nothing is fetched, no DOCTYPE is read and no entity is replaced. */
final class SvgHead {

  private static final int HEAD = 1 << 16;
  private static final String BEGINS = "<!DOCTYPE";

  /** As SVG 1.1 has it, which editors write: with a public name, and nothing of its own. */
  private static final Pattern USUAL =
      Pattern.compile(
          "<!DOCTYPE\\s+[a-z]+(\\s+PUBLIC\\s+(\"[^\"<>]*\"|'[^'<>]*')\\s+(\"[^\"<>]*\"|'[^'<>]*'))?\\s*>");

  private SvgHead() {}

  static XMLStreamReader reader(byte[] file, SvgWrong wrong) throws XMLStreamException {
    String head = new String(file, 0, Math.min(HEAD, file.length), StandardCharsets.ISO_8859_1);
    int begins = head.indexOf(BEGINS);
    Matcher usual = USUAL.matcher(head);
    if (begins >= 0
        && (head.lastIndexOf(BEGINS) != begins || !usual.find() || usual.start() != begins)) {
      int line = (int) head.substring(0, begins).lines().count();
      wrong.tell(Math.max(1, line), "DOCTYPE", "delete it, with all in its brackets");
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    return factory.createXMLStreamReader(new ByteArrayInputStream(file));
  }
}
