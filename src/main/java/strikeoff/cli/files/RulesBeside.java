package strikeoff.cli.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import strikeoff.cli.text.FileNames;
import strikeoff.rulebook.own.RuleFolder;

/** Rules that lie beside plans: they may come from anybody, and are told rather than run. */
public final class RulesBeside {

  private RulesBeside() {}

  /**
   * A line for each place where such rules lie.
   *
   * @param folder where plans lie
   * @param run folders of rules that are run
   */
  public static List<String> notes(Path folder, Collection<Path> run) {
    List<String> notes = new ArrayList<>();
    for (Path place : List.of(folder, folder.resolve("rules"))) {
      Optional<Path> first =
          run.stream().anyMatch(place::startsWith) ? Optional.empty() : first(place);
      first.ifPresent(
          file ->
              notes.add(
                  FileNames.last(place)
                      + "/"
                      + FileNames.last(file)
                      + ": rules that lie beside plans are ignored; --rules or a policy names rules"
                      + " to run"));
    }
    return notes;
  }

  private static Optional<Path> first(Path folder) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      List<Path> rules = new ArrayList<>();
      for (Path file : files) {
        if (RuleFolder.isRuleFile(file)) {
          rules.add(file);
        }
      }
      return rules.stream().sorted().findFirst();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }
}
