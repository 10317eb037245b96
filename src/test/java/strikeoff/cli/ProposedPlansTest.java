package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.cli.Scenario.Outcome;

/**
 * What is found for the plans of the village hall, the class and the workshop. Ends and bounds are
 * to the minute; where the finish is the bound, it is proved that no run ends sooner.
 */
class ProposedPlansTest {

  private static final Path HERE = Path.of("").toAbsolutePath();

  /** In the room's own air, since none of them names a fan; the curtains do. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "first-border            | 400 | day 1, 13:19 | day 1, 13:19",
        "class/otis              | 300 | day 1, 13:4  | day 1, 13:44",
        "class/ivo               | 300 | day 1, 13:4  | day 1, 13:44",
        "class/tobias            | 300 | day 1, 13:4  | day 1, 13:44",
        "class/mina              | 400 | day 1, 14:22 | day 1, 14:22",
        "workshop/saturday/agnes | 300 | day 2, 11:35 | day 2, 11:35",
        "workshop/saturday/cleo  | 300 | day 2, 12:40 | day 2, 12:40",
        "workshop/saturday/dario | 300 | day 1, 13:50 | day 1, 13:50",
        "estuary-curtains        | 200 | day 2, 10:35 | day 2, 10:35",
      })
  void itEndsSoonAndNotBeforeTheBound(String plan, int effort, String ends, String bound) {
    told(proposed(HERE, "plans/" + plan + ".yaml", effort), ends, bound);
  }

  /** The same with a fan, which must be named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "first-border     |  600 | day 1, 11:52 | day 1, 11:52",
        "class/otis       |  300 | day 1, 12:2  | day 1, 12:15",
        "class/mina       | 1500 | day 1, 13:0  | day 1, 13:00",
      })
  void withAFanItEndsSooner(
      String plan, int effort, String ends, String bound, @TempDir Path folder) throws IOException {
    told(proposed(folder, withAFan(plan, folder), effort), ends, bound);
  }

  private static String withAFan(String plan, Path folder) throws IOException {
    Files.writeString(
        folder.resolve("plan.yaml"),
        Files.readString(Path.of("plans/" + plan + ".yaml")) + "\nequipment: {fans: 1}\n");
    return "plan.yaml";
  }

  private static Outcome proposed(Path folder, String plan, int effort, String... more) {
    List<String> words =
        new ArrayList<>(List.of("propose", plan, "--effort", "" + effort, "--shortest"));
    words.addAll(List.of(more));
    return Scenario.run(folder, Map.of("COLUMNS", "1000"), words);
  }

  private static void told(Outcome outcome, String ends, String bound) {
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err())
        .containsPattern("(this one|keep yours: it) ends on " + ends)
        .containsPattern("No runs? of these prints (that sew [^:]+)?can end before " + bound);
  }

  /**
   * With the seam sewn first, against advice, the curtains are done on one day: by hand, from the
   * times that the plan and the policy give, the boards under the herons and the boards together
   * take two lays each, in each of which the rich films dry 27 min before the cloth moves.
   */
  @Test
  void theCurtainsAreDoneOnOneDayWhereTheSeamMayBeSewnFirst() {
    Outcome outcome = proposed(HERE, "plans/estuary-curtains.yaml", 200, "--any-order");
    assertThat(outcome.err())
        .contains("this one ends on day 1, 14:4")
        .contains("can end before day 1, 14:2")
        .contains("4 stretches of the cloth");
  }

  /** A night dries the prints as well, but to leave out the wait after it saves nothing. */
  @Test
  void aRunThatNoneBeatsIsConfirmedAndNoPatchWritten() {
    Outcome outcome = proposed(HERE, "plans/workshop/saturday/cleo.yaml", 200);
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .contains("cleo.yaml: keep yours: it ends on day 2, 12:40")
        .contains("This one is as short");
  }

  /** The curtains are soaked at 30 °C as soon as the room opens. */
  @Test
  void aBathThatMustBeWarmAtOpeningIsTold() {
    assertThat(proposed(HERE, "plans/estuary-curtains.yaml", 200).err())
        .contains("It ends then only if the bath has its 30 °C at 09:00 on day 2, when the room")
        .containsPattern("Where films dry slowly somebody works on day 1 until 1[56]:");
  }

  /** The bound of plain runs leaves out those that sew first, which are advised against. */
  @Test
  void theBoundSaysWhatAdviceItCountsOn() {
    assertThat(proposed(HERE, "plans/estuary-curtains.yaml", 200).err())
        .contains(
            "No runs of these prints that sew centre after the prints away from it, as rules"
                + " advise, can end before day 2, 10:35")
        .contains("With `--any-order` it might end from day 1, 14:2")
        .doesNotContain("No run of these prints can");
    assertThat(proposed(HERE, "plans/estuary-curtains.yaml", 200, "--any-order").err())
        .contains("No run of these prints can end before day 1, 14:2")
        .doesNotContain("it might end from");
  }

  /** What the curtains' plan says of itself changes what can be proved of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hours: 09:00-13:00 | day 2, 10:35 | what comes after the prints can't be done before",
        "hours: 09:00-17:00~equipment: {fans: 0, hair dryers: 0} | day 2, 10:35 | what comes after the prints can't be done before",
      })
  void theCurtainsInOtherHoursAndWithoutAFan(
      String said, String bound, String because, @TempDir Path folder) throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    DemoFilms.layInto(folder);
    Files.writeString(
        folder.resolve("curtains.yaml"),
        text.replace("equipment: {fans: 1}", "")
            .replace("hours: 09:00-17:00", said.replace("~", "\n")));
    Outcome outcome =
        Scenario.run(
            folder,
            Map.of("COLUMNS", "1000"),
            List.of("propose", "curtains.yaml", "--effort", "150", "--shortest"));
    assertThat(outcome.err()).contains("can end before " + bound).contains(because);
  }
}
