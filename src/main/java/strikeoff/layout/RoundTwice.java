package strikeoff.layout;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * A border that runs further than once round a closed cloth, so that its end lies on its beginning.
 *
 * @param run from its beginning to its end
 * @param over how far its repeats lie on those at its beginning
 * @param end where it ends if it goes round once
 */
public record RoundTwice(
    String arrangement, Length run, Length circumference, Length over, Length end, PlanPath path)
    implements Evidence {

  static Optional<RoundTwice> of(
      Arrangement.Border border, Template template, Tube tube, Length closing) {
    BorderRepeats repeats = BorderRepeats.of(border, template.bounds().getWidth(), tube, closing);
    double laid = (repeats.whole() - 1) * repeats.laidEvery().mm() + repeats.designLength().mm();
    double over = laid - tube.circumference();
    if (!tube.closed() || !(over > Length.TOLERANCE)) {
      return Optional.empty();
    }
    Length round = new Length(tube.circumference());
    return Optional.of(
        new RoundTwice(
            border.name(),
            border.to().minus(border.from()),
            round,
            new Length(over),
            border.from().plus(round),
            border.path().key("to")));
  }
}
