package strikeoff.start;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Length;

/**
 * Writes a small plan with comments. Sizes follow from the motif: a frame that holds it, a pitch at
 * which no frame lies on its neighbour's print, a cloth that holds the row, a bath that holds the
 * cloth. Whether it is printable the check tells, not this class.
 */
public final class StartPlan {

  /** Between the motif and the edge of the stencil's image, on each side. */
  private static final double BLEED_MM = 10;

  /** Rail, squeegee's travel and paste well beyond the image, on both sides together. */
  private static final double AROUND_IMAGE_MM = 170;

  /** From one frame to the next. */
  private static final double BETWEEN_MM = 20;

  private static final String RECIPE =
      "{dye: 15 g, urea: 50 g, alginate: 12 g, baking soda: 10 g, water: 420 g}";

  private static final double MARGIN_MM = 80;
  private static final double GRAMS_PER_MM2 = 200e-6;
  private static final double LITRES_PER_GRAM = 0.04;
  private static final double SODA_GRAMS_PER_LITRE = 40;
  private static final double GENTLE_SODA_GRAMS_PER_LITRE = 19;

  /** What keeps dye on a print that is soaked: rules/fixing/limits.yaml, enough-salt. */
  private static final double SALT_GRAMS_PER_LITRE = 100;

  private final Wishes wishes;
  private final Fixing fixing;
  private final List<String> lines = new ArrayList<>();

  private StartPlan(Wishes wishes, Fixing fixing) {
    this.wishes = wishes;
    this.fixing = fixing;
  }

  /** The plan's text, as YAML; ends with a line end. */
  public static String text(Wishes wishes, Fixing fixing) {
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
    add("  mass: 200 g/m²");
    add("  length: " + cm(clothLength()));
    add("  width: " + cm(clothWidth()));
    add("  washed: yes             # before printing, so that it shrinks no more");
    add("  allowances: {start: 2 cm, end: 2 cm}");
    add(
        "table: {length: 2.4 m, width: "
            + cm(Math.max(1200, clothWidth() + 200))
            + ", railed: yes}");
    add("room: {temperature: 20 °C, humidity: 50 %, air: still}");
    add("hours: 09:00-17:00");
    add(
        wishes.dye()
            ? fixing == Fixing.STEAM
                ? "protection: [dust mask, gloves, goggles, heat gloves]"
                : "protection: [dust mask, gloves, goggles]"
            : "protection: [gloves, heat gloves]");
  }

  private void tools() {
    add("screens:");
    for (int i = 1; i <= wishes.colours().size(); i++) {
      String image = pair(imageAlong(), imageAcross());
      String frame = pair(imageAlong() + AROUND_IMAGE_MM, imageAcross() + AROUND_IMAGE_MM);
      add(
          "  screen "
              + i
              + ": {frame: "
              + frame
              + ", image: "
              + image
              + ", mesh: 43/cm, thread: 80 µm}");
    }
    add("pastes:                   # amounts are worked out; the report says how much to mix");
    for (int i = 1; i <= wishes.colours().size(); i++) {
      String colour = quoted(wishes.colours().get(i - 1));
      String medium = wishes.dye() ? "medium: dye, group: dichlorotriazine" : "medium: paint";
      String alkali = fixing == Fixing.STEAM ? ", recipe: " + RECIPE : "";
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
            + cm(pitch())
            + ", start: "
            + cm(MARGIN_MM)
            + ", across: "
            + cm(MARGIN_MM)
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
      case SOAK -> soak(SODA_GRAMS_PER_LITRE);
      case GENTLE_SOAK, GENTLE_SOAK_AND_WASH -> soak(GENTLE_SODA_GRAMS_PER_LITRE);
      case STEAM -> {
        add("  - fix: steam            # baking soda in the paste makes the dye join the fibre");
        add("    for: 10 min");
      }
      case HOT_IRON -> iron("150 °C", "5 min");
      case COOL_IRON -> iron("140 °C", "6 min");
    }
    if (wishes.dye()) {
      add("  - rinse: 20 °C");
      add("  - wash: " + (fixing == Fixing.GENTLE_SOAK_AND_WASH ? "40 °C" : "60 °C"));
    }
  }

  private void iron(String temperature, String time) {
    add("  - heat-set: iron        # as the paint's label says");
    add("    temperature: " + temperature);
    add("    for: " + time);
  }

  private void soak(double gramsPerLitre) {
    long litres = (long) Math.ceil(Math.max(5, clothGrams() * LITRES_PER_GRAM));
    long soda = Math.round(litres * gramsPerLitre);
    add("  - fix: soak             # soda makes the dye join the fibre");
    long salt = Math.round(litres * SALT_GRAMS_PER_LITRE);
    add("    bath: {soda ash: " + soda + " g, salt: " + salt + " g, water: " + litres + " L}");
    add("    temperature: 30 °C");
    add("    for: 60 min");
  }

  private double imageAlong() {
    return wishes.along().mm() + 2 * BLEED_MM;
  }

  private double imageAcross() {
    return wishes.across().mm() + 2 * BLEED_MM;
  }

  private double pitch() {
    return imageAlong() + AROUND_IMAGE_MM + BETWEEN_MM;
  }

  private double clothLength() {
    return 2 * MARGIN_MM + (wishes.count() - 1) * pitch() + wishes.along().mm();
  }

  private double clothWidth() {
    return 2 * MARGIN_MM + wishes.across().mm();
  }

  private double clothGrams() {
    return clothLength() * clothWidth() * GRAMS_PER_MM2;
  }

  private void add(String line) {
    lines.add(line);
  }

  private static String cm(double mm) {
    return new Length(mm).text();
  }

  private static String pair(double along, double across) {
    return number(along) + " x " + number(across) + " cm";
  }

  private static String number(double mm) {
    return BigDecimal.valueOf(Math.round(mm * 10), 2).stripTrailingZeros().toPlainString();
  }

  /** Quotes hold whatever a title may be. */
  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
