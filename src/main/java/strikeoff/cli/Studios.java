package strikeoff.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.cli.PlanFiles.PlanFile;
import strikeoff.cli.PolicyFiles.PolicyFile;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.Bounds;
import strikeoff.plan.Problem;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleCache;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleFolder;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.studio.Studio;
import strikeoff.studio.StudioFile;
import strikeoff.studio.StudioReader;
import strikeoff.studio.StudioReading;

/**
 * What judges which plan: policies and own rules are found and read before any plan is, so that no
 * plan is judged by half of them.
 */
final class Studios {

  private final Surroundings here;
  private final StudioOptions options;
  private final Bounds bounds;
  private final Policy builtIn;
  private final Rulebook rules;
  private final Map<Set<String>, Rulebook> rulebooks = new LinkedHashMap<>();
  private final Map<List<PolicyFile>, Checker> byPolicies = new LinkedHashMap<>();
  private final Map<Path, byte[]> texts = new HashMap<>();
  private final Set<String> wrong = new LinkedHashSet<>();
  private final Set<String> wrongBeside = new LinkedHashSet<>();
  private final Map<Path, String> broken = new HashMap<>();
  private final Set<String> notes = new LinkedHashSet<>();
  private final Set<Path> ruleFolders = new HashSet<>();

  private Studios(Surroundings here, StudioOptions options, Bounds bounds) {
    this.here = here;
    this.options = options;
    this.bounds = bounds;
    Checker plain = Checker.builtIn(bounds);
    this.builtIn = plain.policy();
    this.rules = plain.rules();
  }

  /** For plans: each has the policies above it, unless one is given for all. */
  static Studios of(Surroundings here, StudioOptions options, Bounds bounds, List<PlanFile> plans) {
    Studios studios = new Studios(here, options, bounds);
    for (PlanFile plan : plans) {
      studios.checker(studios.policies(plan));
    }
    Set<Path> folders = new LinkedHashSet<>();
    for (PlanFile plan : plans) {
      if (!plan.isStandardInput()) {
        folders.add(plan.path().toAbsolutePath().normalize().getParent());
      }
    }
    folders.forEach(studios::noteRules);
    return studios;
  }

  /** Without plans: the policy that is given, or the one in the folder the program runs in. */
  static Studios of(Surroundings here, StudioOptions options) {
    Studios studios = new Studios(here, options, Bounds.USUAL);
    studios.checker(studios.policies(new PlanFile(here.resolve("plan.yaml"), "plan.yaml")));
    return studios;
  }

  /** What is wrong with policies and own rules, one line each. */
  List<String> wrong() {
    List<String> all = new ArrayList<>(wrong);
    all.addAll(wrongBeside);
    return all;
  }

  /** What of it is wrong with what the user named for all plans; then nothing can be judged. */
  List<String> wrongForAll() {
    return List.copyOf(wrong);
  }

  /**
   * Checks a plan, unless a policy that was found beside it has a mistake; plans that the policy
   * doesn't hold for can be checked. Several threads may ask at once.
   */
  Checked check(PlanFile plan) {
    List<PolicyFile> policies = policies(plan);
    Checker checker;
    Optional<String> broken;
    synchronized (byPolicies) {
      checker = checker(policies);
      broken = broken(policies);
    }
    if (broken.isPresent()) {
      return new Checked.Failed(plan.name(), broken.get(), "");
    }
    return plan.isStandardInput()
        ? checker.check(plan.name(), here.in())
        : checker.check(plan.path(), plan.name());
  }

  private Optional<String> broken(List<PolicyFile> policies) {
    return policies.stream()
        .map(file -> broken.get(file.path()))
        .filter(Objects::nonNull)
        .findFirst();
  }

  /** What the user should know though nothing is wrong. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The only one there is, without plans. */
  Checker checker() {
    return byPolicies.values().iterator().next();
  }

  /** Every rule that judges any of the plans, by id. */
  List<RuleInfo> rules() {
    Map<String, RuleInfo> all = new TreeMap<>();
    rules.rules().forEach(rule -> all.put(rule.id(), rule));
    for (Checker checker : byPolicies.values()) {
      checker.rules().rules().forEach(rule -> all.put(rule.id(), checker.studio().counted(rule)));
    }
    return List.copyOf(all.values());
  }

  private List<PolicyFile> policies(PlanFile plan) {
    return options
        .policy()
        .map(name -> List.of(new PolicyFile(here.resolve(name), name, true)))
        .orElseGet(
            () ->
                PolicyFiles.above(
                    plan.isStandardInput()
                        ? new PlanFile(here.resolve(plan.name()), plan.name())
                        : plan,
                    here));
  }

  private Checker checker(List<PolicyFile> policies) {
    synchronized (byPolicies) {
      Checker known = byPolicies.get(policies);
      if (known == null) {
        known = read(policies);
        byPolicies.put(policies, known);
      }
      return known;
    }
  }

  private Checker read(List<PolicyFile> policies) {
    Map<Path, String> folders = new LinkedHashMap<>();
    options.rules().ifPresent(name -> folders.put(here.resolve(name), name));
    boolean notRun = false;
    for (PolicyFile file : policies) {
      Optional<String> folder = StudioReader.ownRules(text(file));
      notRun |= folder.isPresent() && !ownRules(file, folder.get(), folders);
    }
    Rulebook book = rulebook(folders);
    List<String> ids = book.ids();
    List<StudioFile> files = new ArrayList<>();
    for (PolicyFile file : policies) {
      StudioReading reading = StudioReader.read(file.name(), text(file), builtIn, ids, notRun);
      if (reading instanceof StudioReading.Read read) {
        files.add(read.file());
      } else if (reading instanceof StudioReading.Faulty faulty) {
        for (Problem p : faulty.problems()) {
          String path = p.path().text().isEmpty() ? "" : p.path().text() + ": ";
          wrong(file, faulty.name() + ":" + p.position() + ": " + path + p.message());
        }
      }
    }
    return new Checker(
        files.isEmpty() ? Studio.plain(builtIn) : Studio.of(builtIn, files), book, bounds);
  }

  private void wrong(PolicyFile file, String what) {
    if (file.given()) {
      wrong.add(what);
    } else {
      wrongBeside.add(what);
      broken.putIfAbsent(file.path(), "the policy that holds for it has a mistake: " + what);
    }
  }

  /** True if they are run: because the user named the policy, or their folder. */
  private boolean ownRules(PolicyFile file, String folder, Map<Path, String> folders) {
    try {
      Path path = file.path().toAbsolutePath().resolveSibling(folder).normalize();
      String name = file.folderName().isEmpty() ? folder : file.folderName() + "/" + folder;
      if (folders.keySet().stream().anyMatch(f -> f.toAbsolutePath().normalize().equals(path))) {
        return true;
      }
      if (file.given()) {
        folders.put(path, name);
        return true;
      }
      ruleFolders.add(path);
      notes.add(
          file.name()
              + ": its own rules aren't run, since it was found beside the plans; --rules "
              + name
              + " runs them");
    } catch (InvalidPathException e) {
      wrong(file, file.name() + ": the folder of own rules is no path");
    }
    return false;
  }

  private Rulebook rulebook(Map<Path, String> folders) {
    Set<String> key = new LinkedHashSet<>();
    folders.keySet().forEach(folder -> key.add(folder.toAbsolutePath().normalize().toString()));
    Rulebook known = rulebooks.get(key);
    if (known != null) {
      return known;
    }
    Rulebook book = rules;
    if (!folders.isEmpty()) {
      try {
        List<RuleFile> files = new ArrayList<>();
        for (Map.Entry<Path, String> folder : folders.entrySet()) {
          ruleFolders.add(folder.getKey().toAbsolutePath().normalize());
          files.addAll(
              RuleFolder.read(folder.getKey(), folder.getValue(), PolicyReader.families()));
        }
        OwnRules own = OwnRules.of(files, new RuleCache(options.cache(here)));
        book = rules.with(own, options.seconds());
      } catch (RuleMistakes e) {
        e.all().stream().map(RuleMistake::text).forEach(wrong::add);
      }
    }
    rulebooks.put(key, book);
    return book;
  }

  private byte[] text(PolicyFile file) {
    return texts.computeIfAbsent(
        file.path(),
        path -> {
          try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(bounds.bytes() + 1);
          } catch (IOException e) {
            wrong(file, file.name() + ": this policy can't be read");
            return "studio: unread".getBytes(java.nio.charset.StandardCharsets.UTF_8);
          }
        });
  }

  /** Rules that lie beside plans may come from anybody. */
  private void noteRules(Path folder) {
    for (Path place : List.of(folder, folder.resolve("rules"))) {
      if (ruleFolders.stream().noneMatch(place::startsWith) && first(place).isPresent()) {
        notes.add(
            place.getFileName()
                + "/"
                + first(place).get().getFileName()
                + ": rules that lie beside plans are ignored; --rules or a policy names rules to"
                + " run");
      }
    }
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
