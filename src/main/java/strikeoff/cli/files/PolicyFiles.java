package strikeoff.cli.files;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;

/** Finds the policy files that stand above a plan. */
public final class PolicyFiles {

  /** How a policy file is called that is found without being named. */
  static final String NAME = "studio.yaml";

  private PolicyFiles() {}

  /**
   * A policy file.
   *
   * @param name as the user would write it
   * @param bound of one that was found beside plans, the folder that it must not lead out of: it
   *     may have been handed in with them
   */
  public record PolicyFile(Path path, String name, Optional<Path> bound) {

    /** True if the user named it: own rules that it names are run. */
    public boolean given() {
      return bound.isEmpty();
    }

    /** What stands there if it is no file to read. */
    public Optional<String> odd() {
      return bound.isEmpty() ? OddFile.whatNamed(path) : OddFile.whatFound(path, bound.get());
    }

    /** The folder it stands in, as the user would write it. */
    public String folderName() {
      int slash = name.lastIndexOf('/');
      return slash < 0 ? "" : name.substring(0, slash);
    }
  }

  /**
   * From the top down: in the plan's folder and above it, up to the folder that the program runs in
   * or, for plans elsewhere, up to the folder that was given.
   */
  public static List<PolicyFile> above(PlanFile plan, Surroundings here) {
    Path folder = plan.path().toAbsolutePath().normalize().getParent();
    Deque<PolicyFile> found = new ArrayDeque<>();
    for (Path at : folders(plan, here)) {
      Path file = at.resolve(NAME);
      // One that can't be read is found as well: plans must not pass because their policy is
      // broken.
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        // In a folder that was given all of it may be read, else no more than lies beside the file.
        Path bound = given(plan).filter(file::startsWith).orElse(at);
        found.addFirst(new PolicyFile(file, name(file, plan, folder), Optional.of(bound)));
      }
    }
    return new ArrayList<>(found);
  }

  /** The folders where a policy for the plan may stand, from the plan's own upwards. */
  public static List<Path> folders(PlanFile plan, Surroundings here) {
    Path base = here.resolve("").toAbsolutePath().normalize();
    Path folder = plan.path().toAbsolutePath().normalize().getParent();
    Path given = given(plan).orElse(folder);
    Path top = folder.startsWith(base) ? base : given;
    List<Path> folders = new ArrayList<>();
    for (Path at = folder; at != null; at = at.equals(top) ? null : at.getParent()) {
      folders.add(at);
    }
    return folders;
  }

  private static Optional<Path> given(PlanFile plan) {
    return plan.given().map(g -> g.toAbsolutePath().normalize());
  }

  /** As the plan is named: its name tells how the user writes the folders above it. */
  private static String name(Path file, PlanFile plan, Path folder) {
    int up = folder.getNameCount() - file.getParent().getNameCount();
    String name = plan.name();
    for (int i = 0; i <= up; i++) {
      int slash = name.lastIndexOf('/');
      if (slash < 0) {
        return i == up ? NAME : FileNames.text(file);
      }
      name = name.substring(0, slash);
    }
    return name + "/" + NAME;
  }
}
