package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Worked;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.speech.ScreenSpeech;

/** What is asked about a mesh: its count, and its thread. */
class MeshQuestionsTest {

  @ParameterizedTest
  @CsvSource({
    "43/in, '43/cm, which is 109/in'",
    "36/in, '36/cm, which is 91/in'",
    "156/cm, '156/in, which is 61/cm'",
    "230/cm, '230/in, which is 91/cm'",
    "2/in, ",
    "900/cm, ",
  })
  void theSameNumberByTheOtherUnitIsOffered(String mesh, String meant) {
    // By hand: 43 · 2.54 = 109.2, 36 · 2.54 = 91.4, 156 / 2.54 = 61.4, 230 / 2.54 = 90.6; 2/cm and
    // 354/cm are no meshes either.
    PrintPlan plan =
        plan("one: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: " + mesh + ", thread: 2 µm}");
    assertThat(Screens.of(plan, Worked.POLICY).evidence())
        .filteredOn(MeshRead.class::isInstance)
        .singleElement()
        .satisfies(
            f ->
                assertThat(ScreenSpeech.asking((MeshRead) f, plan.measures()))
                    .startsWith(meant == null ? "Read the label" : "Is it " + meant + "? "));
  }

  @Test
  void theThreadIsAskedForOnceForEachCount() {
    List<ThreadLeftOut> asked =
        facts(
                """
                one: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
                  two: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 61/cm, thread: 64 µm}
                  three: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
                  four: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 90/cm}""")
            .stream()
            .filter(ThreadLeftOut.class::isInstance)
            .map(ThreadLeftOut.class::cast)
            .toList();
    assertThat(asked)
        .extracting(ThreadLeftOut::screens)
        .containsExactly(List.of("one", "three"), List.of("four"));
    assertThat(asked.get(0).related()).hasSize(1);
    // 90/cm, by hand: pitch 111.1 µm, threads 38.4 to 57.6 µm. A thread of 37 µm, a third of it,
    // would
    // hold most and is thinner than these, so the thinnest does: (71.1/111.1)² · 1.6 · 40 = 26.2;
    // the
    // thickest least: (53.5/111.1)² · 1.45 · 57.6 = 19.4.
    ThreadLeftOut fine = asked.get(1);
    assertThat(fine.volume().low()).isCloseTo(19.4, within(0.05));
    assertThat(fine.volume().high()).isCloseTo(26.2, within(0.05));
    assertThat(fine.openingLeast()).isEqualTo(54);
    assertThat(fine.openingMost()).isEqualTo(71);
    // 43/cm: a third of 232.6 µm is 77.5 µm, between 67 and 96: (2/3)² · 1.6 · 77.5 = 55.1.
    assertThat(asked.get(0).volume().high()).isCloseTo(55.1, within(0.05));
  }

  private static List<Evidence> facts(String screens) {
    return Screens.of(plan(screens), Worked.POLICY).evidence();
  }

  private static PrintPlan plan(String screens) {
    return Worked.of(
            """
                    plan: test
                    cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
                    screens:
                      %s
                    pastes:
                      green: {medium: paint, colour: green, amount: 100 g}
                    designs:
                      reeds: {size: 30 x 22 cm, separations: [{screen: one, paste: green, covers: 40 %%}]}
                    placements:
                      reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
                    """
                .formatted(screens))
        .plan();
  }
}
