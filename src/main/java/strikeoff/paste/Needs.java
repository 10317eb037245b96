package strikeoff.paste;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.plan.Cloth;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.Area;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Share;
import strikeoff.units.Volume;

/** Adds up what each colour needs over the simulated impressions. */
final class Needs {

  private final PrintPlan plan;
  private final Timeline timeline;
  private final Policy policy;
  private final Mixings mixings;
  private final Ages lives;

  Needs(PrintPlan plan, Timeline timeline, Policy policy, Mixings mixings, Ages lives) {
    this.plan = plan;
    this.timeline = timeline;
    this.policy = policy;
    this.mixings = mixings;
    this.lives = lives;
  }

  /** One for each paste that is printed, in the plan's order. */
  List<PasteUse> all() {
    Map<String, List<Impression>> byPaste = new LinkedHashMap<>();
    plan.pastes().keySet().forEach(name -> byPaste.put(name, new ArrayList<>()));
    timeline.impressions().forEach(i -> byPaste.get(i.footprint().paste().name()).add(i));
    LeftInScreens screens = LeftInScreens.of(timeline, policy);
    List<PasteUse> uses = new ArrayList<>();
    byPaste.forEach(
        (name, impressions) -> {
          if (!impressions.isEmpty()) {
            uses.add(use(plan.pastes().get(name), impressions, screens));
          }
        });
    return uses;
  }

  private PasteUse use(Paste paste, List<Impression> impressions, LeftInScreens screens) {
    Tally tally = new Tally(screens, plan.cloth(), policy, new HashMap<>());
    Recipe recipe = new Recipe(paste, policy);
    int batches = mixings.batches(paste);
    Optional<Range> mixed = recipe.batchGrams().map(batch -> batch.times(Math.max(1, batches)));
    Optional<String> runsOut = Optional.empty();
    for (Impression impression : impressions) {
      tally.add(impression);
      if (runsOut.isEmpty() && mixed.isPresent() && tally.need().best() > mixed.get().best()) {
        runsOut = Optional.of(impression.footprint().placement().name());
      }
    }
    Range need = tally.need();
    double toMix = weighed(need.high(), policy);
    Range has = mixed.orElse(need);
    double over = Math.max(0, has.low() - need.high());
    Optional<Volume> filled = filled(paste, has, need);
    return new PasteUse(
        paste.name(),
        impressions.size(),
        tally.pulls,
        new Area(tally.squareCm),
        paste.deposit().isPresent(),
        tally.onCloth,
        tally.left(),
        new Mass(tally.scrapedBack()),
        tally.washes,
        need,
        batches,
        mixed,
        new Mass(mixed.isPresent() ? need.low() - has.high() : 0),
        new Mass(mixed.isPresent() ? need.best() - has.best() : 0),
        new Mass(mixed.isPresent() ? need.high() - has.low() : 0),
        new Mass(toMix),
        filled,
        enough(paste, recipe, filled, toMix / Math.max(1, batches)),
        new Mass(mixed.isPresent() && has.low() < need.high() ? toMix - has.low() : 0),
        new Mass(over),
        new Share(need.high() > 0 ? over / need.high() : 0),
        lives.withItsAlkali(paste),
        runsOut,
        impressions.stream().map(i -> i.footprint().placement().name()).distinct().toList(),
        path(paste));
  }

  /** As much of what is measured out now as makes its least enough for the most careful need. */
  private static Optional<Volume> filled(Paste paste, Range has, Range need) {
    return paste
        .amount()
        .filter(Volume.class::isInstance)
        .map(amount -> new Volume(((Volume) amount).litres() * need.high() / has.low()));
  }

  /** The amount that is enough, and every part of the recipe by as much more or less. */
  private List<Edit> enough(Paste paste, Recipe recipe, Optional<Volume> filled, double grams) {
    Measures units = plan.measures();
    Mass mass = new Mass(grams).up(units);
    List<Edit> edits = new ArrayList<>();
    if (paste.amount().isPresent() || paste.recipe().isEmpty()) {
      String amount = filled.map(v -> v.up(units).text(units)).orElseGet(() -> mass.text(units));
      edits.add(new Edit.Write(paste.path().key("amount"), amount));
    }
    double times =
        filled.isPresent()
            ? filled.get().up(units).litres() / ((Volume) paste.amount().orElseThrow()).litres()
            : mass.grams() / recipe.batchGrams().map(Range::best).orElse(mass.grams());
    for (Ingredient part : paste.recipe()) {
      edits.add(new Edit.Write(part.path(), times(part.amount(), times).text(units)));
    }
    return edits;
  }

  private static Quantity times(Quantity amount, double times) {
    return amount instanceof Volume volume
        ? new Volume(volume.litres() * times)
        : new Mass(((Mass) amount).grams() * times);
  }

  private static PlanPath path(Paste paste) {
    if (paste.amount().isPresent()) {
      return paste.path().key("amount");
    }
    return paste.recipe().isEmpty() ? paste.path() : paste.path().key("recipe");
  }

  /** Up to an amount that one weighs: in fine steps, and in coarse ones where there is more. */
  static double weighed(double grams, Policy policy) {
    boolean little = grams < policy.paste().weighCoarselyFrom().grams();
    double step = (little ? policy.paste().weighFine() : policy.paste().weighCoarse()).grams();
    return Math.ceil(grams / step - 1e-9) * step;
  }

  /** What some prints with one paste take out of its pot. */
  static Range of(List<Impression> impressions, LeftInScreens screens, Cloth cloth, Policy policy) {
    Tally tally = new Tally(screens, cloth, policy, new HashMap<>());
    impressions.forEach(tally::add);
    return tally.need();
  }

  /** Running sums over the impressions of one paste. */
  static final class Tally {

    private final LeftInScreens screens;
    private final Cloth cloth;
    private final Policy policy;
    private final double withWaste;
    private final Map<String, Deposit> byScreen;
    private Range onCloth = Range.exactly(0);
    private Range clings = Range.exactly(0);
    private Range beadsLost = Range.exactly(0);
    private Range taken = Range.exactly(0);
    private final List<LeftInScreens.Filling> filled = new ArrayList<>();
    private double squareCm;
    private int pulls;
    private int washes;

    /**
     * @param byScreen keeps what the paste lays down through each screen
     */
    Tally(LeftInScreens screens, Cloth cloth, Policy policy, Map<String, Deposit> byScreen) {
      this.byScreen = byScreen;
      this.screens = screens;
      this.cloth = cloth;
      this.policy = policy;
      this.withWaste = 1 + policy.paste().waste().fraction();
    }

    void add(Impression impression) {
      var footprint = impression.footprint();
      Area printed = footprint.separation().printed();
      int times = footprint.separation().pulls();
      Deposit deposit =
          byScreen.computeIfAbsent(
              footprint.screen().name(),
              screen -> Deposit.of(footprint.screen(), footprint.paste(), cloth, policy));
      onCloth = onCloth.plus(deposit.afterPulls(times).times(printed.squareMetres()));
      squareCm += printed.squareCm();
      pulls += times;
      screens
          .filledFor(impression)
          .ifPresent(
              filling -> {
                filled.add(filling);
                clings = clings.plus(filling.clings());
              });
      Range beads = beadsLost;
      for (LeftInScreens.Filling filling : filled) {
        beads = beads.plus(filling.bead());
      }
      taken = larger(taken, Range.independent(onCloth, clings, beads));
      screens
          .emptiedAfter(impression)
          .ifPresent(
              filling -> {
                filled.removeIf(one -> one == filling);
                beadsLost = beadsLost.plus(filling.beadLost());
                washes++;
              });
    }

    /** What goes down the sink once all screens are washed out. */
    Range left() {
      return clings.plus(beadsLost);
    }

    private static Range larger(Range one, Range other) {
      return new Range(
          Math.max(one.low(), other.low()),
          Math.max(one.best(), other.best()),
          Math.max(one.high(), other.high()));
    }

    /** The most that was out of the pot at any pull, and what is wasted beside. */
    Range need() {
      return taken.times(withWaste);
    }

    /** What of that went back into the pot, by the best estimate. */
    double scrapedBack() {
      return Math.max(0, taken.best() - onCloth.best() - left().best());
    }
  }
}
