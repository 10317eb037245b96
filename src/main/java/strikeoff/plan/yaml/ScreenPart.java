package strikeoff.plan.yaml;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Screen;
import strikeoff.policy.Default;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Script;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;

/** Reads the screens. */
final class ScreenPart {

  private final Draft draft;
  private final Assumptions assumptions;

  ScreenPart(Draft draft) {
    this.draft = draft;
    this.assumptions = draft.assumptions();
  }

  Map<String, Screen> screens(Fields root) {
    return root.namedUnder("screens", "the screens")
        .map(f -> f.each(this::screen))
        .orElse(Map.of());
  }

  private Screen screen(Item item) {
    Fields f = Everyday.called("screen", Fields.of(item, "a screen", draft.reading()));
    Expected<Length> length = QuantityKinds.aboveZero(Length.class);
    Pair frame = f.required("frame", QuantityKinds.size());
    Pair image = f.required("image", QuantityKinds.size());
    MeshCount mesh = f.required("mesh", new Mesh());
    Screen screen =
        new Screen(
            item.name(),
            frame.along(),
            frame.across(),
            assumptions.or(
                f,
                "rail",
                length,
                assumptions.standard().screen().rail(),
                "width of the frame's rail"),
            image.along(),
            image.across(),
            mesh,
            assumptions.or(f, "thread", length, nearestThread(mesh), "thread of the mesh"),
            f.optional("squeegee", length),
            f.path());
    f.done();
    check(f, screen);
    return screen;
  }

  private static void check(Fields f, Screen s) {
    double least = Math.min(s.frameLength().mm(), s.frameWidth().mm());
    if (f.sound("frame", "rail") && 2 * s.rail().mm() >= least) {
      f.wrong(
          f.has("rail") ? "rail" : "frame",
          "rails of " + s.rail().text(f.measures()) + " leave no inside of the frame");
    }
    double pitch = 10 / s.mesh().perCm();
    if (f.sound("mesh", "thread") && s.thread().mm() >= pitch) {
      f.wrong(
          f.has("thread") ? "thread" : "mesh",
          "a thread of "
              + s.thread().thinText(f.measures())
              + " leaves no opening at "
              + s.mesh().text(f.measures())
              + ", where threads are "
              + new Length(pitch).thinText(f.measures())
              + " apart");
    }
  }

  /** A count without its unit may be meant either way, so both are offered. */
  private final class Mesh implements Expected<MeshCount> {

    private final Expected<MeshCount> plain = QuantityKinds.aboveZero(MeshCount.class);

    @Override
    public String words() {
      return plain.words();
    }

    @Override
    public MeshCount standIn() {
      return plain.standIn();
    }

    @Override
    public Optional<MeshCount> read(Item item, Reading reading) {
      if (item.node() instanceof Node.Scalar s && s.text().matches("[1-9]\\d{0,3}")) {
        reading.wrong(
            item,
            Script.quoted(s.text())
                + " has no unit; "
                + words()
                + " was expected; did you mean "
                + either(s.text())
                + "?");
        return Optional.empty();
      }
      return plain.read(item, reading);
    }

    /** The one that comes nearer to a usual mesh first. */
    private String either(String number) {
      MeshCount perCm = new MeshCount(Double.parseDouble(number));
      MeshCount perInch = new MeshCount(Double.parseDouble(number) / 2.54);
      String cm = number + "/cm";
      String inch = number + "/in (about " + Math.round(perInch.perCm()) + "/cm)";
      return away(perInch) < away(perCm) ? inch + " or " + cm : cm + " or " + inch;
    }

    private double away(MeshCount mesh) {
      return threads().keySet().stream()
          .mapToDouble(usual -> ScreenPart.away(usual, mesh))
          .min()
          .orElse(0);
    }
  }

  /** The default of the nearest count, by ratio, since meshes are graded so. */
  private Default<Length> nearestThread(MeshCount mesh) {
    return threads().entrySet().stream()
        .min(Comparator.comparingDouble(thread -> away(thread.getKey(), mesh)))
        .map(Map.Entry::getValue)
        .orElseThrow(() -> new IllegalStateException("the policy has no default of a thread"));
  }

  private Map<MeshCount, Default<Length>> threads() {
    return assumptions.standard().screen().thread();
  }

  private static double away(MeshCount usual, MeshCount mesh) {
    return Math.abs(Math.log(usual.perCm() / mesh.perCm()));
  }
}
