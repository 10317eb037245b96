package strikeoff.day;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import strikeoff.artwork.DemoFilms;
import strikeoff.day.facts.Remedy;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.yaml.PlanReading;

/** A plan as its file has it, with waits written into the text as a printer would. */
record DemoFile(List<String> lines) {

  static DemoFile of(String name) throws IOException {
    return new DemoFile(Files.readAllLines(Path.of("plans").resolve(name)));
  }

  PrintPlan plan() {
    return read().plan();
  }

  Timeline timeline() {
    PrintPlan plan = plan();
    return Timeline.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }

  /** The file with a remedy written into the step it names. */
  DemoFile with(Remedy remedy) {
    int step = read().map().position(new PlanPath("run[" + (remedy.step() - 1) + "]")).line() - 1;
    List<String> text = new ArrayList<>(lines);
    switch (remedy.how()) {
      case DRY_STEP -> text.add(step, "  - dry: " + remedy.minutes() + " min");
      case EVERY_OTHER -> text.add(step + 1, "    every other: yes");
      case PAUSE -> write(text, step, "pause", remedy.minutes());
      case DRY_BETWEEN_COLOURS -> write(text, step, "dry between colours", remedy.minutes());
      case DRY_BETWEEN_PASSES -> write(text, step, "dry between passes", remedy.minutes());
      case BEFORE_MOVING -> write(text, step, "before moving", remedy.minutes());
    }
    return new DemoFile(text);
  }

  private static void write(List<String> text, int step, String key, long minutes) {
    String line = "    " + key + ": " + minutes + " min";
    for (int i = step + 1; i < text.size() && text.get(i).startsWith("    "); i++) {
      if (text.get(i).strip().startsWith(key + ":")) {
        text.set(i, line);
        return;
      }
    }
    text.add(step + 1, line);
  }

  private PlanReading.Readable read() {
    String text = String.join("\n", lines);
    return (PlanReading.Readable) DemoFilms.read("plan.yaml", text, PrintDay.POLICY);
  }
}
