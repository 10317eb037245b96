package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/**
 * What spoils cloth is found, once, and what does not is let through: {@code small-plans.yaml} says
 * each in a sentence of the trade, as a change of a small sound plan. The sentences are common
 * practice, no source.
 */
class SmallPlansTest {

  private static final Checker CHECKER = Checker.builtIn();

  /**
   * @param plans sound plans, by name
   * @param rows what becomes of them
   */
  record Sheet(Map<String, String> plans, List<Row> rows) {

    static Sheet read() throws IOException {
      try (InputStream in = Sheet.class.getResourceAsStream("small-plans.yaml")) {
        return new ObjectMapper(new YAMLFactory()).readValue(in, new TypeReference<>() {});
      }
    }
  }

  /**
   * @param says what a printer would say
   * @param on the plan that is changed
   * @param change what stands there, and what then does
   * @param finds all stops and risks then, each once: {@code stop seams/never-sewn}
   * @param advises rules of which advice must be there
   * @param mends what the remedy of the first of {@code finds} says
   * @param never what no remedy says
   */
  record Row(
      String says,
      String on,
      Map<String, String> change,
      List<String> finds,
      List<String> advises,
      List<String> mends,
      List<String> never) {

    Row {
      change = change == null ? Map.of() : change;
      finds = finds == null ? List.of() : finds;
      advises = advises == null ? List.of() : advises;
      mends = mends == null ? List.of() : mends;
      never = never == null ? List.of() : never;
    }
  }

  @TestFactory
  Stream<DynamicTest> eachOfThem() throws IOException {
    Sheet sheet = Sheet.read();
    return sheet.rows().stream()
        .map(row -> DynamicTest.dynamicTest(row.says(), () -> check(row, sheet)));
  }

  private static void check(Row row, Sheet sheet) {
    String plan = sheet.plans().get(row.on());
    assertThat(plan).as("there is no plan called %s", row.on()).isNotNull();
    for (Map.Entry<String, String> change : row.change().entrySet()) {
      assertThat(plan).contains(change.getKey());
      plan = plan.replace(change.getKey(), change.getValue());
    }
    Checked checked = CHECKER.check("plan.yaml", plan);
    assertThat(checked).as(checked.sentence()).isInstanceOf(Checked.Judged.class);
    List<Finding> findings = ((Checked.Judged) checked).findings();
    assertThat(findings.stream().filter(f -> f.severity() != Severity.ADVICE))
        .as(() -> told(findings))
        .extracting(SmallPlansTest::named)
        .containsExactlyInAnyOrderElementsOf(row.finds());
    assertThat(findings)
        .as(() -> told(findings))
        .extracting(f -> f.rule().id())
        .containsAll(row.advises());
    if (!row.mends().isEmpty()) {
      assertThat(findings)
          .filteredOn(f -> named(f).equals(row.finds().get(0)))
          .singleElement()
          .satisfies(f -> assertThat(f.remedy()).contains(row.mends()));
    }
    for (String words : row.never()) {
      assertThat(findings).as(words).noneMatch(f -> f.remedy().contains(words));
    }
  }

  private static String named(Finding finding) {
    return finding.severity().name().toLowerCase(Locale.ROOT) + " " + finding.rule().id();
  }

  private static String told(List<Finding> findings) {
    StringBuilder told = new StringBuilder();
    findings.forEach(
        f ->
            told.append("\n")
                .append(named(f))
                .append(": ")
                .append(f.message())
                .append(" | ")
                .append(f.remedy()));
    return told.toString();
  }
}
