package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import strikeoff.document.Scalars;
import strikeoff.units.Pair;

/**
 * Writes a plan of what a printer answered. What was said stands in it as it was said; everything
 * else is worked out in the same units. Whether it is printable the check tells, not this class.
 */
public final class AnsweredPlan {

  private static final double SQUARE_METRE = 1e6;

  /** Those that are offered; they are sold as 43-80. */
  private static final List<String> USUAL_MESHES = List.of("43/cm", "110/in");

  private final PlanAnswers answers;
  private final FirstDesigns motifs;
  private final PlanNumbers numbers;
  private final FixingText fixing;
  private final Spread spread;
  private final List<String> lines = new ArrayList<>();

  private AnsweredPlan(PlanAnswers answers, FixingMethod fixing, FirstDesigns motifs) {
    this.answers = answers;
    this.motifs = motifs;
    this.numbers = new PlanNumbers(answers.units());
    this.fixing = new FixingText(fixing, answers.dye(), numbers);
    this.spread = answers.spread();
  }

  /**
   * The plan's text, as YAML; ends with a line end.
   *
   * @param colours the answered ones, in the order of printing
   * @param days on how many days it is printed, from 1
   */
  public static String text(
      PlanAnswers answers, FixingMethod fixing, List<String> colours, int days) {
    Said<Pair> size = new Said<>(said(answers.motif()), answers.motif().value());
    return text(answers, FirstDesigns.guessed(colours, size), fixing, days);
  }

  /**
   * The same of a design that is known.
   *
   * @param motifs one design
   */
  public static String text(
      PlanAnswers answers, FirstDesigns motifs, FixingMethod fixing, int days) {
    AnsweredPlan plan = new AnsweredPlan(answers, fixing, motifs);
    plan.cloth();
    plan.tools();
    plan.placements();
    plan.run(days);
    return String.join("\n", plan.lines) + "\n";
  }

  /** Numbers of days that share the copies out otherwise, the fewest first. */
  public static List<Integer> days(PlanAnswers answers) {
    int most = answers.spread().alongCount();
    return IntStream.of(1, 2, 3, 4, 6, 8, 12).filter(d -> d == 1 || d <= most).boxed().toList();
  }

  private void cloth() {
    add("# A first plan, of your answers: change what you like, and check it again with");
    add("# strikeoff check.");
    add("plan: " + Scalars.quoted(answers.title()));
    add("cloth:");
    add("  fibre: " + Scalars.quoted(answers.fibre()));
    add("  mass: " + said(answers.mass()));
    add("  length: " + said(answers.length()));
    add("  width: " + said(answers.width()));
    add("  washed: yes             # before printing, so that it shrinks no more");
    Pair table = answers.table().value();
    add("table:");
    add("  length: " + numbers.text(table.along().mm()));
    add("  width: " + numbers.text(table.across().mm()));
    add("  railed: yes");
    if (answers.boards() > 0) {
      Pair board = answers.board();
      add(
          "  stations: {count: "
              + answers.boards()
              + ", length: "
              + numbers.text(board.along().mm())
              + ", width: "
              + numbers.text(board.across().mm())
              + "}");
    }
    add("room: {temperature: " + numbers.warmth(20, 70) + ", humidity: 50 %, air: still}");
    add("hours: 09:00-17:00");
    add(fixing.protection());
  }

  private void tools() {
    Pair image = PlanAnswers.image(answers.motif().value(), answers.units());
    add("screens:");
    for (FirstDesigns.Layer layer : motif().layers()) {
      add("  " + Scalars.text(layer.screen()) + ":");
      add("    frame: " + said(answers.frame()));
      add("    image: " + numbers.pair(image.along().mm(), image.across().mm()));
      add("    mesh: " + said(answers.mesh()));
      if (USUAL_MESHES.contains(answers.mesh().text())) {
        add("    thread: 80 µm       # the second figure on the mesh's label");
      }
    }
    lines.addAll(ColourLines.of(motifs, fixing));
  }

  private void placements() {
    add("placements:");
    String start = numbers.text(spread.start());
    switch (answers.printed()) {
      case MOTIFS ->
          add(
              "  row: {design: "
                  + Scalars.text(motif().name())
                  + ", series: "
                  + spread.alongCount()
                  + ", pitch: "
                  + said(answers.pitch())
                  + ", start: "
                  + start
                  + ", across: "
                  + numbers.text(spread.near())
                  + "}");
      case NEAR_BORDER, FAR_BORDER, BORDERS -> names().forEach(this::border);
      case SMALL_REPEATS ->
          add(
              "  repeats: {design: "
                  + Scalars.text(motif().name())
                  + ", fill: grid, pitch: "
                  + numbers.pair(spread.pitch(), spread.pitch())
                  + ", from: "
                  + start
                  + ", to: "
                  + numbers.text(end())
                  + ", near: "
                  + numbers.text(spread.near())
                  + ", far: "
                  + numbers.text(
                      spread.near() + (spread.acrossCount() - 1) * spread.pitch() + spread.across())
                  + ", count: "
                  + spread.count()
                  + "}");
    }
  }

  private double end() {
    double last = answers.printed().isBorder() ? spread.pitch() : spread.along();
    return spread.start() + (spread.alongCount() - 1) * spread.pitch() + last;
  }

  private void border(String name) {
    boolean far = name.startsWith("far");
    add(
        "  "
            + name
            + ": {design: "
            + Scalars.text(motif().name())
            + ", border: "
            + (far ? "far" : "near")
            + ", from: "
            + numbers.text(spread.start())
            + ", to: "
            + numbers.text(end())
            + ", repeat: "
            + said(answers.pitch())
            + ", inset: "
            + numbers.text(spread.near())
            + (far ? ", turn: 180°" : "")
            + "}");
  }

  private List<String> names() {
    return switch (answers.printed()) {
      case MOTIFS -> List.of("row");
      case NEAR_BORDER -> List.of("near border");
      case FAR_BORDER -> List.of("far border");
      case BORDERS -> List.of("near border", "far border");
      case SMALL_REPEATS -> List.of("repeats");
    };
  }

  private void run(int days) {
    add("run:");
    add("  - mix: all");
    int each = answers.printed() == PrintKind.BORDERS ? spread.alongCount() : spread.count();
    for (int day = 0; day < days; day++) {
      int first = day * each / days + 1;
      int last = (day + 1) * each / days;
      String copies = ": " + (first == last ? "" + first : first + "-" + last);
      List<String> names = names();
      if (days == 1) {
        add("  - print: " + (names.size() == 1 ? names.get(0) : names.toString()));
      } else {
        add("  - print: {" + String.join(copies + ", ", names) + copies + "}");
      }
      if (motif().layers().size() > 1) {
        add("    dry between colours: until frame-safe");
      }
      if (spread.crowded(answers.frame().value())) {
        add("    dry between neighbours: until frame-safe");
      }
      add("    before moving: until lift-safe");
      add("  - end of day            # dries overnight");
    }
    double square = spread.length() * spread.width() / SQUARE_METRE;
    lines.addAll(fixing.steps(square * answers.mass().value().base()));
  }

  private FirstDesigns.Motif motif() {
    return motifs.motifs().get(0);
  }

  private static String said(Said<?> said) {
    return Scalars.quoted(said.text());
  }

  private void add(String line) {
    lines.add(line);
  }
}
