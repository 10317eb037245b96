package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Held to the definition: the digits that Java gives a number, rounded half up. */
class NumbersTest {

  @Test
  void roundsAsTheDigitsOfTheNumberSay() {
    Random random = new Random(7);
    for (int i = 0; i < 200_000; i++) {
      int decimals = random.nextInt(4);
      double value = value(random, decimals);
      assertThat(Numbers.plain(value, decimals))
          .as("%s with %s decimals", value, decimals)
          .isEqualTo(defined(value, decimals));
    }
  }

  @Test
  void keepsTheDecimalsThatAreAskedFor() {
    Random random = new Random(8);
    for (int i = 0; i < 100_000; i++) {
      int decimals = random.nextInt(4);
      double value = value(random, decimals);
      String defined =
          BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
      assertThat(Numbers.fixed(value, decimals))
          .as("%s with %s decimals", value, decimals)
          .isEqualTo(defined);
    }
  }

  @Test
  void keepsWhatIsTooLargeForAQuickLook() {
    assertThat(Numbers.plain(123456789012.25, 1)).isEqualTo("123456789012.3");
    assertThat(Numbers.plain(-1e21, 0)).isEqualTo("-1000000000000000000000");
    assertThat(Numbers.plain(-0.0, 2)).isEqualTo("0");
    assertThat(Numbers.plain(1.005, 2)).isEqualTo("1.01");
  }

  /** Of all sizes; every third lies at a tie or a few steps of a double beside it. */
  private static double value(Random random, int decimals) {
    double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 3);
    if (random.nextInt(3) > 0) {
      return value;
    }
    double tie = (Math.floor(value) + 0.5) / Math.pow(10, decimals);
    for (int steps = random.nextInt(4); steps > 0; steps--) {
      tie = random.nextBoolean() ? Math.nextUp(tie) : Math.nextDown(tie);
    }
    return tie;
  }

  private static String defined(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
