package strikeoff.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleSupplier;

/**
 * A row and what the project computes for it. A topic's test class offers its checks by a method
 * {@code static List<Check> checks()}, feeds a parameterised test with it, and is named in {@link
 * CheckTables}, from which the table of all rows is made.
 */
public record Check(CheckRow row, DoubleSupplier computed) {

  public double value() {
    return computed.getAsDouble();
  }

  /**
   * Fails with the whole row in the message: where ours is outside, or where it is said to be and
   * no longer is.
   */
  public void assertHolds() {
    double value = value();
    assertThat(row.holdsFor(value))
        .as(
            "%s, %s: computed %s, %s gives %s ± %s",
            row.quantity(), row.conditions(), value, row.source(), row.value(), row.tolerance())
        .isEqualTo(!row.isMissed());
  }

  @Override
  public String toString() {
    return row.quantity() + ", " + row.conditions();
  }
}
