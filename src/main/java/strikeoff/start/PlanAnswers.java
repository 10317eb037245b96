package strikeoff.start;

import java.util.List;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;

/**
 * What a printer answers before there is a plan.
 *
 * @param count how many motifs lie in a row; of other things as many as there is room for
 * @param pitch from one copy to the next; of a border the length of its repeat
 * @param frame outside of all frames
 * @param table its length x width
 * @param boards how many boards lie under motifs; none is one run of table
 * @param units that the cloth was measured in, for all figures that nobody said
 */
public record PlanAnswers(
    String title,
    String fibre,
    Said<ArealMass> mass,
    Said<Length> length,
    Said<Length> width,
    boolean dye,
    List<String> colours,
    PrintKind printed,
    Said<Pair> motif,
    Said<Length> pitch,
    int count,
    Said<Pair> frame,
    Said<MeshCount> mesh,
    Said<Pair> table,
    int boards,
    Measures units) {

  public PlanAnswers {
    colours = List.copyOf(colours);
  }

  /** The outside of a frame that suits a motif: its image, room for the paste, and the rails. */
  public static Pair usualFrame(Pair motif, Measures units) {
    PlanNumbers numbers = new PlanNumbers(units);
    RoundSizes round = RoundSizes.of(numbers);
    double around = 2 * round.bleed() + round.aroundImage();
    return new Pair(
        numbers.roundedUp(motif.along().mm() + around),
        numbers.roundedUp(motif.across().mm() + around));
  }

  /** A table for frames that take so much room, in mm. */
  public static Pair usualTable(double along, double across, Measures units) {
    PlanNumbers numbers = new PlanNumbers(units);
    RoundSizes round = RoundSizes.of(numbers);
    double foot = numbers.isMetric() ? 100 : 12 * PlanNumbers.INCH;
    return new Pair(
        new Length(Math.max(round.tableLength(), Math.ceil(along / foot) * foot)),
        new Length(Math.max(round.tableWidth(), Math.ceil(across / foot) * foot)));
  }

  /** Room between one frame and the next. */
  public static Length between(Measures units) {
    return new Length(RoundSizes.of(new PlanNumbers(units)).between());
  }

  /** The stencil's image for a motif, a little larger. */
  static Pair image(Pair motif, Measures units) {
    double bleed = 2 * RoundSizes.of(new PlanNumbers(units)).bleed();
    return new Pair(
        new Length(motif.along().mm() + bleed), new Length(motif.across().mm() + bleed));
  }

  /** The same with boards under the motifs. */
  public PlanAnswers on(int someBoards) {
    return new PlanAnswers(
        title,
        fibre,
        mass,
        length,
        width,
        dye,
        colours,
        printed,
        motif,
        pitch,
        count,
        frame,
        mesh,
        table,
        someBoards,
        units);
  }

  /** Where everything lies. */
  public Spread spread() {
    Spread all =
        Spread.of(printed, length.value(), width.value(), motif.value(), pitch.value(), units);
    return printed == PrintKind.MOTIFS ? all.first(count) : all;
  }

  /** A board holds the frame and the room to work around it. */
  Pair board() {
    double room = between(units).mm() * 2;
    return new Pair(
        new Length(frame.value().along().mm() + room),
        new Length(frame.value().across().mm() + room));
  }

  /** How many boards the table holds, end to end. */
  public int mostBoards() {
    return (int) (table.value().along().mm() / board().along().mm());
  }
}
