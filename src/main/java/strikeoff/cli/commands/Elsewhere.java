package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Path;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.cli.files.PlanBytes;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.FileNames;

/**
 * Plans that are written into another folder: their films, and their studio, lie where they did.
 */
final class Elsewhere {

  private Elsewhere() {}

  /**
   * @param target where the plan is to be written
   * @throws IOException if a plan that can be read where it is could not be read there
   */
  static void mayBeRead(PlanBytes plan, Path target, Studios studios) throws IOException {
    String text = plan.text().orElseThrow();
    if (readable(plan.plan(), text, studios)
        && !readable(new PlanFile(target, plan.plan().name()), text, studios)) {
      throw new IOException(
          "at "
              + FileNames.text(target)
              + " it would not find what it takes from beside it, films or a studio.yaml: write it"
              + " into the plan's own folder, or copy them there first");
    }
  }

  private static boolean readable(PlanFile at, String text, Studios studios) {
    return studios
        .judge(at)
        .checker()
        .map(checker -> checker.check(at.name(), text))
        .map(Checked::verdict)
        .filter(verdict -> verdict != Verdict.UNREADABLE)
        .isPresent();
  }
}
