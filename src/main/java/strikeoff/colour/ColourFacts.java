package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.plan.Colour;
import strikeoff.plan.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
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
    this.overprints = overprints;
    this.likeness =
        new Likeness(
            printed,
            policy.limit("order/told-apart").amount(),
            policy.limit("media/most-pairs").amount());
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
