package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.day.Resource;
import strikeoff.day.Use;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.ClearedRun;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.SetOnTable;
import strikeoff.day.facts.TableDay;
import strikeoff.evidence.Evidence;
import strikeoff.layout.FrameChoices;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.report.page.TableSection;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.HoursSpeech;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.Measures;

/** Where the time of the run goes, and what decides when it ends. */
final class RunTables {

  /** A page of rows is read; more are not. */
  private static final int MOST_ROWS = 60;

  private RunTables() {}

  static List<TableSection> of(Checked.Judged judged) {
    Optional<RunFigures> found =
        judged.facts().timeline().evidence().stream()
            .filter(RunFigures.class::isInstance)
            .map(RunFigures.class::cast)
            .findFirst();
    if (found.isEmpty() || found.get().days().isEmpty()) {
      return List.of();
    }
    RunFigures figures = found.get();
    Measures units = judged.plan().measures();
    List<TableBlock> tables = new ArrayList<>();
    tables.add(days(figures));
    List<ClearedRun> cleared =
        judged.facts().timeline().evidence().stream()
            .filter(ClearedRun.class::isInstance)
            .map(ClearedRun.class::cast)
            .toList();
    if (!cleared.isEmpty()) {
      tables.add(cleared(cleared, units));
    }
    tables.add(chain(figures, units));
    if (!figures.waitedFor().isEmpty()) {
      tables.add(waiting(figures, units));
    }
    tables.add(busy(figures));
    tables.add(sets(judged));
    tables.add(frames(judged));
    return List.of(
        new TableSection(
            "time",
            "Where the time goes",
            "What decides the finish most is " + HoursSpeech.shortenFirst(figures, units) + ".",
            tables,
            false));
  }

  private static TableBlock cleared(List<ClearedRun> runs, Measures units) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(List.of(Cell.of("As written"), Cell.of(runs.get(0).asWritten().text()), Cell.of("")));
    for (ClearedRun run : runs) {
      String left =
          run.left() == 0
              ? ""
              : run.left()
                  + (run.left() == 1 ? " is" : " are")
                  + " left that no wait found here clears";
      rows.add(
          List.of(
              Cell.of(
                  run.surely()
                      ? "Nothing too wet, even in slow drying"
                      : "Nothing too wet by the likely drying time",
                  String.join("; ", RemedySpeech.written(run, units))),
              Cell.of(
                  run.finish().text(),
                  Stream.of(left, RemedySpeech.outlasted(run))
                      .filter(said -> !said.isEmpty())
                      .collect(Collectors.joining("; "))),
              Cell.of(run.longer().text())));
    }
    return new TableBlock(
        "The finish, and what it costs to let everything dry",
        List.of(words("Run"), number("Ends"), number("Later by")),
        rows,
        "The least waits in whole minutes that clear every frame on a wet film and every lifting of"
            + " wet cloth.");
  }

  private static TableBlock days(RunFigures figures) {
    List<List<Cell>> rows = new ArrayList<>();
    for (TableDay one : figures.days()) {
      rows.add(
          List.of(
              Cell.of("Day " + one.day()),
              Cell.of(one.starts().clock()),
              Cell.of(one.ends().clock()),
              Cell.of(one.closes().clock()),
              Cell.of(one.handsOn().text()),
              Cell.of(one.waiting().text())));
    }
    return new TableBlock(
        "Days at the table",
        List.of(
            words("Day"),
            number("Work starts"),
            number("Work ends"),
            number("Room closes"),
            number("Work"),
            number("Waiting")),
        rows,
        "The run ends with its last work, or later if something then dries by itself.");
  }

  private static TableBlock chain(RunFigures figures, Measures units) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CriticalChain.Link link : figures.chain().links()) {
      rows.add(
          List.of(
              Cell.of(
                  DaySpeech.text(link.doing(), units),
                  link.after().map(r -> "waits for " + r.spoken()).orElse("")),
              Cell.of(link.step() == 0 ? "" : Integer.toString(link.step())),
              Cell.of(Integer.toString(link.times())),
              Cell.of(link.span().text())));
    }
    return new TableBlock(
        "The chain that decides the finish",
        List.of(words("Work or wait"), number("Step"), number("Times"), number("Takes")),
        rows,
        "Each begins when the one before it lets go. Whatever is not named here can take longer"
            + " without a later finish.");
  }

  private static TableBlock waiting(RunFigures figures, Measures units) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Use.WaitedFor cause : figures.waitedFor()) {
      rows.add(
          List.of(Cell.of(DaySpeech.text(cause.doing(), units)), Cell.of(cause.span().text())));
    }
    return new TableBlock(
        "Waiting",
        List.of(words("For"), number("Takes")),
        rows,
        "Inside opening hours, while nobody works; in a queue for a sink or another thing that the"
            + " room has too few of, though others work.");
  }

  private static TableBlock sets(Checked.Judged judged) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Evidence evidence : judged.facts().timeline().evidence()) {
      if (evidence instanceof SetOnTable set && rows.size() < MOST_ROWS) {
        rows.add(
            List.of(
                Cell.of(
                    "Step " + set.step() + ", set " + set.set(),
                    Runs.placements(set.placements(), judged.facts().layout())),
                Cell.of(
                    set.from().text(judged.plan().measures())
                        + " to "
                        + set.to().text(judged.plan().measures())),
                Cell.of(set.taken().text(judged.plan().measures())),
                Cell.of(set.left().text(judged.plan().measures())),
                Cell.of(set.widest().text(judged.plan().measures()))));
      }
    }
    return new TableBlock(
        "Frames on the table, set by set",
        List.of(
            words("Set"),
            number("Frames along the cloth"),
            number("Take"),
            number("Table left"),
            number("Widest across")),
        rows,
        "");
  }

  private static TableBlock frames(Checked.Judged judged) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Evidence evidence : judged.facts().layout().evidence()) {
      if (evidence instanceof FrameChoices frames && rows.size() < MOST_ROWS) {
        for (FrameChoices.Choice choice : frames.choices()) {
          rows.add(
              List.of(
                  Cell.of(
                      frames.arrangement(),
                      choice.present()
                          ? "as planned"
                          : choice.motifs() == 1 ? "the smallest frame with room for paste" : ""),
                  Cell.of(Integer.toString(choice.motifs())),
                  Cell.of(
                      choice.length().text(judged.plan().measures()),
                      choice.byHand() ? "" : "takes two people to lay"),
                  Cell.of(Integer.toString(choice.lays())),
                  Cell.of(Integer.toString(choice.abreast()))));
        }
      }
    }
    return new TableBlock(
        "Lays with other frames",
        List.of(
            words("Placements"),
            number("Motifs on a frame"),
            number("Frame length"),
            number("Lays"),
            number("Frames on the table")),
        rows,
        "A larger frame needs fewer lays and more table; a small one is easier to place.");
  }

  private static TableBlock busy(RunFigures figures) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Busy busy : figures.busy()) {
      boolean screen = busy.resource().kind() == Resource.Kind.SCREEN;
      rows.add(
          List.of(
              Cell.of((screen ? "screen " : "") + busy.resource().name()),
              Cell.of(busy.busy().text()),
              Cell.of(busy.share().text())));
    }
    return new TableBlock(
        "Who and what is busy",
        List.of(words("What"), number("Busy"), number("Of the days at the table")),
        rows,
        "A screen is busy while it prints, is washed or dries, a station while its copy is"
            + " printed.");
  }
}
