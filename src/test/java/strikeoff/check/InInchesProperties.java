package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import strikeoff.checks.Draws;

/** Any row and border finds in inches what it finds in centimetres. */
class InInchesProperties {

  private static final Checker CHECKER = Checker.builtIn();

  @Property(tries = 150, seed = Draws.ALIKE)
  void anyRowFindsTheSameInInches(
      @ForAll @IntRange(min = 1, max = 14) int copies,
      @ForAll @IntRange(min = 20, max = 60) int pitch,
      @ForAll @IntRange(min = 4, max = 12) int start,
      @ForAll @IntRange(min = 20, max = 60) int size,
      @ForAll @IntRange(min = 0, max = 3) int quarters,
      @ForAll @IntRange(min = 24, max = 40) int table,
      @ForAll @IntRange(min = 0, max = 1) int tube) {
    String plan =
        String.format(
            Locale.ROOT,
            """
            plan: A row and its border
            cloth: {length: %d cm, width: 100 cm, washed: yes, form: %s, allowances: {start: 5 cm, end: 5 cm}}
            table: {length: %d cm, width: 130 cm}
            screens:
              leaf: {frame: %d x 60 cm, image: %d x 40 cm, mesh: 43/cm, squeegee: 44 cm}
              reed: {frame: 50 x 44 cm, image: 30 x 22 cm, mesh: 43/cm, squeegee: 26 cm}
            pastes:
              green: {medium: dye, group: DCT, colour: green}
            designs:
              leaf: {size: %d x 40 cm, separations: [{screen: leaf, paste: green, covers: 40 %%}]}
              reed: {size: 30 x 22 cm, separations: [{screen: reed, paste: green, covers: 40 %%}]}
            placements:
              leaves: {design: leaf, series: %d, pitch: %d cm, start: %d cm, across: 40 cm, turn: %d°}
              reeds: {design: reed, border: near, from: 5 cm, to: %d cm, inset: 4 cm}
            run:
              - mix: all
              - print: leaves
                before moving: until lift-safe
              - print: reeds
            """,
            copies * pitch + 10,
            tube == 1 ? "tube" : "open",
            table * 10,
            size + 20,
            size,
            size,
            copies,
            pitch,
            start,
            90 * quarters,
            copies * pitch + 5);
    assertThat(Inches.told(CHECKER, Inches.of(plan))).isEqualTo(Inches.told(CHECKER, plan));
  }

  /** A border and what fills the cloth above it, in no metric unit at all. */
  @Property(tries = 150, seed = Draws.ALIKE)
  void anyBorderAndFillFindTheSameInOuncesToo(
      @ForAll @IntRange(min = 15, max = 42) int repeat,
      @ForAll @IntRange(min = 2, max = 8) int repeats,
      @ForAll @IntRange(min = 0, max = 3) int quarters,
      @ForAll @IntRange(min = 80, max = 82) int width,
      @ForAll @IntRange(min = 80, max = 100) int table,
      @ForAll @IntRange(min = 0, max = 7) int ways,
      @ForAll @IntRange(min = 0, max = 2) int lattice,
      @ForAll @IntRange(min = 1, max = 6) int inset,
      @ForAll @IntRange(min = 1, max = 3) int hundreds) {
    String plan =
        String.format(
            Locale.ROOT,
            """
            plan: A border and a fill
            cloth: {length: %d cm, width: %d cm, washed: yes, form: %s, mass: %d g/m²}
            table: {length: 240 cm, width: %d cm}
            room: {temperature: 21 °C}
            screens:
              reed: {frame: %d x 44 cm, image: %d x 22 cm, mesh: 43/cm, squeegee: 26 cm}
            pastes:
              green: {medium: %s, colour: green, amount: 250 g}
            designs:
              reed: {size: %d x 22 cm, separations: [{screen: reed, paste: green, covers: 40 %%, detail: 0.3 mm}]}
            placements:
              hem: {design: reed, border: %s, from: 0 cm, to: %d cm, inset: %d cm, turn: %d°}
              reeds: {design: reed, fill: %s, pitch: %d x 24 cm, near: 30 cm}
            run:
              - mix: all
              - print: [hem, reeds]
                pause: 3 min
                before moving: until lift-safe
              - dry: until fix-safe
              - fix: soak
                bath: {soda ash: 400 g, salt: 1 kg, water: 10 L}
                for: 60 min
              - rinse: 20 °C
              - wash: 60 °C
            """,
            repeat * repeats,
            width,
            (ways & 1) == 0 ? "open" : "tube",
            100 * hundreds,
            table,
            repeat + 20,
            repeat,
            (ways & 2) == 0 ? "paint" : "dye, group: DCT",
            repeat,
            (ways & 4) == 0 ? "near" : "far",
            repeat * repeats,
            inset,
            90 * quarters,
            List.of("grid", "brick", "half-drop").get(lattice),
            repeat);
    assertThat(Inches.told(CHECKER, Inches.ofAll(plan))).isEqualTo(Inches.told(CHECKER, plan));
  }
}
