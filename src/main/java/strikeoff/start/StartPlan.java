package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Scalars;

/**
 * Writes a small plan with comments. Sizes follow from the motif: a frame that holds it, a pitch at
 * which no frame lies on its neighbour's print, a cloth that holds the row, a bath that holds the
 * cloth. Whether it is printable the check tells, not this class.
 */
public final class StartPlan {

  private static final double GRAMS_PER_MM2 = 200e-6;

  private final Wishes wishes;
  private final PlanNumbers numbers;
  private final FixingText fixing;
  private final RoundSizes round;
  private final List<String> lines = new ArrayList<>();

  private StartPlan(Wishes wishes, FixingMethod fixing) {
    this.wishes = wishes;
    this.numbers = new PlanNumbers(wishes.units());
    this.fixing = new FixingText(fixing, wishes.dye(), numbers);
    this.round = RoundSizes.of(numbers);
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
    add("plan: " + Scalars.quoted(wishes.title()));
    add("cloth:");
    add("  fibre: " + Scalars.quoted(wishes.fibre()));
    add("  mass: " + (numbers.isMetric() ? "200 g/m²" : "6 oz/yd²"));
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
            + (numbers.isMetric() ? "20 °C" : "70 °F")
            + ", humidity: 50 %, air: still}");
    add("hours: 09:00-17:00");
    add(fixing.protection());
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
              + (numbers.isMetric() ? "43/cm" : "110/in")
              + ", thread: 80 µm}");
    }
  }

  private void motif() {
    lines.addAll(
        ColourLines.of(wishes.colours(), fixing, pair(wishes.along().mm(), wishes.across().mm())));
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
    lines.addAll(fixing.steps(clothGrams()));
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
    return numbers.text(mm);
  }

  private String pair(double along, double across) {
    return numbers.pair(along, across);
  }
}
