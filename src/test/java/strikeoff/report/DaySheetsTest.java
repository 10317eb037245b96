package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Task;

class DaySheetsTest {

  private final Checked.Judged judged = Estuary.plain(List.of());

  private final List<DaySheet> sheets = DaySheets.of(judged);

  @Test
  void everyImpressionStandsOnALineOfItsScreenAndPaste() {
    List<DaySheet.Line> lines =
        sheets.stream().flatMap(s -> s.jobs().stream()).flatMap(j -> j.lines().stream()).toList();
    for (Impression impression : judged.facts().timeline().impressions()) {
      String screen = "screen " + impression.footprint().screen().name();
      assertThat(lines)
          .anyMatch(
              line ->
                  line.with().contains(screen)
                      && line.clock().compareTo(impression.laid().clock()) <= 0);
    }
    long prints = lines.stream().filter(l -> l.with().contains("1\u00a0pull")).count();
    assertThat(prints)
        .isEqualTo(
            judged.facts().timeline().impressions().stream()
                .map(i -> List.of(i.step(), i.set(), i.footprint().separation().number()))
                .distinct()
                .count());
  }

  @Test
  void aJobTellsItsCornersAndWhenTheClothMayMove() {
    DaySheet.Job herons =
        sheets.get(0).jobs().stream()
            .filter(j -> j.what().startsWith("Print herons"))
            .findFirst()
            .orElseThrow();
    assertThat(herons.what()).isEqualTo("Print herons 1–3 (Wren)");
    // By hand: frame 54 by 74 cm, image centred in it and on the design of 34 by 52 cm.
    assertThat(herons.where().words())
        .isEqualTo("Corner 46 cm from the near edge; from the start, cm:");
    assertThat(herons.where().spots())
        .containsExactly(
            new DaySheet.Spot("1", "23"),
            new DaySheet.Spot("2", "93"),
            new DaySheet.Spot("3", "163"));
    assertThat(herons.where().frame()).contains("10 cm nearer the start and 11 cm nearer the near");
    assertThat(herons.lines().get(0).next())
        .isEqualTo("frame on it from 09:44 (safe 09:45), wait to 09:45");
    assertThat(herons.lines().get(3).what()).startsWith("Leave the cloth until");
    assertThat(herons.lines().get(3).next()).startsWith("cloth may move from 10:39 (safe 11:01)");
  }

  @Test
  void jobsAreNumberedThroughTheDayAcrossItsSheets() {
    List<Integer> numbers =
        sheets.stream()
            .filter(s -> s.title().startsWith("Day 1"))
            .flatMap(s -> s.jobs().stream())
            .map(DaySheet.Job::number)
            .toList();
    assertThat(numbers)
        .isEqualTo(IntStream.rangeClosed(1, numbers.size()).boxed().toList())
        .hasSizeGreaterThan(10);
  }

  @Test
  void closedHoursAreNoJob() {
    assertThat(judged.facts().timeline().tasks()).anyMatch(t -> t.kind() == Task.Kind.CLOSED);
    assertThat(Work.of(judged.facts().timeline())).noneMatch(w -> w.kind() == Task.Kind.CLOSED);
  }

  @Test
  void aWholeArrangementIsNamedAndMarkedOnce() {
    var layout = judged.facts().layout();
    List<String> herons = layout.of("herons").stream().map(p -> p.name()).toList();
    assertThat(Runs.placements(herons, layout)).isEqualTo("all 6 of herons");
    assertThat(Runs.marked(herons, layout)).containsExactly("herons 1");
    assertThat(Runs.placements(herons.subList(1, 4), layout)).isEqualTo("herons 2–4");
    assertThat(Runs.marked(List.of("no such thing"), layout)).isEmpty();
  }

  /** Whoever follows the sheet must not print the second pass before the wait between the two. */
  @Test
  void everyOtherOneStandsApartFromTheRestThatIsPrintedAfterAWait() {
    String plan =
        """
        plan: Every other one, then the rest
        cloth: {length: 2 m, width: 60 cm, washed: yes}
        screens: {reeds: {frame: 46 x 40 cm, image: 28 x 22 cm, mesh: 43/cm}}
        pastes: {sand: {medium: paint, colour: tan, amount: 300 g, mixed before: 1 h}}
        designs:
          reeds: {size: 28 x 22 cm, separations: [{screen: reeds, paste: sand, covers: 40 %}]}
        placements: {border: {design: reeds, series: 5, pitch: 30 cm, start: 10 cm, across: 20 cm}}
        run:
          - {print: border, every other: yes, dry between passes: 30 min, pause: 1 min}
        """;
    Checked.Judged passes = (Checked.Judged) Checker.builtIn().check("passes.yaml", plan);
    List<DaySheet.Line> lines =
        DaySheets.of(passes).get(0).jobs().stream()
            .filter(j -> j.what().startsWith("Print border"))
            .flatMap(j -> j.lines().stream())
            .toList();
    // By hand: loaded at 9:15; 50 s a print and a minute after each but the last: 1, 3 and 5 are
    // done at 9:19:30, and half an hour later come 2 and 4, the pause before them included.
    assertThat(lines).extracting(DaySheet.Line::clock).containsExactly("09:15", "09:50");
    assertThat(lines.get(0).with()).startsWith("on 1, 3, 5,");
    assertThat(lines.get(0).next()).endsWith(", wait to 09:49");
    assertThat(lines.get(1).with()).startsWith("on 2, 4,");
  }

  /** By hand: each washing takes 10 min, and 30 min later the screen is dry. */
  @Test
  void aScreenWashedTwiceInADayIsDryAfterEachWashing() {
    String plan =
        """
        plan: Two paints through one screen
        cloth: {length: 2 m, width: 90 cm, washed: yes}
        table: {length: 2.4 m, width: 1.2 m}
        screens:
          star: {frame: 40 x 40 cm, image: 20 x 20 cm, mesh: 43/cm}
        pastes:
          red: {medium: paint, colour: "#b0362f"}
          gold: {medium: paint, colour: "#d9a92f"}
        designs:
          red star: {size: 20 x 20 cm, separations: [{screen: star, paste: red, covers: 40 %}]}
          gold star: {size: 20 x 20 cm, separations: [{screen: star, paste: gold, covers: 40 %}]}
        placements:
          reds: {design: red star, series: 4, pitch: 45 cm, start: 5 cm, across: 10 cm}
          golds: {design: gold star, series: 4, pitch: 45 cm, start: 25 cm, across: 55 cm}
        run:
          - mix: all
          - print: reds
          - wash screen: star
          - print: golds
        """;
    Checked.Judged twoPaints = (Checked.Judged) Checker.builtIn().check("stars.yaml", plan);
    List<DaySheet.Line> washings =
        DaySheets.of(twoPaints).stream()
            .flatMap(s -> s.jobs().stream())
            .filter(j -> j.what().startsWith("Wash out star"))
            .flatMap(j -> j.lines().stream())
            .toList();
    // On the table 15 min, two pastes 20 min, four prints of 50 s; then again four prints.
    assertThat(washings).extracting(DaySheet.Line::clock).containsExactly("09:38", "10:21");
    assertThat(washings)
        .extracting(DaySheet.Line::next)
        .containsExactly("dry at 10:18", "dry at 11:01");
  }
}
