package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** A first plan of a folder of films. */
class StartFilmsTest {

  private static final String COLOURS =
      "sand=#d9b77e,rust=#b5653a,green=#7d8b52,blue=#5f7d94,key=#2b3440";

  @TempDir private Path folder;

  @BeforeEach
  void films() throws IOException {
    Path films = Files.createDirectory(folder.resolve("films"));
    try (Stream<Path> all = Files.list(Path.of("plans/films"))) {
      for (Path film : (Iterable<Path>) all::iterator) {
        Files.copy(film, films.resolve(film.getFileName()));
      }
    }
    Files.writeString(films.resolve("read-me.txt"), "of the summer");
  }

  private Outcome start(String... options) {
    List<String> args = new ArrayList<>(List.of("start"));
    args.addAll(Arrays.asList(options));
    return Scenario.run(folder, Map.of(), args);
  }

  private void film(String name, String bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static String drawing(String size) {
    return "<svg xmlns='http://www.w3.org/2000/svg' "
        + size
        + " viewBox='0 0 100 100'><rect x='10' y='10' width='50' height='40'/></svg>";
  }

  @Test
  void severalDesignsLieBehindEachOtherAndArePrintable() throws IOException {
    Outcome outcome = start("--artwork", "films", "--colours", COLOURS, "-o", "mine.yaml");
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    String plan = Files.readString(folder.resolve("mine.yaml"));
    assertThat(plan)
        .contains(
            "size: 34 x 52 cm",
            "size: 30 x 22 cm",
            "size: 8 x 7 cm",
            "{screen: heron rust, paste: rust, artwork: \"films/heron-rust.png\"}",
            "{screen: heron key, paste: key, artwork: \"films/heron-key.png\", key: yes}",
            "print: [heron row, reeds row, shell row]")
        .doesNotContain("stands in", "read-me");
    assertThat(plan.indexOf("paste: sand,")).isLessThan(plan.lastIndexOf("paste: rust,"));
    Outcome checked = Scenario.run(folder, Map.of(), List.of("check", "mine.yaml"));
    assertThat(checked.exit()).as(checked.out()).isZero();
    assertThat(start("--artwork", "films", "--colours", COLOURS).out()).isEqualTo(plan);
  }

  @Test
  void whatANameLeavesOpenIsToldAndLightComesBeforeDark() {
    Outcome outcome = start("--artwork", "films");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .isEqualTo(
            "By name no colour that plans know: “sand”, “rust”, “key”. Greys and black stand in;"
                + " write the colours into the plan. ");
    assertThat(outcome.out())
        .containsSubsequence(
            "sand: {", "#d0d0d0", "stands in", "green: {", "blue: {", "key: {", "\"black\"");
  }

  @Test
  void coloursAloneGoToTheFilmsThatWaitForThem() throws IOException {
    film("two/heron-1.svg", drawing("width='12cm' height='12cm'"));
    film("two/heron-2.svg", drawing("width='12cm' height='12cm'"));
    film("two/heron-blue.svg", drawing("width='12cm' height='12cm'"));
    assertThat(start("--artwork", "two", "--colours", "gold,blue,black").out())
        .containsSubsequence(
            "pastes:", "1: {", "\"gold\"", "blue: {", "\"blue\"", "2: {", "\"black\"");
    Outcome few = start("--artwork", "two", "--colours", "gold,blue");
    assertThat(few.exit()).isEqualTo(2);
    assertThat(few.err()).contains("--colours: gold is the name of no film").contains("1, 2");
    assertThat(start("--artwork", "two", "--colours", "gold=teal").err())
        .contains("no film is called “gold”");
    Outcome unread = start("--artwork", "two", "--colours", "1=taupee,2=black", "-o", "x.yaml");
    assertThat(unread.exit()).isEqualTo(3);
    assertThat(unread.err()).contains("taupee");
    assertThat(folder.resolve("x.yaml")).doesNotExist();
  }

  @Test
  void theOptionSizesFilmsThatSayNone() throws IOException {
    film("new/heron-teal.svg", drawing(""));
    film("new/heron-navy.pbm", "P1 4 4\n0 0 0 0\n0 1 1 0\n0 1 1 0\n0 0 0 0\n");
    Outcome none = start("--artwork", "new");
    assertThat(none.exit()).isEqualTo(3);
    assertThat(none.err().replaceAll("\\s+", " "))
        .contains("new/heron-navy.pbm: this film doesn't say how large it is")
        .contains("new/heron-teal.svg: this film doesn't say");
    assertThat(start("--artwork", "new", "--motif", "8 x 8 in").out()).contains("size: 8 x 8 in");
  }

  @Test
  void everyFilmThatCannotBeTakenInIsToldAndNothingWritten() throws IOException {
    film("bad/heron-rust.jpg", "\u00ff\u00d8\u00ff..");
    film("bad/heron-key.png", "\u0089PNG\r\n\u001a\n....");
    film("bad/reeds_green.svg", drawing("width='12cm' height='12cm'"));
    film("bad/reeds-green.svg", drawing("width='12cm' height='12cm'"));
    film("bad/a:b-teal.svg", drawing("width='12cm' height='12cm'"));
    Outcome outcome = start("--artwork", "bad", "-o", "x.yaml");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .contains(
            "bad/heron-rust.jpg: this is a JPEG file",
            "bad/heron-key.png: ",
            "bad/reeds_green.svg: by its name this is the same separation as",
            "bad/a:b-teal.svg: no file that is to be found on each system");
    assertThat(folder.resolve("x.yaml")).doesNotExist();
    film("all/all-all.svg", drawing("width='12cm' height='12cm'"));
    Outcome all = start("--artwork", "all");
    assertThat(all.exit()).as(all.err() + all.out()).isBetween(0, 3);
  }

  /** Which thousand come first is the file system's affair. */
  @Test
  void aFolderOfThousandsIsToldAndNotLookedThroughInPart() throws IOException {
    for (int i = 0; i < 1000; i++) {
      film("heap/note-" + i + ".txt", "");
    }
    assertThat(start("--artwork", "heap").err()).contains("there is no film in this folder");
    film("heap/reeds-green.svg", drawing("width='12cm' height='12cm'"));
    Outcome heap = start("--artwork", "heap");
    assertThat(heap.exit()).isEqualTo(2);
    assertThat(heap.err())
        .contains("more than 1000 files in this folder")
        .contains("into a folder of their own");
  }

  @Test
  void theFolderLiesBesideThePlan() throws IOException {
    Files.createDirectories(folder.resolve("plans"));
    Outcome elsewhere = start("--artwork", "films", "-o", "plans/mine.yaml");
    assertThat(elsewhere.exit()).isEqualTo(2);
    assertThat(elsewhere.err()).contains("this folder lies elsewhere");
    Files.createSymbolicLink(folder.resolve("link"), folder.resolve("films"));
    assertThat(start("--artwork", "link").err()).contains("this is a link");
    assertThat(start("--artwork", "..").exit()).isEqualTo(2);
    assertThat(start("--artwork", "nowhere").err()).contains("there is no such folder");
    assertThat(start("--artwork", "films/read-me.txt").err()).contains("this is no folder");
    assertThat(start("--artwork", "plans").err()).contains("there is no film in this folder");
    assertThat(start("--artwork", "films", "--colours", COLOURS, "-o", "films/x.yaml").exit())
        .isZero();
    assertThat(folder.resolve("films/x.yaml")).content().contains("artwork: \"heron-rust.png\"");
    Files.copy(Path.of("plans/films/shell-sand.png"), folder.resolve("plans/teal.png"));
    assertThat(start("--artwork", "plans", "-o", "plans/x.yaml").exit()).isZero();
    assertThat(folder.resolve("plans/x.yaml"))
        .content()
        .contains("artwork: \"teal.png\"", "  motif:");
  }

  @Test
  void theQuestionsAskForFilmsWhereThereAreSome() {
    String answers =
        "T\nnix\nfilms\nreeds\nlinen\n20 cm\n"
            + "\n".repeat(4)
            + "gold\n#7d8b52, ink\n#7d8b52, black\n"
            + "\n".repeat(7)
            + "sub/x.yaml\nx.yaml\n";
    Outcome outcome =
        Scenario.run(folder, Map.of("LANG", "C.UTF-8"), List.of("start", "--ask"), answers);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err())
        .contains(
            "Is there a folder with films (films)? [none]",
            "nix: there is no such folder",
            "Which design is printed: heron, reeds, shell? [heron]",
            "The films measure 30 x 22 cm.")
        .doesNotContain("How large is the motif");
    assertThat(folder.resolve("x.yaml"))
        .content()
        .contains("artwork: \"films/reeds-green.png\"", "#7d8b52", "{design: reeds, series:");
    assertThat(Scenario.run(folder, Map.of(), List.of("check", "x.yaml")).exit()).isZero();
  }
}
