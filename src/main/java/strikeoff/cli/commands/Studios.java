package strikeoff.cli.commands;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import strikeoff.artwork.KeptMeasures;
import strikeoff.artwork.StudioFolder;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.cli.files.CacheKey;
import strikeoff.cli.files.KeptFilms;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.PolicyFiles;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.document.Problem;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.mend.EditTrials;
import strikeoff.policy.Policy;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.studio.LimitConflicts;
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
  private final Map<List<PolicyFile>, Checker> byPolicies = new LinkedHashMap<>();
  private final Map<List<PolicyFile>, byte[]> keys = new HashMap<>();
  private final StudioFaults faults = new StudioFaults();
  private final PolicyTexts texts;
  private final OwnRulebooks own;

  private Optional<Narrowing> narrowing = Optional.empty();
  private KeptMeasures measures = KeptMeasures.NONE;
  private boolean pictures = true;

  private Studios(Surroundings here, StudioOptions options, Bounds bounds) {
    this.here = here;
    this.options = options;
    this.bounds = bounds;
    Checker plain = Checker.builtIn(bounds);
    this.builtIn = plain.policy();
    this.rules = plain.rules();
    this.texts = new PolicyTexts(bounds, faults);
    this.own = new OwnRulebooks(rules, options.seconds(), texts, faults);
  }

  /** Judges plans of which no film is drawn from now on, which takes less. */
  void leavePictures() {
    pictures = false;
  }

  /** Takes what earlier runs measured of films from now on. */
  void keep(KeptFilms films) {
    measures = films;
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
    studios.own.lookBeside(folders);
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
    return faults.all();
  }

  /** What of it is wrong with what the user named for all plans; then nothing can be judged. */
  List<String> wrongForAll() {
    return faults.ofNamed();
  }

  /**
   * How a run ends that can't go on without what is wrong: what was named has a mistake or isn't
   * there, which is wrong usage, or a file could not be read, or what was found has a mistake.
   */
  Exit exit() {
    return faults.exit();
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
      key.put("policy", file.name()).put(file.given() ? "named" : "found", texts.of(file));
    }
    for (RuleFile file : own.files()) {
      key.put("rule file", List.of(file.name(), file.family(), file.text()));
    }
    return key.bytes();
  }

  /** The films that a plan takes from its studio, to the byte. */
  List<String> films(PlanFile plan, byte[] bytes) {
    return checker(policies(plan)).studioFilms(bytes);
  }

  /** What judges a plan, or why nothing can. */
  record Judge(Optional<Checker> checker, Optional<Checked.Failed> failed) {}

  Judge judge(PlanFile plan) {
    List<PolicyFile> policies = policies(plan);
    synchronized (byPolicies) {
      Checker whole = checker(policies);
      Checker checker = pictures ? whole : whole.withoutPictures();
      Optional<String> broken = faults.broken(policies);
      return broken.isPresent()
          ? new Judge(
              Optional.empty(), Optional.of(new Checked.Failed(plan.name(), broken.get(), "")))
          : new Judge(
              Optional.of(
                  plan.isStandardInput() ? checker : checker.keeping(measures).beside(plan.path())),
              Optional.empty());
    }
  }

  /** What the user should know though nothing is wrong. */
  List<String> notes() {
    return own.notes();
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
      Optional<String> folder = StudioReader.ownRules(texts.of(file));
      notRun |= folder.isPresent() && !own.areRun(file, folder.get(), folders);
    }
    Rulebook book = own.rulebook(folders);
    List<String> ids = book.ids();
    List<StudioFile> files = new ArrayList<>();
    for (PolicyFile file : policies) {
      StudioReading reading =
          StudioReader.read(
              file.name(),
              texts.of(file),
              builtIn,
              ids,
              notRun || own.unread(),
              StudioFolder.of(file.path()));
      if (reading instanceof StudioReading.Read read) {
        files.add(read.file());
      } else if (reading instanceof StudioReading.Faulty faulty) {
        for (Problem p : faulty.problems()) {
          String path = p.path().text().isEmpty() ? "" : p.path().text() + ": ";
          faults.wrong(file, faulty.name() + ":" + p.position() + ": " + path + p.message());
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
                  faults.wrong(
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
}
