package strikeoff.materials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.paste.Portion;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.policy.UsualRecipe;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * What a run takes. Recipes are the plan's, else the studio's usual ones; where there is neither,
 * only the mass of the paste is known. Water for rinsing and washing is not counted, nor what no
 * plan says, as detergent.
 *
 * @param weighings in the order of the run, what no step mixes first
 * @param purchases first dyes and pigments; pastes without a recipe last, water before them
 * @param spilt share of what is weighed that is bought beside it
 */
public record Materials(List<Weighing> weighings, List<Purchase> purchases, Share spilt) {

  private static final double ML_A_LITRE = 1000;

  public Materials {
    weighings = List.copyOf(weighings);
    purchases = List.copyOf(purchases);
  }

  public static Materials of(PrintPlan plan, Timeline timeline, Policy policy) {
    List<Weighing> weighings = new ArrayList<>();
    for (Portion portion : Portion.all(plan, timeline, policy)) {
      weighings.add(paste(portion, policy));
    }
    for (Step step : plan.run()) {
      if (step instanceof Step.Fix fix && !fix.bath().isEmpty()) {
        weighings.add(bath(fix, timeline, policy));
      }
    }
    weighings.sort(Comparator.comparingLong(Materials::begins));
    Share spilt = policy.paste().shoppingWaste();
    return new Materials(weighings, purchases(weighings, spilt), spilt);
  }

  /** What no step mixes is mixed before; a bath that never comes to pass is the last. */
  private static long begins(Weighing weighing) {
    boolean paste = weighing.kind() == Weighing.Kind.PASTE;
    return weighing.begins().map(Moment::seconds).orElse(paste ? Long.MIN_VALUE : Long.MAX_VALUE);
  }

  private static Weighing paste(Portion portion, Policy policy) {
    Paste paste = portion.paste();
    Optional<UsualRecipe> usual =
        paste.recipe().isEmpty() ? policy.usualRecipe(paste) : Optional.empty();
    List<Ingredient> lines = usual.map(UsualRecipe::parts).orElse(paste.recipe());
    double sum = lines.stream().mapToDouble(line -> grams(line, policy).best()).sum();
    boolean known = sum > 0;
    return new Weighing(
        Weighing.Kind.PASTE,
        paste.name(),
        portion.batch().map(b -> OptionalInt.of(b.step().number())).orElse(OptionalInt.empty()),
        portion.batch().map(batch -> batch.begins()),
        Optional.of(portion.mixed()),
        !known
            ? Weighing.Recipe.UNKNOWN
            : usual.isPresent() ? Weighing.Recipe.STUDIO : Weighing.Recipe.PLAN,
        known ? usual.map(UsualRecipe::where) : Optional.empty(),
        known ? parts(lines, portion.mixed().grams() / sum, policy) : List.of());
  }

  private static Weighing bath(Step.Fix fix, Timeline timeline, Policy policy) {
    return new Weighing(
        Weighing.Kind.BATH,
        fix.how().text(),
        OptionalInt.of(fix.number()),
        timeline.tasks().stream()
            .filter(task -> task.step() == fix.number() && task.kind() != Task.Kind.CLOSED)
            .map(Task::start)
            .min(Moment::compareTo),
        Optional.empty(),
        Weighing.Recipe.PLAN,
        Optional.empty(),
        parts(fix.bath(), 1, policy));
  }

  private static List<WeighedPart> parts(List<Ingredient> lines, double times, Policy policy) {
    return lines.stream()
        .map(line -> WeighedPart.of(line, policy.substance(line.substance()), times))
        .toList();
  }

  private static Range grams(Ingredient line, Policy policy) {
    return policy.substance(line.substance()).grams(line.amount());
  }

  private static List<Purchase> purchases(List<Weighing> weighings, Share spilt) {
    Map<List<String>, Sum> sums = new LinkedHashMap<>();
    for (Weighing weighing : weighings) {
      if (weighing.parts().isEmpty()) {
        Range grams = Range.exactly(weighing.amount().map(Mass::grams).orElse(0.0));
        sums.computeIfAbsent(
                List.of("", weighing.name()),
                key -> new Sum(weighing.name(), Optional.empty(), Optional.of(weighing.name())))
            .add(weighing, grams, Optional.empty());
      }
      for (WeighedPart part : weighing.parts()) {
        Substance substance = part.substance();
        Optional<String> own =
            substance.role() == Substance.Role.DYE || substance.role() == Substance.Role.PIGMENT
                ? Optional.of(weighing.name())
                : Optional.empty();
        sums.computeIfAbsent(
                List.of(substance.name(), own.orElse("")),
                key -> new Sum(part.name(), Optional.of(substance), own))
            .add(weighing, part.grams(), measured(part));
      }
    }
    List<Purchase> all =
        new ArrayList<>(sums.values().stream().map(sum -> sum.purchase(spilt)).toList());
    all.sort(
        Comparator.comparing(Purchase::isPaste)
            .thenComparing(Purchase::isWater)
            .thenComparing(purchase -> purchase.paste().isEmpty()));
    return all;
  }

  private static Optional<Range> measured(WeighedPart part) {
    boolean water = part.substance().role() == Substance.Role.WATER;
    return part.measured() || water ? part.millilitres() : Optional.empty();
  }

  /** Adds up one thing. */
  private static final class Sum {

    private final String name;
    private final Optional<Substance> substance;
    private final Optional<String> paste;
    private final Map<List<Object>, Range> shares = new LinkedHashMap<>();
    private Optional<Range> millilitres = Optional.of(Range.exactly(0));

    Sum(String name, Optional<Substance> substance, Optional<String> paste) {
      this.name = name;
      this.substance = substance;
      this.paste = paste;
    }

    void add(Weighing weighing, Range grams, Optional<Range> measured) {
      shares.merge(List.of(weighing.kind(), weighing.name()), grams, Range::plus);
      millilitres = millilitres.flatMap(sum -> measured.map(sum::plus));
    }

    Purchase purchase(Share spilt) {
      Range grams = shares.values().stream().reduce(Range.exactly(0), Range::plus);
      boolean bought = substance.filter(s -> s.role() != Substance.Role.WATER).isPresent();
      double beside = bought ? 1 + spilt.fraction() : 1;
      List<Purchase.Share> each = new ArrayList<>();
      shares.forEach(
          (of, range) ->
              each.add(new Purchase.Share((Weighing.Kind) of.get(0), (String) of.get(1), range)));
      return new Purchase(
          name,
          substance,
          paste,
          grams,
          grams.high() * beside,
          millilitres.map(ml -> ml.high() * beside / ML_A_LITRE),
          each);
    }
  }
}
