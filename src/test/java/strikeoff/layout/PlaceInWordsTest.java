package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import strikeoff.checks.Worked;

/** What the plan language says of places, each by a tiny plan. Designs are 30 cm by 22 cm. */
class PlaceInWordsTest {

  private static List<Placement> laid(String placements) {
    return Worked.reeds(
            """
            pastes:
              green: {medium: dye, group: DCT, colour: green}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
              dot: {size: 4 x 4 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
            placements:
            %s"""
                .formatted(placements.indent(2)))
        .facts()
        .layout()
        .placements();
  }

  private static Envelope box(Placement placement) {
    return placement.outline().getEnvelopeInternal();
  }

  /** A place is the corner of what is seen: turned by 90° the reeds are 22 cm by 30 cm. */
  @Test
  void theCornerOfATurnedCopyIsThatOfWhatIsSeen() {
    Envelope box = box(laid("one: {design: reeds, at: [\"10 cm, 20 cm\"], turn: 90°}").get(0));
    assertThat(box.getMinX()).isCloseTo(100, within(1e-6));
    assertThat(box.getMinY()).isCloseTo(200, within(1e-6));
    assertThat(box.getWidth()).isCloseTo(220, within(1e-6));
    assertThat(box.getHeight()).isCloseTo(300, within(1e-6));
  }

  @Test
  void aSeriesOfTurnedCopiesStartsAtTheCornerThatIsSeen() {
    List<Placement> row =
        laid(
            "row: {design: reeds, series: 2, pitch: 50 cm, start: 10 cm, across: 1 cm, turn: 90°}");
    assertThat(box(row.get(0)).getMinX()).isCloseTo(100, within(1e-6));
    assertThat(box(row.get(1)).getMinX()).isCloseTo(600, within(1e-6));
    assertThat(box(row.get(0)).getMinY()).isCloseTo(10, within(1e-6));
  }

  /** A border's repeat left out is the length that is seen. */
  @Test
  void aTurnedBorderRepeatsByItsTurnedLength() {
    List<Placement> border =
        laid("edge: {design: reeds, border: near, from: 0 cm, to: 1.1 m, turn: 90°}");
    assertThat(border).hasSize(5);
    assertThat(box(border.get(1)).getMinX() - box(border.get(0)).getMinX())
        .isCloseTo(220, within(1e-6));
  }

  /** An anchor's offset counts from the corner of the turned copy that is seen. */
  @Test
  void whatHangsOnATurnedCopyCountsFromItsSeenCorner() {
    List<Placement> both =
        laid(
            """
            one: {design: reeds, at: ["50 cm, 20 cm"], turn: 90°}
            eye: {design: dot, anchor: one, offset: "9 cm, 13 cm"}
            """);
    Placement eye = both.stream().filter(p -> p.name().startsWith("eye")).findFirst().orElseThrow();
    assertThat(box(eye).getMinX()).isCloseTo(500 + 90, within(1e-6));
    assertThat(box(eye).getMinY()).isCloseTo(200 + 130, within(1e-6));
  }

  /** Names, and the order in which a plan lists its placements, move nothing. */
  @Test
  void namesAndTheirOrderMoveNothing() {
    String one = "one: {design: reeds, at: [\"10 cm, 20 cm\"]}\n";
    String other = "other: {design: dot, series: 3, pitch: 20 cm, start: 60 cm, across: 30 cm}\n";
    List<Envelope> listed = laid(one + other).stream().map(PlaceInWordsTest::box).toList();
    assertThat(laid(other.replace("other", "b") + one.replace("one", "a")))
        .extracting(PlaceInWordsTest::box)
        .containsExactlyInAnyOrderElementsOf(listed);
  }

  /** The reeds' foot is at the lower edge of the drawing, 30 cm by 4 cm. */
  @Test
  void aFarBorderLiesAsItIsDrawnWithItsFootTowardsYou() {
    assertThat(footOf("border: far, from: 0 cm, to: 1.2 m, inset: 10 cm")).isEqualTo("680 to 720");
    assertThat(footOf("border: far, from: 0 cm, to: 1.2 m, inset: 10 cm, turn: 180°"))
        .isEqualTo("860 to 900");
    assertThat(footOf("border: near, from: 0 cm, to: 1.2 m, inset: 10 cm")).isEqualTo("100 to 140");
  }

  /** Across the cloth, which is 1 m wide, in mm. */
  private static String footOf(String border) {
    Envelope foot =
        Worked.reeds(
                """
                pastes:
                  green: {medium: dye, group: DCT, colour: green}
                designs:
                  reeds:
                    size: 30 x 22 cm
                    separations:
                      - {screen: reeds, paste: green, covers: 40 %%, at: "0 cm, 0 cm", size: 30 x 4 cm}
                placements:
                  edge: {design: reeds, %s}
                """
                    .formatted(border))
            .facts()
            .layout()
            .footprints()
            .get(0)
            .image()
            .getEnvelopeInternal();
    return Math.round(foot.getMinY()) + " to " + Math.round(foot.getMaxY());
  }
}
