package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Share;
import strikeoff.units.Span;

/** What a recipe and a thickener's history say of a paste, before any of it is printed. */
final class Thickeners {

  private final Cloth cloth;
  private final Policy policy;

  Thickeners(Cloth cloth, Policy policy) {
    this.cloth = cloth;
    this.policy = policy;
  }

  List<Evidence> of(Paste paste) {
    List<Evidence> facts = new ArrayList<>();
    paste.thickener().ifPresent(t -> facts.add(history(paste.name(), t)));
    if (paste.medium() == Medium.DYE) {
      strength(paste).ifPresent(facts::add);
      Optional<PasteDose> dose = PasteDose.of(paste, cloth, policy);
      dose.ifPresent(facts::add);
      dose.flatMap(d -> DarkPaste.of(paste, d, policy)).ifPresent(facts::add);
    }
    sum(paste).ifPresent(facts::add);
    return facts;
  }

  private ThickenerHistory history(String paste, Paste.Thickener thickener) {
    Limit least = policy.paste().thickenerStands();
    double more = Math.max(0, least.amount() - thickener.stood().minutes());
    return new ThickenerHistory(
        paste,
        thickener.stood(),
        least,
        new Span(more).wholeMinutesUp(),
        thickener.age(),
        thickener.storage(),
        thickener.path());
  }

  private Optional<ThickenerStrength> strength(Paste paste) {
    Recipe recipe = new Recipe(paste, policy);
    Optional<Range> batch = recipe.sumGrams();
    Optional<Ingredient> line =
        paste.recipe().stream()
            .filter(part -> policy.substance(part.substance()).role() == Substance.Role.THICKENER)
            .findFirst();
    boolean wet =
        paste.recipe().stream()
            .anyMatch(p -> policy.substance(p.substance()).role() == Substance.Role.WATER);
    if (line.isEmpty() && !wet || batch.isEmpty() || !(batch.get().low() > 0)) {
      return Optional.empty();
    }
    Range thickener = recipe.grams(Substance.Role.THICKENER);
    Range whole = batch.get();
    double density = policy.screens().densityDyePaste().gramsPerLitre() / 1000;
    // More powder makes the batch heavier too, so its own range must not be counted twice.
    Range rest =
        new Range(
            whole.low() - thickener.low(),
            whole.best() - thickener.best(),
            whole.high() - thickener.high());
    Range share =
        new Range(
            share(thickener.low(), rest.high(), density),
            share(thickener.best(), rest.best(), density),
            share(thickener.high(), rest.low(), density));
    Limit thinnest = policy.paste().thinnest();
    Limit thickest = policy.paste().thickest();
    return Optional.of(
        new ThickenerStrength(
            paste.name(),
            line.map(Ingredient::substance).orElse("thickener"),
            share,
            thickener,
            whole,
            thinnest,
            thickest,
            needed(thinnest.amount(), rest.best(), density),
            needed(policy.paste().thinnestOfThinGrade().fraction(), rest.best(), density),
            needed(thickest.amount(), rest.best(), density),
            line.map(Ingredient::path).orElse(paste.path().key("recipe"))));
  }

  private static double share(double thickener, double rest, double density) {
    return thickener / ((thickener + rest) / density);
  }

  /**
   * The thickener that makes a paste of just so strong: more of it also makes more paste.
   *
   * @param rest grams of everything else
   */
  static Mass needed(double share, double rest, double density) {
    return new Mass(share * rest / (density - share));
  }

  private Optional<RecipeSum> sum(Paste paste) {
    Recipe recipe = new Recipe(paste, policy);
    Optional<Range> sum = recipe.sumGrams();
    if (sum.isEmpty() || paste.amount().isEmpty()) {
      return Optional.empty();
    }
    Range stated = recipe.amountGrams().orElseThrow();
    double amount = stated.best();
    double missing =
        nearestToZero(stated.low() - sum.get().high(), stated.high() - sum.get().low());
    return Optional.of(
        new RecipeSum(
            paste.name(),
            sum.get(),
            new Mass(amount),
            new Mass(missing),
            new Share(amount > 0 ? Math.abs(missing) / amount : 0),
            paste.path().key("recipe")));
  }

  private static double nearestToZero(double low, double high) {
    return low > 0 ? low : high < 0 ? high : 0;
  }
}
