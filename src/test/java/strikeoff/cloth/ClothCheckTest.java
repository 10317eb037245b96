package strikeoff.cloth;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Rows;
import strikeoff.checks.Worked;
import strikeoff.layout.Shrinkage;
import strikeoff.plan.Cloth;

/** What cloth shrinks by, holds of water and takes of dye. */
public class ClothCheckTest {

  private static final String COTTON = "fibre: cotton, washed: no";

  public static List<Check> checks() {
    Rows rows = new Rows();
    rows.published("a trade table of shrinkage, 2018")
        .row("shrinkage in length, %", "plain cotton", 6, 2, () -> warp(COTTON))
        .row("shrinkage in width, %", "plain cotton", 2.5, 2, () -> weft(COTTON))
        .within("shrinkage in length, %", "cotton generally", 4, 10, () -> warp(COTTON));
    rows.published("ISO 5077, as summarised: (Xt − X0)/X0")
        .row("500 mm finish at, mm", "2 % shrinkage", 490, 0.5, () -> finished(500, 2))
        .row("350 mm finish at, mm", "2.286 % shrinkage", 342, 0.5, () -> finished(350, 2.286));
    rows.computed("cut size L/(1 − s)")
        .row("cut for 600 mm finished, mm", "4 % shrinkage", 625.0, 0.01, () -> cut(600, 4));
    // Pores of 1/0.55 − 1/1.54 to 1/0.40 − 1/1.54 cm³/g, of which half fill from one face. A
    // mangle's
    // pick-up of 60 to 80 % tells what stays when cloth is squeezed, not what it can hold.
    rows.from("bulk density of woven cotton, 0.40 to 0.55 g/cm³", Status.FROM_MEMORY)
        .within("water taken up from one face, %", "cotton", 58, 93, () -> pickUp("cotton"));
    rows.published("a dyers' forum and supplier pages");
    for (String fibre : List.of("cotton", "linen", "hemp", "viscose")) {
      rows.row("share of dye taken", fibre, 1, 1e-9, () -> takes(fibre));
    }
    rows.row("share of dye taken", "polyester", 0, 1e-9, () -> takes("polyester"));
    rows.published("ISO 139, standard air for textiles")
        .row(
            "room where none is stated, °C",
            "20 °C",
            20,
            1e-9,
            () -> plan(COTTON, 2000).plan().room().temperature().celsius());
    rows.from("unwashed linen, from memory", Status.FROM_MEMORY)
        .within("shrinkage, %", "linen", 3, 5, () -> warp("fibre: linen, washed: no"));
    rows.from("plain cotton sheeting, from memory", Status.FROM_MEMORY)
        .within("mass where none is stated, g/m²", "cotton", 120, 160, ClothCheckTest::mass);
    return rows.checks();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void clothBehavesAsPublished(Check check) {
    check.assertHolds();
  }

  private static double warp(String cloth) {
    return cloth(cloth).shrinkLength().percent();
  }

  private static double weft(String cloth) {
    return cloth(cloth).shrinkWidth().percent();
  }

  private static double mass() {
    return cloth(COTTON).mass().gramsPerSquareMetre();
  }

  private static double pickUp(String fibre) {
    return Worked.POLICY.fibre(fibre).uptake().percent();
  }

  private static double takes(String fibre) {
    return plan("fibre: " + fibre + ", washed: yes", 2000).the(FibreTake.class).takes().fraction();
  }

  private static double finished(int mm, double percent) {
    return shrunk(mm, percent).finishedLength().mm();
  }

  private static double cut(int mm, double percent) {
    return shrunk(mm, percent).lengthToCut().mm();
  }

  private static Shrinkage shrunk(int mm, double percent) {
    return plan(COTTON + ", shrinkage: {length: " + percent + " %, width: 0 %}", mm)
        .the(Shrinkage.class);
  }

  private static Cloth cloth(String cloth) {
    return plan(cloth, 2000).plan().cloth();
  }

  private static Worked plan(String cloth, int length) {
    return Worked.of(
        """
        plan: test
        cloth: {%s, length: %d mm, width: 1 m}
        screens:
          dot: {frame: 30 x 30 cm, image: 10 x 10 cm, mesh: 43/cm}
        pastes:
          green: {medium: dye, group: DCT, colour: green, amount: 100 g}
        designs:
          dot: {size: 8 x 8 cm, separations: [{screen: dot, paste: green, covers: 40 %%}]}
        placements:
          dot: {design: dot, series: 1, pitch: 20 cm, start: 10 cm, across: 30 cm}
        run:
          - mix: all
          - print: dot
        """
            .formatted(cloth, length));
  }
}
