package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.DemoFilms;

/** What a cache gives is what a check would have come to, to the byte, or it gives nothing. */
class KeptResultsTest {

  /** The estuary curtains have seven films, of which five pairs fill one rectangle. */
  private static final int FILMS = 7 + 5;

  private static final int ALL_KEPT = 4 + FILMS;

  @TempDir private Path desk;

  @BeforeEach
  void lay() throws IOException {
    for (String each :
        List.of("first-border.yaml", "mistakes/hot-bath.yaml", "estuary-curtains.yaml")) {
      Path copy = desk.resolve("plans").resolve(each);
      Files.createDirectories(copy.getParent());
      Files.copy(Path.of("plans").resolve(each), copy);
    }
    DemoFilms.layInto(desk.resolve("plans"));
    Files.writeString(desk.resolve("plans/broken.yaml"), "plan: [\n");
  }

  private Scenario.Outcome run(Map<String, String> environment, String... words) {
    Map<String, String> all = new TreeMap<>(environment);
    all.putIfAbsent("COLUMNS", "100");
    return Scenario.run(desk, all, List.of(words));
  }

  private Scenario.Outcome run(String... words) {
    return run(Map.of(), words);
  }

  private static final String[] ALL = {
    "--reports",
    "pages",
    "-f",
    "json=r.json",
    "-f",
    "sarif=r.sarif",
    "-f",
    "junit=r.xml",
    "-f",
    "text=r.txt"
  };

  /** All that a run writes, and how it ends. */
  private Map<String, String> written(String... words) throws IOException {
    List<String> all = new ArrayList<>(List.of("check", "plans"));
    all.addAll(List.of(words));
    all.addAll(List.of(ALL));
    Scenario.Outcome outcome = run(all.toArray(String[]::new));
    Map<String, String> written = new TreeMap<>();
    written.put("told", outcome.toString());
    try (Stream<Path> files = Files.walk(desk)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = desk.relativize(file).toString();
        if (name.startsWith("pages/") || name.startsWith("r.")) {
          written.put(name, Files.readString(file));
          Files.delete(file);
        }
      }
    }
    return written;
  }

  private List<Path> kept() throws IOException {
    try (Stream<Path> files = Files.list(desk.resolve("kept"))) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "-v", "--verdicts", "-q", "--units us", "--skip fixing", "--part 1/2"})
  void aWarmRunWritesWhatAColdOneDoes(String more) throws IOException {
    String[] words = more.isEmpty() ? new String[0] : more.split(" ");
    Map<String, String> without = written(words);
    String[] with =
        Stream.concat(Stream.of(words), Stream.of("--cache", "kept")).toArray(String[]::new);
    assertThat(written(with)).isEqualTo(without);
    int entries = kept().size();
    assertThat(entries).isIn(more.startsWith("--part") ? List.of(2, 2 + FILMS) : List.of(ALL_KEPT));
    assertThat(written(with)).isEqualTo(without);
    assertThat(kept()).hasSize(entries);
  }

  @Test
  void itIsTakenAndNotMadeAgain() throws IOException {
    run("check", "plans", "--cache", "kept");
    Path entry = kept().get(0);
    Files.setLastModifiedTime(entry, java.nio.file.attribute.FileTime.fromMillis(0));
    run("check", "plans", "--cache", "kept");
    assertThat(kept()).hasSize(ALL_KEPT);
    assertThat(Files.getLastModifiedTime(entry).toMillis()).as("written again").isZero();
  }

  /** A plan that was edited has the same films: they aren't measured again. */
  @Test
  void filmsOfAnEditedPlanAreTakenAndAChangedFilmIsNot() throws IOException {
    Path plan = desk.resolve("plans/estuary-curtains.yaml");
    run("check", "plans", "--cache", "kept");
    List<Path> before = kept();
    for (Path entry : before) {
      Files.setLastModifiedTime(entry, java.nio.file.attribute.FileTime.fromMillis(0));
    }
    Files.writeString(plan, "# edited\n" + Files.readString(plan));
    assertThat(run("check", "plans", "--cache", "kept")).isEqualTo(run("check", "plans"));
    assertThat(kept()).hasSize(ALL_KEPT + 1);
    for (Path entry : before) {
      assertThat(Files.getLastModifiedTime(entry).toMillis()).as("written again").isZero();
    }
    Files.copy(
        desk.resolve("plans/films/heron-rust.png"),
        desk.resolve("plans/films/heron-blue.png"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(run("check", "plans", "--cache", "kept")).isEqualTo(run("check", "plans"));
    assertThat(kept().size()).isGreaterThan(ALL_KEPT + 2);
  }

  /** Whatever changes what a check comes to, or what is told of it, changes the key. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plans/first-border.yaml | # a comment moves the lines | check plans",
        "plans/studio.yaml | studio: Ours | check plans",
        "studio.yaml | studio: Ours | check plans --policy studio.yaml",
        "elsewhere.txt | x | check plans --units us",
        "elsewhere.txt | x | check plans --max-findings 1",
        "elsewhere.txt | x | check plans --bound findings=1",
        "elsewhere.txt | x | check plans --only fixing",
        "elsewhere.txt | x | check plans --baseline base.json",
        "elsewhere.txt | x | check plans --color always",
        "elsewhere.txt | x | check ./plans",
        "elsewhere.txt | x | check plans --rules rules"
      })
  void whatChangesAnythingIsCheckedAnew(String file, String line, String command)
      throws IOException {
    Files.createDirectories(desk.resolve("rules/house"));
    Files.copy(
        Path.of("plans/workshop/rules/house/day.dslr"), desk.resolve("rules/house/day.dslr"));
    run("check", "plans", "-f", "json=base.json");
    run("check", "plans", "--cache", "kept");
    Path changed = desk.resolve(file);
    String before = Files.exists(changed) ? Files.readString(changed) : "";
    Files.writeString(changed, line + "\n" + before);
    int entries = kept().size();
    String[] words = command.split(" ");
    String[] with =
        Stream.concat(Stream.of(words), Stream.of("--cache", "kept")).toArray(String[]::new);
    Scenario.Outcome cold = run(words);
    assertThat(run(with)).isEqualTo(cold);
    assertThat(run(with)).isEqualTo(cold);
    assertThat(kept().size()).isGreaterThan(entries);
  }

  @Test
  void anotherWidthIsToldAnew() {
    run("check", "plans", "--cache", "kept");
    assertThat(run(Map.of("COLUMNS", "60"), "check", "plans", "--cache", "kept"))
        .isEqualTo(run(Map.of("COLUMNS", "60"), "check", "plans"));
  }

  /** Torn, changed, put under another name, of something else, or a link: none is believed. */
  @ParameterizedTest
  @ValueSource(strings = {"torn", "empty", "flipped", "swapped", "foreign", "link", "folder"})
  void anEntryThatIsNotWholeIsAsGoodAsNone(String how) throws IOException {
    Scenario.Outcome cold = run("check", "plans");
    run("check", "plans", "--cache", "kept");
    List<Path> entries = kept();
    byte[] last = Files.readAllBytes(entries.get(3));
    for (Path entry : entries) {
      byte[] bytes = Files.readAllBytes(entry);
      switch (how) {
        case "torn" -> Files.write(entry, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        case "empty" -> Files.write(entry, new byte[0]);
        case "flipped" -> {
          bytes[bytes.length - 20] ^= 1;
          Files.write(entry, bytes);
        }
        case "swapped" -> {
          Files.write(entry, last);
          last = bytes;
        }
        case "foreign" -> Files.writeString(entry, "PRINTABLE");
        case "link" -> {
          Path away = Files.move(entry, desk.resolve(entry.getFileName()));
          Files.createSymbolicLink(entry, away);
        }
        default -> {
          Files.delete(entry);
          Files.createDirectories(entry.resolve("in it"));
        }
      }
    }
    Scenario.Outcome warm = run("check", "plans", "--cache", "kept");
    assertThat(warm.out()).isEqualTo(cold.out());
    assertThat(warm.exit()).isEqualTo(cold.exit());
    if (!how.equals("folder")) {
      assertThat(warm.err()).isEqualTo(cold.err());
    }
  }

  /** Sealed under a secret, an entry of somebody who doesn't know it is none, and the other way. */
  @Test
  void aSecretKeepsForgedEntriesOut() throws IOException {
    run("check", "plans", "--cache", "kept");
    List<byte[]> forged = new ArrayList<>();
    for (Path entry : kept()) {
      forged.add(Files.readAllBytes(entry));
    }
    Map<String, String> secret = Map.of("STRIKEOFF_CACHE_SECRET", "reeds and herons");
    run(secret, "check", "plans", "--cache", "kept");
    List<Path> entries = kept();
    assertThat(entries).hasSize(ALL_KEPT);
    for (int i = 0; i < entries.size(); i++) {
      assertThat(Files.readAllBytes(entries.get(i))).as("sealed anew").isNotEqualTo(forged.get(i));
    }
    assertThat(run(secret, "check", "plans", "--cache", "kept")).isEqualTo(run("check", "plans"));
  }

  @Test
  void theOldestGoWhereThereIsTooLittleRoom() throws IOException {
    Files.createDirectories(desk.resolve("kept"));
    Files.writeString(desk.resolve("kept/notes.txt"), "mine");
    Path old = desk.resolve("kept").resolve("0".repeat(64) + ".kept");
    Files.write(old, new byte[2 << 20]);
    Files.setLastModifiedTime(old, java.nio.file.attribute.FileTime.fromMillis(0));
    run("check", "plans", "--cache", "kept", "--cache-mib", "1");
    assertThat(old).doesNotExist();
    assertThat(desk.resolve("kept/notes.txt")).hasContent("mine");
    assertThat(kept()).hasSize(ALL_KEPT + 1);
  }

  @Test
  void aFolderThatTakesNothingIsToldAndChangesNothing() throws IOException {
    Files.writeString(desk.resolve("taken"), "a file");
    Scenario.Outcome outcome = run("check", "plans", "--cache", "taken");
    assertThat(outcome.err()).startsWith("strikeoff: results can't be kept in the cache: ");
    assertThat(outcome.out()).isEqualTo(run("check", "plans").out());
    assertThat(outcome.exit()).isEqualTo(3);
  }

  @Test
  void whatTheToolFailedOnIsNotKept() throws IOException {
    Files.createDirectories(desk.resolve("class"));
    Files.copy(Path.of("plans/first-border.yaml"), desk.resolve("class/a.yaml"));
    Files.writeString(desk.resolve("class/studio.yaml"), "tabel: x\n");
    assertThat(run("check", "class", "--cache", "kept").exit()).isEqualTo(4);
    assertThat(desk.resolve("kept")).doesNotExist();
  }
}
