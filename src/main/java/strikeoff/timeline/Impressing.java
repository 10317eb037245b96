package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strikeoff.layout.Footprint;
import strikeoff.plan.Design;
import strikeoff.plan.Handling;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.plan.Step;
import strikeoff.timeline.Printing.Progress;
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
  private final Map<String, Screen> screens;
  private final List<Printed> printed = new ArrayList<>();

  Impressing(PrintPlan plan, Workshop shop, WetCloth cloth, Blocked blocked, Helpers helpers) {
    this.shop = shop;
    this.cloth = cloth;
    this.blocked = blocked;
    this.helpers = helpers;
    this.takes = plan.handling();
    this.screens = plan.screens();
  }

  List<Printed> printed() {
    return printed;
  }

  Workshop shop() {
    return shop;
  }

  WetCloth cloth() {
    return cloth;
  }

  /** By one person, while nobody else touches the cloth but to lend a hand. */
  void alone(Step.Print step, int set, Footprint footprint, Progress progress) {
    needPaste(step, footprint);
    if (progress.impressions > 0) {
      shop.waitFor(step, Task.PAUSE, Workshop.seconds(step.pause()));
    }
    String person = shop.person(step.by());
    Task task =
        shop.print(
            step,
            what(footprint),
            seconds(footprint),
            person,
            helpers.of(footprint, person),
            footprint.screen().name(),
            footprint.paste().name(),
            set,
            printed.size());
    note(step, set, footprint, person, progress, task);
  }

  /** Beside others who print on the same stretch, at a second when all it needs is free. */
  Printed beside(
      Step.Print step, int set, Footprint footprint, String person, long start, Progress progress) {
    needPaste(step, footprint);
    Task task =
        shop.printBeside(
            step,
            what(footprint),
            start,
            seconds(footprint),
            person,
            footprint.screen().name(),
            footprint.paste().name(),
            set,
            printed.size());
    return note(step, set, footprint, person, progress, task);
  }

  Blocked blocked() {
    return blocked;
  }

  /** True if one of the designs has a frame that takes two people to lay. */
  boolean anyNeedsTwo(List<Design> designs) {
    return designs.stream()
        .flatMap(d -> d.separations().stream())
        .anyMatch(s -> helpers.needsTwo(screens.get(s.screen())));
  }

  private Printed note(
      Step.Print step, int set, Footprint footprint, String person, Progress progress, Task task) {
    Printed done =
        new Printed(
            printed.size(),
            step,
            set,
            footprint,
            person,
            progress.waits,
            progress.impressions++,
            progress.passes,
            task.start().seconds() + lay(),
            task.end().seconds(),
            cloth.need(footprint));
    printed.add(done);
    cloth.add(done);
    return done;
  }

  private void needPaste(Step.Print step, Footprint footprint) {
    String paste = footprint.paste().name();
    if (footprint.paste().mixedBefore().isEmpty() && !shop.isMixed(paste)) {
      blocked.paste(step, paste);
    }
  }

  private long lay() {
    return Workshop.seconds(takes.lay());
  }

  /** From fetching the frame to taking it off. */
  long seconds(Footprint footprint) {
    double pulls = takes.pull().minutes() * footprint.separation().pulls();
    return lay() + Workshop.seconds(new Span(pulls + takes.lift().minutes()));
  }

  private static String what(Footprint footprint) {
    return footprint.placement().name() + ", " + footprint.screen().name();
  }
}
