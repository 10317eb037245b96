package strikeoff.policy.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Draught;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.policy.Substance;
import strikeoff.units.Concentration;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Span;

class PolicyReaderTest {

  private final Policy policy = PolicyReader.builtIn();

  @Test
  void familiesAreTheFoldersThatHoldRulesOrLimits() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("rules"))) {
      Set<String> there =
          folders
              .filter(Files::isDirectory)
              .map(p -> p.getFileName().toString())
              .collect(Collectors.toSet());
      assertThat(PolicyReader.families()).containsAll(there).doesNotHaveDuplicates();
    }
  }

  @Test
  void whatTheBuildPackedIsWhatIsWritten() throws IOException {
    assertThat(getClass().getClassLoader().getResource("rules/policy.bin")).isNotNull();
    assertThat(policy).isEqualTo(PolicyReader.written());
    // The order shows in lists.
    assertThat(policy.limits().keySet()).containsExactlyElementsOf(limitNames());
  }

  private static Set<String> limitNames() {
    return PolicyReader.written().limits().keySet();
  }

  @Test
  void everyLimitsFileIsRead() throws IOException {
    for (String family : PolicyReader.families()) {
      Path file = Path.of("rules", family, "limits.yaml");
      if (Files.exists(file)) {
        assertThat(policy.limits().keySet()).as(family).anyMatch(n -> n.startsWith(family + "/"));
      }
    }
  }

  @Test
  void limitsKeepTheirUnits() {
    String text =
        """
        limits:
          fixing/weakest: {value: "20 g/L", why: "Weaker baths leave dye loose.", source: "no source"}
          fixing/shortest: {value: 1 h, why: "It takes time.", source: "no source"}
        """;
    assertThat(PolicyReader.limits("limits.yaml", text.getBytes(StandardCharsets.UTF_8), "fixing"))
        .containsExactly(
            java.util.Map.entry(
                "fixing/weakest",
                new Limit(
                    "fixing/weakest",
                    new Concentration(20),
                    "Weaker baths leave dye loose.",
                    "no source")),
            java.util.Map.entry(
                "fixing/shortest",
                new Limit("fixing/shortest", new Span(60), "It takes time.", "no source")));
  }

  @Test
  void everyFaultOfALimitsFileIsNamedAtOnce() {
    String text =
        """
        limits:
          paste/other: {value: 20 frobs, why: "x", source: "y"}
          fixing/this: {value: 1 h, wy: "x", source: "y"}
        """;
    assertThatThrownBy(
            () -> PolicyReader.limits("l.yaml", text.getBytes(StandardCharsets.UTF_8), "fixing"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("l.yaml:2:3: a limit of this file begins with fixing/")
        .hasMessageContaining("l.yaml:2:24: “20 frobs” is no quantity with a unit that is known")
        .hasMessageContaining("l.yaml:3:3: “why” is missing")
        .hasMessageContaining("l.yaml:3:29: “wy” is not known here; did you mean “why”?");
  }

  @Test
  void aLimitThatIsReadIsOfItsKind() {
    String text =
        """
        limits:
          fixing/usual-bath: {value: 38 cm, why: "x", source: "y"}
        """;
    assertThatThrownBy(
            () -> PolicyReader.limits("l.yaml", text.getBytes(StandardCharsets.UTF_8), "fixing"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(
            "l.yaml:2:3: fixing/usual-bath is a concentration to those who read it, and 38 cm is"
                + " none");
  }

  @Test
  void aLimitThatIsReadIsThere() {
    Map<String, Limit> limits = new HashMap<>(policy.limits());
    limits.remove("screens/side-margin");
    limits.remove("drying/wet-stop");
    assertThatThrownBy(
            () ->
                new Policy(
                    limits,
                    policy.defaults(),
                    policy.groups(),
                    policy.fibres(),
                    policy.substances()))
        .hasMessageContaining("the limit screens/side-margin is missing")
        .hasMessageContaining("the limit drying/wet-stop is missing");
    assertThat(policy.screens().sideMargin()).isEqualTo(policy.limit("screens/side-margin"));
    assertThat(policy.drying().wetStop()).isEqualTo(policy.limit("drying/wet-stop").value());
  }

  @Test
  void everyFaultOfADefaultsFileIsNamedAtOnce() {
    String text =
        """
        defaults:
          cloth.mass: {value: 20 cm, source: "y"}
          crew: {value: "2.5", source: "y"}
          table.length: {value: 0 m, source: "y"}
          room.humidity: {value: 120 %, source: "y"}
          seam.padded: {value: perhaps, source: "y"}
          handling.wash-screen: {value: 1 min, source: "y"}
          screen.thread.fine: {value: 60 µm, source: "y"}
          rinse.for: {value: 1 min, sauce: "y"}
        """;
    assertThatThrownBy(() -> PolicyReader.defaults("d.yaml", text.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("d.yaml:2:23: a mass per area such as")
        .hasMessageContaining("d.yaml:3:17: a whole number from 1 to 20 was expected")
        .hasMessageContaining("d.yaml:4:25: a length such as 40 cm was expected, more than nothing")
        .hasMessageContaining("d.yaml:5:26: “120 %” is beyond what it can be, 0 % to 100 %")
        .hasMessageContaining("d.yaml:6:24: yes or no was expected; “perhaps” is neither")
        .hasMessageContaining("d.yaml:7:3: nobody reads a default called handling.wash-screen")
        .hasMessageContaining("d.yaml:8:3: nobody reads a default called screen.thread.fine")
        .hasMessageContaining("d.yaml:9:29: “sauce” is not known here")
        .hasMessageContaining("d.yaml:1:1: the default handling.wash screen is missing");
  }

  @Test
  void defaultsAreOfTheirKindsAndAsWritten() {
    assertThat(policy.assumed().handling().washScreen())
        .isEqualTo(policy.defaults().get("handling.wash screen"));
    assertThat(policy.assumed().air().of(Draught.By.HAIR_DRYER))
        .isEqualTo(policy.defaults().get("air.hair-dryer"));
    assertThat(policy.assumed().heatSet().lasts()).isEqualTo(policy.defaults().get("heat-set.for"));
    assertThat(policy.assumed().cloth().shrinkage().lengthOf().get("linen"))
        .isEqualTo(policy.defaults().get("cloth.shrinkage.length.linen"));
    assertThat(policy.assumed().screen().thread().get(new MeshCount(43)).value())
        .isEqualTo(new Length(0.08));
    assertThat(policy.assumed().table().length().text()).isEqualTo("2.4 m");
    assertThat(policy.assumed().table().length().value()).isEqualTo(new Length(2400));
  }

  /**
   * Temperatures against a textile course's table of reactive groups (seems to follow Broadbent).
   */
  @Test
  void temperatureWindowsOfTheGroups() {
    assertThat(windows())
        .contains(
            "dichlorotriazine 25 °C–40 °C",
            "vinyl sulphone 40 °C–60 °C",
            "monofluorotriazine 40 °C–60 °C",
            "difluorochloropyrimidine 30 °C–50 °C",
            "dichloroquinoxaline 50 °C–70 °C",
            "monochlorotriazine 80 °C–85 °C",
            "trichloropyrimidine 80 °C–95 °C",
            "nicotinyltriazine 100 °C–130 °C");
  }

  private List<String> windows() {
    return policy.groups().stream()
        .map(g -> g.name() + " " + g.coolest().text() + "–" + g.warmest().text())
        .toList();
  }

  /** Molar masses from IUPAC weights; bulk densities from a soda-ash producer's data page. */
  @Test
  void sodasByTheirWaterAndByTheCup() {
    assertThat(policy.substance("washing soda").alkaliFactor().orElseThrow())
        .isCloseTo(1 / 2.6997, within(0.0003));
    assertThat(policy.substance("soda monohydrate").alkaliFactor().orElseThrow())
        .isCloseTo(1 / 1.17, within(0.001));
    Substance light = policy.substance("soda ash");
    double cup = 236.5882365;
    assertThat(light.gramsPerMl().orElseThrow().low() * cup).isCloseTo(134.9, within(0.7));
    assertThat(light.gramsPerMl().orElseThrow().high() * cup).isCloseTo(153.8, within(0.8));
    Substance dense = policy.substance("dense soda ash");
    assertThat(dense.gramsPerMl().orElseThrow().low() * cup).isCloseTo(236.6, within(1.2));
    assertThat(dense.gramsPerMl().orElseThrow().high() * cup).isCloseTo(248.4, within(1.3));
  }

  @Test
  void noNameStandsForTwoThings() {
    distinct(policy.groups().stream().flatMap(g -> names(g.name(), g.aliases())));
    distinct(policy.fibres().stream().flatMap(f -> names(f.name(), f.aliases())));
    distinct(policy.substances().stream().flatMap(s -> names(s.name(), s.aliases())));
  }

  @Test
  void pastesKeepNoLongerWithAlkaliThanWithoutAndNoShorterCold() {
    for (ReactiveGroup g : policy.groups()) {
      assertThat(g.lifeWithAlkali()).isLessThanOrEqualTo(g.lifeWithoutAlkali());
      assertThat(g.lifeWithAlkali()).isLessThanOrEqualTo(g.lifeWithAlkaliCold());
      assertThat(g.lifeWithoutAlkali()).isLessThanOrEqualTo(g.lifeWithoutAlkaliCold());
      assertThat(g.coolest()).isLessThan(g.warmest());
      assertThat(g.shortestSteam()).isLessThan(g.longestSteam());
    }
  }

  @Test
  void everyValueNamesItsSource() {
    assertThat(policy.defaults().values()).allMatch(d -> !d.source().isBlank());
    assertThat(policy.groups()).allMatch(g -> !g.source().isBlank());
    assertThat(policy.fibres()).allMatch(f -> !f.source().isBlank());
    assertThat(policy.substances()).allMatch(s -> !s.source().isBlank());
    assertThat(policy.limits().values()).allMatch(l -> !l.source().isBlank());
  }

  private static Stream<String> names(String name, List<String> aliases) {
    return Stream.concat(Stream.of(name), aliases.stream()).map(String::toLowerCase);
  }

  private static void distinct(Stream<String> names) {
    Set<String> seen = new HashSet<>();
    names.forEach(n -> assertThat(seen.add(n)).as(n).isTrue());
  }
}
