package strikeoff.cli.commands;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strikeoff.cli.files.OddFile;
import strikeoff.cli.files.PlanArtwork;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.PolicyFiles;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.rulebook.own.RuleFolder;
import strikeoff.studio.StudioReader;

/** The policies and own rules that plans are judged by, as files that may change. */
final class Governing {

  private static final int MOST_ENTRIES = 2000;

  private final Surroundings here;
  private final StudioOptions options;

  Governing(Surroundings here, StudioOptions options) {
    this.here = here;
    this.options = options;
  }

  /** The policy files that hold for a plan now, from the top down. */
  List<Path> policies(PlanFile plan) {
    return options
        .policy()
        .map(name -> List.of(here.resolve(name)))
        .orElseGet(() -> PolicyFiles.above(plan, here).stream().map(PolicyFile::path).toList());
  }

  /** The files of the own rules that are run. */
  List<Path> rules() {
    List<Path> files = new ArrayList<>();
    for (Path folder : ruleFolders()) {
      below(folder).stream()
          .filter(p -> Files.isRegularFile(p) && RuleFolder.isRuleFile(p))
          .sorted()
          .forEach(files::add);
    }
    return files;
  }

  /** All that a run over these plans reads. */
  Set<Path> read(List<PlanFile> plans) {
    Set<Path> files = new LinkedHashSet<>(rules());
    for (PlanFile plan : plans) {
      if (!plan.isStandardInput()) {
        files.add(plan.path());
        files.addAll(PlanArtwork.of(plan));
      }
      for (Path policy : policies(plan)) {
        if (files.add(policy)) {
          files.addAll(PlanArtwork.ofStudio(policy));
        }
      }
    }
    return files;
  }

  /** Folders where such a file may change, be made or be taken away. */
  Set<Path> folders(List<PlanFile> plans) {
    Set<Path> folders = new LinkedHashSet<>();
    options.policy().map(here::resolve).map(Governing::parent).ifPresent(folders::add);
    if (options.policy().isEmpty()) {
      plans.forEach(plan -> folders.addAll(PolicyFiles.folders(plan, here)));
    }
    for (Path rules : ruleFolders()) {
      // The folder itself may be put in its place anew.
      folders.add(parent(rules));
      below(rules).stream().filter(Files::isDirectory).forEach(folders::add);
    }
    plans.forEach(plan -> PlanArtwork.of(plan).forEach(film -> folders.add(parent(film))));
    Set<Path> policies = new LinkedHashSet<>();
    plans.forEach(plan -> policies.addAll(policies(plan)));
    policies.forEach(
        policy -> PlanArtwork.ofStudio(policy).forEach(film -> folders.add(parent(film))));
    folders.removeIf(folder -> !Files.isDirectory(folder));
    return folders;
  }

  private Set<Path> ruleFolders() {
    Set<Path> folders = new LinkedHashSet<>();
    options.rules().map(here::resolve).ifPresent(folders::add);
    options.policy().map(here::resolve).flatMap(Governing::named).ifPresent(folders::add);
    return folders;
  }

  private static Optional<Path> named(Path policy) {
    if (OddFile.whatNamed(policy).isPresent()) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(policy)) {
      return StudioReader.ownRules(in.readNBytes(Bounds.USUAL.bytes() + 1))
          .map(rules -> FileNames.resolve(parent(policy), rules));
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static List<Path> below(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.limit(MOST_ENTRIES).toList();
    } catch (IOException | java.io.UncheckedIOException e) {
      return List.of();
    }
  }

  private static Path parent(Path path) {
    return path.toAbsolutePath().normalize().getParent();
  }
}
