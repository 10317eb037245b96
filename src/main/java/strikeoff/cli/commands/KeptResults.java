package strikeoff.cli.commands;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import strikeoff.cli.files.CacheKey;
import strikeoff.cli.files.KeptFilms;
import strikeoff.cli.files.PlanArtwork;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ProgramBytes;
import strikeoff.cli.files.ResultCache;
import strikeoff.document.Bounds;
import strikeoff.document.GivenUp;
import strikeoff.report.json.JsonReading;
import strikeoff.report.json.JsonReport;
import strikeoff.report.outcome.Outcome;

/**
 * What earlier runs made of plans that are the same to the byte, as are their films, judged and
 * told in the same way.
 */
final class KeptResults {

  private final ResultCache cache;
  private final Studios studios;
  private final Bounds bounds;

  private final KeptFilms films;

  /** What is the same for all plans of a run. */
  private final byte[] ofTheRun;

  /**
   * @param options all that changes what is told of a plan
   * @throws IOException if the program can't tell which one it is
   */
  KeptResults(ResultCache cache, Studios studios, Bounds bounds, List<String> options)
      throws IOException {
    this.cache = cache;
    this.studios = studios;
    this.bounds = bounds;
    CacheKey key = new CacheKey();
    ProgramBytes.into(key);
    byte[] program =
        key.put("program", List.of(new Strikeoff.Version().getVersion()))
            .put("java", System.getProperty("java.vm.name") + Runtime.version())
            .put("system", System.getProperty("os.name") + System.getProperty("os.arch"))
            .bytes();
    this.films = new KeptFilms(cache, program);
    this.ofTheRun =
        new CacheKey()
            .put("program", program)
            .put("names", System.getProperty("sun.jnu.encoding", ""))
            .put("bounds", bounds.toString())
            .put("options", options)
            .bytes();
  }

  /** Measures of films, which plans may share. */
  KeptFilms films() {
    return films;
  }

  /** A plan's bytes, and the key of what comes of them. */
  record Plan(PlanFile file, byte[] bytes, byte[] key) {
    InputStream stream() {
      return new ByteArrayInputStream(bytes);
    }
  }

  /** Reads a plan, once; empty if nothing of it can be kept. */
  Optional<Plan> plan(PlanFile file) {
    if (file.isStandardInput()) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file.path())) {
      byte[] bytes = in.readNBytes(bounds.bytes() + 1);
      CacheKey key =
          new CacheKey()
              .put("run", ofTheRun)
              .put("judged by", studios.key(file))
              .put("name", file.name())
              .put("plan", bytes)
              .put("films of the studio", studios.films(file, bytes));
      PlanArtwork.into(key, file, bytes, bounds);
      return Optional.of(new Plan(file, bytes, key.bytes()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  Optional<PlanTold> find(Plan plan) {
    return cache
        .find(plan.key())
        .filter(entry -> entry.pages().size() == 2)
        .flatMap(
            entry ->
                JsonReading.plan(entry.outcome())
                    .filter(outcome -> outcome.file().equals(plan.file().name()))
                    .map(
                        outcome ->
                            new PlanTold(
                                entry.lines(),
                                outcome,
                                entry.pages().get(0),
                                entry.pages().get(1))));
  }

  /** Keeps it, unless it may come out otherwise another time. */
  void keep(Plan plan, PlanTold known) {
    Outcome outcome = known.outcome();
    if (outcome.failure().isEmpty() && outcome.failedRules().isEmpty() && !GivenUp.isAsked()) {
      cache.keep(
          plan.key(),
          new ResultCache.Entry(
              known.lines(), JsonReport.plan(outcome), List.of(known.page(), known.sheets())));
    }
  }

  /** Ends the run's use of the cache: why something could not be kept, if so. */
  Optional<String> close() {
    cache.tidy();
    return cache.trouble();
  }
}
