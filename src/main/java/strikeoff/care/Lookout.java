package strikeoff.care;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import strikeoff.bath.Fixing;
import strikeoff.bath.Soak;
import strikeoff.document.PlanPath;
import strikeoff.paste.HeldAlkali;
import strikeoff.paste.Recipe;
import strikeoff.plan.Design;
import strikeoff.plan.Draught;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Protection;
import strikeoff.plan.Screen;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.Temperature;

/** Goes through a run step by step and gathers what can hurt. */
final class Lookout {

  private static final Hurt PLAIN = new Hurt.Plain();

  private final PrintPlan plan;
  private final Fixing fixing;
  private final Policy policy;
  private final List<Caution> cautions = new ArrayList<>();

  /** Dye pastes that lie on the cloth. */
  private final Map<String, Paste> printed = new LinkedHashMap<>();

  /** Alkali that was brushed on the cloth. */
  private final Set<String> brushedOn = new LinkedHashSet<>();

  /** True once they were steamed. */
  private boolean steamed;

  Lookout(PrintPlan plan, Fixing fixing, Policy policy) {
    this.plan = plan;
    this.fixing = fixing;
    this.policy = policy;
  }

  /** In the order of the run; what holds for the whole plan first. */
  List<Caution> all() {
    if (plan.crew().children()) {
      add(Hazard.CHILDREN, Workplace.AllDay.CLASS, plan.crew().path(), List.of(), PLAIN);
    }
    if (moved(plan.room().air())) {
      add(
          Hazard.ELECTRICITY,
          Workplace.AllDay.AIR,
          plan.room().path(),
          List.of(),
          new Hurt.MovedAir(plan.room().air()));
    }
    plan.run().forEach(this::look);
    return List.copyOf(cautions);
  }

  private void look(Step step) {
    for (Draught air : step.draughts().values()) {
      if (moved(air)) {
        add(Hazard.ELECTRICITY, step, new Hurt.MovedAir(air));
      }
    }
    if (step instanceof Step.Mix mix) {
      mixing(mix);
    } else if (step instanceof PrintStep print) {
      printing(print);
    } else if (step instanceof Step.WashScreen wash) {
      lifting(wash, wash.screens());
      add(Hazard.SCREEN_WASHING, wash, PLAIN);
    } else if (step instanceof Step.Fix fix) {
      fixing(fix);
    } else if (step instanceof Step.Rinse rinse) {
      water(rinse, rinse.temperature());
    } else if (step instanceof Step.Wash wash) {
      water(wash, wash.temperature());
    } else if (step instanceof Step.HeatSet heat) {
      add(
          heat.with() == HeatSource.OVEN ? Hazard.OVEN : Hazard.HOT_IRON,
          heat,
          new Hurt.DryHeat(heat.with(), heat.temperature()));
    }
  }

  private void mixing(Step.Mix mix) {
    List<Paste> pastes = mix.pastes().stream().map(plan.pastes()::get).toList();
    List<String> powder = pastes.stream().filter(this::weighsDye).map(Paste::name).toList();
    if (!powder.isEmpty()) {
      add(Hazard.DYE_POWDER, new Workplace.InStep(mix), mix.path(), powder, PLAIN);
      add(Hazard.VESSELS, mix, PLAIN);
    }
    List<String> sodas = pastes.stream().flatMap(this::sodas).distinct().toList();
    if (!sodas.isEmpty()) {
      add(Hazard.ALKALI, new Workplace.InStep(mix), mix.path(), sodas, PLAIN);
    }
  }

  private void printing(PrintStep print) {
    Set<String> screens = new TreeSet<>();
    for (String arrangement : print.arrangements()) {
      Design design = plan.designs().get(plan.arrangements().get(arrangement).design());
      for (Design.Separation separation : design.separations()) {
        if (print.separations().isEmpty() || print.separations().contains(separation.number())) {
          screens.add(separation.screen());
          Paste paste = plan.pastes().get(separation.paste());
          if (paste.medium() == Medium.DYE) {
            printed.putIfAbsent(paste.name(), paste);
          }
        }
      }
    }
    lifting(print, List.copyOf(screens));
    add(Hazard.SCREEN_WASHING, print, PLAIN);
  }

  private void lifting(Step step, List<String> screens) {
    double alone = policy.table().longestHandFrame().amount();
    Map<String, Length> heavy = new LinkedHashMap<>();
    for (String name : screens) {
      Screen screen = plan.screens().get(name);
      double side = Math.max(screen.frameLength().mm(), screen.frameWidth().mm());
      if (side > alone) {
        heavy.put(name, new Length(side));
      }
    }
    if (!heavy.isEmpty()) {
      add(Hazard.LIFTING, step, new Hurt.LongFrames(heavy));
    }
  }

  private void fixing(Step.Fix fix) {
    if (fix.how() == DyeFixing.SOAK) {
      soaking(fix);
    } else if (fix.brushed()) {
      add(Hazard.ALKALI, new Workplace.InStep(fix), fix.path().key("bath"), alkalis(fix), PLAIN);
      brushedOn.addAll(alkalis(fix));
    } else if (fix.how() == DyeFixing.STEAM) {
      add(Hazard.STEAM, fix, new Hurt.Steam(fix.temperature()));
      List<String> urea =
          printed.values().stream().filter(this::holdsUrea).map(Paste::name).toList();
      if (!urea.isEmpty()) {
        add(Hazard.AMMONIA, fix, new Hurt.UreaIn(urea));
      }
      steamed = true;
    }
  }

  private void soaking(Step.Fix fix) {
    Optional<Soak> soda =
        fixing.soaks().stream()
            .filter(soak -> soak.step() == fix.number() && !alkalis(fix).isEmpty())
            .findFirst();
    if (soda.isEmpty()) {
      water(fix, fix.temperature());
      return;
    }
    Soak soak = soda.get();
    Workplace here = new Workplace.InStep(fix);
    Hurt amount =
        soak.sodaGrams().high() > 0 ? new Hurt.SodaAsh(new Mass(soak.sodaGrams().best())) : PLAIN;
    add(Hazard.ALKALI, here, soak.path(), alkalis(fix), amount);
    add(Hazard.DRAIN, here, soak.path(), List.of(), new Hurt.SpentBath(soak));
    hot(fix, fix.temperature());
    washedOff();
  }

  /** Takes off what printed pastes hold. */
  private void water(Step step, Temperature temperature) {
    hot(step, temperature);
    List<String> alkaline =
        printed.values().stream().filter(this::leavesAlkali).map(Paste::name).toList();
    List<String> held = Stream.concat(brushedOn.stream(), alkaline.stream()).toList();
    if (!held.isEmpty()) {
      add(Hazard.DRAIN, step, new Hurt.AlkaliFrom(held));
    }
    washedOff();
  }

  private void washedOff() {
    printed.clear();
    brushedOn.clear();
    steamed = false;
  }

  /** Baking soda turns into soda in the steam. */
  private boolean leavesAlkali(Paste paste) {
    HeldAlkali alkali = new Recipe(paste, policy).alkali();
    return alkali == HeldAlkali.SODA || alkali == HeldAlkali.BICARBONATE && steamed;
  }

  private void hot(Step step, Temperature temperature) {
    if (temperature.celsius() > policy.care().scaldsAbove().celsius()) {
      add(Hazard.HOT_WATER, step, new Hurt.HotWater(temperature));
    }
  }

  /** A dye paste is weighed from powder unless its recipe says that it holds no dye. */
  private boolean weighsDye(Paste paste) {
    return paste.medium() == Medium.DYE
        && (paste.recipe().isEmpty() || holds(paste, Substance.Role.DYE));
  }

  /** By its recipe; who gives none is taken to mix the usual one, which holds urea. */
  private boolean holdsUrea(Paste paste) {
    return paste.recipe().isEmpty() || holds(paste, Substance.Role.UREA);
  }

  private boolean holds(Paste paste, Substance.Role role) {
    return paste.recipe().stream().anyMatch(p -> policy.substance(p.substance()).role() == role);
  }

  /** The sodas of a paste by name; baking soda is none, and hardly irritates. */
  private Stream<String> sodas(Paste paste) {
    if (new Recipe(paste, policy).alkali() != HeldAlkali.SODA) {
      return Stream.of();
    }
    List<String> named =
        paste.recipe().stream().filter(p -> isSoda(p.substance())).map(Ingredient::named).toList();
    return named.isEmpty() ? Stream.of("alkali") : named.stream();
  }

  private List<String> alkalis(Step.Fix fix) {
    return fix.bath().stream()
        .filter(p -> isSoda(p.substance()) || policy.substance(p.substance()).silicate())
        .map(Ingredient::named)
        .distinct()
        .toList();
  }

  private boolean isSoda(String name) {
    Substance substance = policy.substance(name);
    return substance.role() == Substance.Role.ALKALI && substance.alkaliFactor().isPresent();
  }

  private static boolean moved(Draught air) {
    return air.by() == Draught.By.FAN || air.by() == Draught.By.HAIR_DRYER;
  }

  private void add(Hazard hazard, Step step, Hurt hurt) {
    add(hazard, new Workplace.InStep(step), step.path(), List.of(), hurt);
  }

  private void add(
      Hazard hazard, Workplace where, PlanPath path, List<String> substances, Hurt hurt) {
    List<Protection> missing =
        hazard.needed().stream().filter(p -> !plan.protection().contains(p)).toList();
    cautions.add(new Caution(hazard, where, hazard.needed(), missing, substances, hurt, path));
  }
}
