package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.document.Scalars;
import strikeoff.document.yaml.Manuscript;
import strikeoff.layout.Layout;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.start.UsualFixing;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Quantities;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/**
 * Steps that fix and wash the prints of a plan that has none: by what carries each colour, as long
 * and as warm as the policy says of its dyes and fibres. Whether they do is for the check to say.
 */
final class FixingSteps {

  private static final Temperature RINSE = new Temperature(20);

  private static final String ASSUMED = "# " + Reasons.ASSUMED;

  private final PrintPlan plan;
  private final Policy policy;
  private final Measures units;
  private final List<Paste> used;
  private final List<Fibre> fibres;

  private FixingSteps(PrintPlan plan, Policy policy) {
    this.plan = plan;
    this.policy = policy;
    this.units = plan.measures();
    Set<String> printed =
        plan.arrangements().values().stream()
            .flatMap(a -> plan.designs().get(a.design()).separations().stream())
            .map(separation -> separation.paste())
            .collect(Collectors.toSet());
    this.used =
        plan.pastes().values().stream().filter(paste -> printed.contains(paste.name())).toList();
    this.fibres = plan.cloth().fibres().keySet().stream().map(policy::fibre).toList();
  }

  /**
   * Texts of the plan with steps that fix its prints behind what its run has, each in another way;
   * the likeliest first.
   *
   * @param text of the plan, which has none of them
   */
  static List<String> written(String text, PrintPlan plan, Policy policy) {
    Optional<Manuscript> manuscript = Manuscript.of(text);
    if (manuscript.isEmpty()) {
      return List.of();
    }
    List<String> run = new ArrayList<>();
    for (Step step : plan.run()) {
      manuscript.get().item(step.path()).ifPresent(run::addAll);
    }
    List<String> all = new ArrayList<>();
    for (List<String> steps : new FixingSteps(plan, policy).ways()) {
      List<String> whole = new ArrayList<>(run);
      whole.addAll(steps);
      manuscript.get().withList("run", whole).ifPresent(all::add);
    }
    return all;
  }

  /** Why no run with the iron that is assumed for its paint is one; nothing if there may be one. */
  static Optional<String> tooLong(PrintPlan plan, Layout layout, Policy policy) {
    FixingSteps steps = new FixingSteps(plan, policy);
    List<Paste> paints = steps.paints();
    return paints.isEmpty()
        ? Optional.empty()
        : LongIroning.told(plan, layout, steps.ironed(paints), policy);
  }

  private List<Paste> paints() {
    return used.stream().filter(p -> p.medium() == Medium.PAINT).toList();
  }

  private List<List<String>> ways() {
    List<List<String>> ways = new ArrayList<>();
    List<Paste> dyes = used.stream().filter(p -> p.medium() == Medium.DYE).toList();
    List<Paste> paints = paints();
    if (dyes.isEmpty()) {
      return paints.isEmpty() ? ways : List.of(heatSet(paints));
    }
    List<String> both = mixed();
    if (!both.isEmpty() && plan.run().isEmpty()) {
      fixes(dyes).forEach(fix -> inParts(dyes, fix, paints).ifPresent(ways::add));
      return ways;
    }
    for (List<String> fix : fixes(dyes)) {
      // Paint is set before it gets wet.
      List<String> steps = new ArrayList<>(paints.isEmpty() ? List.of() : heatSet(paints));
      steps.addAll(fix);
      steps.add("- rinse: " + RINSE.text(units));
      steps.add("- wash: " + wash().text(units));
      ways.add(steps);
    }
    if (!paints.isEmpty() && plan.run().isEmpty()) {
      fixes(dyes).forEach(fix -> inParts(dyes, fix, paints).ifPresent(ways::add));
    }
    return ways;
  }

  /**
   * Dye first, fixed and washed before paint is printed on it; nothing where a design has paint
   * under dye, or where one of them is not printed.
   */
  private Optional<List<String>> inParts(List<Paste> dyes, List<String> fix, List<Paste> paints) {
    List<String> dyed = printedWith(Medium.DYE);
    List<String> painted = printedWith(Medium.PAINT);
    List<String> both = mixed();
    if (both.stream().anyMatch(this::hasPaintFirst)
        || both.isEmpty() && (dyed.isEmpty() || painted.isEmpty())) {
      return Optional.empty();
    }
    List<String> steps = new ArrayList<>(printed(dyes, dyed, Medium.DYE));
    steps.addAll(fix);
    steps.add("- rinse: " + RINSE.text(units));
    steps.add("- wash: " + wash().text(units));
    steps.add("- end of day   # " + Reasons.HUNG);
    steps.addAll(printed(paints, painted, Medium.PAINT));
    steps.addAll(heatSet(paints));
    return Optional.of(steps);
  }

  /**
   * @param wholly arrangements all of whose colours that carries; of the mixed ones its colours are
   *     printed
   */
  private List<String> printed(List<Paste> pastes, List<String> wholly, Medium medium) {
    List<String> steps = new ArrayList<>();
    List<String> unmixed =
        pastes.stream().filter(p -> p.mixedBefore().isEmpty()).map(Paste::name).toList();
    if (!unmixed.isEmpty()) {
      steps.add("- mix: " + list(unmixed));
    }
    List<String> mixed = mixed();
    if (mixed.isEmpty()) {
      steps.add("- print: " + list(wholly));
    }
    // One may lie on another: in the plan's order.
    for (String name : mixed.isEmpty() ? List.<String>of() : plan.arrangements().keySet()) {
      if (mixed.contains(name) || wholly.contains(name)) {
        steps.add("- print: " + Scalars.text(name));
      }
      if (mixed.contains(name)) {
        steps.add("  colours: " + colours(name, medium));
      }
    }
    steps.add("- dry: until fix-safe");
    return steps;
  }

  private static String list(List<String> names) {
    return names.stream().map(Scalars::text).collect(Collectors.joining(", ", "[", "]"));
  }

  /** Numbers of the colours of an arrangement that a medium carries. */
  private List<Integer> colours(String arrangement, Medium medium) {
    return separations(arrangement).stream()
        .filter(s -> plan.pastes().get(s.paste()).medium() == medium)
        .map(Separation::number)
        .toList();
  }

  private List<Separation> separations(String arrangement) {
    return plan.designs().get(plan.arrangements().get(arrangement).design()).separations();
  }

  /** Arrangements with colours of both. */
  private List<String> mixed() {
    return plan.arrangements().keySet().stream()
        .filter(name -> !colours(name, Medium.DYE).isEmpty())
        .filter(name -> !colours(name, Medium.PAINT).isEmpty())
        .toList();
  }

  private boolean hasPaintFirst(String arrangement) {
    List<Integer> dyed = colours(arrangement, Medium.DYE);
    return dyed.get(dyed.size() - 1) > colours(arrangement, Medium.PAINT).get(0);
  }

  /** Arrangements all of whose colours that carries. */
  private List<String> printedWith(Medium medium) {
    return plan.arrangements().values().stream()
        .filter(
            arrangement ->
                plan.designs().get(arrangement.design()).separations().stream()
                    .allMatch(s -> plan.pastes().get(s.paste()).medium() == medium))
        .map(Arrangement::name)
        .toList();
  }

  /** Alkali in the paste fixes while it is kept damp or steamed; else a bath brings it. */
  private List<List<String>> fixes(List<Paste> dyes) {
    List<ReactiveGroup> groups =
        dyes.stream().flatMap(p -> p.groups().stream()).distinct().map(policy::group).toList();
    return dyes.stream().anyMatch(Paste::alkaliInPaste)
        ? List.of(steam(groups), batch(groups))
        : List.of(soak(groups));
  }

  private List<String> soak(List<ReactiveGroup> groups) {
    double ratio = policy.fixing().tightLiquorRatio().amount();
    double kilograms =
        plan.cloth().length().m()
            * plan.cloth().width().m()
            * plan.cloth().mass().gramsPerSquareMetre()
            / 1000;
    String written =
        new Volume(Math.ceil(Math.max(UsualFixing.LEAST_LITRES, ratio * kilograms))).enough(units);
    // What is dissolved goes by the water that is written, in quarts a little more.
    Volume water = Quantities.parse(written, Volume.class).toOptional().orElseThrow();
    boolean strong = fibres.stream().allMatch(Fibre::cellulose);
    double soda =
        strong ? UsualFixing.SODA_GRAMS_PER_LITRE : UsualFixing.GENTLE_SODA_GRAMS_PER_LITRE;
    return List.of(
        ASSUMED + "follow the sheets of the dye and of the soda.",
        "- fix: soak",
        "  bath: {soda ash: "
            + new Mass(soda * water.litres()).enough(units)
            + ", salt: "
            + new Mass(UsualFixing.SALT_GRAMS_PER_LITRE * water.litres()).enough(units)
            + ", water: "
            + written
            + "}",
        "  temperature: " + warmest(groups.stream().map(ReactiveGroup::soak).toList()),
        "  for: " + longest(groups.stream().map(g -> g.soak().deep()).toList()));
  }

  private List<String> steam(List<ReactiveGroup> groups) {
    List<Span> least = new ArrayList<>(groups.stream().map(ReactiveGroup::shortestSteam).toList());
    least.add(UsualFixing.STEAMED);
    return List.of(
        ASSUMED
            + "follow the sheet of the dye; wrap the cloth in paper, no face on another; steam scalds.",
        "- fix: steam",
        "  for: " + longest(least));
  }

  private List<String> batch(List<ReactiveGroup> groups) {
    return List.of(
        ASSUMED + "follow the sheet of the dye; wrap the cloth, so that it stays damp.",
        "- fix: batch",
        "  temperature: " + warmest(groups.stream().map(ReactiveGroup::batch).toList()),
        "  for: " + longest(groups.stream().map(g -> g.batch().deep()).toList()));
  }

  /** As the labels say, where they say it. */
  private List<String> heatSet(List<Paste> paints) {
    List<Paste.Label> labels = paints.stream().flatMap(p -> p.label().stream()).toList();
    Temperature warm =
        labels.stream()
            .map(Paste.Label::temperature)
            .max(Comparator.naturalOrder())
            .orElse(tender() ? UsualFixing.COOL_IRON : UsualFixing.HOT_IRON);
    return List.of(
        ASSUMED + "follow the label of the paint.",
        "- heat-set: iron",
        "  temperature: " + warm.enough(units),
        "  for: " + ironed(paints).text());
  }

  /** How long at each spot. */
  private Span ironed(List<Paste> paints) {
    return paints.stream()
        .flatMap(paint -> paint.label().stream())
        .map(Paste.Label::lasts)
        .max(Comparator.naturalOrder())
        .orElse(tender() ? UsualFixing.COOL_IRONED : UsualFixing.HOT_IRONED);
  }

  private boolean tender() {
    return fibres.stream().anyMatch(f -> f.heatHarms().compareTo(UsualFixing.HOT_IRON) <= 0);
  }

  /** As warm as each fibre bears it. */
  private Temperature wash() {
    return fibres.stream()
        .map(fibre -> fibre.usualWash().orElse(fibre.warmestWash()))
        .filter(bears -> bears.compareTo(UsualFixing.HOT_WASH) < 0)
        .min(Comparator.naturalOrder())
        .orElse(UsualFixing.HOT_WASH);
  }

  private String warmest(List<ReactiveGroup.Stated> stated) {
    return stated.stream()
        .map(ReactiveGroup.Stated::at)
        .max(Comparator.naturalOrder())
        .map(at -> at.enough(units))
        .orElseThrow();
  }

  private static String longest(List<Span> spans) {
    return spans.stream().max(Comparator.naturalOrder()).orElseThrow().text();
  }
}
