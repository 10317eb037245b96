package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.cli.Scenario.Outcome;

/** What start asks, in the order of its questions, and what it makes of the answers. */
class AskedStartTest {

  private static final Map<String, String> UTF_8 = Map.of("LANG", "en_GB.UTF-8");

  /** Of motifs, from the title to the file. */
  private static final int QUESTIONS = 16;

  @TempDir private Path folder;

  private Outcome ask(Map<String, String> environment, List<String> options, String... answers) {
    List<String> args = Stream.concat(Stream.of("start", "--ask"), options.stream()).toList();
    return Scenario.run(
        folder, environment, args, answers.length == 0 ? "" : String.join("\n", answers) + "\n");
  }

  private Outcome ask(String... answers) {
    return ask(UTF_8, List.of(), answers);
  }

  private static String[] blank(int count) {
    return Stream.generate(() -> "").limit(count).toArray(String[]::new);
  }

  private static Checked.Judged judged(String plan) {
    return (Checked.Judged) Checker.builtIn().check("the plan", plan);
  }

  @Test
  void emptyAnswersTakeWhatStandsInBrackets() throws IOException {
    Outcome outcome = ask(blank(QUESTIONS));
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.out()).isEmpty();
    String plan = Files.readString(folder.resolve("my-plan.yaml"));
    assertThat(judged(plan).sentence()).startsWith("Printable");
    assertThat(plan).contains("length: \"2 m\"", "width: \"90 cm\"", "series: ");
    assertThat(outcome.err()).contains("What is the cloth made of? [cotton] ");
  }

  @Test
  void unitsStayAsTheyAreTyped() {
    Outcome outcome =
        ask(
            "Reeds",
            "linen",
            "1 yd",
            "5 ft 6 in",
            "5 oz/yd²",
            "dye",
            "teal",
            "",
            "8 x 6 in",
            "",
            "",
            "",
            "110/in",
            "8 x 4 ft",
            "2",
            "-");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.out())
        .contains(
            "plan: \"Reeds\"",
            "width: \"1 yd\"",
            "length: \"5 ft 6 in\"",
            "mass: \"5 oz/yd²\"",
            "size: \"8 x 6 in\"",
            "stations: {count: 2")
        .doesNotContain(" cm");
  }

  @Test
  void aBadAnswerIsToldWhyAndAskedForAgain() {
    Outcome outcome =
        ask(
            "A",
            "coton",
            "granite",
            "cotton",
            "wide",
            "-3 m",
            "2 mm",
            "90 cm",
            "2 m",
            "0 g/m²",
            "",
            "ink",
            "paint",
            "teel",
            "teal,,navy",
            "teal, navy",
            "carpets",
            "motifs",
            "3 x 3 m",
            "20 cm",
            "20 x 20 cm",
            "10 cm",
            "50 cm",
            "99",
            "some",
            "2",
            "30 x 30 cm",
            "",
            "43 cm",
            "",
            "40 x 40 cm",
            "",
            "17",
            "0",
            "-");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains(
            "did you mean “cotton”?",
            "Between 10 cm and 5 m can be planned here.",
            "Say one of dye, paint.",
            "“teel”",
            "Say one of motifs, border",
            "There is no room for that on the cloth.",
            "They would overlap: the motif measures 20 cm.",
            "Say a number from 1 to ",
            "A frame for this motif measures at least ",
            "The frames need a table of at least ",
            "Say a number from 0 to ");
    assertThat(outcome.out()).contains("series: 2, pitch: \"50 cm\"");
  }

  @Test
  void whatCanNeverBePrintedIsRefusedWhereItIsSaid() {
    Outcome outcome =
        ask("A", "polyester", "", "", "", "dye", "paint", "", "", "", "", "", "", "", "", "", "-");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err()).contains("polyester");
    assertThat(outcome.out()).contains("medium: paint");
  }

  @Test
  void whereTheAnswersEndNothingIsWritten() throws IOException {
    for (int answered = 0; answered < QUESTIONS; answered++) {
      Outcome outcome = ask(blank(answered));
      assertThat(outcome.exit()).as("%d answers: %s", answered, outcome.err()).isEqualTo(2);
      assertThat(outcome.out()).isEmpty();
      assertThat(outcome.err()).contains("nothing was written");
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files).isEmpty();
      }
    }
  }

  @Test
  void aFileThatIsThereStaysAndAnotherIsAskedFor() throws IOException {
    Files.writeString(folder.resolve("my-plan.yaml"), "precious");
    String[] answers =
        Stream.concat(Stream.of(blank(QUESTIONS)), Stream.of("other.yaml")).toArray(String[]::new);
    Outcome outcome = ask(answers);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err()).contains("my-plan.yaml: this file is there already");
    assertThat(folder.resolve("my-plan.yaml")).hasContent("precious");
    assertThat(folder.resolve("other.yaml")).isNotEmptyFile();
  }

  @Test
  void theClothIsDrawnInLettersOfTheLocale() {
    Outcome drawn = ask(blank(QUESTIONS));
    assertThat(drawn.err()).contains("▒").doesNotContain("#");
    for (String locale : List.of("C", "POSIX", "")) {
      Outcome plain =
          ask(
              Map.of("LC_ALL", locale),
              List.of("-o", "plain" + locale + ".yaml"),
              blank(QUESTIONS));
      assertThat(plain.exit()).isZero();
      assertThat(plain.err()).contains("####").matches("[\\n\\x20-\\x7e]*");
      List<String> map =
          plain.err().lines().filter(l -> l.matches("[|+].*[|+]|.*\\+-+\\+")).toList();
      assertThat(map).hasSizeGreaterThan(4);
      assertThat(plain.err().lines().filter(l -> l.startsWith("|")))
          .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    }
  }

  @Test
  void optionsSayWhatIsOffered() {
    Outcome outcome =
        ask(
            UTF_8,
            List.of("--fibre", "linen", "--colours", "gold,navy", "-o", "mine.yaml"),
            blank(QUESTIONS));
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err()).contains("[linen]", "[gold, navy]", "[mine.yaml]");
    assertThat(folder.resolve("mine.yaml")).content().contains("fibre: \"linen\"");
  }

  @Test
  void withoutATerminalNothingIsAsked() {
    Outcome outcome = Scenario.run(folder, UTF_8, List.of("start"), "x\n");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).startsWith("# A first plan:");
    assertThat(outcome.err()).isEmpty();
  }
}
