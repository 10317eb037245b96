package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

class HtmlReportTest {

  private static final UnaryOperator<String> PLAIN = UnaryOperator.identity();

  /** Script, quotes, entities, a turn of the writing direction, and a word that never ends. */
  private static final String HOSTILE =
      "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&lt;\u202Egnp.\u2066";

  private static final UnaryOperator<String> HOSTILE_TEXTS =
      text -> text + HOSTILE + "W".repeat(200);

  private static List<Finding> three(UnaryOperator<String> texts) {
    String first = texts.apply("herons") + " 1";
    Finding advice = Estuary.finding(texts, "care/no-mask", Severity.ADVICE, 90);
    return List.of(
        Estuary.finding(texts, "drying/frame-on-wet-film", Severity.STOP, 80, first),
        Estuary.finding(texts, "paste/tight", Severity.RISK, 50, first),
        Estuary.accepted(advice, texts.apply("we wear one")));
  }

  @Test
  void nothingFoundSaysSo() {
    Document page = Jsoup.parse(HtmlReport.plan(Estuary.plain(List.of())));
    assertThat(page.select(".finding")).isEmpty();
    assertThat(page.select("#change").text()).contains("no rule found anything");
    assertThat(page.select(".verdict").hasClass("printable")).isTrue();
  }

  @Test
  void everyFindingStandsWithItsPartsAndItsMarkOnTheCloth() {
    Document page = Jsoup.parse(HtmlReport.plan(Estuary.plain(three(PLAIN))));
    assertThat(page.select(".finding")).hasSize(3);
    Element stop = page.selectFirst("#finding-1");
    assertThat(stop.text())
        .contains("stop", "38 min before", "Wait 38 min more", "line 80", "print: herons")
        .contains("line 81", "the earlier print", "common practice", "herons 1");
    assertThat(page.select("#cloth .marks .mark")).hasSize(2);
    assertThat(page.select("#finding-3 .accepted").text()).contains("we wear one");
    assertThat(page.select(".verdict").hasClass("not-printable")).isTrue();
  }

  @Test
  void theClothShowsEveryImpressionAndPlacement() {
    Checked.Judged judged = Estuary.plain(List.of());
    Document page = Jsoup.parse(HtmlReport.plan(judged));
    assertThat(page.select("#cloth .prints use"))
        .hasSameSizeAs(judged.facts().timeline().impressions());
    assertThat(page.select("#cloth .motif")).hasSameSizeAs(judged.facts().layout().placements());
    page.select("use")
        .forEach(use -> assertThat(page.getElementById(use.attr("href").substring(1))).isNotNull());
  }

  @Test
  void hostileTextsShowAsTextAndRunNothing() {
    Document page =
        Jsoup.parse(HtmlReport.plan(Estuary.judged(HOSTILE_TEXTS, three(HOSTILE_TEXTS))));
    assertThat(page.select("script")).hasSize(1);
    assertThat(page.select("img, iframe, object, embed, link, base")).isEmpty();
    assertThat(page.selectFirst("h1").text()).contains("<script>alert(1)</script>");
    assertThat(page.selectFirst("#finding-1").text()).contains("<img src=x onerror=alert(2)>");
    assertNothingForbidden(page);
  }

  @Test
  void hostileTextsInAnIndexShowAsText() {
    Checked.Judged judged = Estuary.judged(HOSTILE_TEXTS, three(HOSTILE_TEXTS));
    Document page =
        Jsoup.parse(
            HtmlReport.index(HOSTILE, List.of(IndexEntry.of(judged, "javascript:alert(1)"))));
    assertThat(page.select("script")).hasSize(1);
    assertThat(page.select("img")).isEmpty();
    assertThat(page.select("a[href^=javascript]")).isEmpty();
    assertNothingForbidden(page);
  }

  @Test
  void anUnreadableFileShowsEachMistakeWithItsLine() {
    Checked.Unreadable unreadable =
        new Checked.Unreadable(
            "bad<b>.yaml",
            List.of("plan: x", "cloht: {}"),
            List.of(
                new Problem(new Position(2, 1), new PlanPath("cloht"), "unknown key; cloth?"),
                new Problem(new Position(9, 1), PlanPath.ROOT, "cloth is missing" + HOSTILE)),
            "");
    Document page = Jsoup.parse(HtmlReport.plan(unreadable));
    assertThat(page.select(".finding")).hasSize(2);
    assertThat(page.select(".finding").get(0).text()).contains("Line 2", "cloht: {}", "cloth?");
    assertThat(page.select("h1").text()).isEqualTo("bad<b>.yaml");
    assertNothingForbidden(page);
  }

  @Test
  void aPlanTheToolFailedOnHasAPage() {
    Document page = Jsoup.parse(HtmlReport.plan(new Checked.Failed("a.yaml", "out of luck", "")));
    assertThat(page.select(".verdict.not-checked").text()).contains("out of luck");
  }

  @Test
  void thePolicyAllowsJustTheStyleAndScriptThatAreThere() throws Exception {
    for (String html :
        List.of(HtmlReport.plan(Estuary.plain(List.of())), HtmlReport.index("none", List.of()))) {
      Document page = Jsoup.parse(html);
      String policy = page.selectFirst("meta[http-equiv=Content-Security-Policy]").attr("content");
      assertThat(policy).startsWith("default-src 'none'").doesNotContain("unsafe", "http", "*");
      assertThat(policy)
          .contains("style-src '" + hash(inner(html, "<style>", "</style>")) + "'")
          .contains("script-src '" + hash(inner(html, "<script>", "</script>")) + "'");
    }
  }

  @Test
  void theDemoStaysBelow300Kilobytes() {
    String html = HtmlReport.plan(Estuary.plain(three(PLAIN)));
    assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(300_000);
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    assertThat(HtmlReport.plan(Estuary.plain(three(PLAIN))))
        .isEqualTo(HtmlReport.plan(Estuary.plain(three(PLAIN))))
        .doesNotContain("\r");
  }

  @Test
  void theIndexCountsPlansAndFindings() {
    Checked.Judged bad = Estuary.plain(three(PLAIN));
    List<IndexEntry> entries =
        List.of(
            IndexEntry.of(bad, "a.html"),
            IndexEntry.of(Estuary.plain(List.of()), "b.html"),
            new IndexEntry(
                "c.yaml",
                "c.yaml",
                "",
                Verdict.UNREADABLE,
                Map.of(),
                "",
                -1,
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                "Line 2: unknown key"));
    Document page = Jsoup.parse(HtmlReport.index("class", entries));
    assertThat(page.select("#plans tbody tr")).hasSize(3);
    assertThat(page.selectFirst("#plans tbody tr").select("td.num").eachText())
        .containsExactly("1", "1", "01 accepted");
    assertThat(page.select("#plans tbody tr").last().select("td.num"))
        .extracting(cell -> cell.text())
        .as("nothing was counted in a file that can't be read")
        .containsExactly("", "", "");
    assertThat(page.select("#rules tbody tr")).hasSize(3);
    assertThat(page.select("#rules tbody tr").text()).contains("33 %");
    assertThat(page.select(".verdict").text()).contains("1 of 3 plans");
  }

  @Test
  void aThousandPlansStayUsable() {
    List<IndexEntry> entries = new ArrayList<>();
    IndexEntry one = IndexEntry.of(Estuary.plain(three(PLAIN)), "a.html");
    for (int i = 0; i < 1000; i++) {
      entries.add(one);
    }
    String html = HtmlReport.index("many", entries);
    assertThat(html.length()).isLessThan(3_000_000);
  }

  private static void assertNothingForbidden(Document page) {
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertThat(attribute.getKey()).doesNotStartWith("on").isNotEqualTo("style");
        if (List.of("href", "src", "action", "xlink:href").contains(attribute.getKey())) {
          assertThat(attribute.getValue()).doesNotContain(":").doesNotStartWith("//");
        }
      }
    }
  }

  private static String inner(String html, String open, String close) {
    int from = html.indexOf(open) + open.length();
    return html.substring(from, html.indexOf(close, from));
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }
}
