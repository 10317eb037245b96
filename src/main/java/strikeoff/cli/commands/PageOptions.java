package strikeoff.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.PageMark;

/** Options that write a page of each plan into a folder. */
final class PageOptions {

  private final OptionSpec reports =
      Options.word(
          "--reports",
          "DIR",
          "Write an HTML report of each plan and an index into this folder. Pages that earlier runs"
              + " wrote there go, unless runs share it by --part; files that strikeoff didn't write"
              + " stay as they are.");

  private final OptionSpec sheets =
      Options.word(
          "--sheets",
          "DIR",
          "Write a page of sheets for the wall for each plan into this folder, and an index: pages"
              + " of paper for each person and half day, in large type. What else lies there is"
              + " treated as with --reports.");

  void addTo(CommandSpec spec) {
    spec.addOption(reports).addOption(sheets);
  }

  /** The folder for reports as the user named it, if she did. */
  Optional<String> reports() {
    return Optional.ofNullable(reports.getValue());
  }

  /** The folder for sheets for the wall, likewise. */
  Optional<String> sheets() {
    return Optional.ofNullable(sheets.getValue());
  }

  /** What is wrong with how they are given, if something is. */
  Optional<String> misuse(Surroundings here) {
    if (reports().filter(String::isBlank).isPresent()) {
      return Optional.of("--reports takes the name of a folder");
    }
    Optional<String> wall = sheets();
    if (wall.filter(name -> name.isBlank() || name.equals("-")).isPresent()) {
      return Optional.of("--sheets takes the name of a folder");
    }
    return wall.isPresent()
            && wall.map(name -> here.resolve(name).normalize())
                .equals(reports().map(name -> here.resolve(name).normalize()))
        ? Optional.of(
            "--sheets and --reports need a folder each, as their pages have the same names")
        : Optional.empty();
  }

  /** The pages that are written for some plans. */
  List<Path> files(Surroundings here, List<PlanFile> plans) {
    List<Path> files = new ArrayList<>();
    reports()
        .map(r -> new ReportFolder(here.resolve(r)))
        .ifPresent(folder -> files.addAll(folder.files(ReportFolder.names(plans).values())));
    sheets()
        .map(s -> new ReportFolder(here.resolve(s), PageMark.SHEETS))
        .ifPresent(folder -> files.addAll(folder.files(ReportFolder.names(plans).values())));
    return files;
  }
}
