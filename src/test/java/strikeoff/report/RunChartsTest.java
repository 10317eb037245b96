package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario;

/** The days of a run, drawn. */
class RunChartsTest {

  @TempDir private static Path folder;

  private static final Map<String, Document> PAGES = new HashMap<>();

  @BeforeAll
  static void drawTheDemo() throws IOException {
    Scenario.run(
        Path.of("").toAbsolutePath(),
        Map.of(),
        List.of(
            "check",
            "plans/estuary-curtains.yaml",
            "plans/first-border.yaml",
            "plans/workshop",
            "plans/class",
            "--reports",
            folder.toString()));
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        PAGES.put(file.getFileName().toString(), Jsoup.parse(Files.readString(file)));
      }
    }
  }

  @Test
  void allDaysHaveOneScale() {
    Document page = PAGES.get("estuary-curtains.html");
    List<Map<String, String>> days = new ArrayList<>();
    for (Element chart : page.select("svg.run.day")) {
      Map<String, String> hours = new HashMap<>();
      chart.select(".hours text").forEach(hour -> hours.put(hour.text(), hour.attr("x")));
      days.add(hours);
      assertThat(chart.attr("width")).isEqualTo("1030");
    }
    assertThat(days)
        .hasSizeGreaterThan(2)
        .allSatisfy(day -> assertThat(day).isEqualTo(days.get(0)));
  }

  @Test
  void noLabelIsCutAndEachNumberIsTold() {
    int numbers = 0;
    for (Map.Entry<String, Document> page : PAGES.entrySet()) {
      for (Element chart : page.getValue().select(".chart")) {
        int told = chart.select(".bar-words li").size();
        Set<Integer> used = new HashSet<>();
        for (Element label : chart.select(".run.day .row text")) {
          assertThat(label.text()).as(page.getKey()).doesNotContain("…");
          if (label.text().matches("\\d+")) {
            used.add(Integer.parseInt(label.text()));
            numbers++;
          }
        }
        assertThat(used).as(page.getKey()).allMatch(number -> number <= told);
        assertThat(used).as(page.getKey()).hasSize(told);
      }
    }
    assertThat(numbers).isPositive();
  }

  /** As wide as a sans serif's letters are on average, {@code from memory}. */
  private static final double LETTER = 11 * 0.56;

  @Test
  void noLabelRunsIntoAnotherOrOffTheChart() {
    for (Map.Entry<String, Document> page : PAGES.entrySet()) {
      for (Element row : page.getValue().select(".run.day .row")) {
        double before = 0;
        for (Element label : row.select("> text:not(.above)")) {
          double from = Double.parseDouble(label.attr("x"));
          assertThat(from).as(page.getKey() + ": " + row.text()).isGreaterThanOrEqualTo(before);
          before = from + LETTER * label.text().length();
          assertThat(before).isLessThanOrEqualTo(1030);
        }
      }
    }
  }

  @Test
  void namesOfRowsStandBesideThemAndAreWhole() {
    Document page = PAGES.get("estuary-curtains.html");
    for (Element chart : page.select(".chart")) {
      assertThat(chart.select(".run.names").attr("height"))
          .isEqualTo(chart.select(".run.day").attr("height"));
      assertThat(chart.select(".run.names .name").eachText())
          .isNotEmpty()
          .allSatisfy(name -> assertThat(name).doesNotContain("…"));
    }
  }
}
