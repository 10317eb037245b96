package strikeoff.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import strikeoff.checks.CheckRow.Status;

/** How much of the science is held to values from outside, and the page that shows it. */
class CheckTableTest {

  private static final Path PAGE = Path.of("src", "docs", "check-table.md");

  @Test
  void independentRowsAreManyAndComeFromManyNamedSources() {
    List<CheckRow> independent = rows(Standing.INDEPENDENT);
    assertThat(independent).hasSizeGreaterThanOrEqualTo(200);
    assertThat(new TreeSet<>(independent.stream().map(CheckRow::source).toList()))
        .hasSizeGreaterThanOrEqualTo(25)
        .noneMatch(source -> source.contains("from memory") || source.contains("no source"));
  }

  /** Misses are told one by one, and stay few. */
  @Test
  void rowsThatWeMissAreFew() {
    assertThat(all().stream().filter(CheckRow::isMissed)).hasSizeLessThan(all().size() / 20);
  }

  @Test
  void everyLineAboutASourceIsAboutSomeRow() {
    assertThat(Standing.lines()).allMatch(line -> Standing.isUsed(line, all()));
  }

  /** What nobody looked up is counted apart and stays the small part. */
  @Test
  void rowsFromMemoryAreFewAndSaidToBeSo() {
    assertThat(rows(Status.FROM_MEMORY)).hasSizeLessThan(all().size() / 10);
    assertThat(rows(Status.COMMON_PRACTICE))
        .allMatch(row -> row.source().equals("common practice, no source"));
  }

  @Test
  void noRowStandsTwice() {
    assertThat(CheckTables.all().values().stream().flatMap(List::stream).map(Check::row))
        .doesNotHaveDuplicates();
  }

  @Test
  void everyRowHoldsWhicheverTestOffersIt() {
    CheckTables.all().values().forEach(checks -> checks.forEach(Check::assertHolds));
  }

  @Test
  void thePageIsMadeFromTheRows() throws IOException {
    String made = CheckPage.of(CheckTables.all(), CheckTables.oracles());
    if ("write".equals(System.getProperty("check-table"))) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, made);
    }
    assertThat(Files.readString(PAGE).replace("\r\n", "\n"))
        .as("run mvn test -Dtest=CheckTableTest -Dcheck-table=write")
        .isEqualTo(made);
  }

  private static List<CheckRow> rows(Status status) {
    return all().stream().filter(row -> row.status() == status).toList();
  }

  private static List<CheckRow> rows(Standing standing) {
    return all().stream().filter(row -> Standing.of(row) == standing).toList();
  }

  private static List<CheckRow> all() {
    return CheckTables.all().values().stream().flatMap(List::stream).map(Check::row).toList();
  }
}
