package strikeoff.cli.commands;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
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
import java.util.function.Consumer;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.CacheKey;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.PolicyFiles;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.cli.files.RulesBeside;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.document.Problem;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.mend.EditTrials;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleFolder;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;
import strikeoff.studio.LimitConflicts;
import strikeoff.studio.Studio;
import strikeoff.studio.StudioFile;
import strikeoff.studio.StudioReader;
import strikeoff.studio.StudioReading;
import strikeoff.units.Script;

/**
 * What judges which plan: policies and own rules are found and read before any plan is, so that no
 * plan is judged by half of them.
 */
final class Studios {

  /** Stands for a policy that can't be read, so that nothing else is said to be wrong with it. */
  private static final byte[] UNREAD = "studio: unread".getBytes(StandardCharsets.UTF_8);

  private final Surroundings here;
  private final StudioOptions options;
  private final Bounds bounds;
  private final Policy builtIn;
  private final Rulebook rules;
  private final Map<Set<String>, Rulebook> rulebooks = new LinkedHashMap<>();
  private final Map<List<PolicyFile>, Checker> byPolicies = new LinkedHashMap<>();
  private final Map<List<PolicyFile>, byte[]> keys = new HashMap<>();
  private final Map<Path, byte[]> texts = new HashMap<>();
  private final Set<String> wrong = new LinkedHashSet<>();
  private final Set<String> wrongBeside = new LinkedHashSet<>();

  /** True if own rules have mistakes: what a policy says of them is then not known to be wrong. */
  private boolean unreadRules;

  private final Map<Path, String> broken = new HashMap<>();
  private final Set<String> notes = new LinkedHashSet<>();
  private final Set<Path> ruleFolders = new HashSet<>();

  /** Those of all own rules that are run. */
  private final List<RuleFile> ownFiles = new ArrayList<>();

  private Optional<Narrowing> narrowing = Optional.empty();

  /** True if something that was named is there and can't be read. */
  private boolean unread;

  private Studios(Surroundings here, StudioOptions options, Bounds bounds) {
    this.here = here;
    this.options = options;
    this.bounds = bounds;
    Checker plain = Checker.builtIn(bounds);
    this.builtIn = plain.policy();
    this.rules = plain.rules();
  }

  /** Judges by some rules only from now on. */
  void narrow(Narrowing rules) {
    narrowing = Optional.of(rules).filter(Narrowing::isAsked);
  }

  /** Which rules are left out, of all that there are. */
  Optional<Narrowed> narrowed() {
    return narrowing.map(n -> n.of(allRules().stream().map(RuleInfo::id).toList()));
  }

  private Checked narrowed(Checked checked, Judge judge) {
    return narrowing.isPresent() && checked instanceof Checked.Judged judged
        ? judged.by(narrowing.get().of(judge.checker().orElseThrow().rules().ids()))
        : checked;
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
    folders.forEach(f -> studios.notes.addAll(RulesBeside.notes(f, studios.ruleFolders)));
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
   * How a run ends that can't go on without what is wrong: what was named has a mistake or isn't
   * there, which is wrong usage, or a file could not be read, or what was found has a mistake.
   */
  Exit exit() {
    return wrong.isEmpty() || unread ? Exit.FAULT : Exit.USAGE;
  }

  /**
   * Checks a plan, unless a policy that was found beside it has a mistake; plans that the policy
   * doesn't hold for can be checked. Several threads may ask at once.
   */
  Checked check(PlanFile plan) {
    return checked(plan, Optional.empty(), false, checked -> {});
  }

  /** The same with what mends its findings, each tried by a check of its own. */
  Checked checkAndMend(PlanFile plan) {
    return checked(plan, Optional.empty(), true, checked -> {});
  }

  /**
   * The same.
   *
   * @param bytes of the plan, if they were read before
   * @param mend whether to try what mends its findings
   * @param meanwhile told what came of the check before that
   */
  Checked checked(
      PlanFile plan, Optional<InputStream> bytes, boolean mend, Consumer<Checked> meanwhile) {
    Judge judge = judge(plan);
    if (judge.checker().isEmpty()) {
      return judge.failed().orElseThrow();
    }
    Checker checker = judge.checker().get();
    Optional<InputStream> read = bytes.or(() -> standardInput(plan));
    Checked checked =
        read.isPresent()
            ? checker.check(plan.name(), read.get())
            : checker.check(plan.path(), plan.name());
    meanwhile.accept(checked);
    // Tried by all rules: what mends one thing must not spoil another that nobody asked about.
    return narrowed(mend ? EditTrials.tried(checked, checker) : checked, judge);
  }

  private Optional<InputStream> standardInput(PlanFile plan) {
    return plan.isStandardInput() ? Optional.of(here.in()) : Optional.empty();
  }

  /** All that judges a plan besides the program itself: policies and own rules, to the byte. */
  byte[] key(PlanFile plan) {
    List<PolicyFile> policies = policies(plan);
    synchronized (byPolicies) {
      return keys.computeIfAbsent(policies, this::key);
    }
  }

  private byte[] key(List<PolicyFile> policies) {
    CacheKey key = new CacheKey().put("rules", checker(policies).rules().ids());
    for (PolicyFile file : policies) {
      key.put("policy", file.name()).put(file.given() ? "named" : "found", text(file));
    }
    for (RuleFile file : ownFiles) {
      key.put("rule file", List.of(file.name(), file.family(), file.text()));
    }
    return key.bytes();
  }

  /** What judges a plan, or why nothing can. */
  record Judge(Optional<Checker> checker, Optional<Checked.Failed> failed) {}

  Judge judge(PlanFile plan) {
    List<PolicyFile> policies = policies(plan);
    synchronized (byPolicies) {
      Checker checker = checker(policies);
      Optional<String> broken = broken(policies);
      return broken.isPresent()
          ? new Judge(
              Optional.empty(), Optional.of(new Checked.Failed(plan.name(), broken.get(), "")))
          : new Judge(
              Optional.of(plan.isStandardInput() ? checker : checker.beside(plan.path())),
              Optional.empty());
    }
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
    Optional<Narrowed> some = narrowed();
    return some.isEmpty()
        ? allRules()
        : allRules().stream().filter(rule -> some.get().asks(rule.id())).toList();
  }

  /** The same with those that are left out. */
  List<RuleInfo> allRules() {
    Map<String, RuleInfo> all = new TreeMap<>();
    rules.rules().forEach(rule -> all.put(rule.id(), rule));
    Map<String, Set<Severity>> severities = new HashMap<>();
    for (Checker checker : byPolicies.values()) {
      for (RuleInfo rule : checker.rules().rules()) {
        Severity counted = checker.studio().counted(rule).severity();
        all.putIfAbsent(rule.id(), rule);
        severities.computeIfAbsent(rule.id(), id -> EnumSet.noneOf(Severity.class)).add(counted);
      }
    }
    // Where folders differ, each finding says what it counts as, and the rule what it is by itself.
    severities.forEach(
        (id, counted) -> {
          if (counted.size() == 1) {
            all.put(id, all.get(id).counted(counted.iterator().next()));
          }
        });
    return List.copyOf(all.values());
  }

  private List<PolicyFile> policies(PlanFile plan) {
    return options
        .policy()
        .map(name -> List.of(new PolicyFile(here.resolve(name), name, Optional.empty())))
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
      StudioReading reading =
          StudioReader.read(file.name(), text(file), builtIn, ids, notRun || unreadRules);
      if (reading instanceof StudioReading.Read read) {
        files.add(read.file());
      } else if (reading instanceof StudioReading.Faulty faulty) {
        for (Problem p : faulty.problems()) {
          String path = p.path().text().isEmpty() ? "" : p.path().text() + ": ";
          wrong(file, faulty.name() + ":" + p.position() + ": " + path + p.message());
        }
      }
    }
    for (LimitConflicts.Conflict conflict : LimitConflicts.of(builtIn, files)) {
      Problem p = conflict.problem();
      policies.stream()
          .filter(file -> file.name().equals(conflict.file()))
          .findFirst()
          .ifPresent(
              file ->
                  wrong(
                      file,
                      file.name()
                          + ":"
                          + p.position()
                          + ": "
                          + p.path().text()
                          + ": "
                          + p.message()));
    }
    return new Checker(
            files.isEmpty() ? Studio.plain(builtIn) : Studio.of(builtIn, files), book, bounds)
        .in(options.units());
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
      Path path = FileNames.resolve(file.path().toAbsolutePath().getParent(), folder).normalize();
      String name = file.folderName().isEmpty() ? folder : file.folderName() + "/" + folder;
      if (folders.keySet().stream().anyMatch(f -> f.toAbsolutePath().normalize().equals(path))) {
        return true;
      }
      if (file.given() && !Files.isDirectory(path)) {
        wrong(
            file,
            file.name()
                + ":"
                + StudioReader.ownRulesPosition(text(file))
                + ": own rules: no folder is called "
                + Script.quoted(folder)
                + " there");
        return false;
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
        ownFiles.addAll(files);
        OwnRules own = OwnRules.of(files);
        book = rules.with(own, options.seconds());
      } catch (RuleMistakes e) {
        e.all().stream().map(RuleMistake::text).forEach(wrong::add);
        unreadRules = true;
        unread |= e.unread();
      }
    }
    rulebooks.put(key, book);
    return book;
  }

  private byte[] text(PolicyFile file) {
    return texts.computeIfAbsent(
        file.path(),
        path -> {
          Optional<String> odd = file.odd();
          if (odd.isPresent()) {
            return unread(file, odd.get());
          }
          try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(bounds.bytes() + 1);
          } catch (NoSuchFileException e) {
            wrong(file, file.name() + ": no such file");
            return UNREAD;
          } catch (IOException e) {
            return unread(file, FileTrouble.of(e));
          }
        });
  }

  private byte[] unread(PolicyFile file, String why) {
    wrong(file, file.name() + ": this policy can't be read: " + why);
    unread |= file.given();
    return UNREAD;
  }
}
