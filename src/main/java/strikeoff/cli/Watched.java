package strikeoff.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.cli.PlanFiles.Found;
import strikeoff.cli.PlanFiles.PlanFile;

/** The plans below a folder, and which of them were saved since they were last asked for. */
final class Watched {

  private final Surroundings here;
  private final String folder;
  private final int most;
  private Map<PlanFile, String> known = new LinkedHashMap<>();

  Watched(Surroundings here, String folder, int most) {
    this.here = here;
    this.folder = folder;
    this.most = most;
  }

  /**
   * What there is now.
   *
   * @param all every plan, in their order
   * @param saved those that are new or were saved again
   */
  record Changed(List<PlanFile> all, List<PlanFile> saved) {}

  Found look() {
    return PlanFiles.of(List.of(folder), here, most, "-");
  }

  /** True if a plan was saved, made or taken away. */
  boolean moved() {
    return !stamps().equals(known);
  }

  Changed changed() {
    Map<PlanFile, String> now = stamps();
    List<PlanFile> saved = new ArrayList<>();
    now.forEach(
        (plan, stamp) -> {
          if (!stamp.equals(known.get(plan))) {
            saved.add(plan);
          }
        });
    known = now;
    return new Changed(List.copyOf(now.keySet()), saved);
  }

  private Map<PlanFile, String> stamps() {
    Map<PlanFile, String> stamps = new LinkedHashMap<>();
    look().plans().forEach(plan -> stamps.put(plan, stamp(plan)));
    return stamps;
  }

  private static String stamp(PlanFile plan) {
    try {
      BasicFileAttributes file = Files.readAttributes(plan.path(), BasicFileAttributes.class);
      return file.lastModifiedTime() + " " + file.size() + " " + file.fileKey();
    } catch (IOException e) {
      return "gone";
    }
  }
}
