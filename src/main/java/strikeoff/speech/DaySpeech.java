package strikeoff.speech;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.day.ClothLies;
import strikeoff.day.Doing;
import strikeoff.day.EndlessWait;
import strikeoff.day.WashStep;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says what is done at the table, and what keeps it from being done. */
public final class DaySpeech {

  private DaySpeech() {}

  /** What is done, or waited for, in a few words for charts and tables. */
  public static String text(Doing doing, Measures units) {
    if (doing instanceof Doing.Impress print) {
      return print.placement() + ", " + print.screen();
    }
    if (doing instanceof Doing.OfStep of) {
      return StepSpeech.title(of.step(), units);
    }
    if (doing instanceof Doing.MoveCloth move) {
      return moved("move", move, units);
    }
    if (doing instanceof Doing.Wait wait) {
      return wait.key();
    }
    if (doing instanceof Doing.Mix mix) {
      return "mix " + mix.paste();
    }
    if (doing instanceof Doing.WashOut wash) {
      return "wash out " + wash.screen();
    }
    if (doing instanceof Doing.ScreenDries screen) {
      return screen.screen() + " dries";
    }
    if (doing instanceof Doing.PrintingWith printing) {
      return "printing with " + printing.screen();
    }
    if (doing instanceof Doing.IsFree free) {
      return free.person() + " is free";
    }
    if (doing instanceof Doing.ForPerson hands) {
      return "waits for " + hands.person();
    }
    if (doing instanceof Doing.ForPiece piece) {
      return "waits for " + (piece.of() > 1 ? "a " : "the ") + piece.kind().text();
    }
    if (doing instanceof Doing.Until until) {
      return text(until);
    }
    if (doing instanceof Doing.Others others) {
      return switch (others) {
        case EARLIER_PRINT -> "the print before it is done";
        case FRAME -> "another frame is in the way";
        case OTHER_WORK -> "drying beside other work";
      };
    }
    return doing instanceof Doing.LayCloth
        ? "lay the cloth on the table"
        : doing instanceof Doing.Closed ? "closed" : "break";
  }

  /** A move, for whoever might not know what is moved. */
  public static String ofTheCloth(Doing.MoveCloth move, Measures units) {
    return moved("move the cloth", move, units);
  }

  private static String moved(String what, Doing.MoveCloth move, Measures units) {
    String way = what + (move.back() ? " back" : " on");
    if (move.toStart()) {
      return way + " to its start";
    }
    return move.to().mm() < 0
        ? way + ", its start " + new Length(-move.to().mm()).text(units) + " inside the table"
        : way + " to " + move.to().text(units);
  }

  private static String text(Doing.Until until) {
    if (until instanceof Doing.Mixed mixed) {
      return "paste " + mixed.paste() + " is mixed";
    }
    if (until instanceof Doing.WashedOut washed) {
      return "screen " + washed.screen() + " is washed out";
    }
    if (until instanceof Doing.ScreenIsDry dry) {
      return "screen " + dry.screen() + " dries";
    }
    return "screen " + ((Doing.ScreenIsFree) until).screen() + " is free";
  }

  /** What a step waits for in vain, as the rest of "it waits for …". */
  public static String waitsFor(EndlessWait wait, Measures units) {
    if (wait.missing() instanceof EndlessWait.PasteMixed paste) {
      return "paste "
          + paste.paste()
          + paste.later().map(step -> ", mixed in step " + step).orElse("");
    }
    if (wait.missing() instanceof EndlessWait.FilmsDry films) {
      return "films to get "
          + films.state().text()
          + ", which they never do in air of "
          + films.humidity().text()
          + " humidity at "
          + films.temperature().text(units);
    }
    if (wait.missing() instanceof EndlessWait.ScreenFree screen) {
      return "screen "
          + screen.screen()
          + ", which holds "
          + screen.paste()
          + " for "
          + screen.one()
          + " while "
          + screen.other()
          + " needs it for "
          + screen.next();
    }
    return "more than "
        + ((EndlessWait.WorkDone) wait.missing()).tasks()
        + " pieces of work before it";
  }

  /** What to write instead. */
  public static String cure(EndlessWait wait) {
    return switch (wait.why()) {
      case MIXED_LATER -> "move the mix step before step " + wait.step();
      case NEVER_MIXED -> "write a mix step before step " + wait.step() + ", or when it was mixed";
      case NEVER_DRY -> "dry the air of the room by heating or a dehumidifier";
      case TOO_LONG -> "split the run into several plans";
      case SCREEN_TWICE -> "make a second screen, or let one person print both colours";
    };
  }

  /** How the run is followed from there on, as a sentence that begins with a space. */
  public static String after(EndlessWait wait) {
    return switch (wait.why()) {
      case NEVER_MIXED, MIXED_LATER -> "";
      case SCREEN_TWICE -> " The step is simulated as if one person printed all of it.";
      case TOO_LONG, NEVER_DRY -> " The run is not simulated beyond it.";
    };
  }

  /** What to write, and where. */
  public static String text(WashStep step) {
    return switch (step.when()) {
      case AFTER_STEP -> "write " + line(step) + " after step " + step.step();
      case WITHIN_STEP ->
          "print step " + step.step() + " in two steps and write " + line(step) + " between them";
      case BETWEEN_COLOURS ->
          "write `wash between colours: yes`"
              + step.changes().stream()
                  .map(change -> " and " + text(change))
                  .collect(Collectors.joining())
              + " in step "
              + step.step();
    };
  }

  public static String line(WashStep step) {
    List<String> names = step.screens().stream().map(WashStep::written).toList();
    String what = names.size() == 1 ? names.get(0) : "[" + String.join(", ", names) + "]";
    return step.by()
        .map(who -> "`- {wash screen: " + what + ", by: " + WashStep.written(who) + "}`")
        .orElse("`- wash screen: " + what + "`");
  }

  /** What to bring to the table's start, in words. */
  public static String text(ClothLies lies, Measures units) {
    return lies.at().below(0)
        ? "the cloth's start " + lies.at().times(-1).text(units) + " inside the table"
        : lies.at().above(0)
            ? "the cloth's mark of " + lies.at().text(units) + " at the table's start"
            : "the cloth's start at the table's start";
  }

  private static String text(WashStep.Change change) {
    return switch (change.what()) {
      case PRINTED_BY -> "`by: " + WashStep.written(change.by().orElseThrow()) + "`";
      case NO_BEGINS -> "no `begins`";
      case ORDER_BY_COLOUR -> "`order: by colour`";
      case WASHED_BY -> "`washes: " + WashStep.written(change.by().orElseThrow()) + "`";
    };
  }
}
