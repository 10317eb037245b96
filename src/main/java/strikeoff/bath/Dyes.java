package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strikeoff.document.Edit;
import strikeoff.paste.Recipe;
import strikeoff.paste.SodaLife;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.PerKilogram;
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
    List<Step.Fix> fixes =
        work.plan().run().stream()
            .filter(Step.Fix.class::isInstance)
            .map(Step.Fix.class::cast)
            .toList();
    for (Step.Fix fix : fixes) {
      missingAlkali(fix).ifPresent(facts::add);
      washedOut(fix).ifPresent(facts::add);
    }
    facts.addAll(unfixed(fixes));
    if (!fixes.isEmpty()) {
      washOff(fixes.get(fixes.size() - 1)).ifPresent(facts::add);
    }
    return facts;
  }

  private Optional<MissingAlkali> missingAlkali(Step.Fix fix) {
    Liquor liquor = Liquor.of(fix.bath(), work.policy());
    if (!work.isTheLast(fix) || liquor.hasAlkali() || work.soakedBefore(fix)) {
      return Optional.empty();
    }
    List<Paste> bare =
        FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
            .filter(paste -> !new Recipe(paste, work.policy()).holdsAlkali())
            .toList();
    Optional<Mass> soda =
        liquor.hasWater() ? Optional.of(weighed("usual-bath", 0, liquor)) : Optional.empty();
    Optional<Mass> salt =
        soda.map(s -> weighed("enough-salt", liquor.saltGrams().best(), liquor))
            .filter(s -> s.grams() > 0);
    return bare.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new MissingAlkali(
                fix.number(),
                fix.how().text(),
                FixingRun.names(bare),
                bare.stream()
                    .flatMap(
                        p -> SodaLife.of(p, work.plan(), work.timeline(), work.policy()).stream())
                    .filter(SodaLife::tooShort)
                    .toList(),
                bare.stream()
                    .map(p -> new Evidence.Related("paste without alkali", p.path()))
                    .toList(),
                soda,
                salt,
                work.proteinFibres().isEmpty() ? Optional.empty() : Optional.of(work.steam()),
                weighedIn(fix),
                edits(fix, bare, soda, salt),
                fix.path()));
  }

  /** What brings a bath up to a strength, as one weighs it. */
  private Mass weighed(String limit, double grams, Liquor liquor) {
    double step = work.policy().limit("paste/weigh-fine").amount();
    double wanted = work.policy().limit("fixing/" + limit).amount() * liquor.litres().best();
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
    return fix.how() == Step.Fixing.STEAM ? "baking soda" : "soda ash";
  }

  /** As much as recipes hold, to be weighed in. */
  private String weighedIn(Step.Fix fix) {
    Measures units = work.units();
    return PerKilogram.number(work.policy().limit("fixing/alkali-recipe-least").amount(), units)
        + " to "
        + PerKilogram.text(work.policy().limit("fixing/alkali-recipe-most").amount(), units)
        + " of "
        + intoPaste(fix)
        + " in "
        + PerKilogram.whole(units);
  }

  /** Water or salt water takes the alkali out of a print that brought its own. */
  private Optional<AlkaliWashedOut> washedOut(Step.Fix soak) {
    List<Paste> dyes = FixingRun.pastes(work.before(soak, Medium.DYE));
    if (soak.how() != Step.Fixing.SOAK
        || dyes.isEmpty()
        || Liquor.of(soak.bath(), work.policy()).hasAlkali()) {
      return Optional.empty();
    }
    List<Paste> own =
        dyes.stream().filter(p -> new Recipe(p, work.policy()).holdsAlkali()).toList();
    boolean inCloth = own.isEmpty() && work.soakedBefore(soak);
    if (own.isEmpty() && !inCloth) {
      return Optional.empty();
    }
    Range salt = Liquor.of(soak.bath(), work.policy()).saltGramsPerLitre();
    return Optional.of(
        new AlkaliWashedOut(
            soak.number(),
            FixingRun.names(inCloth ? dyes : own),
            inCloth ? "in the cloth, from the soak before" : "in the paste",
            salt.high() > 0 ? "salt and no alkali" : "no alkali",
            own.stream().map(p -> new Evidence.Related("paste with alkali", p.path())).toList(),
            soak.path().key("bath")));
  }

  /** Dye of a phase that holds no fix step after it; a rinse before any fixing washes it away. */
  private List<Evidence> unfixed(List<Step.Fix> fixes) {
    List<Impression> loose =
        work.impressions(
            Medium.DYE,
            i ->
                fixes.stream()
                    .noneMatch(
                        fix ->
                            fix.number() > i.step()
                                && work.phase(fix.number()) == work.phase(i.step())));
    List<Evidence> facts = new ArrayList<>();
    Map<Integer, List<Impression>> byWater = new TreeMap<>();
    List<Impression> never = new ArrayList<>();
    for (Impression print : loose) {
      Optional<Step> water = work.waterAfter(print.step());
      boolean tooLate = water.isPresent() && fixAfter(fixes, water.get()).isPresent();
      if (tooLate) {
        byWater.computeIfAbsent(water.get().number(), n -> new ArrayList<>()).add(print);
      } else {
        never.add(print);
      }
    }
    byWater.forEach((number, prints) -> facts.add(washed(fixes, number, prints)));
    if (!never.isEmpty()) {
      facts.add(never(never));
    }
    return facts;
  }

  private static Optional<Step.Fix> fixAfter(List<Step.Fix> fixes, Step water) {
    return fixes.stream().filter(f -> f.number() > water.number()).findFirst();
  }

  private WashedUnfixed washed(List<Step.Fix> fixes, int number, List<Impression> prints) {
    Step water = work.plan().run().get(number - 1);
    Step.Fix late = fixAfter(fixes, water).orElseThrow();
    return new WashedUnfixed(
        FixingRun.names(FixingRun.pastes(prints)),
        prints.size(),
        water.title(work.units()),
        water.number(),
        late.title(work.units()),
        late.number(),
        FixingRun.placements(prints),
        List.of(
            new Evidence.Related("printed here", prints.get(prints.size() - 1).path()),
            new Evidence.Related("this comes too late", late.path())),
        water.path());
  }

  private UnfixedDye never(List<Impression> loose) {
    Impression last = loose.get(loose.size() - 1);
    return new UnfixedDye(
        FixingRun.names(FixingRun.pastes(loose)),
        loose.size(),
        fixing(last),
        work.waterAfter(last.step())
            .map(
                w ->
                    ", and step "
                        + w.number()
                        + ", "
                        + w.title(work.units())
                        + ", takes the dye out")
            .orElse(""),
        work.plan().run().stream()
            .filter(s -> s instanceof Step.HeatSet && s.number() > last.step())
            .findFirst()
            .map(
                s ->
                    " Dry heat, as of step "
                        + s.number()
                        + ", fixes such dye only from a paste with far more urea than steam asks for,"
                        + " and less of it; no time is known for it here.")
            .orElse(""),
        FixingRun.placements(loose),
        last.path());
  }

  /** With alkali in cloth or paste a soak would only wash it out. */
  private String fixing(Impression last) {
    if (!work.proteinFibres().isEmpty()) {
      return "Add a step `fix: steam` after the print, with baking soda in the paste";
    }
    if (work.soakedBefore(work.plan().run().get(last.step() - 1))) {
      return "Add a step `fix: batch` or `fix: steam` after the print: the soda is in the cloth"
          + " already, and a second soak would only bleed it";
    }
    return new Recipe(last.footprint().paste(), work.policy()).holdsAlkali()
        ? "Add a step `fix: batch` or `fix: steam` after the print: the paste holds its alkali, and a"
            + " soak would only bleed it"
        : "Add a fix step after the print: a soda soak, or a batch or steam with alkali in the paste";
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
            advised(delicacy.inWater().warmestWash()),
            last.path()));
  }

  /** Nobody is sent into water that harms the cloth. */
  private String advised(Temperature stands) {
    Temperature hot = new Temperature(work.policy().limit("fixing/hot-wash").amount());
    double machine = work.policy().limit("fixing/hottest-machine").amount();
    Measures units = work.units();
    return stands.celsius() >= machine
        ? hot.enough(units) + " or hotter"
        : stands.compareTo(hot) > 0
            ? hot.enough(units) + " to " + stands.most(units)
            : stands.compareTo(hot) < 0 ? stands.most(units) : hot.enough(units);
  }
}
