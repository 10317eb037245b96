package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.bath.Brushing;
import strikeoff.bath.FixTime;
import strikeoff.bath.FixedShare;
import strikeoff.bath.Fixing;
import strikeoff.bath.HeatSetting;
import strikeoff.bath.IronTime;
import strikeoff.bath.Soak;
import strikeoff.bath.Steaming;
import strikeoff.bath.Warmth;
import strikeoff.check.Checked;
import strikeoff.evidence.Evidence;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.report.page.Cell;
import strikeoff.report.page.TableBlock;
import strikeoff.report.page.TableSection;
import strikeoff.speech.BathSpeech;
import strikeoff.speech.FixSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Span;
import strikeoff.units.Volume;

/** The bath card: what is weighed in, how strong, how warm and how long. */
final class BathTables {

  private BathTables() {}

  static List<TableSection> of(Checked.Judged judged) {
    Fixing fixing = judged.facts().fixing();
    List<TableBlock> cards = new ArrayList<>();
    for (Soak soak : fixing.soaks()) {
      cards.add(soak(judged, soak));
    }
    for (Evidence fact : fixing.evidence()) {
      if (fact instanceof FixTime time && time.warmth().how().equals(DyeFixing.BATCH.text())) {
        cards.add(batch(judged, time.warmth()));
      }
      if (fact instanceof Steaming steam) {
        cards.add(steam(judged, steam));
      }
      if (fact instanceof HeatSetting heat) {
        cards.add(heat(judged, heat));
      }
    }
    return cards.isEmpty()
        ? List.of()
        : List.of(new TableSection("fixing", "Fixing", "", cards, true));
  }

  private static Measures units(Checked.Judged judged) {
    return judged.plan().measures();
  }

  private static TableBlock soak(Checked.Judged judged, Soak soak) {
    Measures units = units(judged);
    List<List<Cell>> rows = new ArrayList<>();
    if (soak.sodaGrams().high() > 0) {
      rows.add(
          row(
              "Soda ash",
              Estimates.best(soak.sodaGrams(), Mass::new, units),
              Estimates.spread(soak.sodaGrams(), Mass::new, units)));
    }
    if (soak.bakingSoda()) {
      rows.add(row("Baking soda", Estimates.best(soak.bicarbonateGrams(), Mass::new, units), ""));
    }
    rows.add(
        row(
            "Water",
            Estimates.best(soak.waterLitres(), Volume::new, units),
            Estimates.spread(soak.waterLitres(), Volume::new, units)));
    rows.add(
        row(
            "Strength",
            Estimates.best(soak.sodaGramsPerLitre(), Concentration::new, units),
            Estimates.spread(soak.sodaGramsPerLitre(), Concentration::new, units)));
    rows.add(row("pH", BathSpeech.acidity(soak, units), "before the cloth goes in"));
    rows.add(
        row(
            "Liquor ratio",
            Numbers.fixed(soak.liquorRatio().value(), 1) + " : 1",
            "for " + soak.cloth().text(units) + " of dry cloth"));
    if (soak.saltGramsPerLitre().high() > 0) {
      rows.add(
          row("Salt", Estimates.best(soak.saltGramsPerLitre(), Concentration::new, units), ""));
    }
    warmth(judged, soak.step()).ifPresent(warmth -> addWarmth(rows, warmth, units));
    fixed(judged, soak.step()).ifPresent(time -> addShares(rows, time));
    return table(judged, soak.step(), rows);
  }

  private static TableBlock batch(Checked.Judged judged, Warmth warmth) {
    Measures units = units(judged);
    List<List<Cell>> rows = new ArrayList<>();
    judged.facts().fixing().evidence().stream()
        .filter(fact -> fact instanceof Brushing b && b.step() == warmth.step())
        .map(Brushing.class::cast)
        .forEach(
            b ->
                rows.add(
                    row(
                        "Sodium silicate",
                        b.liquid().text(units),
                        "brushed on both faces; the whole cloth takes "
                            + b.forCloth().text(units))));
    addWarmth(rows, warmth, units);
    fixed(judged, warmth.step()).ifPresent(time -> addShares(rows, time));
    return table(judged, warmth.step(), rows);
  }

  private static TableBlock steam(Checked.Judged judged, Steaming steam) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("Temperature", steam.temperature().text(units(judged)), "of the steam"));
    rows.add(
        row(
            "Time",
            steam.lasts().text(),
            steam.longestGroup() + " stands " + steam.longest().text()));
    rows.add(row("Pastes", String.join(", ", steam.dyes()), ""));
    fixed(judged, steam.step()).ifPresent(time -> addShares(rows, time));
    return table(judged, steam.step(), rows);
  }

  /** How much of each dye is fixed, with the colour that it leaves. */
  private static void addShares(List<List<Cell>> rows, FixTime time) {
    if (!time.alkaline() || !time.warmth().timeKnown() || !time.warmth().windowsMeet()) {
      return;
    }
    for (FixedShare share : time.shares()) {
      rows.add(
          row(
              "Fixed, " + share.paste(),
              FixSpeech.spoken(share),
              (share.aged()
                      ? "of the dye that still lives, at its last print "
                          + FixSpeech.living(share)
                          + "; "
                      : "")
                  + (share.full().hex().equals(share.last().hex())
                      ? "of what can be fixed"
                      : share.full().hex() + " comes out as " + share.last().hex())));
    }
  }

  private static Optional<FixTime> fixed(Checked.Judged judged, int step) {
    return judged.facts().fixing().evidence().stream()
        .filter(FixTime.class::isInstance)
        .map(FixTime.class::cast)
        .filter(time -> time.warmth().step() == step)
        .findFirst();
  }

  private static void addWarmth(List<List<Cell>> rows, Warmth warmth, Measures units) {
    rows.add(
        row(
            "Temperature",
            warmth.temperature().text(units),
            "the dyes ask for "
                + warmth.coolest().text(units)
                + " to "
                + warmth.warmest().text(units)));
    rows.add(
        row(
            "Time",
            warmth.lasts().text(),
            !warmth.timeKnown()
                ? "so cold that no time can be given"
                : warmth.hotBy() > 0
                    ? "hotter than the dyes ask for: no time can be given"
                    : "needed at this temperature: about "
                        + Estimates.best(warmth.neededMinutes(), Span::new, units)
                        + Optional.of(Estimates.spread(warmth.neededMinutes(), Span::new, units))
                            .filter(s -> !s.isEmpty())
                            .map(s -> ", " + s)
                            .orElse("")));
  }

  private static TableBlock heat(Checked.Judged judged, HeatSetting heat) {
    return table(
        judged,
        heat.step(),
        List.of(
            row("With", heat.with().text(), ""),
            row(
                "Temperature",
                heat.temperature().text(units(judged)),
                heat.with() == HeatSource.IRON ? "of the sole" : "at the film"),
            row("Time", heat.lasts().text(), ironed(judged, heat)),
            row("Paints", String.join(", ", heat.paints()), "")));
  }

  /** What the clock counts, so that card and day say one thing. */
  private static String ironed(Checked.Judged judged, HeatSetting heat) {
    return judged.facts().fixing().evidence().stream()
        .filter(IronTime.class::isInstance)
        .map(IronTime.class::cast)
        .filter(iron -> iron.step() == heat.step())
        .findFirst()
        .map(
            iron ->
                "at each of "
                    + iron.spots()
                    + " spots of "
                    + iron.sole().text(units(judged))
                    + (iron.sides() > 1 ? ", on both sides" : "")
                    + ": "
                    + iron.total().text()
                    + " in all")
        .orElse("at the film");
  }

  private static Optional<Warmth> warmth(Checked.Judged judged, int step) {
    return judged.facts().fixing().evidence().stream()
        .filter(FixTime.class::isInstance)
        .map(fact -> ((FixTime) fact).warmth())
        .filter(warmth -> warmth.step() == step)
        .findFirst();
  }

  private static TableBlock table(Checked.Judged judged, int step, List<List<Cell>> rows) {
    String title = StepSpeech.title(judged.plan().run().get(step - 1), units(judged));
    return new TableBlock(
        "Step " + step + ", " + title, List.of(words("What"), words("How much")), rows, "");
  }

  private static List<Cell> row(String what, String value, String note) {
    return List.of(Cell.of(what), Cell.of(value, note));
  }
}
