package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Colour;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Ratio;

/** Facts about the colours that are printed, for rules to judge. */
final class ColourFacts {

  private final PrintPlan plan;
  private final Palette palette;
  private final Underlay underlay;
  private final Likeness likeness;
  private final List<Swatch> printed;
  private final List<Overprint> overprints;
  private final Limit shows;
  private final Limit apart;

  ColourFacts(
      PrintPlan plan,
      Palette palette,
      Underlay underlay,
      Policy policy,
      List<Swatch> swatches,
      List<Overprint> overprints) {
    this.underlay = underlay;
    this.plan = plan;
    this.palette = palette;
    this.printed = swatches.stream().filter(s -> !s.placements().isEmpty()).toList();
    this.shows = policy.order().showsFrom();
    this.apart = policy.order().toldApart();
    long most = Bounds.PAIRS;
    this.overprints = looked(overprints, most, printed.size());
    this.likeness = new Likeness(printed, apart, most);
  }

  /**
   * Each overprint is held against each colour: with a hundred colours in a design that is the cube
   * of them, and so many overprints are looked at as make no more pairs than are looked at
   * elsewhere. Nobody prints a tenth of that.
   */
  private static List<Overprint> looked(List<Overprint> all, long most, int colours) {
    int count = (int) Math.min(all.size(), Math.max(1, most / Math.max(1, colours)));
    return all.subList(0, count);
  }

  List<Evidence> all() {
    return Stream.of(onGround(), likeness.facts(this::colourPath), third())
        .<Evidence>flatMap(List::stream)
        .toList();
  }

  private List<Evidence> onGround() {
    Colour ground = plan.cloth().ground();
    Lab groundLab = Lab.of(ground);
    List<Evidence> facts = new ArrayList<>();
    for (Swatch swatch : printed) {
      Colour washed = palette.onGround(palette.softened(paste(swatch)));
      double difference = swatch.onGroundLab().difference(groundLab);
      double washedDifference = Lab.of(washed).difference(groundLab);
      double lighter = swatch.lightness() - groundLab.lightness();
      boolean tooLight = palette.isTooLight(paste(swatch), swatch.lab(), groundLab);
      boolean seen = Math.min(difference, washedDifference) >= shows.amount() && !tooLight;
      // What is seen on the bare ground need not be looked for on other prints.
      Underlay.Standing standing = seen ? Underlay.Standing.NONE : underlay.of(paste(swatch));
      facts.add(
          new ColourOnGround(
              swatch.paste(),
              swatch.transparent(),
              paste(swatch).translucent(),
              tooLight,
              swatch.named(),
              ground,
              swatch.onGround(),
              palette.extremes(paste(swatch)),
              washed,
              Ratio.toTenth(swatch.lightness()),
              Ratio.toTenth(groundLab.lightness()),
              Ratio.toTenth(lighter),
              palette.mostLighter(),
              palette.veryDark(),
              palette.fairlyDark(),
              Ratio.toTenth(difference),
              shows,
              Ratio.toTenth(washedDifference),
              Ratio.toTenth(swatch.onGroundLab().difference(swatch.lab())),
              standing.over(),
              Ratio.toTenth(standing.difference()),
              palette.strengthening(paste(swatch)),
              tooLight ? palette.showsOnPaler(paste(swatch)) : OptionalInt.empty(),
              tooLight ? palette.showsDeeper(paste(swatch)) : OptionalInt.empty(),
              swatch.placements(),
              colourPath(swatch)));
    }
    return facts;
  }

  private List<Evidence> third() {
    List<Evidence> facts = new ArrayList<>();
    NearestSwatch listed = new NearestSwatch(printed);
    for (Overprint overprint : overprints) {
      listed
          .to(Lab.of(overprint.look()), swatch -> !isPartOf(overprint, swatch))
          .ifPresent(nearest -> facts.add(third(overprint, nearest)));
    }
    return facts;
  }

  private ThirdColour third(Overprint overprint, NearestSwatch.Found nearest) {
    Swatch swatch = nearest.swatch();
    return new ThirdColour(
        overprint.design(),
        overprint.lowerPaste(),
        overprint.upperPaste(),
        overprint.look(),
        swatch.paste(),
        swatch.onGround(),
        Ratio.toTenth(nearest.difference()),
        apart,
        List.of(new Evidence.Related(swatch.paste(), colourPath(swatch))),
        overprint.path());
  }

  private static boolean isPartOf(Overprint overprint, Swatch swatch) {
    return swatch.paste().equals(overprint.lowerPaste())
        || swatch.paste().equals(overprint.upperPaste());
  }

  private Paste paste(Swatch swatch) {
    return plan.pastes().get(swatch.paste());
  }

  private PlanPath colourPath(Swatch swatch) {
    return paste(swatch).path().key("colour");
  }
}
