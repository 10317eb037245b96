package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/**
 * Powder by the cup: two level US cups of light soda ash weigh 270 to 308 g. What only that range
 * makes a fault is a risk; what the whole range makes a fault is a stop.
 */
class CupsTest {

  private static final Checker CHECKER = Checker.builtIn();

  /** 11.2 to 12.8 g/L in 24 L: 12 g/L, the weakest bath allowed, lies between. */
  @Test
  void aLimitThatOnlyTheCupsRangeCrossesIsARisk() {
    List<Finding> findings = bath("soda ash: 2 cups, water: 24 L");
    assertThat(findings).extracting(f -> f.rule().id()).containsExactly("fixing/may-be-too-weak");
    assertThat(findings.get(0).severity()).isEqualTo(Severity.RISK);
    assertThat(findings.get(0).message()).contains("270 g to 308 g", "12 g/L");
    assertThat(findings.get(0).remedy()).contains("add 20 g");
  }

  @Test
  void theSameMassesWeighedAreCertainEitherWay() {
    assertThat(bath("soda ash: 270 g, water: 24 L"))
        .extracting(f -> f.rule().id() + " " + f.severity())
        .containsExactly("fixing/soda-too-weak RISK");
    assertThat(bath("soda ash: 308 g, water: 24 L")).isEmpty();
  }

  @Test
  void cupsThatAreSurelyTooFewAreToldAsWeak() {
    assertThat(bath("soda ash: 1 cup, water: 16 L"))
        .extracting(f -> f.rule().id())
        .containsExactly("fixing/soda-too-weak");
  }

  /** Two of the lightest cups, 269.7 g, and the 20 g that the finding asks for. */
  @Test
  void theRemedyHoldsForTheLightestCup() {
    assertThat(bath("soda ash: 289.7 g, water: 24 L")).isEmpty();
  }

  private static List<Finding> bath(String bath) {
    String plan =
        """
        plan: Reeds in a bath by the cup
        cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
        table: {length: 2.4 m, width: 1.4 m}
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
        pastes:
          green: {medium: dye, group: DCT, colour: "#6f7f45", amount: 200 g}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run:
          - mix: all
          - print: reeds
          - dry: until fix-safe
          - fix: soak
            bath: {%s, salt: 2.4 kg}
            temperature: 30 °C
            for: 60 min
          - rinse: 20 °C
          - wash: 60 °C
        """
            .formatted(bath);
    Checked checked = CHECKER.check("cups.yaml", plan);
    assertThat(checked).isInstanceOf(Checked.Judged.class);
    return ((Checked.Judged) checked)
        .findings().stream().filter(f -> f.severity() != Severity.ADVICE).toList();
  }
}
