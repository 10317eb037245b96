package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Printing.Progress;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;
import strikeoff.plan.Design;
import strikeoff.plan.Handling;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.units.Span;

/**
 * Makes impressions. The frame touches the cloth once it is laid, and leaves it after the pulls and
 * the lift.
 */
final class Impressing {

  private final Workshop shop;
  private final WetCloth cloth;
  private final Blocked blocked;
  private final Helpers helpers;
  private final Handling takes;
  private final long lay;
  private final FrameMeetings meetings;
  private final List<Printed> printed = new ArrayList<>();
  private long lastLifted = Long.MIN_VALUE / 4;

  Impressing(
      PrintPlan plan,
      FrameMeetings meetings,
      Workshop shop,
      WetCloth cloth,
      Blocked blocked,
      Helpers helpers) {
    this.shop = shop;
    this.cloth = cloth;
    this.blocked = blocked;
    this.helpers = helpers;
    this.takes = plan.handling();
    this.lay = Workshop.seconds(takes.lay());
    this.meetings = meetings;
  }

  List<Printed> printed() {
    return printed;
  }

  Workshop shop() {
    return shop;
  }

  FrameMeetings meetings() {
    return meetings;
  }

  WetCloth cloth() {
    return cloth;
  }

  /** When the last frame was lifted; long ago if none was. */
  long lastLifted() {
    return lastLifted;
  }

  /** By one person, while nobody else touches the cloth but to lend a hand. */
  Printed alone(PrintStep step, int set, Footprint footprint, ColourRun run, Progress progress) {
    needPaste(step, footprint);
    String person = shop.person(step.by());
    Long ended = progress.ended.get(person);
    if (ended != null) {
      shop.waitFor(
          step, Doing.Wait.PAUSE, ended + Workshop.seconds(step.pause()) - shop.clothFree());
    }
    Task task =
        shop.print(
            step,
            what(footprint),
            seconds(footprint),
            person,
            helpers.of(footprint, person, progress.named, shop::freeAt),
            footprint.screen().name(),
            footprint.paste().name(),
            set,
            printed.size());
    return note(step, set, footprint, run, person, progress, task);
  }

  /** Beside others who print on the same stretch, at a second when all it needs is free. */
  Printed beside(PrintStep step, Job job, Progress progress) {
    Footprint footprint = job.footprint();
    needPaste(step, footprint);
    Task task =
        shop.printBeside(
            step,
            what(footprint),
            job.start(),
            job.end() - job.start(),
            job.person(),
            footprint.screen().name(),
            footprint.paste().name(),
            job.set(),
            printed.size());
    ColourRun run = new ColourRun(step, List.of(footprint), meetings, printed.size());
    run.dryFrom(job.dryFrom());
    return note(step, job.set(), footprint, run, job.person(), progress, task);
  }

  Blocked blocked() {
    return blocked;
  }

  /** True if one of the designs has a frame that takes two people to lay. */
  boolean anyNeedsTwo(List<Design> designs) {
    return helpers.anyNeedsTwo(designs);
  }

  private Printed note(
      PrintStep step,
      int set,
      Footprint footprint,
      ColourRun run,
      String person,
      Progress progress,
      Task task) {
    if (run.first() == printed.size()) {
      run.begins(task.start().seconds());
    }
    progress.ended.put(person, task.end().seconds());
    lastLifted = Math.max(lastLifted, task.end().seconds());
    Printed done =
        new Printed(
            printed.size(),
            step,
            set,
            footprint,
            person,
            run,
            progress.impressions++,
            progress.passes,
            task.start().seconds(),
            task.start().seconds() + lay,
            task.end().seconds(),
            cloth.films().need(footprint));
    printed.add(done);
    cloth.add(done);
    return done;
  }

  private void needPaste(PrintStep step, Footprint footprint) {
    String paste = footprint.paste().name();
    if (footprint.paste().mixedBefore().isEmpty() && !shop.isMixed(paste)) {
      blocked.paste(step, paste);
    }
  }

  /** From fetching the frame to taking it off. */
  long seconds(Footprint footprint) {
    double pulls = takes.pull().minutes() * footprint.separation().pulls();
    return lay + Workshop.seconds(new Span(pulls + takes.lift().minutes()));
  }

  private static Doing what(Footprint footprint) {
    return new Doing.Impress(footprint.placement().name(), footprint.screen().name());
  }
}
