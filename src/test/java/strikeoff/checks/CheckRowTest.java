package strikeoff.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import strikeoff.checks.CheckRow.Status;

class CheckRowTest {

  private final CheckRow row =
      new CheckRow("pH", "25 °C", 10.012, 0.03, "Staples & Bates 1969", Status.PUBLISHED);

  @Test
  void aValueOutsideTheToleranceFailsItsCheck() {
    assertThat(row.holdsFor(10.041)).isTrue();
    assertThatThrownBy(() -> new Check(row, () -> 10.05).assertHolds())
        .hasMessageContaining("Staples & Bates 1969");
  }

  /** A miss that is told must be one, or the note would outlive its cause. */
  @Test
  void aRowThatIsSaidToBeMissedFailsOnceItHolds() {
    CheckRow missed = row.missed("no reason");
    new Check(missed, () -> 10.05).assertHolds();
    assertThatThrownBy(() -> new Check(missed, () -> 10.041).assertHolds())
        .hasMessageContaining("Staples & Bates 1969");
  }

  @Test
  void aSourceThatNobodyPlacedProvesLittle() {
    CheckRow nowhere = new CheckRow("pH", "25 °C", 10, 1, "somebody", Status.PUBLISHED);
    CheckRow again = new CheckRow("pH", "25 °C", 10, 1, "somebody", Status.COMPUTED);
    assertThat(Standing.of(nowhere)).isEqualTo(Standing.WEAK);
    assertThat(Standing.of(again)).isEqualTo(Standing.FORMULA);
    assertThat(Standing.of(row)).isEqualTo(Standing.INDEPENDENT);
  }

  @Test
  void notANumberFailsItsCheck() {
    assertThat(row.holdsFor(Double.NaN)).isFalse();
  }

  @Test
  void bothEndsOfAPublishedRangeAreRight() {
    CheckRow range =
        CheckRow.within(0.57, 0.65, "bulk density, g/mL", "loose", "data page", Status.PUBLISHED);
    assertThat(range.holdsFor(0.57)).isTrue();
    assertThat(range.holdsFor(0.65)).isTrue();
    assertThat(range.holdsFor(0.66)).isFalse();
  }
}
