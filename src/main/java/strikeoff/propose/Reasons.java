package strikeoff.propose;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;

/** What a proposed run says beside its waits and nights, and beside steps that are assumed. */
final class Reasons {

  static final String NEIGHBOURS = "the prints beside the next frame dry";
  static final String PASSES =
      "those printed first are dry to the touch before the frames between lie on them";
  static final String COLOURS =
      "each colour is dry to the touch before the next one's frame lies on it";
  static final String MOVES =
      "what is printed is dry enough to be lifted before the cloth moves on";
  static final String STRETCHES =
      "each stretch is dry enough to be lifted before the cloth moves on";
  static final String HEAT = "all prints are dry through before the heat";
  static final String WET = "all prints are dry through before they get wet";
  static final String STEAM = "all prints are dry through before the steam";
  static final String WRAPPED = "no print smears any more when it is wrapped, while it is damp";
  static final String UNDER_FRAMES = "what lies under the next frames is dry to the touch";
  static final String LIFTED =
      "all prints are dry enough to be lifted, so that the cloth may be moved";
  static final String DRY = "all prints are dry";
  static final String NIGHT = "all prints dry through overnight; feel them before what comes next";
  static final String HANGS = "the steamed cloth hangs spread overnight, no face on another";
  static final String IN_WATER =
      "the rinsed cloth lies spread in plenty of clean cold water overnight";
  static final String MORNING = "the rest goes on in the morning";
  static final String HUNG = "the cloth hangs to dry before it is printed again";
  static final String PRESSED =
      "press it dry and through a cloth: what is printed is not fixed yet";
  static final String AFRESH = "afresh: what was mixed before doesn't live so long";
  static final String BESIDE = "beside the steps above, as soon as hands and screen are free";
  static final String DONE = "once all steps above are done";
  static final String BREAK = "the soak or steam after it then ends when the break is over";
  static final String WASHED = "washes out what holds paste by now; nobody washes it before";
  static final String ASSUMED = "Assumed, as the plan says nothing of fixing: ";

  private static final Set<String> ALL =
      Set.of(
          NEIGHBOURS,
          PASSES,
          COLOURS,
          MOVES,
          STRETCHES,
          HEAT,
          WET,
          STEAM,
          WRAPPED,
          UNDER_FRAMES,
          LIFTED,
          DRY,
          NIGHT,
          HANGS,
          IN_WATER,
          MORNING,
          HUNG,
          AFRESH,
          PRESSED,
          WASHED,
          BREAK,
          BESIDE,
          DONE);

  /** How long a wait is, as {@link DryingTold} says it. */
  private static final Pattern LASTS =
      Pattern.compile(
          "^(in |(at once on an ordinary day, )?on a slow day )?(about|up to|less than a minute)[^:]*: ");

  private static final Pattern SEWN = Pattern.compile("all prints are dry before .+ is sewn");

  private Reasons() {}

  private static String sewing(String seam) {
    return DRY + " before " + seam + " is sewn";
  }

  /** Why films dry at a step of a run, by what comes after it. */
  static String drying(List<Step> run, int at, Dryness state) {
    for (Step next : run.subList(at + 1, run.size())) {
      if (next instanceof Step.Sew sew) {
        return sewing(sew.seam());
      }
      if (Leeway.isWet(next)) {
        return before(next);
      }
      if (next instanceof PrintStep) {
        return state == Dryness.FRAME_SAFE ? UNDER_FRAMES : LIFTED;
      }
    }
    return DRY;
  }

  private static String before(Step wet) {
    if (wet instanceof Step.Fix fix && !fix.wets()) {
      return fix.how() == DyeFixing.BATCH ? WRAPPED : STEAM;
    }
    return wet instanceof Step.HeatSet ? HEAT : WET;
  }

  /** A night is a wait as well, where films lie on the cloth. */
  static String night(List<Step> run, int at) {
    boolean unfixed = liesUnfixed(run.subList(0, at));
    boolean wet = at + 1 < run.size() && Leeway.isWet(run.get(at + 1));
    Optional<Step> done = treated(run.subList(0, at));
    return done.filter(Reasons::dries).isPresent()
        ? HANGS
        : done.filter(Step.Rinse.class::isInstance).isPresent()
            ? IN_WATER
            : unfixed && wet ? NIGHT : MORNING;
  }

  /** True if something was printed that no step fixed yet. */
  static boolean liesUnfixed(List<Step> run) {
    return run.stream().anyMatch(PrintStep.class::isInstance) && treated(run).isEmpty();
  }

  /** The last step that fixed or cleaned what is printed; empty if something was printed since. */
  private static Optional<Step> treated(List<Step> run) {
    Optional<Step> last = Optional.empty();
    for (Step step : run) {
      last =
          Leeway.isWet(step)
              ? Optional.of(step)
              : step instanceof PrintStep ? Optional.empty() : last;
    }
    return last;
  }

  /** What was steamed is dry enough to hang. */
  private static boolean dries(Step step) {
    return step instanceof Step.Fix fix && fix.how() == DyeFixing.STEAM;
  }

  /** True of a comment that a run was given here, which says nothing of another run. */
  static boolean isOwn(String comment) {
    String reason = LASTS.matcher(comment).replaceFirst("");
    return ALL.contains(reason) || SEWN.matcher(reason).matches() || reason.startsWith(ASSUMED);
  }
}
