package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Task;

class DaySheetsTest {

  private final Checked.Judged judged = Estuary.plain(List.of());

  private final List<DaySheet> sheets =
      DaySheets.of(judged.plan(), judged.facts().timeline(), judged.facts().care());

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
    long prints = lines.stream().filter(l -> l.with().contains("1 pull")).count();
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
    assertThat(herons.where()).isEqualTo("23, 93, 163 cm along, 46 cm from near");
    assertThat(herons.lines().get(0).next()).isEqualTo("frame 09:44–09:45, wait to 09:45");
    assertThat(herons.after()).startsWith("The cloth may move from 10:39–11:01");
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
}
