package strikeoff.paste;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Breaks;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Storage;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;
import strikeoff.units.Span;

/** Compares each dye paste's age at its impressions with its life. */
final class Ages {

  private final PrintPlan plan;
  private final Timeline timeline;
  private final Policy policy;
  private final Mixings mixings;
  private final Lives lives;

  Ages(PrintPlan plan, Timeline timeline, Policy policy, Mixings mixings) {
    this.plan = plan;
    this.timeline = timeline;
    this.policy = policy;
    this.mixings = mixings;
    this.lives = new Lives(plan, policy);
  }

  List<PasteAge> all() {
    List<PasteAge> ages = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      if (!lives.isKnown(paste)) {
        continue;
      }
      lives
          .shortest(paste, new Recipe(paste, policy).alkali())
          .flatMap(g -> age(paste, g))
          .ifPresent(ages::add);
    }
    return ages;
  }

  /** Dye pastes that are printed and not kept cold. */
  Optional<KeptInRoom> inRoom() {
    List<String> pastes =
        timeline.impressions().stream()
            .map(i -> i.footprint().paste())
            .filter(p -> !p.groups().isEmpty() && p.storage() != Storage.COLD)
            .map(Paste::name)
            .distinct()
            .toList();
    return pastes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new KeptInRoom(
                pastes,
                plan.room().temperature(),
                policy.paste().roomTemperature(),
                policy.paste().carriedOver().celsius(),
                plan.room().path()));
  }

  /** Pastes that are printed and hold dyes of several groups. */
  List<MixedGroups> mixed() {
    return timeline.impressions().stream()
        .map(i -> i.footprint().paste())
        .filter(p -> p.groups().size() > 1)
        .distinct()
        .map(this::mixed)
        .toList();
  }

  private MixedGroups mixed(Paste paste) {
    HeldAlkali alkali = new Recipe(paste, policy).alkali();
    return new MixedGroups(
        paste.name(),
        paste.groups().stream()
            .map(policy::group)
            .map(g -> new MixedGroups.Lived(g, new Span(lives.of(paste, g, alkali).best())))
            .toList(),
        alkali,
        new Recipe(paste, policy).alkaliNamed(),
        paste.path());
  }

  /** One use of the paste and how old it is then. */
  private record Use(Impression impression, Moment ready) {

    Span age() {
      return impression.laid().since(ready);
    }
  }

  /** How many minutes a paste lives with the alkali it holds; empty without any, or not known. */
  Optional<Range> withItsAlkali(Paste paste) {
    HeldAlkali alkali = new Recipe(paste, policy).alkali();
    return alkali == HeldAlkali.NONE || !lives.isKnown(paste)
        ? Optional.empty()
        : lives.shortest(paste, alkali).map(group -> lives.of(paste, group, alkali));
  }

  /** How long the paste would live with soda in it, and how long it has to in this run. */
  Optional<SodaLife> withSoda(Paste paste) {
    Optional<Span> needed = uses(paste).stream().map(Use::age).max(Comparator.naturalOrder());
    return lives.isKnown(paste)
        ? lives
            .shortest(paste, HeldAlkali.SODA)
            .flatMap(
                group ->
                    needed.map(
                        span ->
                            new SodaLife(
                                paste.name(), lives.of(paste, group, HeldAlkali.SODA), span)))
        : Optional.empty();
  }

  private Optional<PasteAge> age(Paste paste, ReactiveGroup group) {
    List<Use> uses = uses(paste);
    return uses.stream()
        .max(Comparator.comparing(Use::age))
        .map(oldest -> age(paste, group, uses, oldest));
  }

  private List<Use> uses(Paste paste) {
    List<Use> uses = new ArrayList<>();
    for (Impression impression : timeline.impressions()) {
      if (impression.footprint().paste().name().equals(paste.name())) {
        mixings
            .readyBefore(paste, impression.laid())
            .ifPresent(ready -> uses.add(new Use(impression, ready)));
      }
    }
    return uses;
  }

  private PasteAge age(Paste paste, ReactiveGroup group, List<Use> uses, Use oldest) {
    HeldAlkali alkali = new Recipe(paste, policy).alkali();
    Range life = lives.of(paste, group, alkali);
    double minutes = oldest.age().minutes();
    List<Moment> batches = batches(uses, life.low());
    return new PasteAge(
        paste.name(),
        group,
        alkali,
        new Recipe(paste, policy).alkaliNamed(),
        paste.storage(),
        oldest.ready(),
        oldest.impression().laid(),
        oldest.impression().footprint().placement().name(),
        oldest.age(),
        life,
        new Span(minutes - life.high()),
        new Span(minutes - life.low()),
        open(
            new Moment(oldest.impression().laid().seconds() - (long) Math.floor(life.low() * 60)),
            uses),
        batches,
        batches.size() > 1 ? List.of() : mixLater(paste, uses, oldest),
        new Recipe(paste, policy).withoutAlkali(plan.measures()),
        uses.stream()
            .filter(use -> use.age().minutes() > life.low())
            .map(use -> use.impression().footprint().placement().name())
            .distinct()
            .toList(),
        mixings.of(paste.name()).stream()
            .map(m -> new Evidence.Related(Tie.MIXED_HERE, m.step().path()))
            .toList(),
        paste.path());
  }

  /** Mixed just before the first print that takes the oldest batch. */
  private List<Edit> mixLater(Paste paste, List<Use> uses, Use oldest) {
    PlanPath first =
        uses.stream()
            .filter(use -> use.ready().compareTo(oldest.ready()) == 0)
            .findFirst()
            .orElseThrow()
            .impression()
            .path();
    return mixings.of(paste.name()).stream()
        .filter(batch -> batch.ready().compareTo(oldest.ready()) == 0)
        .findFirst()
        .map(batch -> MixLater.edits(batch.step(), paste.name(), first))
        .orElse(List.of());
  }

  /** That moment, or the room's next opening if it is shut then: nobody mixes in a shut room. */
  private Moment open(Moment moment, List<Use> uses) {
    if (moment.day() < 1) {
      return moment;
    }
    var hours = plan.hours().of(moment.day());
    boolean over = moment.minuteOfDay() > hours.closes();
    int day = over ? moment.day() + 1 : moment.day();
    Moment opening = moment.later(Moment.opens(day, plan.hours()));
    Moment mixed = new Moment(new Breaks(plan.hours()).over(opening.seconds()));
    boolean inTime = uses.stream().allMatch(u -> u.impression().laid().compareTo(mixed) >= 0);
    return inTime ? mixed : moment;
  }

  /** First prints of batches of which each is thrown away when the shortest life is over. */
  private static List<Moment> batches(List<Use> uses, double minutes) {
    List<Moment> batches = new ArrayList<>();
    for (Moment laid : uses.stream().map(use -> use.impression().laid()).sorted().toList()) {
      if (batches.isEmpty() || laid.since(batches.get(batches.size() - 1)).minutes() > minutes) {
        batches.add(laid);
      }
    }
    return batches;
  }
}
