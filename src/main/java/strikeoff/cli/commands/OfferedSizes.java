package strikeoff.cli.commands;

import strikeoff.start.PlanAnswers;
import strikeoff.start.PrintKind;
import strikeoff.start.Spread;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/** The sizes that start offers, round in the units of the answers so far. */
record OfferedSizes(Measures units) {

  /** More are no first plan. */
  static final int MOST_COPIES = 40;

  Spread spread(PrintKind what, AskedCloth cloth, Pair motif, Length pitch) {
    return Spread.of(what, cloth.length().value(), cloth.width().value(), motif, pitch, units);
  }

  String motif(PrintKind what, AskedCloth cloth) {
    double most = Math.min(cloth.width().value().mm() / 3, cloth.length().value().mm() / 3);
    double unit = step() / 2;
    double side = what == PrintKind.SMALL_REPEATS ? 10 * unit : 20 * unit;
    double along = Math.max(unit, Math.floor(Math.min(side, most) / unit) * unit);
    double across = what == PrintKind.MOTIFS || what == PrintKind.SMALL_REPEATS ? along : along / 2;
    return pair(new Pair(new Length(along), new Length(across)));
  }

  /** Frames of motifs clear each other; repeats lie as close as a first plan has hands for. */
  Length pitch(PrintKind what, AskedCloth cloth, Pair motif, Pair frame) {
    if (what == PrintKind.MOTIFS) {
      return new Length(frame.along().mm() + 2 * step());
    }
    boolean repeats = what == PrintKind.SMALL_REPEATS;
    Length pitch =
        repeats ? new Length(3 * Math.max(motif.along().mm(), motif.across().mm())) : motif.along();
    while (spread(what, cloth, motif, pitch).count() > MOST_COPIES) {
      pitch = new Length(2 * pitch.mm());
    }
    // Small cloth may hold one where it holds none at a wider pitch.
    return spread(what, cloth, motif, pitch).fits() ? pitch : motif.along();
  }

  boolean holds(Pair frame, Pair motif) {
    Pair least = leastFrame(motif);
    return frame.along().mm() >= least.along().mm() - 0.5
        && frame.across().mm() >= least.across().mm() - 0.5;
  }

  /** What suits it, less the room that a tidy hand can do without. */
  Pair leastFrame(Pair motif) {
    Pair usual = PlanAnswers.usualFrame(motif, units);
    return new Pair(
        new Length(usual.along().mm() - step()), new Length(usual.across().mm() - step()));
  }

  /** Two centimetres or an inch. */
  double step() {
    return PlanAnswers.between(units).mm();
  }

  Length up(double mm) {
    return new Length(Math.ceil(mm / (step() / 2) - 1e-9) * (step() / 2));
  }

  boolean isMetric() {
    return units.allMetric();
  }

  String text(Length length) {
    return length.writtenText(units);
  }

  String pair(Pair pair) {
    return pair.along().writtenText(units) + " x " + pair.across().writtenText(units);
  }
}
