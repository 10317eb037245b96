package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;

/**
 * The plan's colours as they are expected on this cloth. All looks are estimates for the eye: see
 * {@link Overprint.Model} for how they are made.
 *
 * @param ground the cloth's colour
 * @param groundLab of it
 * @param swatches one for each paste, in the plan's order
 * @param overprints one for each pair of separations of a placed design whose images overlap
 * @param motifs how each placed design looks from afar
 * @param evidence facts for rules about the pastes that are printed
 */
public record Swatches(
    Colour ground,
    Lab groundLab,
    List<Swatch> swatches,
    List<Overprint> overprints,
    List<MotifLook> motifs,
    List<Evidence> evidence) {

  public Swatches {
    swatches = List.copyOf(swatches);
    overprints = List.copyOf(overprints);
    motifs = List.copyOf(motifs);
    evidence = List.copyOf(evidence);
  }

  public static Swatches of(PrintPlan plan, Layout layout, Policy policy) {
    Palette palette = new Palette(plan.cloth(), policy);
    PrintedColours printed = new PrintedColours(layout);
    List<Swatch> swatches = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      Colour look = palette.onGround(palette.wet(paste));
      swatches.add(
          new Swatch(
              paste.name(),
              paste.medium(),
              paste.transparent(),
              paste.colour(),
              Lab.of(paste.colour()),
              look,
              palette.onGround(palette.washed(paste)),
              Lab.of(look),
              printed.placements(paste.name())));
    }
    List<Overprint> overprints = new ArrayList<>();
    List<MotifLook> motifs = new ArrayList<>();
    for (Design design : plan.designs().values()) {
      if (printed.places(design.name())) {
        overprints.addAll(overprints(design, plan, palette));
        motifs.add(new Motifs(plan, palette).look(design));
      }
    }
    return new Swatches(
        plan.cloth().ground(),
        Lab.of(plan.cloth().ground()),
        swatches,
        overprints,
        motifs,
        new ColourFacts(
                plan,
                palette,
                new Underlay(plan, layout, palette, policy),
                policy,
                swatches,
                overprints)
            .all());
  }

  /** The swatch of a paste. */
  public Swatch of(String paste) {
    return swatches.stream()
        .filter(s -> s.paste().equals(paste))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no paste " + paste));
  }

  private static Overprint.Model model(Paste upper) {
    if (upper.translucent()) {
      return Overprint.Model.UPPER_HIDES_A_PART;
    }
    return upper.transparent() ? Overprint.Model.ABSORPTIONS_ADD : Overprint.Model.UPPER_HIDES;
  }

  private static List<Overprint> overprints(Design design, PrintPlan plan, Palette palette) {
    List<Overprint> found = new ArrayList<>();
    List<Design.Separation> separations = design.separations();
    for (int i = 0; i < separations.size(); i++) {
      for (int j = i + 1; j < separations.size(); j++) {
        Design.Separation p = separations.get(i);
        Design.Separation q = separations.get(j);
        SharedArea shared = SharedArea.of(design, p, q);
        if (shared.isPossible() && !p.paste().equals(q.paste())) {
          Paste lower = plan.pastes().get(p.paste());
          Paste upper = plan.pastes().get(q.paste());
          found.add(
              new Overprint(
                  design.name(),
                  p.number(),
                  lower.name(),
                  q.number(),
                  upper.name(),
                  palette.onGround(palette.wet(lower), palette.wet(upper)),
                  palette.onGround(palette.washed(lower), palette.washed(upper)),
                  model(upper),
                  shared.least(),
                  shared.expected(),
                  shared.most(),
                  q.path()));
        }
      }
    }
    return found;
  }
}
