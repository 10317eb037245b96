package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Phrase;

/** What a printer wrote of people, pauses and waits that a proposed run doesn't keep. */
final class NotKept {

  private final PrintPlan plan;
  private final Layout layout;
  private final Apart apart;
  private final List<PrintStep> then;

  /** What it is, as one writes it, and the arrangements of which it isn't kept. */
  private final Map<String, Set<String>> all = new LinkedHashMap<>();

  /** Steps that are left out, as one writes them, with their numbers. */
  private final List<String> steps = new ArrayList<>();

  private NotKept(PrintPlan plan, PrintPlan proposed, Layout layout) {
    this.plan = plan;
    this.layout = layout;
    this.apart = new Apart(layout);
    this.then = proposed.steps(PrintStep.class);
  }

  /** One sentence, or none. */
  static List<String> of(PrintPlan now, PrintPlan then, Layout layout) {
    NotKept gone = new NotKept(now, then, layout);
    now.steps(PrintStep.class).forEach(gone::look);
    for (Step.Mix own : now.steps(Step.Mix.class)) {
      gone.others(
          own,
          "mixing",
          then.steps(Step.Mix.class).stream()
              .filter(mix -> !Collections.disjoint(mix.pastes(), own.pastes())));
    }
    for (Step.Sew own : now.steps(Step.Sew.class)) {
      gone.others(
          own,
          "sewing " + own.seam(),
          then.steps(Step.Sew.class).stream().filter(sew -> sew.seam().equals(own.seam())));
    }
    gone.dried(then);
    gone.washed(then);
    if (gone.all.isEmpty() && gone.steps.isEmpty()) {
      return List.of();
    }
    Map<List<String>, List<String>> byName = new LinkedHashMap<>();
    gone.all.forEach(
        (what, names) ->
            byName
                .computeIfAbsent(List.copyOf(names), n -> new ArrayList<>())
                .add("`" + what + "`"));
    return List.of(
        Stream.concat(
                byName.entrySet().stream()
                    .map(e -> Phrase.list(e.getValue()) + " of " + Phrase.list(e.getKey())),
                gone.steps.stream())
            .collect(
                Collectors.joining(
                    "; ",
                    "Not kept of what you wrote: ",
                    ". Put back what has its reasons, and check again.")));
  }

  /** A wait of its own is kept if the cloth waits before the same work in any step. */
  private void dried(PrintPlan proposed) {
    Set<String> waited = new HashSet<>();
    for (int i = 0; i < proposed.run().size(); i++) {
      if (proposed.run().get(i) instanceof Step.Dry) {
        waited.addAll(workAfter(proposed.run(), i));
      }
    }
    for (int i = 0; i < plan.run().size(); i++) {
      if (plan.run().get(i) instanceof Step.Dry dry
          && Collections.disjoint(waited, workAfter(plan.run(), i))) {
        steps.add("`dry: " + dry.until().text() + "` (step " + dry.number() + ")");
      }
    }
  }

  /** A step that washes screens is kept if another one washes some of them. */
  private void washed(PrintPlan proposed) {
    Set<String> then = new HashSet<>();
    proposed.steps(Step.WashScreen.class).forEach(wash -> then.addAll(wash.screens()));
    for (Step.WashScreen own : plan.steps(Step.WashScreen.class)) {
      if (Collections.disjoint(then, own.screens())) {
        boolean every = own.screens().size() == plan.screens().size();
        steps.add(
            "`wash screen: "
                + (every ? "all" : StepLines.names(own.screens()))
                + "` (step "
                + own.number()
                + ")");
      }
    }
  }

  /** What a wait comes before: the next prints by their arrangements, a seam, or baths and heat. */
  private static Set<String> workAfter(List<Step> run, int at) {
    for (int i = at + 1; i < run.size(); i++) {
      Step next = run.get(i);
      if (next instanceof PrintStep print) {
        return print.arrangements().stream().map(a -> "print " + a).collect(Collectors.toSet());
      }
      if (next instanceof Step.Sew sew) {
        return Set.of("sew " + sew.seam());
      }
      if (Leeway.isWet(next)) {
        // Counted from the last, since what is printed and sewn before them differs.
        return Set.of("wet " + run.subList(i, run.size()).stream().filter(Leeway::isWet).count());
      }
    }
    return Set.of("end");
  }

  /** Somebody else than the plan says does it. */
  private void others(Step own, String doing, Stream<? extends Step> proposed) {
    String first = plan.crew().names().get(0);
    own.by()
        .filter(who -> proposed.anyMatch(step -> !step.by().orElse(first).equals(who)))
        .ifPresent(
            who -> all.computeIfAbsent("by: " + who, what -> new LinkedHashSet<>()).add(doing));
  }

  private void look(PrintStep own) {
    for (String name : own.arrangements()) {
      if (own.by().isPresent()) {
        look(name, "by: " + StepLines.names(own.people()), p -> crew(p).equals(crew(own)));
      }
      own.washes()
          .ifPresent(who -> look(name, "washes: " + who, p -> p.washes().equals(own.washes())));
      if (own.everyOther()) {
        look(
            name,
            "every other: yes",
            PrintStep::everyOther,
            then.stream()
                .filter(p -> p.arrangements().contains(name) && !liesApart(p, name))
                .toList());
      }
      if (own.pause().minutes() > 0) {
        look(name, "pause: " + own.pause().text(), p -> p.pause().compareTo(own.pause()) >= 0);
      }
      look(name, "dry between colours", own, PrintStep::dryBetweenColours);
      look(name, "dry between passes", own, PrintStep::dryBetweenPasses);
      look(name, "before moving", own, PrintStep::beforeMoving);
    }
  }

  /** Prints that don't meet lie apart whichever comes first. */
  private boolean liesApart(PrintStep print, String name) {
    List<Integer> only = print.only(name);
    return apart.liesApart(
        layout.of(name).stream().filter(p -> only.isEmpty() || only.contains(p.number())).toList());
  }

  private void look(String name, String key, PrintStep own, Function<PrintStep, Wait> wait) {
    if (wait.apply(own).until() instanceof Until.Time && !wait.apply(own).isNone()) {
      // Another wait in its place is one all the same.
      look(name, key + ": " + wait.apply(own).text(plan.measures()), p -> !wait.apply(p).isNone());
    }
  }

  private void look(String name, String what, Predicate<PrintStep> kept) {
    look(name, what, kept, then.stream().filter(p -> p.arrangements().contains(name)).toList());
  }

  private void look(String name, String what, Predicate<PrintStep> kept, List<PrintStep> prints) {
    if (!prints.stream().allMatch(kept)) {
      all.computeIfAbsent(what, w -> new LinkedHashSet<>())
          .add(prints.stream().anyMatch(kept) ? "some prints of " + name : name);
    }
  }

  private Set<String> crew(PrintStep print) {
    return print.by().isEmpty() ? Set.of(plan.crew().names().get(0)) : Set.copyOf(print.people());
  }
}
