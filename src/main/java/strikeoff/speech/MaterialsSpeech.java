package strikeoff.speech;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.materials.Materials;
import strikeoff.materials.Purchase;
import strikeoff.materials.WeighedPart;
import strikeoff.materials.Weighing;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/** Says what to buy and what to weigh. */
public final class MaterialsSpeech {

  /** Wherever there is a list to weigh by. */
  public static final String CAUTION =
      "The safety data sheet of each product and your local codes come before anything said here.";

  private MaterialsSpeech() {}

  /** What is made up, and how much of it. */
  public static String title(Weighing weighing, Measures units) {
    return weighing.kind() == Weighing.Kind.BATH
        ? bath(weighing.name())
        : weighing.name() + weighing.amount().map(amount -> ", " + amount.text(units)).orElse("");
  }

  private static String bath(String name) {
    return "bath of the " + name;
  }

  /** As {@code step 1: day 1, 09:00}. */
  public static String when(Weighing weighing) {
    if (weighing.step().isEmpty()) {
      return "before the run: no step mixes it";
    }
    return "step "
        + weighing.step().getAsInt()
        + weighing.begins().map(begins -> ": " + begins.text()).orElse(", which is never reached");
  }

  /** Whose recipe it is; empty for a bath, which is always the plan's. */
  public static String recipe(Weighing weighing) {
    return switch (weighing.recipe()) {
      case PLAN -> weighing.kind() == Weighing.Kind.BATH ? "" : "by the plan's recipe";
      case STUDIO -> "by the studio's usual recipe (" + weighing.usualAt().orElseThrow() + ")";
      case UNKNOWN -> "by your own recipe, as none is stated";
    };
  }

  /** What the scales are to show; of water, what the jug is to hold. */
  public static String weigh(WeighedPart part, Measures units) {
    return part.substance().role() == Substance.Role.WATER && part.millilitres().isPresent()
        ? new Volume(part.millilitres().get().best() / 1000).text(units)
        : new Mass(part.grams().best()).text(units);
  }

  /**
   * The same for who has no scales: in spoons and cups, and in millilitres where the plan measures
   * in those; with the range of its mass where the recipe gives a volume. Empty for water, and for
   * what has no known density.
   */
  public static String measure(WeighedPart part, Measures units) {
    if (part.substance().role() == Substance.Role.WATER || part.millilitres().isEmpty()) {
      return "";
    }
    double ml = part.millilitres().get().best();
    String volume =
        switch (units.of(MeasureKind.VOLUME)) {
          case METRIC -> (ml < 1 ? "" : Math.round(ml) + " ml, ") + Kitchen.measure(ml);
          case US -> Kitchen.measure(ml);
          case IMPERIAL -> new Volume(ml / 1000).text(units);
        };
    return "or " + volume + spread(part.grams(), units);
  }

  private static String spread(Range grams, Measures units) {
    String low = new Mass(grams.low()).text(units);
    String high = new Mass(grams.high()).text(units);
    return low.equals(high) ? "" : "; weighs " + low + " to " + high;
  }

  /** What stands on the list. */
  public static String name(Purchase purchase) {
    if (purchase.isPaste()) {
      return purchase.name() + ", as mixed";
    }
    if (purchase.isWater()) {
      return purchase.name() + ", from the tap";
    }
    return purchase.name() + purchase.paste().map(paste -> " for " + paste).orElse("");
  }

  /** How much to bring. */
  public static String toBuy(Purchase purchase, Measures units) {
    String mass = new Mass(purchase.toBuy()).roundedUp(units);
    Optional<String> volume = purchase.litresToBuy().map(l -> new Volume(l).roundedUp(units));
    return purchase.isWater() ? volume.orElse(mass) : mass + volume.map(v -> ", " + v).orElse("");
  }

  /** What it is for, where that isn't said yet. */
  public static String shares(Purchase purchase, Measures units) {
    if (purchase.isPaste()) {
      return "no recipe is stated";
    }
    if (purchase.paste().isPresent()) {
      return "";
    }
    return purchase.shares().stream()
        .map(share -> label(share) + " " + text(purchase, share.grams(), units))
        .collect(Collectors.joining("; "));
  }

  private static String label(Purchase.Share share) {
    return share.kind() == Weighing.Kind.BATH ? bath(share.name()) : share.name();
  }

  private static String text(Purchase purchase, Range grams, Measures units) {
    return purchase.isWater()
        ? new Volume(grams.best() / 1000).text(units)
        : new Mass(grams.best()).text(units);
  }

  /** What the list rests on. */
  public static String basis(Materials materials) {
    return "What is bought holds "
        + materials.spilt().text()
        + " for what is spilt and stays in the bag (limit paste/shopping-waste). Water for rinsing"
        + " and washing, and what no plan names, as detergent, is not counted.";
  }

  /** What nobody knows; empty if all is known. */
  public static String unknown(Materials materials) {
    List<String> pastes =
        materials.purchases().stream().filter(Purchase::isPaste).map(Purchase::name).toList();
    return pastes.isEmpty()
        ? ""
        : "Not known is what goes into "
            + Phrase.list(pastes)
            + ": write a recipe into the plan, or usual recipes into a studio.yaml.";
  }
}
