package strikeoff.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.check.Checked;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.report.compare.Comparison;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/** No name of anything, nor of a file, brings what a browser obeys and nobody sees into a page. */
class VisiblePagesTest {

  /** Every control character of both sets, and everything that turns the writing direction. */
  private static final String UNSEEN = unseen();

  private static final UnaryOperator<String> TEXTS = text -> "a" + UNSEEN + text + UNSEEN + "z";

  private static String unseen() {
    StringBuilder all = new StringBuilder();
    IntStream.range(0, 0xA0).filter(Character::isISOControl).forEach(all::appendCodePoint);
    return all
        + "\u061C\u200B\u200E\u200F\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u2060"
        + "\u2066\u2067\u2068\u2069\uFEFF\uDB40\uDC41";
  }

  private static List<Finding> findings() {
    String first = TEXTS.apply("herons") + " 1";
    Finding advice = Estuary.finding(TEXTS, "care/no-mask", Severity.ADVICE, 90);
    return List.of(
        Estuary.finding(TEXTS, "drying/frame-on-wet-film", Severity.STOP, 80, first),
        Estuary.accepted(advice, TEXTS.apply("we wear one")));
  }

  static Stream<String> pages() {
    Checked judged = Estuary.judged(TEXTS, findings());
    PlanPath path = new PlanPath(TEXTS.apply("cloth"));
    Checked unreadable =
        new Checked.Unreadable(
            TEXTS.apply("b.yaml"),
            List.of(TEXTS.apply("cloht: {}")),
            List.of(new Problem(new Position(1, 1), path, TEXTS.apply("unknown"))),
            "");
    Checked failed = new Checked.Failed(TEXTS.apply("c.yaml"), TEXTS.apply("out of luck"), "");
    String said = TEXTS.apply("said");
    RuleInfo rule =
        new RuleInfo("own/" + said, Severity.STOP, said, said, said, said, said, List.of(said));
    List<IndexEntry> entries =
        Stream.of(judged, unreadable, failed).map(c -> IndexEntry.of(c, said)).toList();
    return Stream.of(
        HtmlReport.plan(judged),
        HtmlReport.plan(unreadable),
        HtmlReport.plan(failed),
        HtmlReport.index(said, entries),
        new String(HtmlReport.rules(List.of(rule), PolicyReader.builtIn()), UTF_8),
        HtmlReport.comparison(
            Comparison.of(
                results(judged, unreadable, failed), results(judged, failed, unreadable))));
  }

  private static Results results(Checked... plans) {
    List<Outcome> outcomes =
        Stream.of(plans).map(plan -> Outcome.of(plan, 1, Optional.empty())).toList();
    return new Results("0", TEXTS.apply("plans"), Optional.empty(), 3, List.of(), outcomes);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noPageHoldsAnythingUnseenButEndsOfLines(String page) {
    assertThat(page.codePoints().filter(VisiblePagesTest::isUnseen).mapToObj(Integer::toHexString))
        .isEmpty();
    assertThat(page).contains("[U+001B]", "[U+202E]", "[U+0085]", "[U+E0041]");
  }

  private static boolean isUnseen(int point) {
    int type = Character.getType(point);
    return point != '\n'
        && (Character.isISOControl(point)
            || type == Character.FORMAT
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR);
  }
}
