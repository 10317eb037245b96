package strikeoff.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** A studio can set every limit, and not so that two of them contradict each other. */
class LimitConflictsTest {

  private static final Policy BUILT_IN = PolicyReader.builtIn();

  private static StudioFile file(String name, String text) {
    StudioReading reading =
        StudioReader.read(
            name,
            ("studio: " + name + "\n" + text).getBytes(StandardCharsets.UTF_8),
            BUILT_IN,
            List.of());
    assertThat(reading).isInstanceOf(StudioReading.Read.class);
    return ((StudioReading.Read) reading).file();
  }

  private static List<String> told(StudioFile... files) {
    return LimitConflicts.of(BUILT_IN, List.of(files)).stream()
        .map(
            c ->
                c.file()
                    + ":"
                    + c.problem().position()
                    + ": "
                    + c.problem().path().text()
                    + ": "
                    + c.problem().message())
        .toList();
  }

  @Test
  void anUsualAboveTheMostIsToldWithBothKeysAtItsLine() {
    String most = BUILT_IN.limit("screens/transfer-most").value().text();
    assertThat(told(file("studio.yaml", "limits:\n  screens/transfer-usual: 250 %\n")))
        .containsExactly(
            "studio.yaml:3:3: limits.screens/transfer-usual: 250 % is more than"
                + " screens/transfer-most, which is "
                + most
                + " as it comes; write at most "
                + most
                + ", or set screens/transfer-most higher as well");
    assertThat(
            told(
                file(
                    "studio.yaml",
                    "limits:\n  screens/transfer-usual: 250 %\n  screens/transfer-most: 260 %\n")))
        .isEmpty();
  }

  @Test
  void filesThatAreSoundAloneContradictEachOtherTogether() {
    StudioFile studio =
        file(
            "studio.yaml",
            "limits:\n  screens/transfer-usual: 120 %\n  screens/transfer-most: 130 %\n");
    StudioFile course = file("course/studio.yaml", "limits:\n  screens/transfer-most: 121 %\n");
    StudioFile class9 = file("c/studio.yaml", "limits: {screens/transfer-most: {value: 119 %}}\n");
    assertThat(told(studio)).isEmpty();
    assertThat(told(studio, course)).isEmpty();
    assertThat(told(studio, class9))
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("c/studio.yaml:2:10: limits.screens/transfer-most: 119 % is less")
                    .contains("screens/transfer-usual, which is 120 % by studio.yaml, line 3;"));
  }

  @ParameterizedTest
  @CsvSource({
    "screens/finest-mesh, 0/cm",
    "screens/density-paint, 0 g/L",
    "fixing/measure-water, 0 L"
  })
  void whatCannotBeNothingIsNotSetToNothing(String limit, String nothing) {
    assertThat(told(file("studio.yaml", "limits:\n  " + limit + ": " + nothing + "\n")))
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("studio.yaml:3:3: limits." + limit + ": ")
                    .endsWith("leaves nothing to work with; write more than zero"));
  }

  @Test
  void theLimitsThatComeWithTheProgramAreInOrder() {
    for (String family : PolicyReader.families()) {
      var order = PolicyReader.order(family);
      List<String> named = new ArrayList<>(order.aboveZero());
      order.rising().forEach(named::addAll);
      assertThat(BUILT_IN.limits().keySet()).as(family).containsAll(named);
      order.aboveZero().forEach(n -> assertThat(BUILT_IN.limit(n).value().base()).isPositive());
      for (List<String> rising : order.rising()) {
        assertThat(rising).hasSizeGreaterThan(1);
        assertThat(rising.stream().map(n -> BUILT_IN.limit(n).value().base()).toList())
            .as(String.join(", ", rising))
            .isSorted();
        assertThat(rising.stream().map(n -> BUILT_IN.limit(n).value().getClass()).distinct())
            .hasSize(1);
      }
    }
  }

  /** Found by their names, so that a new range isn't forgotten. */
  @Test
  void everyLeastHasItsPlaceBeforeItsMost() {
    for (String least : BUILT_IN.limits().keySet()) {
      String most = least.replaceAll("-least$", "-most");
      if (!least.equals(most) && BUILT_IN.limits().containsKey(most)) {
        assertThat(PolicyReader.order(least.substring(0, least.indexOf('/'))).rising())
            .anySatisfy(rising -> assertThat(rising).containsSubsequence(least, most));
      }
    }
  }
}
