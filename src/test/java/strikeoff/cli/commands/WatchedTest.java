package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.text.Surroundings;

/** What is being written is not judged before it lies still. */
class WatchedTest {

  @TempDir private Path folder;
  private Path plan;
  private Path film;
  private Watched watched;

  @BeforeEach
  void aPlanWithAFilm() throws Exception {
    film = Files.createDirectory(folder.resolve("films")).resolve("reeds.pbm");
    Files.writeString(film, "P1 2 2 0 1 1 0");
    plan = folder.resolve("border.yaml");
    Files.writeString(
        plan,
        Files.readString(Path.of("plans/first-border.yaml"))
            .replace("covers: 40 %", "artwork: films/reeds.pbm"));
    Surroundings here =
        new Surroundings(
            new PrintWriter(new StringWriter()),
            new PrintWriter(new StringWriter()),
            InputStream.nullInputStream(),
            Map.of(),
            false,
            folder,
            2);
    watched = new Watched(here, new StudioOptions(), "border.yaml", 10);
    watched.changed();
  }

  @Test
  void aFilmSettlesOnceTwoLooksFindItAlike() throws Exception {
    assertThat(watched.moved()).isFalse();
    Files.writeString(film, "P1 200 200 ");
    assertThat(watched.moved()).isTrue();
    assertThat(watched.filmsMoved()).isTrue();
    for (int i = 0; i < 3; i++) {
      Files.writeString(film, "0 1 ".repeat(100), StandardOpenOption.APPEND);
      assertThat(watched.isSettled()).as("while it grows").isFalse();
    }
    assertThat(watched.isSettled()).isTrue();
    assertThat(watched.changed().due()).hasSize(1);
    assertThat(watched.moved()).isFalse();
  }

  /** Whoever saves a plan alone need not wait as long as for a film. */
  @Test
  void aPlanIsNoFilm() throws Exception {
    Files.writeString(plan, "# edited\n", StandardOpenOption.APPEND);
    assertThat(watched.moved()).isTrue();
    assertThat(watched.filmsMoved()).isFalse();
    assertThat(watched.isSettled()).isTrue();
  }
}
