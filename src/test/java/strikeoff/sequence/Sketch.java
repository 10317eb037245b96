package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.colour.Swatches;
import strikeoff.document.PlanPath;
import strikeoff.layout.Layout;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Arrangement.Point;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.plan.Seam;
import strikeoff.plan.Table;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;

/**
 * A plan for tests of colours and of the order of work, made bit by bit. Designs are 20 by 20 cm
 * and their separations fill them unless said otherwise; lengths are in centimetres.
 */
public final class Sketch {

  public static final Policy POLICY = PolicyReader.builtIn();

  private static final Length SIDE = Length.ofCm(20);
  private static final Angle UNTURNED = new Angle(0);

  private final Map<String, Seam> seams = new LinkedHashMap<>();
  private final Map<String, Screen> screens = new LinkedHashMap<>();
  private final Map<String, Paste> pastes = new LinkedHashMap<>();
  private final Map<String, Design> designs = new LinkedHashMap<>();
  private final Map<String, Arrangement> arrangements = new LinkedHashMap<>();
  private int ground = 0xffffff;
  private boolean railed = true;
  private Map<String, Share> fibres = Map.of("cotton", new Share(1));
  private Optional<Share> shrinks = Optional.empty();

  public Sketch ground(int rgb) {
    ground = rgb;
    return this;
  }

  public Sketch byEye() {
    railed = false;
    return this;
  }

  /** Cloth that was not washed and loses so much of its length, and half as much of its width. */
  public Sketch shrinking(double share) {
    shrinks = Optional.of(new Share(share));
    return this;
  }

  public Sketch fibres(Map<String, Share> shares) {
    fibres = shares;
    return this;
  }

  public Sketch dye(String name, int rgb) {
    return paste(name, Medium.DYE, rgb, true);
  }

  public Sketch paint(String name, int rgb) {
    return paste(name, Medium.PAINT, rgb, false);
  }

  /** A dye that hides what lies under it, as one in a white paste does. */
  public Sketch coveringDye(String name, int rgb) {
    return paste(name, Medium.DYE, rgb, false);
  }

  private Sketch paste(String name, Medium medium, int rgb, boolean transparent) {
    pastes.put(name, PlainParts.paste(name, medium, colour(rgb), transparent));
    return this;
  }

  /**
   * A design of separations given as {@code paste}, {@code paste 40%}, {@code paste key}, {@code
   * paste trap 1mm}; one with {@code left}, {@code right}, {@code near} or {@code far} fills that
   * half of the design only.
   */
  public Sketch design(String name, String... separations) {
    List<Design.Separation> list = new ArrayList<>();
    for (String text : separations) {
      list.add(separation(name, list.size() + 1, text));
    }
    designs.put(name, new Design(name, SIDE, SIDE, list, List.of(), path("designs." + name)));
    return this;
  }

  private Design.Separation separation(String design, int number, String text) {
    String[] words = text.split(" ");
    double share = 0.3;
    boolean key = false;
    Optional<Length> trap = Optional.empty();
    List<String> half = List.of(words);
    boolean narrow = half.contains("left") || half.contains("right");
    boolean low = half.contains("near") || half.contains("far");
    for (String word : words) {
      key |= word.equals("key");
      if (word.endsWith("%")) {
        share = Double.parseDouble(word.replace("%", "")) / 100;
      }
      if (word.endsWith("mm")) {
        trap = Optional.of(new Length(Double.parseDouble(word.replace("mm", ""))));
      }
    }
    String screen = design + " " + number;
    screens.put(screen, screen(screen));
    return new Design.Separation(
        number,
        screen,
        words[0],
        Length.ofCm(half.contains("right") ? 10 : 0),
        Length.ofCm(half.contains("far") ? 10 : 0),
        narrow ? Length.ofCm(10) : SIDE,
        low ? Length.ofCm(10) : SIDE,
        new Area((narrow || low ? 200 : 400) * share),
        1,
        key,
        trap,
        Optional.empty(),
        Optional.empty(),
        path("designs." + design + ".separations[" + (number - 1) + "]"));
  }

  private static Screen screen(String name) {
    return new Screen(
        name,
        Length.ofCm(40),
        Length.ofCm(40),
        Length.ofCm(4),
        SIDE,
        SIDE,
        new MeshCount(43),
        new Length(0.08),
        Optional.empty(),
        path("screens." + name));
  }

  /** Placements with their lower left corners at those lengths, 10 cm from the near edge. */
  public Sketch at(String name, String design, double... x) {
    List<Point> points = new ArrayList<>();
    for (double cm : x) {
      points.add(new Point(Length.ofCm(cm), Length.ofCm(10)));
    }
    return arrange(
        new Arrangement.Placed(name, design, points, UNTURNED, false, path("placements." + name)));
  }

  /** A placement at each one of another arrangement, that far along from it. */
  public Sketch anchored(String name, String design, String anchor, double dx) {
    return arrange(
        new Arrangement.Anchored(
            name,
            design,
            anchor,
            List.of(),
            Length.ofCm(dx),
            Length.ofCm(0),
            UNTURNED,
            false,
            path("placements." + name)));
  }

  public Sketch seam(String name, double at, boolean sewnBefore) {
    seams.put(
        name,
        new Seam(
            name, Length.ofCm(at), Length.ofCm(1.5), false, sewnBefore, path("seams." + name)));
    return this;
  }

  private Sketch arrange(Arrangement arrangement) {
    arrangements.put(arrangement.name(), arrangement);
    return this;
  }

  /** The run of this sketch. */
  public PrintDay run() {
    return new PrintDay(this);
  }

  /** The plan without a run. */
  PrintPlan plan() {
    return plan(List.of());
  }

  PrintPlan plan(List<strikeoff.plan.Step> run) {
    return new PrintPlan(
        "sketch",
        "",
        cloth(),
        seams,
        new Table(
            Length.ofCm(280),
            Length.ofCm(160),
            railed,
            Optional.empty(),
            Optional.empty(),
            path("table")),
        new strikeoff.plan.Room(
            new strikeoff.units.Temperature(20),
            new strikeoff.units.Share(0.5),
            strikeoff.plan.Draught.STILL,
            path("room")),
        null,
        null,
        null,
        null,
        screens,
        pastes,
        designs,
        arrangements,
        run,
        List.of(),
        List.of(),
        List.of(),
        Measures.METRIC,
        "");
  }

  public Swatches swatches() {
    return Swatches.of(plan(), Layout.of(plan(), POLICY), POLICY);
  }

  private Cloth cloth() {
    Cloth cloth =
        PlainParts.cloth(
            fibres, new ArealMass(180), Length.ofCm(400), Length.ofCm(140), false, colour(ground));
    return shrinks
        .map(
            share ->
                new Cloth(
                    fibres,
                    cloth.mass(),
                    cloth.width(),
                    cloth.length(),
                    false,
                    cloth.ground(),
                    false,
                    share,
                    new Share(share.fraction() / 2),
                    cloth.startAllowance(),
                    cloth.endAllowance(),
                    cloth.nearAllowance(),
                    cloth.farAllowance(),
                    cloth.selvedge(),
                    cloth.path()))
        .orElse(cloth);
  }

  private static Colour colour(int rgb) {
    Colour colour = new Colour(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff, "");
    return new Colour(colour.red(), colour.green(), colour.blue(), colour.hex());
  }

  private static PlanPath path(String text) {
    return new PlanPath(text);
  }
}
