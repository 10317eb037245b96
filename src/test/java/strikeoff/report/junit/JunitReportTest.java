package strikeoff.report.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import strikeoff.check.Verdict;
import strikeoff.findings.FailedRule;
import strikeoff.report.outcome.DemoResults;
import strikeoff.report.outcome.Outcome;

/**
 * JUnit XML has no standard. The schema kept here from Apache Maven Surefire's source release
 * ({@code surefire-test-report.xsd}, version 3.0.2) is the one that is published by a project that
 * writes such files itself. It describes a suite; the element around suites, which every reader
 * takes, is in no published schema of that project.
 */
class JunitReportTest {

  private static void validate(String report) throws Exception {
    Validator validator =
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
            .newSchema(JunitReportTest.class.getResource("/surefire/surefire-test-report.xsd"))
            .newValidator();
    Element root = parsed(report);
    assertThat(root.getTagName()).isEqualTo("testsuites");
    assertThat(root.getAttributes().getLength()).isZero();
    for (Node child = root.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element) {
        validator.validate(new DOMSource(child));
      } else {
        assertThat(child.getTextContent()).isBlank();
      }
    }
  }

  private static Element parsed(String report) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(report)))
        .getDocumentElement();
  }

  private static List<Element> all(Element in, String name) {
    NodeList nodes = in.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static Element suite(Element root, String name) {
    return all(root, "testsuite").stream()
        .filter(s -> s.getAttribute("name").endsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static Element testcase(Element suite, String name) {
    return all(suite, "testcase").stream()
        .filter(c -> c.getAttribute("name").equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyDemoPlansReportIsValidByThePublishedSchema() throws Exception {
    String report = JunitReport.text(DemoResults.all());
    validate(report);
    validate(JunitReport.text(DemoResults.only()));
    for (String wrong :
        List.of(
            report.replaceFirst(" failures=", " fails="),
            report.replaceFirst("<testcase name=", "<testcase title="),
            report.replaceFirst(" time=\"0\"", " time=\"soon\""),
            report.replaceFirst("<property ", "<fact "))) {
      assertThatThrownBy(() -> validate(wrong)).isInstanceOf(SAXException.class);
    }
  }

  /**
   * Counts in attributes must equal the number of child elements (what readers of the files go by).
   */
  @Test
  void countsAreTheNumbersOfElements() throws Exception {
    Element root = parsed(JunitReport.text(DemoResults.all()));
    assertThat(all(root, "testsuite")).hasSameSizeAs(DemoResults.all().plans());
    for (Element suite : all(root, "testsuite")) {
      assertThat(suite.getAttribute("tests")).isEqualTo("" + all(suite, "testcase").size());
      assertThat(suite.getAttribute("failures")).isEqualTo("" + all(suite, "failure").size());
      assertThat(suite.getAttribute("errors")).isEqualTo("" + all(suite, "error").size());
      assertThat(suite.getAttribute("skipped")).isEqualTo("" + all(suite, "skipped").size());
    }
  }

  @Test
  void aStopFailsTheCaseOfItsFamilyAndOthersPass() throws Exception {
    Element root = parsed(JunitReport.text(DemoResults.all()));
    Element suite = suite(root, "plans/mistakes/hot-bath.yaml");
    Element failed = testcase(suite, "fixing");
    Element failure = all(failed, "failure").get(0);
    assertThat(failure.getAttribute("type")).startsWith("fixing/");
    assertThat(failure.getTextContent()).contains("plans/mistakes/hot-bath.yaml:", "Mend: ");
    assertThat(all(suite, "failure")).hasSize(1);
    assertThat(all(suite(root, "plans/estuary-curtains.yaml"), "failure")).isEmpty();
  }

  @Test
  void casesAreCalledAlikeForEveryPlan() throws Exception {
    Element root = parsed(JunitReport.text(DemoResults.all()));
    assertThat(all(root, "testsuite").stream().map(JunitReportTest::names).distinct()).hasSize(1);
  }

  private static List<String> names(Element suite) {
    return all(suite, "testcase").stream().map(c -> c.getAttribute("name")).toList();
  }

  @Test
  void anUnreadablePlanIsAnErrorOfReadingAndSkipsTheRest() throws Exception {
    Element suite = suite(parsed(JunitReport.text(DemoResults.all())), "bad.yaml");
    Element error = all(testcase(suite, "reading"), "error").get(0);
    assertThat(error.getAttribute("type")).isEqualTo("unreadable");
    assertThat(error.getTextContent()).contains("bad.yaml:2:1: clothh: ");
    assertThat(all(suite, "skipped")).hasSize(all(suite, "testcase").size() - 1);
  }

  @Test
  void anAcceptedStopIsToldAndFailsNothing() throws Exception {
    Element suite = suite(parsed(JunitReport.text(DemoResults.all())), "über <b>.yaml");
    assertThat(all(testcase(suite, "drying"), "failure")).isEmpty();
    assertThat(all(testcase(suite, "drying"), "system-out").get(0).getTextContent())
        .contains("Accepted: It is <b>only</b> a “try”.");
  }

  @Test
  void aFailedRuleIsAnErrorOfItsFamily() throws Exception {
    Outcome plan = DemoResults.all().plans().get(0);
    Outcome faulty =
        new Outcome(
            1,
            "a.yaml",
            "A",
            Optional.empty(),
            Verdict.NOT_CHECKED,
            "Not checked.",
            List.of(),
            List.of(),
            List.of(new FailedRule("seams/some", "it failed")),
            Optional.empty(),
            plan.figures(),
            List.of(),
            List.of(),
            List.of(),
            "",
            Optional.empty());
    Element root = parsed(JunitReport.text(DemoResults.only(faulty)));
    Element error = all(testcase(suite(root, "a.yaml"), "seams"), "error").get(0);
    assertThat(error.getTextContent()).isEqualTo("seams/some: it failed");
    assertThat(error.getAttribute("type")).isEqualTo("seams/some");
  }

  /** XML 1.0, section 2.2: most control characters can't stand in a document in any form. */
  @Test
  void anyTextFits() throws Exception {
    Element root = parsed(JunitReport.text(DemoResults.all()));
    Element error = all(suite(root, "é"), "error").get(0);
    assertThat(error.getTextContent()).isEqualTo(DemoResults.HOSTILE.replace("\u0007", "[U+0007]"));
  }
}
