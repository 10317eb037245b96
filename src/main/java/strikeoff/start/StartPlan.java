package strikeoff.start;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.UnitSystem;

/**
 * Writes a small plan with comments. Sizes follow from the motif: a frame that holds it, a pitch at
 * which no frame lies on its neighbour's print, a cloth that holds the row, a bath that holds the
 * cloth. Whether it is printable the check tells, not this class.
 */
public final class StartPlan {

  private static final double INCH = 25.4;
  private static final double LITRES_IN_QUART = 0.946352946;

  /**
   * Round measures in mm, in centimetres or in inches.
   *
   * @param bleed between the motif and the edge of the stencil's image, on each side
   * @param aroundImage rail, squeegee's travel and paste well beyond the image, on both sides
   *     together
   * @param between one frame and the next
   * @param margin from the motifs to the cloth's edge
   */
  private record Measured(
      double bleed,
      double aroundImage,
      double between,
      double margin,
      double allowance,
      double tableLength,
      double tableWidth,
      double aroundCloth) {}

  private static final Measured METRIC = new Measured(10, 170, 20, 80, 20, 2400, 1200, 200);

  private static final Measured IN_INCHES =
      new Measured(INCH / 2, 7 * INCH, INCH, 3 * INCH, INCH, 96 * INCH, 48 * INCH, 8 * INCH);

  private static final double GRAMS_PER_MM2 = 200e-6;
  private static final double LITRES_PER_GRAM = 0.04;

  private final Wishes wishes;
  private final FixingMethod fixing;
  private final Measures units;
  private final Measured round;
  private final List<String> lines = new ArrayList<>();

  private StartPlan(Wishes wishes, FixingMethod fixing) {
    this.wishes = wishes;
    this.fixing = fixing;
    this.units = wishes.units();
    this.round = isMetric() ? METRIC : IN_INCHES;
  }

  private boolean isMetric() {
    return units.of(MeasureKind.LENGTH) == UnitSystem.METRIC;
  }

  /** The plan's text, as YAML; ends with a line end. */
  public static String text(Wishes wishes, FixingMethod fixing) {
    StartPlan plan = new StartPlan(wishes, fixing);
    plan.cloth();
    plan.tools();
    plan.motif();
    plan.run();
    return String.join("\n", plan.lines) + "\n";
  }

  private void cloth() {
    add("# A first plan: change what is yours, and check it again with strikeoff check.");
    add("plan: " + quoted(wishes.title()));
    add("cloth:");
    add("  fibre: " + quoted(wishes.fibre()));
    add("  mass: " + (isMetric() ? "200 g/m²" : "6 oz/yd²"));
    add("  length: " + text(clothLength()));
    add("  width: " + text(clothWidth()));
    add("  washed: yes             # before printing, so that it shrinks no more");
    String allowance = text(round.allowance());
    add("  allowances: {start: " + allowance + ", end: " + allowance + "}");
    add(
        "table: {length: "
            + text(round.tableLength())
            + ", width: "
            + text(Math.max(round.tableWidth(), clothWidth() + round.aroundCloth()))
            + ", railed: yes}");
    add(
        "room: {temperature: "
            + (isMetric() ? "20 °C" : "70 °F")
            + ", humidity: 50 %, air: still}");
    add("hours: 09:00-17:00");
    add(
        wishes.dye()
            ? fixing == FixingMethod.STEAM
                ? "protection: [dust mask, gloves, goggles, heat gloves]"
                : "protection: [dust mask, gloves, goggles]"
            : "protection: [gloves, heat gloves]");
  }

  private void tools() {
    add("screens:");
    for (int i = 1; i <= wishes.colours().size(); i++) {
      String image = pair(imageAlong(), imageAcross());
      String frame = pair(imageAlong() + round.aroundImage(), imageAcross() + round.aroundImage());
      add(
          "  screen "
              + i
              + ": {frame: "
              + frame
              + ", image: "
              + image
              + ", mesh: "
              + (isMetric() ? "43/cm" : "110/in")
              + ", thread: 80 µm}");
    }
    add("pastes:                   # amounts are worked out; the report says how much to mix");
    for (int i = 1; i <= wishes.colours().size(); i++) {
      String colour = quoted(wishes.colours().get(i - 1));
      String medium = wishes.dye() ? "medium: dye, group: dichlorotriazine" : "medium: paint";
      String alkali = fixing == FixingMethod.STEAM ? ", recipe: " + recipe() : "";
      add("  colour " + i + ": {" + medium + ", colour: " + colour + alkali + "}");
    }
  }

  private void motif() {
    add("designs:");
    add("  motif:");
    add("    size: " + pair(wishes.along().mm(), wishes.across().mm()));
    add("    separations:          # light colours first, an outline last");
    for (int i = 1; i <= wishes.colours().size(); i++) {
      add("      - {screen: screen " + i + ", paste: colour " + i + ", covers: 30 %}");
    }
    add("placements:");
    add(
        "  row: {design: motif, series: "
            + wishes.count()
            + ", pitch: "
            + text(pitch())
            + ", start: "
            + text(round.margin())
            + ", across: "
            + text(round.margin())
            + "}");
  }

  private void run() {
    add("run:");
    add("  - mix: all");
    add("  - print: row");
    add("    dry between colours: until frame-safe");
    add("    before moving: until lift-safe");
    add("  - end of day            # dries overnight");
    add("  - dry: until fix-safe");
    switch (fixing) {
      case SOAK -> soak(UsualFixing.SODA_GRAMS_PER_LITRE);
      case GENTLE_SOAK, GENTLE_SOAK_AND_WASH -> soak(UsualFixing.GENTLE_SODA_GRAMS_PER_LITRE);
      case STEAM -> {
        add("  - fix: steam            # baking soda in the paste makes the dye join the fibre");
        add("    for: " + UsualFixing.STEAMED.text());
      }
      case HOT_IRON -> iron(UsualFixing.HOT_IRON, UsualFixing.HOT_IRONED);
      case COOL_IRON -> iron(UsualFixing.COOL_IRON, UsualFixing.COOL_IRONED);
    }
    if (wishes.dye()) {
      add("  - rinse: " + (isMetric() ? "20 °C" : "70 °F"));
      Temperature wash =
          fixing == FixingMethod.GENTLE_SOAK_AND_WASH ? new Temperature(40) : UsualFixing.HOT_WASH;
      add("  - wash: " + wash.text(units));
    }
  }

  private void iron(Temperature warm, Span lasts) {
    add("  - heat-set: iron        # as the paint's label says");
    add("    temperature: " + warm.enough(units));
    add("    for: " + lasts.text());
  }

  private void soak(double gramsPerLitre) {
    double wanted = Math.max(UsualFixing.LEAST_LITRES, clothGrams() * LITRES_PER_GRAM);
    double unit = isMetric() ? 1 : LITRES_IN_QUART;
    long water = (long) Math.ceil(wanted / unit);
    add("  - fix: soak             # soda makes the dye join the fibre");
    add(
        "    bath: {soda ash: "
            + weighed(water * unit * gramsPerLitre)
            + ", salt: "
            + weighed(water * unit * UsualFixing.SALT_GRAMS_PER_LITRE)
            + ", water: "
            + water
            + " "
            + quart()
            + "}");
    add("    temperature: " + (isMetric() ? "30 °C" : "90 °F"));
    add("    for: 60 min");
  }

  private double imageAlong() {
    return wishes.along().mm() + 2 * round.bleed();
  }

  private double imageAcross() {
    return wishes.across().mm() + 2 * round.bleed();
  }

  private double pitch() {
    return imageAlong() + round.aroundImage() + round.between();
  }

  private double clothLength() {
    return 2 * round.margin() + (wishes.count() - 1) * pitch() + wishes.along().mm();
  }

  private double clothWidth() {
    return 2 * round.margin() + wishes.across().mm();
  }

  private double clothGrams() {
    return clothLength() * clothWidth() * GRAMS_PER_MM2;
  }

  private void add(String line) {
    lines.add(line);
  }

  private String text(double mm) {
    return isMetric() ? new Length(mm).text() : number(mm) + " in";
  }

  private String pair(double along, double across) {
    return number(along) + " x " + number(across) + (isMetric() ? " cm" : " in");
  }

  /** Of centimetres or inches, all of them that were wished. */
  private String number(double mm) {
    if (isMetric()) {
      return BigDecimal.valueOf(Math.round(mm * 10), 2).stripTrailingZeros().toPlainString();
    }
    double parts = mm / INCH * 64;
    return Math.abs(parts - Math.rint(parts)) < 1e-6
        ? new Length(mm).inColumn(units)
        : Numbers.plain(mm / INCH, 3);
  }

  private String recipe() {
    return "{dye: "
        + weighed(15)
        + ", urea: "
        + weighed(50)
        + ", alginate: "
        + weighed(12)
        + ", baking soda: "
        + weighed(10)
        + ", water: "
        + weighed(420)
        + "}";
  }

  private String weighed(double grams) {
    return isMetric() ? Math.round(grams) + " g" : new Mass(grams).text(units);
  }

  private String quart() {
    return isMetric() ? "L" : "US quarts";
  }

  /** Quotes hold whatever a title may be. */
  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
