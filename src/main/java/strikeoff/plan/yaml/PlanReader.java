package strikeoff.plan.yaml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.Artworks;
import strikeoff.document.Bounds;
import strikeoff.document.Problem;
import strikeoff.document.SourceMap;
import strikeoff.plan.Acceptance;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.Crew;
import strikeoff.plan.Design;
import strikeoff.plan.Equipment;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Protection;
import strikeoff.plan.Room;
import strikeoff.plan.Screen;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.plan.Table;
import strikeoff.policy.Policy;
import strikeoff.units.Measures;
import strikeoff.units.UnitChoice;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/**
 * Reads a file as a print plan: strictly, so that nothing in it is overlooked, and kindly, so that
 * every mistake is told at once with its place and what was expected. Never throws on any input.
 */
public final class PlanReader {

  private static final int LONGEST_TITLE = 200;
  private static final int LONGEST_NOTES = 10_000;

  private final Policy policy;
  private final Bounds bounds;
  private final UnitChoice units;
  private final Artworks artworks;
  private final Reading reading;

  private PlanReader(
      Policy policy, Bounds bounds, UnitChoice units, Artworks artworks, Reading reading) {
    this.policy = policy;
    this.bounds = bounds;
    this.units = units;
    this.artworks = artworks;
    this.reading = reading;
  }

  /** Sets up what the first plan needs, so that it can be done beside other work. */
  public static void prepare() {
    YamlReader.prepare();
  }

  /**
   * @param file its name, for messages
   * @param bytes UTF-8
   * @param policy where defaults and tables come from
   */
  public static PlanReading read(String file, byte[] bytes, Policy policy) {
    return read(file, bytes, policy, Stock.NONE, Bounds.USUAL, UnitChoice.PLAN, Artworks.nowhere());
  }

  /**
   * @param stock what the plan may name without describing it
   * @param bounds how much of it is taken in
   * @param units in whose units it is answered
   * @param artworks where its films lie
   */
  public static PlanReading read(
      String file,
      byte[] bytes,
      Policy policy,
      Stock stock,
      Bounds bounds,
      UnitChoice units,
      Artworks artworks) {
    return read(
        file,
        YamlReader.read(bytes, bounds, StepPart.VERBS),
        policy,
        stock,
        bounds,
        units,
        artworks,
        new Reading());
  }

  /** Reads a plan from text. */
  public static PlanReading read(String file, String text, Policy policy) {
    return read(file, YamlReader.read(text, StepPart.VERBS), policy, new Reading());
  }

  static PlanReading read(String file, YamlReading yaml, Policy policy, Reading reading) {
    return read(
        file, yaml, policy, Stock.NONE, Bounds.USUAL, UnitChoice.PLAN, Artworks.nowhere(), reading);
  }

  private static PlanReading read(
      String file,
      YamlReading yaml,
      Policy policy,
      Stock stock,
      Bounds bounds,
      UnitChoice units,
      Artworks artworks,
      Reading reading) {
    if (yaml instanceof YamlReading.Faulty f) {
      return unreadable(file, f, policy, stock, bounds, units, artworks);
    }
    Node root = ((YamlReading.Document) yaml).root();
    Places places = Places.of(root);
    Stocked stocked = Stocked.of(root, stock);
    stocked.places().forEach((path, use) -> places.put(path, use.at(), use.end()));
    PrintPlan plan =
        new PlanReader(policy, bounds, units, artworks, reading).plan(stocked, stock, places);
    return reading.problems().none()
        ? new PlanReading.Readable(
            plan, new SourceMap(file, yaml.lines(), places.starts(), places.ends()))
        : new PlanReading.Unreadable(file, reading.problems().sorted(), yaml.lines(), plan.by());
  }

  /** Also with the mistakes of what the text says once its slips are taken as they were meant. */
  private static PlanReading unreadable(
      String file,
      YamlReading.Faulty faulty,
      Policy policy,
      Stock stock,
      Bounds bounds,
      UnitChoice units,
      Artworks artworks) {
    Optional<Node> root = faulty.root().or(() -> before(faulty));
    Reading reading = Reading.of(faulty);
    String by =
        root.map(
                node ->
                    new PlanReader(policy, bounds, units, artworks, reading)
                        .plan(Stocked.of(node, stock), stock, Places.of(node))
                        .by())
            .orElse("");
    List<Problem> problems =
        faulty.root().isPresent() ? reading.problems().sorted() : faulty.problems();
    return new PlanReading.Unreadable(file, problems, faulty.lines(), by);
  }

  /** What stands above the first mistake of a text of which nobody can tell what is meant. */
  private static Optional<Node> before(YamlReading.Faulty faulty) {
    int first = faulty.problems().get(0).position().line();
    String above =
        String.join("\n", faulty.lines().subList(0, Math.min(first - 1, faulty.lines().size())));
    return YamlReader.read(above) instanceof YamlReading.Document d
        ? Optional.of(d.root())
        : Optional.empty();
  }

  private PrintPlan plan(Stocked stocked, Stock stock, Places places) {
    Node root = stocked.root();
    Assumptions assumptions = new Assumptions(policy);
    stocked.taken().forEach(assumptions::taken);
    Draft draft =
        new Draft(
            policy,
            bounds,
            artworks,
            stocked.films(),
            reading,
            assumptions,
            Names.of(root).with(stock));
    Fields f = Fields.of(Item.root(root), "a plan", reading);

    String title = f.required("plan", ValueKinds.text("the plan's title", LONGEST_TITLE));
    String notes = f.optional("notes", ValueKinds.text("a text", LONGEST_NOTES)).orElse("");
    String by = f.optional("by", ValueKinds.text("who made the plan", LONGEST_TITLE)).orElse("");
    ClothPart clothPart = new ClothPart(draft);
    int before = reading.problems().count();
    Cloth cloth = clothPart.cloth(f);
    boolean clothKnown = reading.problems().count() == before;
    Map<String, Seam> seams = clothPart.seams(f, cloth, clothKnown);
    RoomPart room = new RoomPart(draft);
    Crew crew = room.with(room.crew(f), f);
    Map<String, Screen> screens = new ScreenPart(draft).screens(f);
    Map<String, Paste> pastes = new PastePart(draft).pastes(f);
    DesignPart designPart = new DesignPart(draft);
    Map<String, Design> designs = designPart.designs(f);
    Map<String, Arrangement> placements = new PlacementPart(draft, cloth, designs).placements(f);
    List<Step> run = new StepPart(draft, crew, seams, pastes, designs, placements).run(f);
    List<Acceptance> acceptances = new AcceptPart(reading, places.starts().keySet()).acceptances(f);
    Table table = room.table(f);
    Room air = room.room(f);
    HoursPart open = new HoursPart(draft);
    Hours hours = open.dated(open.hours(f), f);
    Handling handling = room.handling(f);
    Equipment equipment = room.equipment(f);
    List<Protection> worn = room.worn(f);
    // All of it is read by now, so that its units are known.
    Measures measures = units.over(reading.measures());
    PrintPlan plan =
        new PrintPlan(
            title,
            notes,
            cloth,
            seams,
            table,
            air,
            crew,
            hours,
            handling,
            equipment,
            screens,
            pastes,
            designPart.joined(designs, table),
            placements,
            run,
            worn,
            acceptances,
            assumptions.all(reading, measures),
            measures,
            by);
    f.done();
    return plan;
  }
}
