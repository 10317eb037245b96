package strikeoff.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Percentage;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.colour.Overprint;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Traced;
import strikeoff.report.HtmlReport;

/** The films of the estuary curtains as their page draws them. */
class TracedPathTest {

  private static final Checked.Judged CURTAINS =
      (Checked.Judged)
          Checker.builtIn().check(Path.of("plans/estuary-curtains.yaml"), "curtains.yaml");

  private static final Pattern CORNER = Pattern.compile("([mz]?) ?(-?\\d+)[ ]?(-?\\d+)");

  private static Traced film(String design, int separation) {
    return CURTAINS
        .plan()
        .designs()
        .get(design)
        .separations()
        .get(separation - 1)
        .artwork()
        .flatMap(Artwork::traced)
        .orElseThrow();
  }

  /** The corners of a path of relative moves and lines, as SVG 1.1, 8.3, has them. */
  private static List<int[]> rings(String data) {
    List<int[]> rings = new ArrayList<>();
    int startX = 0;
    int startY = 0;
    for (String ring : data.split("z")) {
      List<Integer> corners = new ArrayList<>();
      Matcher corner = CORNER.matcher(ring);
      int x = startX;
      int y = startY;
      while (corner.find()) {
        x += Integer.parseInt(corner.group(2));
        y += Integer.parseInt(corner.group(3));
        corners.add(x);
        corners.add(y);
      }
      startX = corners.get(0);
      startY = corners.get(1);
      rings.add(corners.stream().mapToInt(Integer::intValue).toArray());
    }
    return rings;
  }

  @Test
  void aPathHasTheCornersThatWereTraced() {
    for (Design design : CURTAINS.plan().designs().values()) {
      for (Design.Separation colour : design.separations()) {
        Traced traced = film(design.name(), colour.number());
        assertThat(rings(TracedPath.of(traced)).toArray(int[][]::new))
            .isDeepEqualTo(traced.rings());
      }
    }
  }

  @Test
  void aShapeHasTheirAreaAndLiesWhereItIsPut() {
    Traced blue = film("heron", 2);
    var shape = TracedPath.shape(blue, 7, 9);
    assertThat(shape.isValid()).isTrue();
    assertThat(shape.getArea()).isCloseTo(blue.area(), Percentage.withPercentage(0.1));
    assertThat(TracedPath.shape(blue, 0, 0).getEnvelopeInternal().getMinX() + 7)
        .isCloseTo(shape.getEnvelopeInternal().getMinX(), within(1e-9));
  }

  /** The same figures as in the table of overprints. */
  @Test
  void whereColoursLieOverEachOtherTheyHaveTheColourThatIsEstimated() {
    Document page = Jsoup.parse(HtmlReport.plan(CURTAINS));
    Overprint inkOnBlue =
        CURTAINS.facts().swatches().overprints().stream()
            .filter(o -> o.design().equals("heron"))
            .filter(o -> o.upperPaste().equals("ink") && o.lowerPaste().equals("slate blue"))
            .findFirst()
            .orElseThrow();
    Element key = page.selectFirst("g#s2");
    assertThat(key.attr("fill")).isEqualTo(CURTAINS.facts().swatches().of("ink").onGround().hex());
    assertThat(key.select("use").eachAttr("fill")).contains(inkOnBlue.look().hex());
    assertThat(key.select("[clip-path]").eachAttr("clip-path")).contains("url(#s1c)");
    assertThat(page.select("clipPath#s1c use").attr("href")).isEqualTo("#s1a");
    assertThat(page.selectFirst("#the-cloth .note").text()).contains("drawn from their films");
  }

  @Test
  void aPlanWithoutFilmsHasStripes() {
    String page =
        HtmlReport.plan(Checker.builtIn().check(Path.of("plans/first-border.yaml"), "b.yaml"));
    assertThat(page).contains("they are no picture of it").doesNotContain("clipPath");
  }
}
