package strikeoff.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Artwork;
import strikeoff.plan.Paste;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * The data that rules and derivations read: thresholds, defaults, and the tables of reactive
 * groups, fibres and substances. Nothing the trade may argue about stands in Java.
 *
 * @param limits by name, for rules and whoever tells of them
 * @param defaults by name
 * @param read those of the limits that derivations read
 * @param assumed the defaults by subject, for whoever fills a plan in
 * @param usual a studio's usual recipes
 */
public record Policy(
    Map<String, Limit> limits,
    Map<String, Default<?>> defaults,
    List<ReactiveGroup> groups,
    List<Fibre> fibres,
    List<Substance> substances,
    Limits read,
    Defaults assumed,
    Map<UsualRecipe.For, UsualRecipe> usual) {

  /**
   * A policy without usual recipes.
   *
   * @throws IllegalArgumentException if a limit or a default is missing that somebody reads, or is
   *     of another kind
   */
  public Policy(
      Map<String, Limit> limits,
      Map<String, Default<?>> defaults,
      List<ReactiveGroup> groups,
      List<Fibre> fibres,
      List<Substance> substances) {
    this(
        limits,
        defaults,
        groups,
        fibres,
        substances,
        LimitKinds.of(limits),
        DefaultKinds.of(defaults),
        Map.of());
  }

  public Policy {
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    defaults = Collections.unmodifiableMap(new LinkedHashMap<>(defaults));
    groups = List.copyOf(groups);
    fibres = List.copyOf(fibres);
    substances = List.copyOf(substances);
    usual = Map.copyOf(usual);
  }

  /** The same with a studio's usual recipes. */
  public Policy with(Map<UsualRecipe.For, UsualRecipe> recipes) {
    return new Policy(limits, defaults, groups, fibres, substances, read, assumed, recipes);
  }

  /** What the studio mixes such a paste from; empty if it doesn't say. */
  public Optional<UsualRecipe> usualRecipe(Paste paste) {
    return Optional.ofNullable(usual.get(UsualRecipe.For.paste(paste)));
  }

  /**
   * A limit by name.
   *
   * @throws IllegalArgumentException if the policy has none of that name: a fault of the tool
   */
  public Limit limit(String name) {
    Limit limit = limits.get(name);
    if (limit == null) {
      throw new IllegalArgumentException("the policy has no limit " + name);
    }
    return limit;
  }

  public Limits.Care care() {
    return read.care();
  }

  public Limits.Cloth cloth() {
    return read.cloth();
  }

  public Limits.Drying drying() {
    return read.drying();
  }

  public Limits.Fixing fixing() {
    return read.fixing();
  }

  public Limits.Layout layout() {
    return read.layout();
  }

  public Limits.Media media() {
    return read.media();
  }

  public Limits.Artwork artwork() {
    return read.artwork();
  }

  public Limits.Order order() {
    return read.order();
  }

  public Limits.Paste paste() {
    return read.paste();
  }

  public Limits.Screens screens() {
    return read.screens();
  }

  public Limits.Seams seams() {
    return read.seams();
  }

  public Limits.Table table() {
    return read.table();
  }

  public Limits.Time time() {
    return read.time();
  }

  /** How far a frame can be off on a table. */
  public Length registration(boolean railed) {
    return railed ? order().registrationRailed() : order().registrationByEye();
  }

  /** How much of a film is neither dark nor light. */
  public Share grey(Artwork film) {
    return film.tones().between(artwork().greyFrom(), artwork().greyTo());
  }

  /** What is fine in a film; empty also where too much of it is grey, since grey has no edges. */
  public Optional<Artwork.Fine> fine(Artwork film) {
    return grey(film).fraction() > artwork().greyMost().amount() ? Optional.empty() : film.fine();
  }

  /** The reactive group of exactly that name. */
  public ReactiveGroup group(String name) {
    return named(groups, g -> g.name().equals(name), name);
  }

  /** The fibre of exactly that name. */
  public Fibre fibre(String name) {
    return named(fibres, f -> f.name().equals(name), name);
  }

  /**
   * True if there is so much of a fibre in a cloth that it sets a limit; some are felt at a smaller
   * share than others.
   */
  public boolean counts(Fibre fibre, Share share) {
    double least =
        fibre.countsFrom().map(Share::fraction).orElseGet(() -> fixing().fibreCounts().fraction());
    return share.fraction() >= least;
  }

  /** True if one of some fibres is cellulose. */
  public boolean anyCellulose(Set<String> fibres) {
    return fibres.stream().anyMatch(name -> fibre(name).cellulose());
  }

  /** The substance of exactly that name. */
  public Substance substance(String name) {
    return named(substances, s -> s.name().equals(name), name);
  }

  private static <T> T named(List<T> table, java.util.function.Predicate<T> isIt, String name) {
    return table.stream()
        .filter(isIt)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the policy has no entry " + name));
  }
}
