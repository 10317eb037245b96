package strikeoff.screens;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.Rows;
import strikeoff.checks.Worked;
import strikeoff.plan.Screen;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/** Meshes against weavers' pages, and the meshes that the policy takes. */
public class MeshCheckTest {

  public static List<Check> checks() {
    Rows rows = new Rows();
    weaver(rows, 40, 59, 73, 42, 25);
    weaver(rows, 48, 72, 65, 33, 24);
    weaver(rows, 54, 84, 59, 27, 23);
    optics(rows);
    Mesh fine = mesh(305 / 2.54, 40);
    rows.published("screen-print trade article, June 2009")
        .row("open area, %", "305/in, 40 µm", 25, 1, () -> fine.openArea().percent())
        .missed("threads flatten where they cross, which the formula leaves out: 2 points too open")
        .row("thickness, µm", "305/in, 40 µm", 63, 1, () -> fine.thicknessMm().best() * 1000)
        .missed("ours takes 1.5 threads, this one is 1.575 thick; the range reaches 1.6");
    formula(rows);
    defaults(rows);
    return rows.checks();
  }

  private static void weaver(
      Rows rows, double thread, double thickness, double opening, double open, double volume) {
    Mesh mesh = mesh(225 / 2.54, thread);
    String which = "90/225-" + Math.round(thread);
    rows.published("mesh weaver's specification page")
        .row("opening, µm", which, opening, 1, () -> mesh.opening().mm() * 1000)
        .row("open area, %", which, open, 1, () -> mesh.openArea().percent())
        .row(
            "theoretical volume, cm³/m²",
            which + ", thickness " + Math.round(thickness) + " µm as printed",
            volume,
            1,
            () -> mesh.openArea().fraction() * thickness)
        .row(
            "thickness, µm",
            which + ", middle of the range taken for a plain weave",
            thickness,
            1,
            () -> mesh.thicknessMm().best() * 1000);
    if (thread == 54) {
      rows.missed("ours takes 1.5 threads, this one is 1.556 thick; the range reaches 1.6");
    }
  }

  private static void optics(Rows rows) {
    Mesh mesh = mesh(150 / 2.54, 51);
    rows.published("optics laboratory's data sheet")
        .row("pitch, µm", "59/150 plain", 169, 1, () -> mesh.pitch().mm() * 1000)
        .row("opening, µm", "59/150 plain", 118, 1, () -> mesh.opening().mm() * 1000)
        .row("open area, %", "59/150 plain", 49, 1, () -> mesh.openArea().percent());
  }

  /** Nominal counts and threads of the trade; half of the last printed digit. */
  private static void formula(Rows rows) {
    double[][] table = {
      {32, 100, 212.5, 46.2, 69.4},
      {36, 90, 187.8, 45.7, 61.7},
      {43, 80, 152.6, 43.0, 51.6},
      {48, 70, 138.3, 44.1, 46.3},
      {55, 64, 117.8, 42.0, 40.3},
      {61, 64, 99.9, 37.2, 35.7},
      {68, 55, 92.1, 39.2, 32.3},
      {77, 55, 74.9, 33.2, 27.4},
      {77, 48, 81.9, 39.7, 28.6},
      {90, 48, 63.1, 32.3, 23.2},
      {100, 40, 60.0, 36.0, 21.6},
      {120, 34, 49.3, 35.0, 17.9},
      {120, 31, 52.3, 39.4, 18.3}
    };
    rows.computed("plain-weave formulas: opening = pitch − thread, 1.5 threads thick");
    for (double[] is : table) {
      Mesh mesh = mesh(is[0], is[1]);
      String which = Math.round(is[0]) + "/cm-" + Math.round(is[1]);
      rows.row("opening, µm", which, is[2], 0.051, () -> mesh.opening().mm() * 1000)
          .row("open area, %", which, is[3], 0.051, () -> mesh.openArea().percent())
          .row(
              "theoretical volume, cm³/m²",
              which,
              is[4],
              0.051,
              () -> mesh.theoreticalVolume().best());
    }
  }

  private static void defaults(Rows rows) {
    rows.published("a printing house's manual, its set of meshes");
    for (int[] is :
        new int[][] {
          {10, 260}, {24, 140}, {34, 100}, {49, 55}, {62, 64}, {90, 48}, {120, 34}, {140, 34}
        }) {
      rows.row(
          "thread taken where none is stated, µm",
          is[0] + "/cm",
          is[1],
          1e-9,
          () -> screen(is[0]).thread().mm() * 1000);
    }
    rows.published("apparel-printing trade magazine, June 2015")
        .row(
            "finest mesh for water-based colour, 1/cm",
            "230/in is the finest given for vector designs",
            230 / 2.54,
            0.5,
            () -> Worked.POLICY.limit("screens/finest-mesh").amount());
    rows.published("a hand screen-printing manual")
        .within(
            "frame beyond the image at each end, cm",
            "7.5 to 10 cm; the policy's well and a rail of 4 cm",
            6.5,
            10,
            () ->
                (Worked.POLICY.limit("screens/well-margin").amount() + screen(43).rail().mm())
                    / 10);
  }

  private static Screen screen(int count) {
    return Worked.of(
            """
            plan: test
            cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
            screens:
              one: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: %d/cm}
            pastes:
              green: {medium: paint, colour: green, amount: 100 g}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: one, paste: green, covers: 40 %%}]}
            placements:
              reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
            """
                .formatted(count))
        .plan()
        .screens()
        .get("one");
  }

  private static Mesh mesh(double count, double micrometres) {
    return new Mesh(new MeshCount(count), new Length(micrometres / 1000));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void meshesAreAsTheirWeaversSay(Check check) {
    check.assertHolds();
  }
}
