package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Impression;
import strikeoff.document.GivenUp;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.Copies;
import strikeoff.layout.Placement;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Which motifs are printed on both sides of the wash in which their cloth shrinks. */
final class FirstWash {

  private final PrintPlan plan;
  private final Course course;
  private final Policy policy;
  private final Map<String, Motifs> byArrangement = new LinkedHashMap<>();

  FirstWash(PrintPlan plan, Course course, Policy policy) {
    this.plan = plan;
    this.course = course;
    this.policy = policy;
  }

  /** Two colours that can meet, and how large the part is in which they do. */
  private record Pair(Impression earlier, Impression later, Length along, Length across) {}

  /** Those of one arrangement. */
  private static final class Motifs {

    private final Set<String> earlier = new LinkedHashSet<>();
    private final Set<String> later = new LinkedHashSet<>();
    private final Set<Integer> earlierSteps = new TreeSet<>();
    private final Set<Integer> laterSteps = new TreeSet<>();
    private final Set<Placement> placements = new LinkedHashSet<>();
    private Pair worst;

    void add(Pair pair, Cloth cloth) {
      earlier.add(pair.earlier.footprint().paste().name());
      later.add(pair.later.footprint().paste().name());
      earlierSteps.add(pair.earlier.step());
      laterSteps.add(pair.later.step());
      placements.add(pair.later.footprint().placement());
      if (worst == null || lost(pair, cloth) > lost(worst, cloth)) {
        worst = pair;
      }
    }

    private static double lost(Pair pair, Cloth cloth) {
      return Math.max(
          pair.along.mm() * cloth.shrinkLength().fraction(),
          pair.across.mm() * cloth.shrinkWidth().fraction());
    }
  }

  /** One of each arrangement; none where the cloth has shrunk before, or doesn't. */
  List<Evidence> facts() {
    Cloth cloth = plan.cloth();
    boolean shrinks = cloth.shrinkLength().fraction() > 0 || cloth.shrinkWidth().fraction() > 0;
    Optional<Step.Wash> wash =
        course
            .firstAfter(course.printSteps().get(0), Course::washesOff)
            .map(Step.Wash.class::cast)
            .filter(w -> shrinks && !cloth.washed() && !plan.washedFirst());
    if (wash.isEmpty()) {
      return List.of();
    }
    course.motifs().forEach(motif -> look(motif, wash.get().number()));
    return byArrangement.entrySet().stream()
        .map(e -> fact(e.getKey(), e.getValue(), wash.get()))
        .toList();
  }

  private void look(List<Impression> motif, int wash) {
    GivenUp.ifAsked();
    List<Impression> before = motif.stream().filter(p -> p.step() < wash).toList();
    List<Impression> after = motif.stream().filter(p -> p.step() > wash).toList();
    for (Impression later : after) {
      Placement placement = later.footprint().placement();
      Design design = plan.designs().get(placement.design());
      for (Impression earlier : before) {
        if (MotifOrder.overlap(design, earlier, later)) {
          Envelope shared =
              earlier
                  .footprint()
                  .printed()
                  .intersection(later.footprint().printed())
                  .getEnvelopeInternal();
          byArrangement
              .computeIfAbsent(placement.arrangement(), name -> new Motifs())
              .add(
                  new Pair(
                      earlier,
                      later,
                      new Length(shared.getWidth()),
                      new Length(shared.getHeight())),
                  plan.cloth());
        }
      }
    }
  }

  private Evidence fact(String arrangement, Motifs motifs, Step.Wash wash) {
    int step = motifs.laterSteps.iterator().next();
    boolean railed = plan.table().railed();
    List<Related> related = new ArrayList<>();
    motifs.earlierSteps.forEach(s -> related.add(new Related(Tie.PRINTED_BEFORE, course.path(s))));
    related.add(new Related(Tie.BATH, wash.path()));
    return new AcrossFirstWash(
        arrangement,
        List.copyOf(motifs.earlier),
        List.copyOf(motifs.later),
        course.step(motifs.earlierSteps.iterator().next()),
        course.step(step),
        wash,
        course.step(1),
        plan.cloth().shrinkLength(),
        plan.cloth().shrinkWidth(),
        motifs.worst.along,
        motifs.worst.across,
        trap(motifs.worst),
        railed,
        policy.registration(railed),
        Copies.of(motifs.placements),
        motifs.placements.stream().map(Placement::name).toList(),
        related,
        course.path(step));
  }

  /** As films were measured, or else the wider one of those that the two state. */
  private Optional<Length> trap(Pair pair) {
    Design.Separation one = pair.earlier.footprint().separation();
    Design.Separation other = pair.later.footprint().separation();
    Design design = plan.designs().get(pair.later.footprint().placement().design());
    return design
        .joint(one, other)
        .map(joint -> joint.lap().map(lap -> lap.width()))
        .orElseGet(
            () ->
                Stream.concat(one.trap().stream(), other.trap().stream())
                    .max(Comparator.naturalOrder()));
  }
}
