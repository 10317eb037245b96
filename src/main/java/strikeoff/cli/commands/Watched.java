package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import strikeoff.cli.files.PlanArtwork;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.Surroundings;

/**
 * The plans below a folder, and which of them were saved, or had their policy, the own rules or a
 * film saved, since they were last asked for.
 */
final class Watched {

  private static final int MOST_NAMED = 3;

  private final Surroundings here;
  private final String folder;
  private final int most;
  private final Governing governing;

  /** The films that each plan and policy names, by its stamp. */
  private Map<String, List<Path>> artwork = Map.of();

  private State known = new State(Map.of(), Map.of(), "");

  /** As it was at the last look, judged or not. */
  private State seen = known;

  Watched(Surroundings here, StudioOptions options, String folder, int most) {
    this.here = here;
    this.folder = folder;
    this.most = most;
    this.governing = new Governing(here, options);
  }

  /**
   * What there is now.
   *
   * @param all every plan, in their order
   * @param due those to be checked again
   * @param judging true if policies or own rules changed
   * @param what was saved, came, went, or is judged by something else, a line each
   */
  record Changed(List<PlanFile> all, List<PlanFile> due, boolean judging, List<String> what) {}

  /**
   * Files by what would tell that they were written again.
   *
   * @param plans of each plan, its own stamp
   * @param judged of each plan, those of all files that it is judged by
   * @param films those of all films
   */
  private record State(Map<PlanFile, String> plans, Map<PlanFile, String> judged, String films) {}

  Found look() {
    return PlanFiles.of(List.of(folder), here, most, PlanFiles.MAX_PLANS, "-");
  }

  /** Folders to watch besides the plans' own. */
  Set<Path> besides() {
    return governing.folders(look().plans());
  }

  /** True if something was saved, made or taken away that a plan's verdict may depend on. */
  boolean moved() {
    seen = state();
    return !seen.equals(known);
  }

  /** True if a film is among it: films are long, and are written bit by bit. */
  boolean filmsMoved() {
    return !seen.films().equals(known.films());
  }

  /** True if all is as it was at the last look: nobody is in the midst of writing it. */
  boolean isSettled() {
    State before = seen;
    seen = state();
    return seen.equals(before);
  }

  Changed changed() {
    State now = state();
    List<PlanFile> due = new ArrayList<>();
    List<String> fresh = new ArrayList<>();
    List<String> saved = new ArrayList<>();
    List<String> judged = new ArrayList<>();
    for (PlanFile plan : now.plans().keySet()) {
      boolean written = !now.plans().get(plan).equals(known.plans().get(plan));
      if (written || !now.judged().get(plan).equals(known.judged().get(plan))) {
        due.add(plan);
        List<String> kind = !known.plans().containsKey(plan) ? fresh : written ? saved : judged;
        kind.add(plan.name());
      }
    }
    List<String> gone =
        known.plans().keySet().stream()
            .filter(plan -> !now.plans().containsKey(plan))
            .map(PlanFile::name)
            .toList();
    boolean judging = !now.judged().equals(known.judged());
    known = now;
    List<String> what = new ArrayList<>();
    told("new", fresh, what);
    told("saved", saved, what);
    told("judged by what was saved", judged, what);
    told("gone", gone, what);
    return new Changed(List.copyOf(now.plans().keySet()), due, judging, what);
  }

  /** A few by name, more of them by number. */
  private static void told(String kind, List<String> plans, List<String> what) {
    if (plans.size() > MOST_NAMED) {
      what.add(kind + ": " + plans.size() + " plans");
    } else if (!plans.isEmpty()) {
      what.add(kind + ": " + String.join(", ", plans));
    }
  }

  private State state() {
    Map<PlanFile, String> plans = new LinkedHashMap<>();
    Map<PlanFile, String> judged = new LinkedHashMap<>();
    Map<Path, String> policies = new LinkedHashMap<>();
    Map<String, List<Path>> films = new HashMap<>();
    String rules = "";
    for (Path rule : governing.rules()) {
      rules += stamp(rule);
    }
    for (PlanFile plan : look().plans()) {
      StringBuilder by = new StringBuilder(rules);
      for (Path policy : governing.policies(plan)) {
        by.append(
            policies.computeIfAbsent(
                policy,
                p -> {
                  String written = stamp(p);
                  return written + films(written, films, () -> PlanArtwork.ofStudio(p));
                }));
      }
      String own = stamp(plan.path());
      plans.put(plan, own);
      by.append(films(own, films, () -> PlanArtwork.of(plan)));
      judged.put(plan, by.toString());
    }
    artwork = films;
    String pictures =
        films.values().stream()
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .map(Watched::stamp)
            .collect(Collectors.joining());
    return new State(plans, judged, pictures);
  }

  /** The stamps of a file's films. What is as it was names the films that it named. */
  private String films(String stamp, Map<String, List<Path>> films, Supplier<List<Path>> named) {
    films.put(stamp, artwork.containsKey(stamp) ? artwork.get(stamp) : named.get());
    StringBuilder all = new StringBuilder();
    films.get(stamp).forEach(film -> all.append(stamp(film)));
    return all.toString();
  }

  private static String stamp(Path path) {
    try {
      BasicFileAttributes file = Files.readAttributes(path, BasicFileAttributes.class);
      return path + " " + file.lastModifiedTime() + " " + file.size() + " " + file.fileKey() + "\n";
    } catch (IOException e) {
      return path + " gone\n";
    }
  }
}
