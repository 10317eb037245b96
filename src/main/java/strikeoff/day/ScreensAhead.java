package strikeoff.day;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** What later steps of a run do with the screens that hold paste. */
final class ScreensAhead {

  private final List<Step> run;
  private final Function<Optional<String>, String> person;
  private final List<Map<String, Optional<String>>> needed;

  /**
   * @param person who does what a plan gives to that one, or to nobody by name
   */
  ScreensAhead(List<Step> run, PrintRun sets, Function<Optional<String>, String> person) {
    this.run = run;
    this.person = person;
    this.needed = after(run, sets);
  }

  /**
   * What they are still needed for while a step prints or dries; nothing for any other step.
   *
   * @param at the step's place in the run, from 0
   */
  StillNeeded from(int at) {
    Step step = run.get(at);
    return step instanceof PrintStep || step instanceof Step.Dry
        ? new StillNeeded(needed.get(at + 1), othersWash(at))
        : StillNeeded.NOTHING;
  }

  /**
   * Screens that a later step washes out beside this one: beside a print by somebody who doesn't
   * print there, beside a drying step if nothing else is done to the cloth before.
   */
  private Set<String> othersWash(int at) {
    Set<String> screens = new HashSet<>();
    List<String> printers =
        run.get(at) instanceof PrintStep print
            ? print.people().isEmpty() ? List.of(person.apply(Optional.empty())) : print.people()
            : List.of();
    for (int i = at + 1; i < run.size(); i++) {
      if (run.get(i) instanceof Step.WashScreen wash) {
        if (!printers.contains(person.apply(wash.by()))) {
          screens.addAll(wash.screens());
        }
      } else if (!(run.get(i) instanceof Step.Mix)) {
        break;
      }
    }
    return screens;
  }

  /**
   * From each step on, the screens that a print step uses before the day ends, with the paste it
   * uses there first, or that a step washes out before that. The others are washed out at once, and
   * so are those that would have to be washed before their next use: paste dries in them, and they
   * dry meanwhile. Worked out from the end, so that a run of many steps is gone through once.
   */
  private static List<Map<String, Optional<String>>> after(List<Step> run, PrintRun sets) {
    List<Map<String, Optional<String>>> from =
        new ArrayList<>(Collections.nCopies(run.size() + 1, Map.of()));
    for (int i = run.size() - 1; i >= 0; i--) {
      Step step = run.get(i);
      Map<String, Optional<String>> own = new LinkedHashMap<>();
      if (step instanceof PrintStep print) {
        sets.firstPastes(print).forEach((screen, paste) -> own.put(screen, Optional.of(paste)));
      } else if (step instanceof Step.WashScreen wash) {
        wash.screens().forEach(screen -> own.put(screen, Optional.empty()));
      }
      Map<String, Optional<String>> after = from.get(i + 1);
      if (!own.isEmpty()) {
        after.forEach(own::putIfAbsent);
      }
      from.set(i, step instanceof Step.EndOfDay ? Map.of() : own.isEmpty() ? after : own);
    }
    return from;
  }
}
