package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** The same plans give the same bytes, whoever runs the program, wherever and when. */
class DeterminismTest {

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @TempDir private Path folder;

  @AfterEach
  void back() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  @Test
  void sameBytesEverywhere() {
    Map<String, String> first = everything("first");
    assertThat(first.get("out")).contains("PRINTABLE");
    assertThat(first.keySet()).contains("index.html", "first-border.html");
    assertThat(everything("again")).isEqualTo(first);
    for (String language : List.of("tr-TR", "ar-EG-u-nu-arab", "th-TH-u-ca-buddhist", "de-DE")) {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertThat(everything(language)).as(language).isEqualTo(first);
    }
  }

  /** What is printed and every report that is written. */
  private Map<String, String> everything(String name) {
    Path reports = folder.resolve(name);
    Map<String, String> all = new TreeMap<>();
    Outcome outcome =
        Scenario.run(
            Path.of("").toAbsolutePath(),
            Map.of(),
            List.of("check", "-v", "plans", "--reports", reports.toString()));
    all.put("out", outcome.out().replace(reports.toString(), "REPORTS"));
    all.put("err", outcome.err());
    try (Stream<Path> files = Files.list(reports)) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }
}
