package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Ends and the best estimate are reckoned each by itself. */
class RangeTest {

  private static final Range LIFE = new Range(30, 60, 120);

  @Test
  void sumsAndScalesKeepLowBestAndHighApart() {
    assertThat(LIFE.plus(new Range(1, 2, 5))).isEqualTo(new Range(31, 62, 125));
    assertThat(LIFE.times(0.5)).isEqualTo(new Range(15, 30, 60));
    assertThat(LIFE.times(0)).isEqualTo(new Range(0, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> LIFE.times(-1));
  }

  @Test
  void anExactValueHasNoWidth() {
    assertThat(Range.exactly(7)).isEqualTo(new Range(7, 7, 7));
    assertThat(Range.exactly(7).isExact()).isTrue();
    assertThat(LIFE.isExact()).isFalse();
  }

  @Test
  void valuesOutOfOrderAreNoRange() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, 3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(Double.NaN, 1, 2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Range(1, 2, Double.POSITIVE_INFINITY));
  }
}
