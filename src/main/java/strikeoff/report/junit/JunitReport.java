package strikeoff.report.junit;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.report.junit.Case.Ending;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/**
 * Results as JUnit XML, each suite in the form that the schema of Apache Maven Surefire's test
 * reports takes. A plan is a suite. Its cases are “reading” and one for each family of rules, so
 * that their names stay the same from run to run: stops fail a case, mistakes in the file and
 * faults of the tool are errors, and everything else is told in the case's output.
 *
 * <p>Nothing here depends on when or where it ran: there is no time stamp, and every time is 0.
 */
public final class JunitReport {

  static final String TIME = "0";

  private JunitReport() {}

  /** The same bytes for the same results; ends with a line end. */
  public static String text(Results results) {
    StringWriter text = new StringWriter();
    List<String> families = results.rules().stream().map(RuleInfo::family).distinct().toList();
    List<String> leftOut =
        results.narrowed().map(Narrowed::leftOut).orElse(List.of()).stream()
            .map(id -> id.substring(0, id.indexOf('/')))
            .distinct()
            .toList();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      xml.writeStartDocument("UTF-8", "1.0");
      line(xml, 0);
      xml.writeStartElement("testsuites");
      for (Outcome plan : results.plans()) {
        suite(xml, plan, Case.of(plan, families, leftOut));
      }
      line(xml, 0);
      xml.writeEndElement();
      line(xml, 0);
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return text.toString();
  }

  private static void suite(XMLStreamWriter xml, Outcome plan, List<Case> cases)
      throws XMLStreamException {
    line(xml, 1);
    xml.writeStartElement("testsuite");
    attribute(xml, "name", plan.file());
    attribute(xml, "tests", Integer.toString(cases.size()));
    attribute(xml, "failures", count(cases, Ending.FAILURE));
    attribute(xml, "errors", count(cases, Ending.ERROR));
    attribute(xml, "skipped", count(cases, Ending.SKIPPED));
    attribute(xml, "time", TIME);
    line(xml, 2);
    xml.writeStartElement("properties");
    property(xml, "plan", plan.title());
    property(xml, "verdict", plan.sentence());
    line(xml, 2);
    xml.writeEndElement();
    for (Case one : cases) {
      testcase(xml, plan, one);
    }
    line(xml, 1);
    xml.writeEndElement();
  }

  private static void testcase(XMLStreamWriter xml, Outcome plan, Case one)
      throws XMLStreamException {
    line(xml, 2);
    xml.writeStartElement("testcase");
    attribute(xml, "name", one.name());
    attribute(xml, "classname", plan.file());
    attribute(xml, "time", TIME);
    if (one.ending() != Ending.PASSED) {
      line(xml, 3);
      xml.writeStartElement(one.ending().element());
      if (one.ending() != Ending.SKIPPED) {
        attribute(xml, "message", one.message());
        attribute(xml, "type", one.type());
        xml.writeCharacters(XmlText.of(one.text()));
      }
      xml.writeEndElement();
    }
    if (!one.aside().isEmpty()) {
      line(xml, 3);
      xml.writeStartElement("system-out");
      xml.writeCharacters(XmlText.of(one.aside()));
      xml.writeEndElement();
    }
    if (one.ending() != Ending.PASSED || !one.aside().isEmpty()) {
      line(xml, 2);
    }
    xml.writeEndElement();
  }

  private static void property(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    line(xml, 3);
    xml.writeEmptyElement("property");
    attribute(xml, "name", name);
    attribute(xml, "value", value);
  }

  private static String count(List<Case> cases, Ending ending) {
    return Long.toString(cases.stream().filter(c -> c.ending() == ending).count());
  }

  /** Line ends in an attribute would be lost on reading. */
  private static void attribute(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    xml.writeAttribute(name, XmlText.of(value).replaceAll("[\\n\\t]", " "));
  }

  private static void line(XMLStreamWriter xml, int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }
}
