package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strikeoff.day.Impression;
import strikeoff.document.Edit;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.paste.Recipe;
import strikeoff.paste.SodaLife;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Whether dye finds its alkali, is fixed at all, and is washed off after it. */
final class Dyes {

  private final FixingRun work;

  Dyes(FixingRun work) {
    this.work = work;
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    List<Step.Fix> fixes = work.plan().steps(Step.Fix.class);
    for (Step.Fix fix : fixes) {
      alkali(fix).ifPresent(facts::add);
      alkaline(fix).ifPresent(facts::add);
    }
    facts.addAll(atWater(fixes));
    facts.addAll(printed(fixes));
    if (!fixes.isEmpty()) {
      washOff(fixes.get(fixes.size() - 1)).ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<AlkaliForDye> alkali(Step.Fix fix) {
    List<Paste> dyes = FixingRun.pastes(work.before(fix, Medium.DYE));
    if (!work.isTheLast(fix) || dyes.isEmpty()) {
      return Optional.empty();
    }
    Liquor liquor = Liquor.of(fix.bath(), work.policy());
    boolean inBath = liquor.hasAlkali();
    boolean inCloth = work.soakedBefore(fix);
    List<Paste> bare =
        dyes.stream().filter(paste -> !new Recipe(paste, work.policy()).holdsAlkali()).toList();
    List<Paste> lacking = inBath || inCloth ? List.of() : bare;
    Optional<Mass> soda =
        lacking.isEmpty() || !liquor.hasWater()
            ? Optional.empty()
            : Optional.of(weighed(work.policy().fixing().usualBath(), 0, liquor));
    Optional<Mass> salt =
        soda.map(s -> weighed(salty(), liquor.saltGrams().best(), liquor))
            .filter(s -> s.grams() > 0);
    return Optional.of(
        new AlkaliForDye(
            fix.number(),
            fix.how().text(),
            inBath,
            inCloth,
            FixingRun.names(bare),
            lacking.stream()
                .flatMap(p -> SodaLife.of(p, work.plan(), work.timeline(), work.policy()).stream())
                .filter(SodaLife::tooShort)
                .toList(),
            bare.stream()
                .map(p -> new Evidence.Related(Tie.PASTE_WITHOUT_ALKALI, p.path()))
                .toList(),
            soda,
            salt,
            !work.proteinFibres().isEmpty(),
            weighedIn(),
            fix.how() == DyeFixing.STEAM,
            lacking.isEmpty() ? List.of() : edits(fix, lacking, soda, salt),
            fix.path()));
  }

  private Concentration salty() {
    return (Concentration) work.policy().fixing().enoughSalt().value();
  }

  /** What brings a bath up to a strength, as one weighs it. */
  private Mass weighed(Concentration strength, double grams, Liquor liquor) {
    double step = work.policy().paste().weighFine().grams();
    double wanted = strength.gramsPerLitre() * liquor.litres().best();
    return new Mass(Soaks.up(wanted - grams, step));
  }

  /** None on cloth that soda harms. */
  private List<List<Edit>> edits(
      Step.Fix fix, List<Paste> bare, Optional<Mass> soda, Optional<Mass> salt) {
    if (!work.proteinFibres().isEmpty()) {
      return List.of();
    }
    return soda.isPresent() ? intoBath(fix, soda.get(), salt) : intoPastes(fix, bare);
  }

  private List<List<Edit>> intoBath(Step.Fix fix, Mass soda, Optional<Mass> salt) {
    BathEdits bath = new BathEdits(fix, work.policy(), work.units());
    List<Edit> edits = new ArrayList<>(bath.soda(soda).stream().toList());
    salt.filter(s -> Liquor.of(fix.bath(), work.policy()).saltGrams().high() == 0)
        .flatMap(bath::salt)
        .ifPresent(edits::add);
    return List.of(edits);
  }

  /** Nothing where the recipe of one of them isn't known: then nobody knows how much it takes. */
  private List<List<Edit>> intoPastes(Step.Fix fix, List<Paste> bare) {
    List<List<Edit>> each =
        bare.stream()
            .map(p -> ToSteam.alkali(p, intoPaste(fix), work.policy(), work.units()))
            .toList();
    return each.stream().anyMatch(List::isEmpty)
        ? List.of()
        : List.of(each.stream().flatMap(List::stream).toList());
  }

  /** Soda for a batch, and for steam baking soda, which doesn't brown the cloth. */
  private static String intoPaste(Step.Fix fix) {
    return fix.how() == DyeFixing.STEAM ? "baking soda" : "soda ash";
  }

  /** As much as recipes hold, to be weighed in. */
  private Range weighedIn() {
    double least = work.policy().fixing().alkaliRecipeLeast().value();
    double most = work.policy().fixing().alkaliRecipeMost().value();
    return new Range(least, (least + most) / 2, most);
  }

  /** What a bath does to a print that brought its alkali: water or salt water takes it out. */
  private Optional<AlkalinePrint> alkaline(Step.Fix soak) {
    List<Paste> dyes = FixingRun.pastes(work.before(soak, Medium.DYE));
    if (soak.how() != DyeFixing.SOAK || dyes.isEmpty()) {
      return Optional.empty();
    }
    List<Paste> own =
        dyes.stream().filter(p -> new Recipe(p, work.policy()).holdsAlkali()).toList();
    boolean inCloth = own.isEmpty() && work.soakedBefore(soak);
    if (own.isEmpty() && !inCloth) {
      return Optional.empty();
    }
    Liquor bath = Liquor.of(soak.bath(), work.policy());
    return Optional.of(
        new AlkalinePrint(
            soak.number(),
            FixingRun.names(inCloth ? dyes : own),
            inCloth,
            bath.hasAlkali(),
            bath.saltGramsPerLitre().high() > 0,
            own.stream().map(p -> new Evidence.Related(Tie.PASTE_WITH_ALKALI, p.path())).toList(),
            soak.path().key("bath")));
  }

  /** By the water that comes next, and by whether a fix step comes before it. */
  private List<Evidence> atWater(List<Step.Fix> fixes) {
    Map<Integer, List<Impression>> fixed = new TreeMap<>();
    Map<Integer, List<Impression>> loose = new TreeMap<>();
    for (Impression print : work.impressions(Medium.DYE, i -> true)) {
      work.waterAfter(print.step())
          .ifPresent(
              water ->
                  (between(fixes, print, water) > 0 ? fixed : loose)
                      .computeIfAbsent(water.number(), n -> new ArrayList<>())
                      .add(print));
    }
    List<Evidence> facts = new ArrayList<>();
    for (Map<Integer, List<Impression>> prints : List.of(fixed, loose)) {
      prints.forEach((number, some) -> facts.add(atWater(fixes, number, some)));
    }
    return facts;
  }

  private static int between(List<Step.Fix> fixes, Impression print, Step water) {
    return (int)
        fixes.stream()
            .filter(fix -> fix.number() > print.step() && fix.number() < water.number())
            .count();
  }

  private DyeAtWater atWater(List<Step.Fix> fixes, int number, List<Impression> prints) {
    Step water = work.plan().run().get(number - 1);
    Impression last = prints.get(prints.size() - 1);
    Optional<Step.Fix> late = fixes.stream().filter(f -> f.number() > number).findFirst();
    List<Evidence.Related> related = new ArrayList<>();
    related.add(new Evidence.Related(Tie.PRINTED_HERE, last.path()));
    late.ifPresent(fix -> related.add(new Evidence.Related(Tie.TOO_LATE, fix.path())));
    return new DyeAtWater(
        FixingRun.names(FixingRun.pastes(prints)),
        prints.size(),
        between(fixes, last, water),
        water,
        late,
        late.map(fix -> fixFirst(fix, water)).orElse(List.of()),
        FixingRun.placements(prints),
        related,
        water.path());
  }

  /** The fixing goes before the water, or the water behind the fixing. */
  private List<List<Edit>> fixFirst(Step.Fix fix, Step water) {
    List<List<Edit>> ways = new ArrayList<>();
    ways.add(List.of(new Edit.Move(fix.path(), water.path())));
    List<Step> run = work.plan().run();
    if (fix.number() < run.size()) {
      ways.add(List.of(new Edit.Move(water.path(), run.get(fix.number()).path())));
    }
    return ways;
  }

  /** What is printed before the last fix step, and what after it. */
  private List<Evidence> printed(List<Step.Fix> fixes) {
    int lastFix = fixes.isEmpty() ? 0 : fixes.get(fixes.size() - 1).number();
    List<Evidence> facts = new ArrayList<>();
    for (boolean after : List.of(false, true)) {
      List<Impression> prints = work.impressions(Medium.DYE, i -> i.step() > lastFix == after);
      if (!prints.isEmpty()) {
        int last = prints.get(prints.size() - 1).step();
        facts.add(printed(prints, (int) fixes.stream().filter(fix -> fix.number() > last).count()));
      }
    }
    return facts;
  }

  private DyePrinted printed(List<Impression> prints, int fixes) {
    Impression last = prints.get(prints.size() - 1);
    return new DyePrinted(
        FixingRun.names(FixingRun.pastes(prints)),
        prints.size(),
        fixes,
        lacks(last),
        work.waterAfter(last.step()),
        work.plan().run().stream()
            .filter(s -> s instanceof Step.HeatSet && s.number() > last.step())
            .findFirst()
            .map(Step::number),
        FixingRun.placements(prints),
        last.path());
  }

  private DyePrinted.Lacks lacks(Impression last) {
    if (!work.proteinFibres().isEmpty()) {
      return DyePrinted.Lacks.STEAM;
    }
    if (work.soakedBefore(work.plan().run().get(last.step() - 1))) {
      return DyePrinted.Lacks.FIXING_OF_SODA_IN_CLOTH;
    }
    return new Recipe(last.footprint().paste(), work.policy()).holdsAlkali()
        ? DyePrinted.Lacks.FIXING_OF_ALKALI_IN_PASTE
        : DyePrinted.Lacks.ALKALI_AND_FIXING;
  }

  private Optional<WashOff> washOff(Step.Fix last) {
    List<Paste> dyes =
        FixingRun.pastes(work.impressions(Medium.DYE, i -> i.step() < last.number()));
    if (dyes.isEmpty()) {
      return Optional.empty();
    }
    Delicacy delicacy = new Delicacy(work.plan().cloth(), work.policy());
    boolean rinsed = false;
    double rinsedFor = 0;
    boolean washed = false;
    Optional<Temperature> firstRinse = Optional.empty();
    Optional<Temperature> hottest = Optional.empty();
    for (Step step : work.plan().run()) {
      if (step.number() < last.number()) {
        continue;
      }
      if (step instanceof Step.Rinse rinse && !washed) {
        rinsed = true;
        rinsedFor += rinse.lasts().minutes();
        firstRinse = firstRinse.isPresent() ? firstRinse : Optional.of(rinse.temperature());
      } else if (step instanceof Step.Wash wash) {
        washed = true;
        Temperature so = hottest.orElse(wash.temperature());
        hottest = Optional.of(so.compareTo(wash.temperature()) > 0 ? so : wash.temperature());
      }
    }
    return Optional.of(
        new WashOff(
            last.number(),
            FixingRun.names(dyes),
            rinsed,
            washed,
            new Span(rinsedFor),
            firstRinse,
            hottest,
            delicacy.inTheWash().advisedWash(),
            work.policy().fixing().hotWash(),
            delicacy.inWater().warmestWash(),
            work.policy().fixing().hottestMachine(),
            last.path()));
  }
}
