package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** {@code -Destuary-films=write} draws the films of the estuary curtains anew. */
class EstuaryFilmsTest {

  @Test
  void filmsBesideThePlanAreThoseDrawnHere() throws IOException {
    for (Map.Entry<String, byte[]> film : EstuaryFilms.all().entrySet()) {
      Path file = Path.of("plans/films", film.getKey());
      if ("write".equals(System.getProperty("estuary-films"))) {
        Files.write(file, film.getValue());
      }
      assertThat(Files.readAllBytes(file)).as(film.getKey()).isEqualTo(film.getValue());
    }
  }
}
