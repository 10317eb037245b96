package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import strikeoff.bath.BathEdits;
import strikeoff.bath.FixTime;
import strikeoff.bath.FixedShare;
import strikeoff.bath.Fixing;
import strikeoff.bath.Soak;
import strikeoff.bath.Treatment;
import strikeoff.bath.Warmth;
import strikeoff.checks.Worked;
import strikeoff.colour.Lab;
import strikeoff.colour.Overprint;
import strikeoff.colour.Swatch;
import strikeoff.colour.Swatches;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.paste.HeldAlkali;
import strikeoff.paste.PasteAge;
import strikeoff.paste.PasteUse;
import strikeoff.paste.Pastes;
import strikeoff.plan.Colour;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Limit;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Area;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/** Pastes, baths and colours of the estuary curtains with plausible figures, made by hand. */
final class EstuaryFacts {

  private static final PlanPath NOWHERE = PlanPath.ROOT;

  private EstuaryFacts() {}

  static Pastes pastes(PrintPlan plan, UnaryOperator<String> texts) {
    List<PasteUse> uses = new ArrayList<>();
    List<PasteAge> ages = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      uses.add(
          new PasteUse(
              paste.name(),
              24,
              24,
              new Area(4000),
              false,
              new Range(80, 100, 130),
              new Range(40, 50, 70),
              new Mass(15),
              2,
              new Range(150, 180, 240),
              1,
              paste.amount().map(m -> Range.exactly(((Mass) m).grams())),
              new Mass(-40),
              new Mass(-10),
              new Mass(20),
              new Mass(250),
              Optional.empty(),
              List.of(),
              new Mass(50),
              new Mass(0),
              new Share(0),
              Optional.empty(),
              Optional.empty(),
              List.of(),
              NOWHERE));
      ages.add(
          new PasteAge(
              paste.name(),
              PolicyReader.builtIn().group("dichlorotriazine"),
              HeldAlkali.NONE,
              "",
              paste.storage(),
              Moment.of(1, 580),
              Moment.of(2, 620),
              texts.apply("reed border 14"),
              new Span(1500),
              new Range(7000, 9000, 12000),
              new Span(0),
              new Span(0),
              Moment.of(1, 540),
              List.of(Moment.of(1, 600)),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              NOWHERE));
    }
    return new Pastes(uses, ages, List.of());
  }

  private static Limit limit(String name) {
    return PolicyReader.builtIn().limit("fixing/" + name);
  }

  static Fixing fixing() {
    Soak soak =
        new Soak(
            1,
            new Range(780, 800, 820),
            Range.exactly(0),
            Range.exactly(20),
            new Range(39, 40, 41),
            new Temperature(30),
            Optional.of(new Range(10.9, 11.1, 11.3)),
            Optional.of(new Ratio(0.8)),
            new Concentration(350),
            new Mass(1083),
            new Ratio(18.5),
            new Share(0.74),
            List.of("ink"),
            List.of(),
            List.of(),
            new Mass(0),
            new Volume(20),
            new Mass(2000),
            new Volume(20),
            new Mass(800),
            new Mass(2000),
            Range.exactly(100),
            Range.exactly(100),
            new Mass(7180),
            new Mass(0),
            false,
            true,
            new Ratio(91),
            limit("weakest-bath"),
            limit("strongest-bath"),
            limit("tight-liquor-ratio"),
            limit("enough-salt"),
            limit("salt-dissolves"),
            new BathEdits(
                new Step.Fix(
                    1,
                    DyeFixing.SOAK,
                    List.of(),
                    new Temperature(30),
                    new Span(60),
                    Optional.empty(),
                    NOWHERE),
                PolicyReader.builtIn(),
                Measures.METRIC),
            NOWHERE);
    Warmth warmth =
        new Warmth(
            1,
            "soak",
            List.of("ink"),
            new Temperature(30),
            new Temperature(25),
            "dichlorotriazine",
            new Temperature(40),
            "dichlorotriazine",
            -9,
            new Temperature(21),
            -10,
            new Span(60),
            new Range(25, 30, 40),
            "dichlorotriazine",
            true,
            true,
            List.of(
                new Warmth.Window("dichlorotriazine", new Temperature(25), new Temperature(40))));
    Colour ink = new Colour(43, 52, 64, "#2b3440");
    FixedShare fixed =
        new FixedShare(
            "ink",
            Worked.POLICY.group("dichlorotriazine"),
            true,
            new Range(0.8, 0.96, 0.99),
            Range.exactly(1),
            ink,
            ink,
            ink);
    return new Fixing(
        List.of(soak),
        List.of(
            new FixTime(
                warmth,
                List.of(fixed),
                2.1,
                true,
                false,
                new Span(30),
                1,
                Optional.empty(),
                List.of(List.of(new Treatment.LeaveLonger(new Span(5)))),
                List.of(),
                NOWHERE)));
  }

  static Swatches swatches(PrintPlan plan) {
    List<Swatch> swatches = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      swatches.add(
          new Swatch(
              paste.name(),
              paste.medium(),
              paste.transparent(),
              paste.colour(),
              Lab.of(paste.colour()),
              paste.colour(),
              paste.colour(),
              Lab.of(paste.colour()),
              List.of()));
    }
    Swatch first = swatches.get(0);
    Swatch last = swatches.get(swatches.size() - 1);
    Overprint overprint =
        new Overprint(
            plan.designs().keySet().iterator().next(),
            1,
            first.paste(),
            2,
            last.paste(),
            last.named(),
            last.named(),
            Overprint.Model.ABSORPTIONS_ADD,
            new Area(0),
            new Area(20),
            new Area(70),
            NOWHERE);
    return new Swatches(
        plan.cloth().ground(),
        Lab.of(plan.cloth().ground()),
        swatches,
        List.of(overprint),
        List.of(),
        List.of());
  }
}
