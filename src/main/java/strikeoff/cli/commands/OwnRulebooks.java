package strikeoff.cli.commands;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.cli.files.RulesBeside;
import strikeoff.cli.text.FileNames;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleFolder;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.studio.StudioReader;
import strikeoff.units.Script;

/** The rules that come with the program together with those of some folders, each read once. */
final class OwnRulebooks {

  private final Rulebook builtIn;
  private final double seconds;
  private final PolicyTexts texts;
  private final StudioFaults faults;
  private final Map<Set<String>, Rulebook> known = new LinkedHashMap<>();
  private final List<RuleFile> files = new ArrayList<>();
  private final Set<String> notes = new LinkedHashSet<>();

  /** All that are known, run or not. */
  private final Set<Path> folders = new HashSet<>();

  private boolean unread;

  OwnRulebooks(Rulebook builtIn, double seconds, PolicyTexts texts, StudioFaults faults) {
    this.builtIn = builtIn;
    this.seconds = seconds;
    this.texts = texts;
    this.faults = faults;
  }

  /**
   * All rules that are run.
   *
   * @param own folders of own rules, with the names that the user knows them by
   */
  Rulebook rulebook(Map<Path, String> own) {
    Set<String> key = new LinkedHashSet<>();
    own.keySet().forEach(folder -> key.add(folder.toAbsolutePath().normalize().toString()));
    Rulebook book = known.get(key);
    if (book == null) {
      book = own.isEmpty() ? builtIn : read(own);
      known.put(key, book);
    }
    return book;
  }

  private Rulebook read(Map<Path, String> own) {
    try {
      List<RuleFile> read = new ArrayList<>();
      for (Map.Entry<Path, String> folder : own.entrySet()) {
        folders.add(folder.getKey().toAbsolutePath().normalize());
        read.addAll(RuleFolder.read(folder.getKey(), folder.getValue(), PolicyReader.families()));
      }
      files.addAll(read);
      return builtIn.with(OwnRules.of(read), seconds);
    } catch (RuleMistakes e) {
      faults.rules(e.all().stream().map(RuleMistake::text).toList(), e.unread());
      unread = true;
      return builtIn;
    }
  }

  /** True if they are run: because the user named the policy, or their folder. */
  boolean areRun(PolicyFile file, String folder, Map<Path, String> folders) {
    try {
      Path path = FileNames.resolve(file.path().toAbsolutePath().getParent(), folder).normalize();
      String name = file.folderName().isEmpty() ? folder : file.folderName() + "/" + folder;
      if (folders.keySet().stream().anyMatch(f -> f.toAbsolutePath().normalize().equals(path))) {
        return true;
      }
      if (file.given() && !Files.isDirectory(path)) {
        faults.wrong(
            file,
            file.name()
                + ":"
                + StudioReader.ownRulesPosition(texts.of(file))
                + ": own rules: no folder is called "
                + Script.quoted(folder)
                + " there");
        return false;
      }
      if (file.given()) {
        folders.put(path, name);
        return true;
      }
      this.folders.add(path);
      notes.add(
          file.name()
              + ": its own rules aren't run, since it was found beside the plans; --rules "
              + name
              + " runs them");
    } catch (InvalidPathException e) {
      faults.wrong(file, file.name() + ": the folder of own rules is no path");
    }
    return false;
  }

  /** Notes own rules that lie beside plans and aren't run. */
  void lookBeside(Set<Path> plans) {
    plans.forEach(folder -> notes.addAll(RulesBeside.notes(folder, folders)));
  }

  /** What the user should know though nothing is wrong. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The files of all own rules that are run. */
  List<RuleFile> files() {
    return files;
  }

  /** True if own rules have mistakes: what a policy says of them is then not known to be wrong. */
  boolean unread() {
    return unread;
  }
}
