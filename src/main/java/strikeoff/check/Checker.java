package strikeoff.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.KeptMeasures;
import strikeoff.day.Effort;
import strikeoff.described.Described;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.document.Problem;
import strikeoff.document.ShortOfMemory;
import strikeoff.document.SourceMap;
import strikeoff.document.Underway;
import strikeoff.facts.Facts;
import strikeoff.findings.AcceptEntry;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Finding;
import strikeoff.findings.Findings;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.Acceptance;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.yaml.NamedArtwork;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.Rulebook;
import strikeoff.rulebook.Rulebook.Judgement;
import strikeoff.studio.Studio;
import strikeoff.studio.StudioReader;
import strikeoff.studio.StudioReading;
import strikeoff.units.Spelling;
import strikeoff.units.UnitChoice;
import strikeoff.yaml.Problems;

/**
 * Checks plans one by one against one policy and one set of rules. Threads may share it. Whatever a
 * plan holds, it comes back as a {@link Checked}, never as an exception; only what comes of too
 * little memory is thrown, since the same plan may pass when nothing else is in work.
 *
 * @param studio what limits, defaults and the studio's policy say
 * @param rules what judges
 * @param bounds how much of a plan is taken in, and of its findings told
 * @param effort how much work the clock takes on
 * @param units in whose units plans are answered
 * @param artworks where the films lie of a plan that is checked by its text
 */
public record Checker(
    Studio studio,
    Rulebook rules,
    Bounds bounds,
    Effort effort,
    UnitChoice units,
    Artworks artworks) {

  /** Findings of one rule that are held apart where plans are compared. */
  private static final int MOST_COUNTED = 2_000;

  /** With the usual effort, and each plan answered in its own units. */
  public Checker(Studio studio, Rulebook rules, Bounds bounds) {
    this(studio, rules, bounds, Effort.USUAL, UnitChoice.PLAN, Artworks.nowhere());
  }

  /** The same that answers in whose units a user wants. */
  public Checker in(UnitChoice choice) {
    return new Checker(studio, rules, bounds, effort, choice, artworks);
  }

  /** The same for the text of a plan that lies there: its films are read once for all trials. */
  public Checker beside(Path plan) {
    return with(artworks.beside(plan));
  }

  /** The same for results that nobody draws: edges of films need not be followed. */
  public Checker withoutPictures() {
    return with(artworks.untraced());
  }

  /** The same that takes what earlier runs measured of films. */
  public Checker keeping(KeptMeasures measures) {
    return with(artworks.keeping(measures));
  }

  /** The same with those films. */
  public Checker with(Artworks pictures) {
    return new Checker(studio, rules, bounds, effort, units, pictures);
  }

  /** Without a studio's policy. */
  public Checker(Policy policy, Rulebook rules, Bounds bounds) {
    this(Studio.plain(policy), rules, bounds);
  }

  /** The policy and the rules that come with the program. */
  public static Checker builtIn() {
    return builtIn(Bounds.USUAL);
  }

  /** The same, within bounds of one's own. */
  public static Checker builtIn(Bounds bounds) {
    BuiltInRules.prepare();
    Policy policy = PolicyReader.builtIn();
    return new Checker(policy, BuiltInRules.loaded(), bounds);
  }

  /**
   * What checks an example: this, or this under the example's policy.
   *
   * @throws IllegalStateException if that policy has a mistake: the program was built wrong
   */
  public Checker of(Example example) {
    Artworks packaged = artworks.packaged(example.folder());
    if (example.policy().isEmpty()) {
      return with(packaged);
    }
    StudioReading reading =
        StudioReader.read(
            "studio.yaml",
            example.policy().getBytes(StandardCharsets.UTF_8),
            policy(),
            rules.ids());
    if (reading instanceof StudioReading.Read read) {
      return new Checker(
          Studio.of(policy(), List.of(read.file())), rules, bounds, effort, units, packaged);
    }
    throw new IllegalStateException("an example's policy can't be read: " + reading);
  }

  /**
   * For plans that are tried themselves: says nothing of what was tried to mend a finding, nor
   * whether somebody idle could help, and counts more findings of one rule than anybody is told.
   */
  public Checker withoutTrials() {
    Bounds more = bounds.with(Map.of("findings", Math.max(bounds.findings(), MOST_COUNTED)));
    return new Checker(studio, rules, more, effort.withoutTrials(), units, artworks);
  }

  /** Names and digests of the films that a plan's text takes from the studio. */
  public List<String> studioFilms(byte[] plan) {
    Map<String, Stock.Film> films = studio.stock().films();
    return films.isEmpty()
        ? List.of()
        : NamedArtwork.of(plan, bounds).films().stream()
            .filter(films::containsKey)
            .map(name -> name + " " + films.get(name).digest(bounds))
            .toList();
  }

  /** The limits and defaults in force. */
  public Policy policy() {
    return studio.policy();
  }

  /** The rule of that id as it counts here. */
  public Optional<RuleInfo> rule(String id) {
    return rules.rule(id).map(studio::counted);
  }

  /**
   * Checks a file.
   *
   * @param name the file as the user names it
   */
  public Checked check(Path file, String name) {
    try (InputStream in = Files.newInputStream(file)) {
      return beside(file).check(name, in);
    } catch (IOException e) {
      return unread(name, e);
    }
  }

  /** Checks what comes from a stream, which stays open. */
  public Checked check(String name, InputStream in) {
    Underway.at(Underway.Stage.READING);
    try {
      // One byte more than the reader takes is enough for it to refuse.
      return check(name, in.readNBytes(bounds.bytes() + 1));
    } catch (IOException e) {
      return unread(name, e);
    }
  }

  private static Checked unread(String name, IOException e) {
    return new Checked.Failed(name, "the file can't be read: " + FileTrouble.of(e), "");
  }

  /** Checks a plan's text. */
  public Checked check(String name, String text) {
    return check(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Checks a plan's text that is tried in another's place. Where only pastes are mixed otherwise,
   * what doesn't depend on it is not derived anew, nor what is true of films that stay.
   */
  public Checked check(String text, Checked.Judged instead) {
    return check(instead.file(), text.getBytes(StandardCharsets.UTF_8), Optional.of(instead));
  }

  private Checked check(String name, byte[] bytes) {
    return check(name, bytes, Optional.empty());
  }

  private Checked check(String name, byte[] bytes, Optional<Checked.Judged> instead) {
    Underway.at(Underway.Stage.READING);
    Underway.has(Underway.Much.BYTES, bytes.length);
    try {
      PlanReading reading =
          PlanReader.read(name, bytes, policy(), studio.stock(), bounds, units, artworks);
      if (reading instanceof PlanReading.Unreadable unreadable) {
        return new Checked.Unreadable(
            name, unreadable.lines(), unreadable.problems(), unreadable.by());
      }
      PlanReading.Readable read = (PlanReading.Readable) reading;
      List<Problem> unknown = unknownRules(read.plan(), read.map());
      return unknown.isEmpty()
          ? judged(name, read.plan(), read.map(), facts(read.plan(), instead))
          : new Checked.Unreadable(name, read.map().lines(), unknown, read.plan().by());
    } catch (RuntimeException | StackOverflowError e) {
      if (ShortOfMemory.caused(e)) {
        throw e;
      }
      return Checked.Failed.of(name, e);
    }
  }

  /** The reader knows no rules, so what is accepted is looked up here. */
  private List<Problem> unknownRules(PrintPlan plan, SourceMap source) {
    Problems problems = new Problems();
    for (Acceptance acceptance : plan.acceptances()) {
      if (rules.rule(acceptance.rule()).isEmpty()) {
        PlanPath path = acceptance.path().key("rule");
        problems.add(
            source.position(path),
            path,
            () ->
                "no rule is called “"
                    + acceptance.rule()
                    + "”"
                    + Spelling.didYouMean(acceptance.rule(), rules.ids()));
      }
    }
    return problems.sorted();
  }

  private Facts facts(PrintPlan plan, Optional<Checked.Judged> instead) {
    return instead
        .filter(other -> other.plan().isButForMixing(plan))
        .map(other -> other.facts().mixed(plan))
        .or(
            () ->
                instead
                    .filter(other -> plan.hasFilmsOf(other.plan()))
                    .map(other -> other.facts().derive(plan, effort)))
        .orElseGet(() -> Facts.derive(plan, policy(), effort));
  }

  private Checked judged(String name, PrintPlan plan, SourceMap source, Facts facts) {
    Underway.at(Underway.Stage.JUDGING);
    Judgement first =
        rules.judge(
            facts.forRules(),
            rules.own().rules().isEmpty()
                ? List.of()
                : Described.of(plan, facts.layout(), facts.timeline()),
            plan.measures());
    List<AcceptEntry> entries =
        plan.acceptances().stream().map(a -> new AcceptEntry(a, studio.bars(a.rule()))).toList();
    List<Acceptance> allowed =
        entries.stream().filter(e -> !e.barred()).map(AcceptEntry::acceptance).toList();
    List<Reported> reported = new ArrayList<>(first.reported());
    List<FailedRule> failedRules = new ArrayList<>(first.failedRules());
    List<Finding> findings = findings(reported, allowed, source);
    if (!entries.isEmpty()) {
      // What is accepted in vain shows only when everything else is known.
      List<Object> known = new ArrayList<>(entries);
      known.addAll(findings);
      Judgement second = rules.judge(known, plan.measures());
      reported.addAll(second.reported());
      failedRules.addAll(second.failedRules());
      findings = findings(reported, allowed, source);
    }
    failedRules.removeIf(f -> studio.isOff(f.rule()));
    return new Checked.Judged(
            name,
            plan,
            source,
            facts,
            findings,
            failedRules,
            studio.files(),
            studio.changes(reported, plan.measures()))
        .marked(failedRules.isEmpty() ? studio.points(findings) : Optional.empty());
  }

  private List<Finding> findings(
      List<Reported> reported, List<Acceptance> allowed, SourceMap source) {
    return Findings.of(
        studio.counted(reported), allowed, source, bounds, rule -> studio.bars(rule).isEmpty());
  }
}
