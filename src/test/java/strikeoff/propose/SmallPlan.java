package strikeoff.propose;

import java.util.Locale;
import java.util.OptionalLong;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Surety;
import strikeoff.paste.Lives;

/**
 * A row of one motif on a short length of cotton, small enough that all its runs can be tried.
 *
 * @param motifs in the row
 * @param colours of each, one or two
 * @param pitch from one to the next, cm
 * @param table its length, cm
 * @param people one or two
 * @param paint true for paint that is ironed, false for dye that is soaked
 * @param seam where one is to be sewn
 * @param boards how many loose boards are set under the motifs; none if the table has one top
 * @param hours in which the room is open
 */
record SmallPlan(
    int motifs,
    int colours,
    int pitch,
    int table,
    int people,
    boolean paint,
    Seam seam,
    int boards,
    String hours) {

  static final String ALL_DAY = "09:00-17:00";

  /** A seam, by the first motif. */
  enum Seam {
    NONE(0),
    /** After it, so that nothing lies across. */
    BESIDE(0),
    /** Through it. */
    ACROSS(26);

    private final int at;

    Seam(int at) {
      this.at = at;
    }
  }

  SmallPlan(int motifs, int colours, int pitch, int table, int people, boolean paint) {
    this(motifs, colours, pitch, table, people, paint, Seam.NONE, 0, ALL_DAY);
  }

  /** The same with a seam. */
  SmallPlan sewn(Seam where) {
    return new SmallPlan(motifs, colours, pitch, table, people, paint, where, boards, hours);
  }

  /** The same on loose boards. */
  SmallPlan on(int loose) {
    return new SmallPlan(motifs, colours, pitch, table, people, paint, seam, loose, hours);
  }

  /** The same in a room that is open for less. */
  SmallPlan open(String shorter) {
    return new SmallPlan(motifs, colours, pitch, table, people, paint, seam, boards, shorter);
  }

  static final Checker CHECKER = Checker.builtIn();

  String text() {
    String first =
        paint
            ? "{medium: paint, colour: \"#d9b77e\"}"
            : "{medium: dye, group: dichlorotriazine, colour: \"#d9b77e\"}";
    String second = first.replace("#d9b77e", paint ? "#a4532f" : "#2b3440");
    String third = first.replace("#d9b77e", "#8a6d4b");
    return String.format(
        Locale.ROOT,
        """
        plan: A row of cockle shells
        cloth:
          fibre: cotton
          mass: 180 g/m²
          length: 2 m
          width: 60 cm
          ground: "#f4efe4"
          washed: yes
          allowances: {start: 2 cm, end: 2 cm, near: 2 cm, far: 2 cm}
        %stable: {length: %d cm, width: 120 cm, railed: yes%s}
        hours: %s
        crew: %s
        equipment: {fans: 1}
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          one: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
          two: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm, thread: 64 µm, squeegee: 31 cm}
          three: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm, thread: 64 µm, squeegee: 31 cm}
        pastes:
          a: %s
        %sdesigns:
          shell:
            size: 25 x 25 cm
            separations:
              - {screen: one, paste: a, covers: 40 %%, trap: 1.5 mm}
        %splacements:
          row: {design: shell, series: %d, pitch: %d cm, start: 14 cm, across: 17 cm}
        run:
          - mix: all
        %s  - end of day
          - dry: until fix-safe
        %s""",
        seam == Seam.NONE
            ? ""
            : "seams:\n  side: {at: "
                + (seam == Seam.ACROSS ? seam.at : 14 + pitch - 2)
                + " cm, allowance: 1 cm, padded: yes}\n",
        table,
        boards == 0
            ? ""
            : ", stations: {count: " + boards + ", length: 50 cm, width: 50 cm, gap: 5 cm}",
        hours,
        people == 1 ? "[Wren]" : "[Wren, Tam]",
        first,
        (colours == 3 ? "  c: " + third + "\n" : "") + (colours > 1 ? "  b: " + second + "\n" : ""),
        (colours == 3 ? "      - {screen: three, paste: c, covers: 20 %, trap: 1.5 mm}\n" : "")
            + (colours > 1
                ? "      - {screen: two, paste: b, covers: 12 %, key: yes, detail: 1 mm}\n"
                : ""),
        motifs,
        pitch,
        prints(),
        fixed(paint, "soda ash: 400 g, salt: 1 kg, water: 10 L"));
  }

  /** Steps that fix what is printed: paint by the iron, dye in a bath. */
  static String fixed(boolean paint, String bath) {
    return paint
        ? """
            - heat-set: iron
              temperature: 150 °C
              for: 5 min
          """
        : """
            - fix: soak
              bath: {BATH}
              temperature: 30 °C
              for: 60 min
            - rinse: 20 °C
              for: 20 min
            - wash: 60 °C
              for: 15 min
          """
            .replace("BATH", bath);
  }

  private String prints() {
    String print =
        """
          - print: row
            every other: yes
            pause: 30 min
            dry between colours: until frame-safe
            before moving: until lift-safe
        """;
    String sew = "  - sew: side\n";
    return switch (seam) {
      case NONE -> print;
      case BESIDE -> print + "  - dry: until lift-safe\n" + sew;
      case ACROSS -> sew + print;
    };
  }

  static RunWanted shortest(long effort) {
    return new RunWanted(Surety.SURE, true, true, false, OptionalLong.of(effort), () -> 0);
  }

  Checked.Judged judged() {
    return (Checked.Judged) CHECKER.withoutTrials().check("row.yaml", text());
  }

  Proposal.Found proposed(long effort) {
    return (Proposal.Found) Proposer.proposed(CHECKER, "row.yaml", text(), shortest(effort), 1);
  }

  /** What searches the plan's runs. */
  record Bench(Leeway leeway, Order order, Rehearsal rehearsal, Checked.Judged judged) {

    Bound bound() {
      Moment opens = Moment.of(1, judged.plan().hours().of(1).opens());
      return Bounding.of(leeway, rehearsal, CHECKER.policy(), false, true, opens);
    }
  }

  Bench bench() {
    Checked.Judged judged = judged();
    Leeway leeway =
        Leeway.of(judged.plan(), judged.facts().layout(), CHECKER.policy(), shortest(1));
    Rehearsal rehearsal =
        Rehearsal.of(
            judged.plan(),
            judged.facts().layout(),
            CHECKER.policy(),
            new Lives(judged.plan(), CHECKER.policy())::least,
            Surety.SURE);
    return new Bench(leeway, new Order(leeway), rehearsal, judged);
  }
}
