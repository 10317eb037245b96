package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.report.page.PlanPage;
import strikeoff.report.page.TableSection;

/** Pages list as much as somebody reads, and count the rest. */
class LongPagesTest {

  private static final int MANY = 260;

  /** Each of its pastes, screens and designs has rows, cards and steps of its own. */
  private static String plan() {
    StringBuilder plan =
        new StringBuilder(
            "plan: Many\ncloth: {length: 20 m, width: 140 cm, washed: yes}\nscreens:\n");
    for (int i = 0; i < MANY; i++) {
      plan.append("  s")
          .append(i)
          .append(": {frame: 40 x 40 cm, image: 20 x 20 cm, mesh: 43/cm}\n");
    }
    plan.append("pastes:\n");
    for (int i = 0; i < MANY; i++) {
      plan.append("  p").append(i).append(": {medium: paint, colour: red, amount: 500 g}\n");
    }
    plan.append("designs:\n");
    for (int i = 0; i < MANY; i++) {
      plan.append("  d")
          .append(i)
          .append(": {size: 20 x 20 cm, separations: [{screen: s")
          .append(i)
          .append(", paste: p")
          .append(i)
          .append(", covers: 40 %}]}\n");
    }
    return plan.append("placements:\n  a: {design: d0, series: 3, pitch: 1 m, across: 40 cm}\n")
        .append("run:\n  - mix: all\n  - print: a\n")
        .toString();
  }

  @Test
  void aPlanOfManyPartsStaysAPageThatABrowserHolds() {
    Checked checked = Checker.builtIn().check("many.yaml", plan());
    String html = HtmlReport.plan(checked);
    assertThat(html.length()).isLessThan(1_500_000);
    Document page = Jsoup.parse(html);
    assertThat(page.select("tbody")).allMatch(body -> body.childrenSize() <= 200);
    assertThat(page.select("#screens .note").text()).contains("And 60 more rows, not listed here.");
    assertThat(page.select(".legend li")).hasSize(61);
    assertThat(page.select(".legend li").last().text()).isEqualTo("and 200 more");
  }

  private static String many(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining());
  }

  static Stream<Arguments> hostile() throws IOException {
    String border = Files.readString(Path.of("plans/first-border.yaml"));
    String name = "x".repeat(400_000);
    return Stream.of(
        Arguments.of(
            "15,500 acceptances",
            border
                + "accept:\n"
                + many(
                    15_500,
                    i -> "  - {rule: seams/ridge-under-squeegee, because: tried " + i + "}\n")),
        Arguments.of(
            "3,000 pastes",
            border.replace(
                "pastes:\n",
                "pastes:\n"
                    + many(3000, i -> "  p" + i + ": {medium: dye, group: DCT, colour: red}\n"))),
        Arguments.of("1,000 steps", border + many(980, i -> "  - print: border\n")),
        Arguments.of("2,000 steps", border + many(2000, i -> "  - dry: 5 min\n")),
        Arguments.of(
            "a name of 0.4 MB",
            border.replace("border: {", name + ": {").replace("print: border", "print: " + name)),
        Arguments.of(
            "500 placements on one another",
            border
                .replace(
                    "run:",
                    many(
                            500,
                            i ->
                                "  b"
                                    + i
                                    + ": {design: reeds, anchor: border, offset: \""
                                    + i
                                    + " mm, 1 cm\"}\n")
                        + "run:")
                .replace("print: border", "print: all")));
  }

  /** Each takes some seconds at most; the time only catches what costs the square of its length. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("hostile")
  void noPlansPageIsLongerThanItMayBe(String what, String plan) {
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          byte[] html = HtmlReport.utf8(Checker.builtIn().check("hostile.yaml", plan));
          assertThat(html.length).isLessThanOrEqualTo(HtmlReport.MOST_BYTES);
          assertThat(new String(html, StandardCharsets.UTF_8)).endsWith("</html>\n");
        });
  }

  @Test
  void aPageThatIsCutShortTellsHowMuchItLeavesOut() {
    Checked.Judged judged = (Checked.Judged) Checker.builtIn().check("many.yaml", plan());
    PlanPage whole = PlanPages.of(judged, true);
    PlanPage cut = whole.cut(4);
    assertThat(cut.legend().shown()).hasSize(15);
    assertThat(cut.legend().more()).isEqualTo(245);
    TableSection screens =
        cut.tables().stream().filter(t -> t.id().equals("screens")).findFirst().orElseThrow();
    assertThat(screens.tables().get(0).rows()).hasSize(50);
    assertThat(screens.tables().get(0).note()).contains("And 210 more rows, not listed here.");
    assertThat(cut.findings()).hasSameSizeAs(whole.findings());
  }

  @Test
  void theIndexOfAHugeBatchKeepsThePlansThatFareWorst() {
    String plain = "plan: Sound\n" + "cloth: {length: 2 m, width: 1 m}\n";
    Checked sound = Checker.builtIn().check("sound.yaml", plain);
    Problem problem = new Problem(new Position(1, 1), PlanPath.ROOT, "not known");
    Checked bad = new Checked.Unreadable("bad.yaml", List.of(), List.of(problem), "");
    List<IndexEntry> entries = new ArrayList<>();
    for (int i = 0; i < 9000; i++) {
      entries.add(IndexEntry.of(i == 8000 ? bad : sound, ""));
    }
    String html = HtmlReport.index("plans", entries);
    assertThat(html.getBytes(StandardCharsets.UTF_8).length)
        .isBetween(HtmlReport.MOST_BYTES / 4, HtmlReport.MOST_BYTES);
    Document page = Jsoup.parse(html);
    int rows = page.select("#plans tbody tr").size();
    assertThat(page.select("#plans tr[data-verdict=unreadable]")).hasSize(1);
    assertThat(page.select("#plans + .note").text())
        .startsWith("And " + (9000 - rows) + " more plans that fare no worse");
    assertThat(page.select(".verdict").text()).isEqualTo("8999 of 9000 plans are printable.");
  }

  @Test
  void aFileOfManyMistakesTooAndTellsHowManyMore() {
    List<Problem> problems =
        IntStream.rangeClosed(1, 1000)
            .mapToObj(i -> new Problem(new Position(i, 1), PlanPath.ROOT, "not known"))
            .toList();
    Document page =
        Jsoup.parse(HtmlReport.plan(new Checked.Unreadable("bad.yaml", List.of(), problems, "")));
    assertThat(page.select("li.finding")).hasSize(200);
    assertThat(page.select("main > p").text()).startsWith("And 800 more.");
  }
}
