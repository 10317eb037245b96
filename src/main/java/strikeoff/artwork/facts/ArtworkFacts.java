package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Design;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Derives what is true of a plan's films. */
public final class ArtworkFacts {

  private ArtworkFacts() {}

  /** Design by design, in the plan's order; nothing for designs without films. */
  public static List<Evidence> of(PrintPlan plan, Policy policy) {
    List<Evidence> facts = new ArrayList<>();
    boolean railed = plan.table().railed();
    Length tolerance = policy.registration(railed);
    for (Design design : plan.designs().values()) {
      if (design.separations().stream().allMatch(s -> s.artwork().isEmpty())) {
        continue;
      }
      List<MarksOnFilms> marks = MarksOnFilms.of(design, tolerance, policy);
      List<PrintAtBorder> borders = new ArrayList<>();
      for (Design.Separation separation : design.separations()) {
        separation
            .artwork()
            .ifPresent(
                artwork -> {
                  facts.add(ToneOfArtwork.of(design, separation, artwork, policy));
                  ColourOffUnderlay.of(plan, design, separation, borders, policy)
                      .ifPresent(facts::add);
                  PrintAtBorder.of(design, separation, artwork, policy.artwork())
                      .ifPresent(borders::add);
                  FilmUnderOthers.of(plan, design, separation, policy.artwork())
                      .ifPresent(facts::add);
                  StatedPrint.of(design, separation, artwork, policy).ifPresent(facts::add);
                  facts.addAll(StatedWidth.of(design, separation, artwork, marks, policy));
                  LineInPoints.of(design, separation, artwork, marks, policy).ifPresent(facts::add);
                });
      }
      facts.addAll(borders);
      List<SizeOfArtwork> sizes = SizeOfArtwork.each(design, plan, tolerance, policy.artwork());
      facts.addAll(SizeOfArtwork.together(sizes));
      facts.addAll(marks);
      ArtworksApart.of(sizes, policy.artwork().samePage()).ifPresent(facts::add);
      facts.addAll(PointsApart.of(design, sizes, railed, tolerance, policy.artwork().samePage()));
      Optional<FilmOnOthers> fit = FilmOnOthers.of(design, railed, policy);
      fit.ifPresent(facts::add);
      for (Joint joint : design.joints()) {
        facts.add(OpenJoint.of(design, joint, policy.artwork(), railed, tolerance));
        OutlineOverEdge.of(design, joint, policy.artwork().buttLeast(), railed, tolerance)
            .ifPresent(facts::add);
        ColourPastOutline.of(design, joint, policy.artwork()).ifPresent(facts::add);
        SamePicture.of(design, joint).ifPresent(facts::add);
        WideLap.of(plan, design, joint, railed, tolerance).ifPresent(facts::add);
      }
      facts.addAll(
          LooseOutline.of(
              design,
              facts,
              (one, other) ->
                  fit.filter(f -> f.leavesBare(one, other)).isPresent()
                      || sizes.stream().anyMatch(SizeOfArtwork::distorted),
              railed,
              tolerance));
    }
    return facts;
  }
}
