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

  /** 3-4-5 and 5-12-13. */
  @Test
  void whatIsOffIndependentlyAddsUpByTheRootOfTheSquares() {
    assertThat(Range.independent(new Range(7, 10, 15), new Range(16, 20, 32)))
        .isEqualTo(new Range(25, 30, 43));
    assertThat(Range.independent(LIFE)).isEqualTo(LIFE);
    assertThat(Range.independent()).isEqualTo(Range.exactly(0));
  }

  @Test
  void aWatchTellsTenSeconds() {
    assertThat(new Span(5.28).byTheWatch()).isEqualTo("5 min 20 s");
    assertThat(new Span(4).byTheWatch()).isEqualTo("4 min");
    assertThat(new Span(0.5).byTheWatch()).isEqualTo("30 s");
    assertThat(new Span(0.99).byTheWatch()).isEqualTo("1 min");
    assertThat(new Span(20.2).byTheWatch()).isEqualTo("21 min");
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
