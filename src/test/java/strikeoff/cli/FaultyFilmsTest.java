package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Drawn;
import strikeoff.artwork.Drawn.Shape;

/**
 * Films of a fill and its outline with the faults that printers make, each of which is told once.
 * The fill is a round bend, so that its edge can be drawn at any distance, and no turn or size fits
 * but its own.
 */
@Timeout(60)
class FaultyFilmsTest {

  private static final String PLAN =
      """
      plan: Bends
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m, railed: yes}
      screens:
        fill: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, thread: 80 µm, squeegee: 26 cm}
        line: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 61/cm, thread: 64 µm, squeegee: 26 cm}
      pastes:
        moss: {medium: dye, group: dichlorotriazine, colour: "#8a9a55", amount: 200 g}
        bark: {medium: dye, group: dichlorotriazine, colour: "#3d3a2c", amount: 100 g}
      designs:
        bend:
          size: 16 x 16 cm
          separations:
            - {screen: fill, paste: moss, artwork: fill.png}
            - {screen: line, paste: bark, artwork: line.png, key: yes}
      placements:
        bends: {design: bend, series: 3, pitch: 50 cm, start: 10 cm, across: 20 cm}
      run:
        - mix: all
        - print: bends
      """;

  private static final double SIDE = 160;
  private static final double RADIUS = 25;

  @TempDir private Path desk;

  /** What lies no further from the bend's middle line than its radius and so much more. */
  private static Shape fill(double more) {
    return (x, y) ->
        Math.min(
                Math.hypot(x - within(x, 50, 110), y - 60),
                Math.hypot(x - 110, y - within(y, 60, 105)))
            <= RADIUS + more;
  }

  private static double within(double at, double from, double to) {
    return Math.max(from, Math.min(to, at));
  }

  /** A line so wide astride the bend's edge. */
  private static Shape line(double wide) {
    return and(fill(wide / 2), not(fill(-wide / 2)));
  }

  private static Shape and(Shape one, Shape other) {
    return (x, y) -> one.covers(x, y) && other.covers(x, y);
  }

  private static Shape not(Shape shape) {
    return (x, y) -> !shape.covers(x, y);
  }

  private static Shape mirrored(Shape shape) {
    return (x, y) -> shape.covers(SIDE - x, y);
  }

  /** Larger or smaller, from the middle of the film. */
  private static Shape scaled(Shape shape, double scale) {
    double middle = SIDE / 2;
    return (x, y) -> shape.covers(middle + (x - middle) / scale, middle + (y - middle) / scale);
  }

  private static Shape moved(Shape shape, double right, double far) {
    return (x, y) -> shape.covers(x - right, y + far);
  }

  /** Anticlockwise about the middle of the film. */
  private static Shape turned(Shape shape, double degrees) {
    double middle = SIDE / 2;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return (x, y) ->
        shape.covers(
            middle + cos * (x - middle) - sin * (y - middle),
            middle + sin * (x - middle) + cos * (y - middle));
  }

  private String check(Shape fill, Shape line) throws IOException {
    Files.write(desk.resolve("fill.png"), new Drawn(SIDE, SIDE, 300).with(fill).png());
    Files.write(desk.resolve("line.png"), new Drawn(SIDE, SIDE, 300).with(line).png());
    Files.writeString(desk.resolve("bends.yaml"), PLAN);
    return run();
  }

  private String run() {
    return Scenario.run(desk, Map.of("COLUMNS", "400"), List.of("check", "bends.yaml", "--verbose"))
        .out()
        .replaceAll("\\n +(?=[a-z0-9])", " ");
  }

  /** The rules that tell something of the films, in the order that they are told. */
  private static List<String> rules(String said) {
    return Pattern.compile("(?:STOP|RISK|ADVICE) +((?:artwork|order|screens|paste)/\\S+)")
        .matcher(said)
        .results()
        .map((MatchResult found) -> found.group(1))
        .toList();
  }

  @Test
  void filmsThatFitAreSound() throws IOException {
    assertThat(rules(check(fill(0), line(3)))).isEmpty();
  }

  /** The outline has room: 1.5 mm of lap at best, of which 1 mm is wanted. */
  @Test
  void aColourThatWasChokedIsSpreadAndItsOutlineKept() throws IOException {
    String said = check(fill(-1.2), line(3));
    assertThat(rules(said)).containsExactly("artwork/colour-hardly-under-outline");
    assertThat(said).containsPattern("Spread moss by 0\\.[67]\\d* mm").contains("bark can stay");
    assertThat(rules(check(fill(-0.5), line(3)))).isEmpty();
  }

  @Test
  void anOutlineAstrideTheEdgeThatIsThinIsToldAsThin() throws IOException {
    String said = check(fill(0), line(1.2));
    assertThat(rules(said)).containsExactly("artwork/outline-too-thin");
    assertThat(said).contains("Draw bark 2 mm wide");
  }

  /** A rim of 1.4 mm outside a line of 2.4 mm, whose middle is 2.6 mm within the fill's edge. */
  @Test
  void aColourThatWasSpreadPastItsOutlineIsChoked() throws IOException {
    String said = check(fill(2.6), line(2.4));
    assertThat(rules(said)).containsExactly("artwork/colour-past-outline");
    assertThat(said)
        .containsPattern("moss of bend stands out past its outline in bark by 1\\.[34]\\d* mm")
        .containsPattern("Choke moss by 2\\.[56]\\d* mm")
        .contains("if the rim is meant, accept this");
    assertThat(rules(check(fill(1.2), line(2.4)))).isEmpty();
  }

  /** The same line, with a band outside it that is wider than the line: drawn so. */
  @Test
  void aLineDrawnInsideItsColourIsNoOutlineOfIt() throws IOException {
    assertThat(rules(check(fill(3), line(1.5)))).isEmpty();
  }

  /** A shadow of the shape, under its outline and its fill. */
  @Test
  void aColourThatStandsOutOnOneSideIsAShadow() throws IOException {
    assertThat(
            rules(check((x, y) -> fill(0).covers(x, y) || fill(0).covers(x - 3, y - 3), line(3))))
        .doesNotContain("artwork/colour-past-outline");
  }

  @Test
  void anEdgeThatOnlyTouchesIsAsLongAsItIs() throws IOException {
    String said = check(fill(-1.5), line(3));
    assertThat(rules(said)).containsExactly("artwork/colours-butt");
    // Two sides of 60 and of 45 mm, half a turn at either end and the corner, 1.5 mm further in.
    double inner = RADIUS - 1.5;
    double edge = 2 * (60 + 45) - 2 * inner + 2.5 * Math.PI * inner;
    assertThat(said).containsPattern("edge to edge over " + Math.round(edge / 10) + "(\\.\\d)? cm");
  }

  /** A gap of 1 and of 2 mm all round. */
  @Test
  void aGapOfOneWidthIsNoOutlineOfAnotherSize() throws IOException {
    for (int gap = 1; gap <= 2; gap++) {
      String said = check(fill(-1.5 - gap), line(3));
      assertThat(rules(said)).containsExactly("artwork/colours-do-not-meet");
      assertThat(said).contains("Spread moss by " + (gap + 1) + " mm");
    }
  }

  private static final Shape ALL = (x, y) -> true;

  /** It would hide the fill, leave ground round it, fill its lines in and run out of paste. */
  @Test
  void aNegativeOutlineIsToldAlone() throws IOException {
    String said = check(fill(0), and(ALL, not(line(3))));
    assertThat(rules(said)).containsExactly("artwork/outline-negative");
    assertThat(said).containsPattern("Write \\(tried\\):[^:]*[\\s\\S]*prints: light");
    assertThat(Scenario.run(desk, Map.of(), List.of("mend", "bends.yaml")).err())
        .contains("artwork/outline-negative")
        .containsPattern("write\\s+`prints: light`");
  }

  @Test
  void aNegativeFillIsAskedAfter() throws IOException {
    String said = check(not(fill(0)), line(3));
    assertThat(rules(said)).containsExactly("artwork/may-be-negative");
    assertThat(said).contains("what stays bare is what the outline encloses");
    // Inside a line along the border nothing is bare but what is drawn.
    assertThat(rules(check(fill(40), line(3)))).doesNotContain("artwork/may-be-negative");
  }

  /** A spread of 3 mm has it come 0.6 mm under a wide line that is drawn beside it. */
  @Test
  void aColourThatWasSpreadIsNotSpreadFurtherWhereItMeetsAnotherLine() throws IOException {
    Shape wide = Drawn.bar(80, 29.6, 30, 6, 0);
    Shape both = (x, y) -> line(3).covers(x, y) || wide.covers(x, y);
    assertThat(rules(check(fill(3), both))).containsExactly("artwork/colour-past-outline");
  }

  /** Beside a line that runs off at 20°, ground is less than 2 mm wide over less than 3 mm. */
  @Test
  void aScrapOfGroundIsNoOpenJoint() throws IOException {
    Shape line = Drawn.bar(60, 140, 40, 3, 0);
    Shape both = (x, y) -> line(3).covers(x, y) || line.covers(x, y);
    Shape aslant = Drawn.bar(60, 147.33, 20, 3, 20);
    Shape along = Drawn.bar(60, 144, 20, 3, 0);
    assertThat(check((x, y) -> fill(0).covers(x, y) || aslant.covers(x, y), both))
        .contains("found:")
        .doesNotContain("artwork/colours-do-not-meet");
    assertThat(check((x, y) -> fill(0).covers(x, y) || along.covers(x, y), both))
        .contains("RISK  artwork/colours-do-not-meet");
  }

  @Test
  void nobodyKnowsWhichOfTwoFilmsIsTurnedOver() throws IOException {
    Shape bend = moved(fill(0), 12, 20);
    Shape line = moved(line(3), 12, 20);
    String outline = check(bend, mirrored(line));
    String fill = check(mirrored(bend), line);
    assertThat(rules(outline)).containsExactly("artwork/film-turned-over");
    assertThat(rules(fill)).containsExactly("artwork/film-turned-over");
    assertThat(outline).containsPattern("which of the two is turned over, line.png or\\s+fill.png");
  }

  /** Two points of 300 an inch are 0.17 mm, two openings of 61/cm with 64 µm are 0.20 mm. */
  @Test
  void aLineThatIsTooFineIsDrawnWiderOnTheMeshThatIsThere() throws IOException {
    double point = 25.4 / 300;
    Shape vein = Drawn.bar(80.5 * point * 10, 60, 40, 2 * point, 90);
    Shape both = (x, y) -> line(3).covers(x, y) || vein.covers(x, y);
    String said = check(fill(0), both);
    assertThat(rules(said)).containsExactly("screens/mesh-too-coarse-for-detail");
    assertThat(said)
        .contains(
            "Mend: Keep the mesh and draw nothing finer than 0.3 mm on this film (0.2 mm and");
  }

  /** Crosses of 13 mm, 3.4 mm from the border: 16.4 mm of it are not a whole number of cells. */
  private static Shape marked(Shape motif) {
    return (x, y) -> {
      double across = Math.min(x, SIDE - x) - 9.9;
      double along = Math.min(y, SIDE - y) - 9.9;
      boolean near = Math.max(Math.abs(across), Math.abs(along)) <= 6.5;
      return near && Math.min(Math.abs(across), Math.abs(along)) <= 0.25 || motif.covers(x, y);
    };
  }

  @Test
  void marksAreCutOffByAStripThatLeavesTheMotif() throws IOException {
    String said = check(marked(fill(0)), marked(line(3)));
    assertThat(rules(said)).containsExactly("artwork/marks-left-in");
    assertThat(said)
        .contains("4 marks of up to 13 mm")
        .doesNotContain("to meet them")
        .contains("Write `margin: 1.8 cm`, `size: 12.4 cm x 12.4 cm` and `at: 1.8 cm, 1.8 cm`")
        .contains("Write (tried)");
    Files.writeString(
        desk.resolve("bends.yaml"),
        PLAN.replaceAll(
            "(artwork: \\w+.png)",
            "$1, margin: 1.8 cm, size: 12.4 x 12.4 cm, at: '1.8 cm, 1.8 cm'"));
    assertThat(rules(run())).isEmpty();
  }

  /** Lines across the bend, which run along no edge of it, half as long as all of its outline. */
  private static Shape veined(Shape line) {
    Shape veins = and(fill(-5), (x, y) -> Math.abs(x - y / 2) % 14 <= 1.5);
    return (x, y) -> line.covers(x, y) || veins.covers(x, y);
  }

  @Test
  void marksOfOneFilmAloneRegisterNothing() throws IOException {
    assertThat(check(fill(0), marked(line(3))).replaceAll("\\s+", " "))
        .containsPattern("\\w+\\.png has none to meet them\\.")
        .contains("tape them over on each screen, and output")
        .contains("with the same ones, or nothing shows whether the frames meet.");
  }

  /** The further off, the more loudly: nothing else that follows from it is told besides. */
  @Test
  void anOutlineThatLiesOffIsToldOnceWithHowFar() throws IOException {
    for (int off : new int[] {2, 3, 5, 8, 15}) {
      for (Shape line : List.of(line(3), veined(line(3)))) {
        String said = check(fill(0), moved(line, off, 0));
        assertThat(rules(said)).as("%d mm", off).containsExactly("artwork/film-lies-off");
        assertThat(said)
            .contains("line.png, the film of bark for bend, does not lie as fill.png has it")
            .contains("lapping them by 1.5 mm, if it lay " + off + " mm further to the left.")
            .contains("off by up to " + off + " mm")
            .doesNotContain("Spread moss");
      }
    }
    assertThat(check(fill(0), moved(veined(line(3)), -4, 2.5)))
        .contains("if it lay 4 mm further to the right and 2.5 mm further to the near edge");
  }

  /** No colour is spread to meet it: its strip of ground is wide at one end and none at another. */
  @Test
  void aFilmThatWasMountedAskewIsToldByItsTurn() throws IOException {
    for (double turn : new double[] {1, -1, 2}) {
      for (Shape line : List.of(line(3), veined(line(3)))) {
        String said = check(fill(0), turned(line, turn));
        assertThat(rules(said)).as("%s°", turn).containsExactly("artwork/film-lies-off");
        assertThat(said)
            .contains("lapping them by 1.5 mm, if it were turned by " + (int) Math.abs(turn) + "° ")
            .contains(turn > 0 ? "° clockwise" : "° anticlockwise")
            .contains("mount each square");
      }
    }
    // Its ends are off by no more than a frame may be.
    assertThat(rules(check(fill(0), turned(line(3), 0.4)))).doesNotContain("artwork/film-lies-off");
  }

  /** Skewed from the corner where its page was laid on. */
  @Test
  void aTurnAndWhatItMovesAreToldTogether() throws IOException {
    Shape skewed = moved(turned(line(3), 1.5), 2, -3);
    String said = check(fill(0), skewed);
    assertThat(rules(said)).containsExactly("artwork/film-lies-off");
    assertThat(said)
        .containsPattern(
            "were turned by 1\\.5° clockwise and lay [12](\\.\\d)? mm further to the left")
        .containsPattern("and (2\\.9|3|3\\.1) mm further to the far edge");
  }

  private static Shape disc(double radius) {
    return (x, y) -> Math.hypot(x - 80, y - 60) <= radius;
  }

  /** A berry has 6 cm of edge, all round. */
  @Test
  void aSmallColourThatLiesOffIsTold() throws IOException {
    Shape berry = disc(10);
    Shape hole = and(fill(0), not(disc(8.5)));
    assertThat(rules(check(hole, berry))).doesNotContain("artwork/film-lies-off");
    for (int off : new int[] {3, 6}) {
      String said = check(hole, moved(berry, off, 0));
      assertThat(rules(said)).as("%d mm", off).containsExactly("artwork/film-lies-off");
      assertThat(said).contains("if it lay " + off + " mm further to the left.");
    }
  }

  /**
   * Halves that are nearly alike: it would fit its mirror image as well, once that is moved too.
   */
  @Test
  void aLeafThatLiesOffIsNotTakenForTurnedOver() throws IOException {
    Shape leaf = leaf(0);
    Shape outline = and(leaf(1.2), not(leaf(-1.2)));
    for (int off : new int[] {3, 6, 12}) {
      String said = check(leaf, moved(outline, off, 0));
      assertThat(rules(said)).as("%d mm", off).containsExactly("artwork/film-lies-off");
      assertThat(said).contains("if it lay " + off + " mm further to the left");
    }
  }

  /** Two arcs from tip to tip about the middle of the film, the right one a little flatter. */
  private static Shape leaf(double more) {
    return (x, y) ->
        Math.hypot(x - 50, y - 80) <= 60 + more && Math.hypot(x - 112, y - 80) <= 62 + more;
  }

  /** On a page that kept its size, from its upper left corner and from its middle. */
  @Test
  void aFillThatCameOutSmallerIsToldByItsSize() throws IOException {
    Shape corner = (x, y) -> fill(0).covers(x / 0.97, y / 0.97);
    String said = check(corner, veined(line(3)));
    assertThat(rules(said)).containsExactly("artwork/film-lies-off");
    assertThat(said)
        .containsPattern("fill.png, the film of moss .* came out at 103(\\.[01])? % of its size")
        .containsPattern("2\\.[45] mm further to the right and 2\\.[45] mm further to the near");
    String middle = check(scaled(fill(0), 0.97), line(3));
    assertThat(rules(middle)).containsExactly("artwork/film-lies-off");
    assertThat(middle).containsPattern("came out at 103(\\.[01])? % of its size. It is off");
  }

  /** A strip of two widths is told by both, and spread by the wider one. */
  @Test
  void groundOfSeveralWidthsIsSpreadByTheWidest() throws IOException {
    Shape uneven = (x, y) -> fill(y < 60 ? -3.4 : -2.3).covers(x, y);
    String said = check(uneven, line(3));
    assertThat(rules(said)).containsExactly("artwork/colours-do-not-meet");
    assertThat(said)
        .containsPattern("lies 0\\.[78]\\d? mm to 1\\.9 mm of ground")
        .contains("Spread moss by 3 mm");
  }

  @Test
  void anOutlineOfAnotherSizeIsToldAsSuch() throws IOException {
    assertThat(rules(check(fill(0), scaled(line(3), 1.08))))
        .containsExactly("artwork/film-lies-off");
  }
}
