package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** A folder that was handed in has nothing read that lies elsewhere. */
class LinksOutTest {

  private static final String SECRET = "hunter: two\nanother: three\n";

  @TempDir private Path folder;

  @BeforeEach
  void files() throws IOException {
    Files.writeString(folder.resolve("outside.txt"), SECRET);
    Files.writeString(folder.resolve("house.txt"), "studio: The house\n");
    Files.createDirectories(folder.resolve("ev/sub"));
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("ev/sub/border.yaml"));
  }

  private Outcome run(String command) {
    return Scenario.run(folder, Map.of("COLUMNS", "200"), List.of(command.split(" ")));
  }

  private void link(String from, String to) throws IOException {
    Files.createSymbolicLink(folder.resolve(from), folder.resolve(to));
  }

  @Test
  void aPolicyThatWasFoundIsNotReadElsewhere() throws IOException {
    for (String place : List.of("ev/studio.yaml", "ev/sub/studio.yaml")) {
      link(place, "outside.txt");
      Outcome outcome = run("check ev");
      assertThat(outcome.exit()).isEqualTo(4);
      assertThat(outcome.err())
          .isEqualTo(
              "strikeoff: "
                  + place
                  + ": this policy can't be read: it is a link out of its folder, and is not"
                  + " followed\n");
      assertThat(outcome.out()).startsWith("NOT CHECKED    ev/sub/border.yaml: ");
      assertThat(outcome.out() + outcome.err()).doesNotContain("hunter", "another");
      // The plan alone was named, so that nothing above its policy's folder was.
      assertThat(run("check ev/sub/border.yaml").err()).contains(place + ": this policy can't");
      Files.delete(folder.resolve(place));
    }
  }

  @Test
  void aPlanThatWasFoundIsNotReadElsewhere() throws IOException {
    link("ev/q.yaml", "outside.txt");
    for (String command : List.of("check ev", "compare ev ev", "mend ev")) {
      Outcome outcome = run(command);
      assertThat(outcome.exit()).as(command).isEqualTo(4);
      assertThat(outcome.err()).contains("ev/q.yaml: it is a link out of its folder");
      assertThat(outcome.out() + outcome.err()).doesNotContain("hunter", "another");
    }
    assertThat(run("check ev/q.yaml").out()).contains("hunter");
  }

  @Test
  void withinTheFolderThatWasNamedALinkIsFollowed() throws IOException {
    link("ev/sub/studio.yaml", "house.txt");
    assertThat(run("check ev").exit()).isEqualTo(4);
    assertThat(run("check .").exit()).isZero();
    assertThat(run("check ev --policy ev/sub/studio.yaml").exit()).isZero();
  }
}
