package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.plan.Colour;
import strikeoff.plan.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Ratio;

/** Facts about the colours that are printed, for rules to judge. */
final class ColourFacts {

  private final PrintPlan plan;
  private final Palette palette;
  private final Underlay underlay;
  private final List<Swatch> printed;
  private final List<Overprint> overprints;

  ColourFacts(
      PrintPlan plan,
      Palette palette,
      Underlay underlay,
      List<Swatch> swatches,
      List<Overprint> overprints) {
    this.underlay = underlay;
    this.plan = plan;
    this.palette = palette;
    this.printed = swatches.stream().filter(s -> !s.placements().isEmpty()).toList();
    this.overprints = overprints;
  }

  List<Evidence> all() {
    return Stream.of(onGround(), alike(), third()).flatMap(List::stream).toList();
  }

  private List<Evidence> onGround() {
    Colour ground = plan.cloth().ground();
    Lab groundLab = Lab.of(ground);
    List<Evidence> facts = new ArrayList<>();
    for (Swatch swatch : printed) {
      Colour washed = palette.onGround(palette.softened(paste(swatch)));
      Underlay.Standing standing = underlay.of(paste(swatch));
      facts.add(
          new ColourOnGround(
              swatch.paste(),
              swatch.transparent(),
              swatch.named(),
              ground,
              swatch.onGround(),
              washed,
              Ratio.toTenth(swatch.lightness()),
              Ratio.toTenth(groundLab.lightness()),
              Ratio.toTenth(swatch.lightness() - groundLab.lightness()),
              Ratio.toTenth(swatch.onGroundLab().difference(groundLab)),
              Ratio.toTenth(Lab.of(washed).difference(groundLab)),
              Ratio.toTenth(swatch.onGroundLab().difference(swatch.lab())),
              standing.over(),
              Ratio.toTenth(standing.difference()),
              palette.strengthening(paste(swatch)),
              swatch.placements(),
              colourPath(swatch)));
    }
    return facts;
  }

  private List<Evidence> alike() {
    List<Evidence> facts = new ArrayList<>();
    for (int i = 0; i < printed.size(); i++) {
      for (int j = i + 1; j < printed.size(); j++) {
        Swatch first = printed.get(i);
        Swatch second = printed.get(j);
        facts.add(
            new AlikeColours(
                first.paste(),
                first.onGround(),
                second.paste(),
                second.onGround(),
                Ratio.toTenth(first.onGroundLab().difference(second.onGroundLab())),
                List.of(new Evidence.Related(first.paste(), colourPath(first))),
                colourPath(second)));
      }
    }
    return facts;
  }

  private List<Evidence> third() {
    List<Evidence> facts = new ArrayList<>();
    for (Overprint overprint : overprints) {
      Lab look = Lab.of(overprint.look());
      Swatch nearest = null;
      double least = Double.POSITIVE_INFINITY;
      for (Swatch swatch : printed) {
        double difference = swatch.onGroundLab().difference(look);
        if (!isPartOf(overprint, swatch) && difference < least) {
          nearest = swatch;
          least = difference;
        }
      }
      if (nearest != null) {
        facts.add(
            new ThirdColour(
                overprint.design(),
                overprint.lowerPaste(),
                overprint.upperPaste(),
                overprint.look(),
                nearest.paste(),
                nearest.onGround(),
                Ratio.toTenth(least),
                List.of(new Evidence.Related(nearest.paste(), colourPath(nearest))),
                overprint.path()));
      }
    }
    return facts;
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
