package strikeoff.report.junit;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** By what JUnit XML is known again as results that strikeoff wrote. */
public final class JunitMark {

  private static final Pattern VERDICT =
      Pattern.compile("(?:Printable|Not printable|Unreadable|Not checked)\\b.*", Pattern.DOTALL);

  private static final List<String> OF_A_SUITE =
      List.of("name", "tests", "failures", "errors", "skipped", "time");

  private static final List<String> OF_A_CASE = List.of("name", "classname", "time");

  private final XMLStreamReader xml;

  private JunitMark(XMLStreamReader xml) {
    this.xml = xml;
  }

  /**
   * True if each suite has a plan's title and verdict and its cases, the first of them reading it,
   * and nothing else stands there. What other programs wrote of no tests at all reads the same;
   * there is nothing in it that could be lost.
   */
  public static boolean stands(InputStream file) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    // Whoever laid the file there must not have others read through it.
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      return new JunitMark(factory.createXMLStreamReader(file)).isOurs();
    } catch (XMLStreamException | RuntimeException e) {
      return false;
    }
  }

  private boolean isOurs() throws XMLStreamException {
    if (!begins("testsuites") || xml.getAttributeCount() > 0) {
      return false;
    }
    while (xml.nextTag() == XMLStreamConstants.START_ELEMENT) {
      if (!isSuite()) {
        return false;
      }
    }
    return true;
  }

  private boolean isSuite() throws XMLStreamException {
    String plan = xml.getAttributeValue(null, "name");
    if (!is("testsuite", OF_A_SUITE)
        || !begins("properties")
        || !isProperty("plan", Pattern.compile(".*", Pattern.DOTALL))
        || !isProperty("verdict", VERDICT)
        || xml.nextTag() != XMLStreamConstants.END_ELEMENT) {
      return false;
    }
    boolean first = true;
    while (xml.nextTag() == XMLStreamConstants.START_ELEMENT) {
      if (!is("testcase", OF_A_CASE)
          || !plan.equals(xml.getAttributeValue(null, "classname"))
          || first != Case.READING.equals(xml.getAttributeValue(null, "name"))) {
        return false;
      }
      first = false;
      skip();
    }
    return !first;
  }

  private boolean isProperty(String name, Pattern value) throws XMLStreamException {
    return begins("property")
        && name.equals(xml.getAttributeValue(null, "name"))
        && value.matcher(String.valueOf(xml.getAttributeValue(null, "value"))).matches()
        && xml.nextTag() == XMLStreamConstants.END_ELEMENT;
  }

  /** True of an element with these attributes and no others, whose time is ours. */
  private boolean is(String element, List<String> attributes) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      names.add(xml.getAttributeLocalName(i));
    }
    return xml.getLocalName().equals(element)
        && names.equals(attributes)
        && JunitReport.TIME.equals(xml.getAttributeValue(null, "time"));
  }

  private boolean begins(String element) throws XMLStreamException {
    return xml.nextTag() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals(element);
  }

  /** Goes on to the end of the element that has begun. */
  private void skip() throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      depth +=
          event == XMLStreamConstants.START_ELEMENT
              ? 1
              : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
    }
  }
}
