package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.layout.FillLattice.Corner;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Arrangement.Lattice;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * A design of 10 by 8 cm every 20 by 13 cm in 115 by 66 cm, by hand: 105 cm are free along, so 6
 * columns (5 · 20 = 100) and 5 in a shifted row (10 + 4 · 20 = 90); 58 cm across, so 5 rows (4 · 13
 * = 52) and 4 in a dropped column (6.5 + 3 · 13 = 45.5).
 */
class FillLatticeTest {

  /** A turned design whose lower left corner lies 2 cm right of and 1 cm above its outline's. */
  private static final Envelope BOUNDS = new Envelope(-20, 80, -10, 70);

  @ParameterizedTest
  @CsvSource({
    "GRID, 30", // 6 · 5
    "BRICK, 28", // 3 rows of 6 and 2 of 5
    "HALF_DROP, 27" // 3 columns of 5 and 3 of 4
  })
  void countsWhatItLays(Lattice kind, int repeats) {
    FillLattice lattice = lattice(kind, 115, 66, 0);
    assertThat(lattice.count()).isEqualTo(repeats);
    assertThat(lattice.corners()).hasSize(repeats);
  }

  @Test
  void everySecondRowOfABrickIsShiftedByHalfThePitch() {
    // From 5 and 3 cm.
    assertThat(lattice(Lattice.BRICK, 115, 66, 0).corners().subList(0, 6))
        .containsExactly(
            new Corner(50, 30),
            new Corner(50, 290),
            new Corner(50, 550),
            new Corner(150, 160),
            new Corner(150, 420),
            new Corner(250, 30));
  }

  @Test
  void everySecondColumnOfAHalfDropIsDroppedByHalfThePitch() {
    assertThat(lattice(Lattice.HALF_DROP, 115, 66, 0).corners().subList(3, 7))
        .containsExactly(
            new Corner(50, 420), new Corner(50, 550), new Corner(250, 95), new Corner(250, 225));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 8, 1",
    "9.9, 8, 0",
    "10, 7.9, 0",
    "30, 8, 2",
    "29.9, 8, 1",
    "10, 21, 2",
    "10, 20.9, 1"
  })
  void aRepeatCountsIfItLiesWhollyInside(double length, double width, int repeats) {
    FillLattice lattice = lattice(Lattice.GRID, length, width, 0);
    assertThat(lattice.count()).isEqualTo(repeats);
    assertThat(lattice.corners()).hasSize(repeats);
  }

  @ParameterizedTest
  @CsvSource({
    "GRID, 120, 30", // six whole pitches of 20 cm, no end: 6 · 5
    "BRICK, 120, 30", // a shifted row has six as well
    "BRICK, 119, 25", // only five are whole
    "HALF_DROP, 120, 27"
  })
  void roundATubeNoRowEnds(Lattice kind, double round, int repeats) {
    FillLattice lattice = lattice(kind, round, 66, round * 10);
    assertThat(lattice.count()).isEqualTo(repeats);
    assertThat(lattice.corners()).hasSize(repeats);
  }

  @ParameterizedTest
  @CsvSource({
    "1050, 580, true",
    "-1050, -580, true",
    "1050.6, 0, false",
    "-1050.6, 0, false",
    "0, 580.6, false",
    "0, -580.6, false"
  })
  void twoRepeatsNeedRoomForTheStepBetweenThem(double x, double y, boolean room) {
    assertThat(lattice(Lattice.GRID, 115, 66, 0).hasRoomFor(new double[] {x, y})).isEqualTo(room);
  }

  @Test
  void aCloserPitchIsTheWidestThatHoldsEnough() {
    FillLattice lattice = lattice(Lattice.GRID, 115, 66, 0);
    assertThat(lattice.pitchFor(30).map(p -> p.written(Measures.METRIC))).contains("20 cm x 13 cm");
    // A sixth row needs 5 pitches in 58 cm, so 11.6 cm or 89 %: 11.57 and 17.8 cm.
    assertThat(lattice.pitchFor(31).map(p -> p.written(Measures.METRIC)))
        .contains("17.8 cm x 11.57 cm");
    assertThat(lattice.pitchFor(36).map(p -> p.written(Measures.METRIC)))
        .contains("17.8 cm x 11.57 cm");
    assertThat(lattice.pitchFor(1_000_000_000)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "GRID, 20, 20, 64, 24, 20", // along: 4 · 16 cm
    "GRID, 30, 12, 96, 30, 16", // across: 24 · 4 cm
    "BRICK, 30, 12, 36, 30, 16", // the row above is 15 aside: 9 · 4 cm
    "HALF_DROP, 20, 24, 16, 24, 24" // the next column is 12 up: 4 · 4 cm
  })
  void neighboursThatLieOnEachOther(
      Lattice kind, double along, double across, double shared, double parts, double partsAcross) {
    Crowding crowding = crowding(kind, along, across, 60).orElseThrow();
    assertThat(crowding.area().squareCm()).isCloseTo(shared, within(1e-6));
    // The design has 24 · 16 = 384 cm².
    assertThat(crowding.share().fraction()).isCloseTo(shared / 384, within(1e-9));
    assertThat(crowding.pitch()).isEqualTo(Pitch.lattice(along * 10, across * 10));
    assertThat(crowding.needed()).isEqualTo(Pitch.lattice(parts * 10, partsAcross * 10));
  }

  @Test
  void neighboursThatFindNoRoomLieOnNobody() {
    assertThat(crowding(Lattice.BRICK, 30, 12, 20)).isEmpty();
    assertThat(crowding(Lattice.GRID, 24, 16, 60)).isEmpty();
  }

  private static Optional<Crowding> crowding(
      Lattice kind, double along, double across, double width) {
    return Sheet.open(120, 80)
        .design("shell", 24, 16)
        .fill(
            "shells",
            "shell",
            kind,
            new double[] {along, across},
            new double[] {0, 100, 0, width},
            0,
            0)
        .layout()
        .evidence()
        .stream()
        .filter(Crowding.class::isInstance)
        .map(Crowding.class::cast)
        .findFirst();
  }

  private static FillLattice lattice(Lattice kind, double length, double width, double round) {
    Arrangement.Fill fill =
        new Arrangement.Fill(
            "shells",
            "shell",
            kind,
            Length.ofCm(20),
            Length.ofCm(13),
            Length.ofCm(5),
            Length.ofCm(5 + length),
            Length.ofCm(3),
            Length.ofCm(3 + width),
            Length.ofCm(0),
            List.of(),
            Optional.empty(),
            new Angle(0),
            false,
            PlanPath.ROOT);
    return new FillLattice(fill, BOUNDS, round, 1);
  }
}
