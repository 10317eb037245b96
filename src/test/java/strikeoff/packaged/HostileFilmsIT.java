package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.HostileFilms;

/** Films that are made to take long or much memory end in a sentence, soon, and take little. */
class HostileFilmsIT {

  /** Ten times what they take on a machine that is at rest. */
  private static final double MOST_SECONDS = 10;

  private static final String PLAN =
      """
      plan: Runner
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m}
      screens:
        leaf: {frame: 90 x 90 cm, image: 62 x 62 cm, mesh: 43/cm, squeegee: 60 cm}
      pastes:
        green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}
      designs:
        leaf:
          size: 50 x 50 cm
          separations:
            - {screen: leaf, paste: green, artwork: %s}
      placements:
        leaves: {design: leaf, series: 2, pitch: 65 cm, start: 10 cm, across: 5 cm}
      """;

  @TempDir private Path folder;

  /** A heap of 56 MB leaves room for the largest film, its points and a drawing of 4 MiB. */
  @Test
  void eachEndsInItsSentence() throws Exception {
    Map<String, String> films = HostileFilms.write(folder);
    for (Map.Entry<String, String> film : films.entrySet()) {
      Files.writeString(folder.resolve("plan.yaml"), PLAN.formatted(film.getKey()));
      long before = System.nanoTime();
      Program.Told told =
          Program.in(Program.Way.LAUNCHER, folder).options("-Xmx56m").run("check", "plan.yaml");
      double seconds = (System.nanoTime() - before) / 1e9;
      assertThat(told.exit()).as("%s: %s", film.getKey(), told).isEqualTo(3);
      assertThat(told.outWords())
          .as(film.getKey())
          .contains("plan.yaml:12:47", film.getValue())
          .doesNotContain("Exception", "memory");
      assertThat(told.err()).as(film.getKey()).isEmpty();
      assertThat(seconds).as(film.getKey()).isLessThan(MOST_SECONDS);
    }
    assertThat(films).hasSizeGreaterThan(20);
  }
}
