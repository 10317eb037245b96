package strikeoff.artwork;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
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

  /** What a file says of its letters, behind a mark of UTF-8 that some begin with. */
  private static final Pattern ENCODING =
      Pattern.compile(
          "(?:\u00ef\u00bb\u00bf)?<\\?xml\\s[^>]*?encoding\\s*=\\s*[\"']([\\w.-]+)[\"']");

  private static final char MARK = '\ufeff';

  private SvgHead() {}

  static XMLStreamReader reader(byte[] file, SvgWrong wrong)
      throws XMLStreamException, UnreadablePicture {
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
    return factory.createXMLStreamReader(new StringReader(text(file, head)));
  }

  /** Its letters. The JDK's own reading of bytes tells the terminal besides where they are none. */
  private static String text(byte[] file, String head) throws UnreadablePicture {
    Matcher said = ENCODING.matcher(head);
    try {
      Charset letters = said.lookingAt() ? Charset.forName(said.group(1)) : StandardCharsets.UTF_8;
      String text = letters.newDecoder().decode(ByteBuffer.wrap(file)).toString();
      return text.isEmpty() || text.charAt(0) != MARK ? text : text.substring(1);
    } catch (CharacterCodingException | IllegalArgumentException e) {
      throw new UnreadablePicture(
          "this drawing holds bytes that are no letters"
              + (said.lookingAt() ? " as its first line says they are written" : " in UTF-8")
              + "; save it as SVG in UTF-8");
    }
  }
}
