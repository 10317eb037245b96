package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.Timeline;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/**
 * Boards as plans/README.md tells them, each by a tiny plan: common practice, no source. Leaves are
 * 20 cm long, their frames 44 cm.
 */
class BoardsTest {

  private static final Checker CHECKER = Checker.builtIn();

  @ParameterizedTest
  @CsvSource({
    // as long as the pitch: all three lie on boards at once
    "60 cm, 60, 1 2 3",
    // longer: a board lies under every other one
    "70 cm, 60, 1 3|2",
    "70 cm, 70, 1 2 3",
  })
  void looseBoardsAreSetAtTheMotifsPitch(String length, int pitch, String sets) {
    assertThat(sets(plan("{count: 3, length: " + length + ", width: 60 cm}", row(3, pitch))))
        .isEqualTo(sets);
  }

  @Test
  void aFourthCopyOnThreeBoardsWaitsForTheClothToMove() {
    // the table of 4 m would show the frames of all four: 10 to 234 cm
    String plan = plan("{count: 3, length: 50 cm, width: 60 cm}", row(4, 60));
    assertThat(sets(plan)).isEqualTo("1 2 3|4");
    assertThat(moves(plan)).containsExactly("move on to 195 cm");
    assertThat(sets(plan("{count: 4, length: 50 cm, width: 60 cm}", row(4, 60))))
        .isEqualTo("1 2 3 4");
  }

  /** Of three and one all but one of them would stand idle at the last. */
  @ParameterizedTest
  @CsvSource({
    "3, 4, by colour, 1 2|3 4",
    "3, 4, by station, 1 2|3 4",
    "4, 6, by colour, 1 2 3|4 5 6",
    // three times two people at two stations; three and three would be four times
    "4, 6, by station, 1 2 3 4|5 6",
    "5, 6, by station, 1 2 3 4|5 6",
    "4, 6, set by set, 1 2 3 4|5 6",
  })
  void severalPeopleShareTheCopiesOutEvenly(int boards, int copies, String order, String sets) {
    String plan =
        plan("{count: " + boards + ", length: 50 cm, width: 60 cm}", row(copies, 60))
            .replace("run:", "crew: [Wren, Tam]\nrun:")
            .replace("print: leaves", "print: leaves\n    by: [Wren, Tam]\n    order: " + order);
    assertThat(sets(plan)).isEqualTo(sets);
    assertThat(moves(plan)).hasSize(1);
  }

  /**
   * The cloth is moved as seldom as can be, though people who go by station may be done later: of
   * six copies two and two and two are three rounds for two people, three and three are four.
   */
  @Test
  void aLongerTableThatSavesAMoveMayTakeARoundMoreByStation() {
    String two =
        plan("", row(6, 60))
            .replace("length: 4 m", "length: 1.1 m")
            .replace("run:", "crew: [Wren, Tam]\nrun:")
            .replace(
                "print: leaves",
                "print: leaves\n    by: [Wren, Tam]\n    order: by station\n"
                    + "    dry between colours: 40 min")
            .replace("covers: 40 %}]", "covers: 40 %}, {screen: vein, paste: green, covers: 9 %}]")
            .replace(
                "pastes:", "  vein: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}\npastes:");
    String three = two.replace("length: 1.1 m", "length: 1.7 m");
    assertThat(sets(two)).isEqualTo("1 2 1 2|3 4 3 4|5 6 5 6");
    assertThat(moves(three)).hasSizeLessThan(moves(two).size());
    assertThat(day(three).finish()).isGreaterThan(day(two).finish());
  }

  @ParameterizedTest
  @CsvSource({
    // a board every 60 cm, and so are the leaves
    "60, 1 2 3",
    // a board of 50 holds a frame of 44 that is 3 cm out of its middle either way
    "62, 1 2 3",
    // two pitches are one step of the boards
    "30, 1 3 5|2 4",
  })
  void fixedBoardsServeWhatLiesOnThem(int pitch, String sets) {
    int copies = pitch == 30 ? 5 : 3;
    String plan =
        plan("{count: 3, length: 50 cm, width: 60 cm, gap: 10 cm, fixed: yes}", row(copies, pitch));
    assertThat(sets(plan)).isEqualTo(sets);
    assertThat(found(plan)).doesNotContain("table/boards-miss-motifs");
  }

  @Test
  void fixedBoardsElsewhereMissTheSecondCopy() {
    String boards = "{count: 3, length: 50 cm, width: 60 cm, gap: 10 cm, fixed: yes}";
    assertThat(found(plan(boards, row(3, 80)))).contains("table/boards-miss-motifs");
    assertThat(found(plan(boards.replace(", fixed: yes", ""), row(3, 80))))
        .doesNotContain("table/boards-miss-motifs");
  }

  @Test
  void whatIsPrintedOverAnotherSharesItsBoard() {
    String both =
        row(3, 60)
            + "\n  over: {design: leaf, series: 3, pitch: 60 cm, start: 35 cm, across: 20 cm}";
    String plan = plan("{count: 3, length: 50 cm, width: 60 cm}", both) + "  - print: over\n";
    assertThat(moves(plan)).isEmpty();
  }

  @Test
  void aBorderHasLooseBoardsPushedTogetherUnderIt() {
    String both =
        row(3, 90) + "\n  hem: {design: leaf, border: near, from: 30 cm, to: 2.3 m, inset: 3 cm}";
    String loose = plan("{count: 3, length: 50 cm, width: 60 cm}", both) + "  - print: hem\n";
    // the boards under the leaves leave gaps of 40 cm, so the cloth is laid anew
    assertThat(moves(loose)).hasSize(1);
    assertThat(found(loose)).doesNotContain("table/frame-over-gap");
    String together =
        loose.replace("print: leaves\n", "print: [leaves, hem]\n    order: set by set\n");
    assertThat(found(together.replace("  - print: hem\n", ""))).contains("table/frame-over-gap");
  }

  @Test
  void theClothIsLaidWhereTheMostOfWhatComesNextFits() {
    // frames from 18 to 182 and to 418 cm: a table of 400 shows all from 18 on, and not from 0
    String both = row(3, 60) + "\n  far: {design: leaf, at: \"386 cm, 20 cm\"}";
    String plan = plan("", both) + "  - print: far\n";
    assertThat(moves(plan)).isEmpty();
    assertThat(day(plan).clothLies()).extracting(lies -> lies.at().text()).containsExactly("18 cm");
  }

  /** Two and two leave no time to wash a screen in the wait that three leave; three and one do. */
  @Test
  void setsAreThoseOfFewerPeopleWhereTheRunEndsSoonerSo() {
    String plan =
        """
        plan: Four herons on three boards
        cloth: {length: 310 cm, width: 140 cm, washed: yes, mass: 300 g/m²}
        table: {length: 240 cm, width: 180 cm, stations: {count: 3, length: 48 cm, width: 60 cm, gap: 5 cm}}
        room: {temperature: 20 °C, humidity: 70 %}
        crew: [Wren, Tam, Ada]
        screens:
          a: {frame: 40 x 50 cm, image: 20 x 30 cm, mesh: 61/cm, thread: 64 µm, squeegee: 24 cm}
          b: {frame: 40 x 50 cm, image: 20 x 30 cm, mesh: 61/cm, thread: 64 µm, squeegee: 24 cm}
          d: {frame: 24 x 24 cm, image: 8 x 8 cm, mesh: 43/cm, thread: 80 µm, squeegee: 12 cm}
        pastes:
          blue: {medium: paint, colour: "#5f7d94", amount: 300 g}
          ink: {medium: paint, colour: "#2b3440", amount: 200 g}
        designs:
          heron:
            size: 20 x 30 cm
            separations:
              - {screen: a, paste: blue, covers: 40 %, trap: 1 mm}
              - {screen: b, paste: ink, covers: 10 %, key: yes}
          dot: {size: 8 x 8 cm, separations: [{screen: d, paste: ink, covers: 60 %}]}
        placements:
          herons: {design: heron, series: 4, pitch: 60 cm, start: 30 cm, across: 50 cm, turn: 90°}
          extra: {design: dot, at: ["60 cm, 110 cm", "130 cm, 110 cm"]}
        run:
          - mix: all
          - print: herons
            by: Wren
            dry between colours: 30 min
            before moving: until lift-safe
          - print: extra
            before moving: 20 min
          - dry: until fix-safe
        """;
    Moment alone = day(plan).finish();
    assertThat(day(plan.replace("by: Wren", "by: [Wren, Tam]")).finish())
        .isLessThanOrEqualTo(alone);
    assertThat(day(plan.replace("by: Wren", "by: [Wren, Tam, Ada]")).finish())
        .isLessThanOrEqualTo(alone);
  }

  private static String row(int copies, int pitch) {
    return "  leaves: {design: leaf, series: "
        + copies
        + ", pitch: "
        + pitch
        + " cm, start: 30 cm, across: 20 cm}";
  }

  private static String plan(String stations, String placements) {
    return """
        plan: Leaves on boards
        cloth: {length: 6 m, width: 60 cm, washed: yes}
        table: {length: 4 m, width: 1.2 m%s}
        screens:
          leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
        pastes:
          green: {medium: dye, group: DCT, colour: green}
        designs:
          leaf: {size: 20 x 20 cm, separations: [{screen: leaf, paste: green, covers: 40 %%}]}
        placements:
        %s
        run:
          - mix: all
          - print: leaves
        """
        .formatted(stations.isEmpty() ? "" : ", stations: " + stations, placements);
  }

  private static String sets(String plan) {
    Map<Integer, List<String>> sets = new TreeMap<>();
    for (Impression print : day(plan).impressions()) {
      String number = String.valueOf(print.footprint().placement().number());
      sets.merge(
          print.set(),
          List.of(number),
          (all, one) -> java.util.stream.Stream.concat(all.stream(), one.stream()).toList());
    }
    return String.join("|", sets.values().stream().map(s -> String.join(" ", s)).toList());
  }

  private static List<String> moves(String plan) {
    return day(plan).tasks().stream()
        .filter(t -> t.kind() == Task.Kind.MOVE)
        .map(t -> DaySpeech.text(t.doing(), Measures.METRIC))
        .toList();
  }

  private static List<String> found(String plan) {
    return judged(plan).findings().stream().map(f -> f.rule().id()).toList();
  }

  private static Timeline day(String plan) {
    return judged(plan).facts().timeline();
  }

  private static Checked.Judged judged(String plan) {
    Checked checked = CHECKER.check("plan.yaml", plan);
    assertThat(checked).as(checked.sentence()).isInstanceOf(Checked.Judged.class);
    return (Checked.Judged) checked;
  }
}
