package strikeoff.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes plans of about 150 lines: the demo plan with a fourth design, other handling times, and
 * numbers drawn anew for each plan, so that no two lay out, dry or need the same. The same count
 * always gives the same plans.
 */
public final class ManyPlans {

  private static final int IN_A_FOLDER = 1000;

  private static final String[] GROUNDS = {"#efe6d3", "#ffffff", "#f4efe4", "#ece4d2", "#e8e8f0"};

  private ManyPlans() {}

  /**
   * @param args the demo plan, the folder to write to, how many plans, and optionally how many
   *     times as long each cloth and each series is
   */
  public static void main(String[] args) throws IOException {
    String demo = Files.readString(Path.of(args[0]));
    Path folder = Path.of(args[1]);
    int count = Integer.parseInt(args[2]);
    int times = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    for (int number = 0; number < count; number++) {
      Path in = folder.resolve(String.format(Locale.ROOT, "hall-%02d", number / IN_A_FOLDER));
      Files.createDirectories(in);
      Files.writeString(
          in.resolve(String.format(Locale.ROOT, "curtain-%05d.yaml", number)),
          plan(demo, number, times));
    }
  }

  private static String plan(String demo, int number, int times) {
    Random random = new Random(number);
    int herons = (4 + random.nextInt(4)) * times;
    double pitch = 62 + random.nextInt(16);
    double length = 0.4 + herons * pitch / 100;
    String plan =
        demo.replace("plan: Estuary curtains", "plan: Estuary curtain " + number)
            .replace("length: 4.3 m", "length: " + metres(length))
            .replace("to: 4.25 m", "to: " + metres(0.05 + 0.3 * Math.floor(length / 0.3 - 0.4)))
            .replace("to: 4.2 m", "to: " + metres(length - 0.1))
            .replace("at: 2 m", "at: " + metres(2 + random.nextInt(20) / 100.0))
            .replace("series: 6, pitch: 70 cm", "series: " + herons + ", pitch: " + pitch + " cm")
            .replace("temperature: 20 °C, humidity: 50 %", "temperature: " + air(random))
            .replace("#efe6d3", GROUNDS[random.nextInt(GROUNDS.length)])
            .replace("artwork: films/heron-blue.png", covers(25 + random.nextInt(30)))
            .replaceAll("artwork: films/[^,}]*-key.png", covers(9))
            .replaceAll("artwork: films/[^,}]*", covers(20))
            .replace("soda ash: 800 g", "soda ash: " + (700 + random.nextInt(300)) + " g")
            .replace("\nscreens:\n", handling(random) + "\nscreens:\n" + screen())
            .replace("\ndesigns:\n", paste(random) + "\ndesigns:\n" + design())
            .replace("around: [herons,", "around: [herons, moths,")
            .replace("  shells:\n", moths(random) + "  shells:\n")
            .replace("  - end of day\n  - print: reed border", step() + "  - print: reed border");
    return times == 1 ? plan : plan.replaceAll("    only: .*\n", "");
  }

  /** Instead of a film, which all of them would share: what a plan costs by itself is measured. */
  private static String covers(int percent) {
    return "covers: " + percent + " %, trap: 1.5 mm";
  }

  private static String metres(double metres) {
    return String.format(Locale.ROOT, "%.2f m", metres);
  }

  private static String air(Random random) {
    return (16 + random.nextInt(10)) + " °C, humidity: " + (35 + random.nextInt(30)) + " %";
  }

  private static String handling(Random random) {
    return "\nhandling:\n  lay: "
        + (15 + random.nextInt(20))
        + " s\n  pull: "
        + (8 + random.nextInt(6))
        + " s\n  lift: 10 s\n  load: 15 min\n  move: 12 min\n  mix: 10 min\n  sew: 30 min\n";
  }

  private static String screen() {
    return "  moth: {frame: 26 x 26 cm, image: 9 x 8 cm, mesh: 61/cm, thread: 64 µm}\n";
  }

  private static String paste(Random random) {
    return "  dusk:\n    medium: dye\n    group: dichlorotriazine\n    colour: \"#7a6a8c\"\n    amount: "
        + (20 + random.nextInt(30))
        + " g\n";
  }

  private static String design() {
    return "  moth:\n    size: 6 x 5 cm\n    separations:\n"
        + "      - {screen: moth, paste: dusk, covers: 30 %, detail: 0.8 mm}\n";
  }

  private static String moths(Random random) {
    return "  moths: {design: moth, anchor: herons, offset: \"38 cm, "
        + (2 + random.nextInt(8))
        + " cm\"}\n";
  }

  private static String step() {
    return "  - print: moths\n    before moving: until lift-safe\n  - end of day\n";
  }
}
