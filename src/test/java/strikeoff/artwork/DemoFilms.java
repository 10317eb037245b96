package strikeoff.artwork;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import strikeoff.document.Bounds;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Policy;
import strikeoff.units.UnitChoice;

/** The films of the demo plans, for tests that read a plan's text or lay it elsewhere. */
public final class DemoFilms {

  /** They are read and measured once for all tests of a run. */
  private static final Artworks BESIDE =
      Artworks.nowhere().beside(Path.of("plans/estuary-curtains.yaml"));

  private DemoFilms() {}

  public static Artworks beside() {
    return BESIDE;
  }

  /** Reads a text as if it lay beside the demo plans. */
  public static PlanReading read(String name, String text, Policy policy) {
    return PlanReader.read(
        name,
        text.getBytes(StandardCharsets.UTF_8),
        policy,
        Stock.NONE,
        Bounds.USUAL,
        UnitChoice.PLAN,
        BESIDE);
  }

  /** The same of one that can be read. */
  public static PrintPlan plan(String text, Policy policy) {
    return ((PlanReading.Readable) read("plan.yaml", text, policy)).plan();
  }

  /** Lays the films of the estuary curtains beside a copy of the plan. */
  public static void layInto(Path folder) throws IOException {
    Path films = Files.createDirectories(folder.resolve("films"));
    try (Stream<Path> all = Files.list(Path.of("plans/films"))) {
      for (Path film : (List<Path>) all.sorted().toList()) {
        Files.copy(film, films.resolve(film.getFileName().toString()));
      }
    }
  }
}
