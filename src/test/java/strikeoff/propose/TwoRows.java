package strikeoff.propose;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;

/**
 * A plan of two rows, one behind the other: shells in two colours and reeds in one.
 *
 * @param shells how many
 * @param reeds how many
 * @param pitch of both, cm: at less than 36 frames lie on neighbours
 * @param table its length, cm
 * @param people one to three
 * @param paint true for paint that is ironed, false for dye that is soaked
 * @param fan true if there is one
 * @param hours in which the room is open
 */
record TwoRows(
    int shells,
    int reeds,
    int pitch,
    int table,
    int people,
    boolean paint,
    boolean fan,
    String hours) {

  /** Any of them. */
  static final class Any implements ArbitrarySupplier<TwoRows> {
    @Override
    public Arbitrary<TwoRows> get() {
      return Combinators.combine(
              Arbitraries.integers().between(1, 3),
              Arbitraries.integers().between(1, 4),
              Arbitraries.integers().between(29, 50),
              Arbitraries.of(100, 240),
              Arbitraries.integers().between(1, 3),
              Arbitraries.of(false, true),
              Arbitraries.of(false, true),
              Arbitraries.of(
                  "09:00-17:00",
                  "09:00-09:40, 10:10-17:00",
                  "09:00-10:30, 10:45-12:15, 13:00-17:00",
                  "10:00-12:00, 12:30-14:30"))
          .as(TwoRows::new);
    }
  }

  String text() {
    String paste =
        paint ? "{medium: paint, colour: " : "{medium: dye, group: dichlorotriazine, colour: ";
    return String.format(
        Locale.ROOT,
        """
        plan: Reeds behind a row of cockle shells
        cloth:
          fibre: cotton
          mass: 180 g/m²
          length: 2.4 m
          width: 80 cm
          ground: "#f4efe4"
          washed: yes
          allowances: {start: 2 cm, end: 2 cm, near: 2 cm, far: 2 cm}
        table: {length: %d cm, width: 130 cm, railed: yes}
        hours: %s
        crew: %s
        equipment: {fans: %d}
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          one: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
          two: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm, thread: 64 µm, squeegee: 31 cm}
          reed: {frame: 40 x 36 cm, image: 24 x 20 cm, mesh: 43/cm, thread: 80 µm, squeegee: 28 cm}
        pastes:
          sand: %s"#d9b77e"}
          ink: %s"#2b3440"}
          green: %s"#5d7a3f"}
        designs:
          shell:
            size: 25 x 25 cm
            separations:
              - {screen: one, paste: sand, covers: 40 %%, trap: 1.5 mm}
              - {screen: two, paste: ink, covers: 12 %%, key: yes, detail: 1 mm}
          reed:
            size: 22 x 18 cm
            separations:
              - {screen: reed, paste: green, covers: 30 %%}
        placements:
          shells: {design: shell, series: %d, pitch: %d cm, start: 14 cm, across: 10 cm}
          reeds: {design: reed, series: %d, pitch: %d cm, start: 16 cm, across: 52 cm}
        run:
          - mix: all
          - print: shells
            every other: yes
            dry between passes: until frame-safe
            dry between colours: until frame-safe
            before moving: until lift-safe
          - print: reeds
            pause: 30 min
            before moving: until lift-safe
          - end of day
          - dry: until fix-safe
        %s""",
        table,
        hours.contains(",") ? "[\"" + hours + "\"]" : hours,
        "[" + String.join(", ", List.of("Wren", "Tam", "Ina").subList(0, people)) + "]",
        fan ? 1 : 0,
        paste,
        paste,
        paste,
        shells,
        pitch,
        reeds,
        pitch,
        SmallPlan.fixed(paint, "soda ash: 500 g, salt: 1 kg, water: 12 L"));
  }
}
