package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Scalars;
import strikeoff.units.Pair;

/**
 * Writes a small plan with comments. Sizes follow from the motif: a frame that holds it, a pitch at
 * which no frame lies on its neighbour's print, a cloth that holds the row, a bath that holds the
 * cloth. Whether it is printable the check tells, not this class.
 */
public final class StartPlan {

  private static final double GRAMS_PER_MM2 = 200e-6;

  private final Wishes wishes;
  private final FirstDesigns motifs;
  private final PlanNumbers numbers;
  private final FixingText fixing;
  private final RoundSizes round;
  private final List<String> lines = new ArrayList<>();

  private StartPlan(Wishes wishes, FirstDesigns motifs, FixingMethod fixing) {
    this.wishes = wishes;
    this.motifs = motifs;
    this.numbers = new PlanNumbers(wishes.units());
    this.fixing = new FixingText(fixing, wishes.dye(), numbers);
    this.round = RoundSizes.of(numbers);
  }

  /** The plan's text, as YAML; ends with a line end. */
  public static String text(Wishes wishes, FixingMethod fixing) {
    Pair size = new Pair(wishes.along(), wishes.across());
    String said = new PlanNumbers(wishes.units()).pair(size.along().mm(), size.across().mm());
    return text(
        wishes, FirstDesigns.guessed(wishes.colours(), new Said<>(said, size)), fixing, false);
  }

  /**
   * The same of designs that are known.
   *
   * @param apart true if each of them has a day of its own
   */
  public static String text(
      Wishes wishes, FirstDesigns motifs, FixingMethod fixing, boolean apart) {
    StartPlan plan = new StartPlan(wishes, motifs, fixing);
    plan.cloth();
    plan.tools();
    plan.motif();
    plan.run(apart);
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
    for (FirstDesigns.Motif motif : motifs.motifs()) {
      String image = pair(along(motif) + 2 * round.bleed(), across(motif) + 2 * round.bleed());
      String frame = pair(along(motif) + aroundMotif(), across(motif) + aroundMotif());
      for (FirstDesigns.Layer layer : motif.layers()) {
        add(
            "  "
                + Scalars.text(layer.screen())
                + ": {frame: "
                + frame
                + ", image: "
                + image
                + ", mesh: "
                + (numbers.isMetric() ? "43/cm" : "110/in")
                + ", thread: 80 µm}");
      }
    }
  }

  private void motif() {
    lines.addAll(ColourLines.of(motifs, fixing));
    add("placements:");
    double start = round.margin();
    for (FirstDesigns.Motif motif : motifs.motifs()) {
      add(
          "  "
              + Scalars.text(motif.placement())
              + ": {design: "
              + Scalars.text(motif.name())
              + ", series: "
              + wishes.count()
              + ", pitch: "
              + text(pitch(motif))
              + ", start: "
              + text(start)
              + ", across: "
              + text(round.margin())
              + "}");
      start += wishes.count() * pitch(motif);
    }
  }

  private void run(boolean apart) {
    List<String> rows = motifs.motifs().stream().map(m -> Scalars.text(m.placement())).toList();
    add("run:");
    add("  - mix: all");
    if (apart) {
      rows.forEach(this::day);
    } else {
      day(rows.size() == 1 ? rows.get(0) : rows.toString());
    }
    lines.addAll(fixing.steps(clothGrams()));
  }

  private void day(String printed) {
    add("  - print: " + printed);
    add("    dry between colours: until frame-safe");
    add("    before moving: until lift-safe");
    add("  - end of day            # dries overnight");
  }

  private static double along(FirstDesigns.Motif motif) {
    return motif.size().value().along().mm();
  }

  private static double across(FirstDesigns.Motif motif) {
    return motif.size().value().across().mm();
  }

  /** From the motif to the outside of the frame, on both sides together. */
  private double aroundMotif() {
    return 2 * round.bleed() + round.aroundImage();
  }

  /** No frame lies on its neighbour's print. */
  private double pitch(FirstDesigns.Motif motif) {
    return along(motif) + aroundMotif() + round.between();
  }

  /** Rows lie one behind the other along the cloth, as far apart as their frames want. */
  private double clothLength() {
    double rows = motifs.motifs().stream().mapToDouble(m -> wishes.count() * pitch(m)).sum();
    return 2 * round.margin() + rows - aroundMotif() - round.between();
  }

  private double clothWidth() {
    double widest = motifs.motifs().stream().mapToDouble(StartPlan::across).max().orElseThrow();
    return 2 * round.margin() + widest;
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
