package strikeoff.propose;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.day.Moment;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/**
 * A finish that no run of the same prints can undercut, and what keeps it there.
 *
 * @param finish no run ends before
 * @param dry when the prints can be ready for the last steps at the soonest
 * @param because what binds it
 * @param rests breaks that keep it there as well
 * @param before bounds of what is printed and fixed before it
 * @param advised what rules advise that it counts on; runs without may end sooner
 */
public record Bound(
    Moment finish,
    Moment dry,
    Binding because,
    Rests rests,
    List<Bound> before,
    Optional<Advised> advised) {

  Bound(Moment finish, Moment dry, Binding because, Rests rests) {
    this(finish, dry, because, rests, List.of(), Optional.empty());
  }

  /**
   * That seams are sewn after the prints away from them.
   *
   * @param seams their names
   * @param otherwise the bound where they need not be
   */
  public record Advised(List<String> seams, Moment otherwise) {

    /** Goes on after "runs". */
    public String text() {
      return "that sew "
          + Phrase.list(seams)
          + " after the prints away from "
          + (seams.size() == 1 ? "it" : "them")
          + ", as rules advise";
    }
  }

  /** The same where runs that sew earlier may end before it. */
  Bound advised(List<String> seams, Moment otherwise) {
    return otherwise.compareTo(finish) < 0
        ? new Bound(finish, dry, because, rests, before, Optional.of(new Advised(seams, otherwise)))
        : this;
  }

  /** The bound that holds in any order. */
  Moment inAnyOrder() {
    return advised.map(Advised::otherwise).orElse(finish);
  }

  /**
   * How many breaks add to the time.
   *
   * @param printing before the prints are ready for the last steps
   * @param fixing between the last steps
   */
  public record Rests(int printing, int fixing) {

    private static String said(String before, int many) {
      return many == 0 ? "" : before + (many == 1 ? "the break" : "the breaks");
    }
  }

  /** The same where parts of the run come before it. */
  Bound after(List<Bound> parts) {
    return new Bound(finish, dry, because, rests, List.copyOf(parts), advised);
  }

  /** Why, with the minutes from which it follows. */
  String text() {
    Span after = finish.since(dry);
    return before.stream()
            .map(
                part ->
                    "what is printed before is fixed and clean "
                        + part.finish().when()
                        + " at the soonest ("
                        + part.text()
                        + "); then ")
            .collect(Collectors.joining())
        + because.text()
        + (after.minutes() < 1 || because instanceof Night
            ? ""
            : ", so that with drying"
                + Rests.said(" and ", rests.printing)
                + " they are ready for what comes after at "
                + dry.clock()
                + " at the soonest, and that takes "
                + after.wholeMinutesUp().text()
                + Rests.said(" with ", rests.fixing));
  }

  private static String print(int people, Span lasts) {
    return (people == 1 ? "one person prints " : people + " people print ")
        + lasts.wholeMinutesUp().text();
  }

  /** What keeps runs from ending sooner. */
  public sealed interface Binding {

    /** Goes on after a colon. */
    String text();
  }

  /**
   * The cloth lies on the table stretch after stretch, and what is printed dries in each.
   *
   * @param stretches how many at least
   * @param dries how long the films that bind take to be lift-safe at the soonest; zero if it is
   *     one stretch
   * @param prints how long it takes all hands to print those films
   * @param people how many print
   * @param sewing how long sewing, and laying the cloth again, takes up the cloth; zero if nothing
   *     is sewn
   */
  public record Stretches(int stretches, Span dries, Span prints, int people, Span sewing)
      implements Binding {
    @Override
    public String text() {
      String hands = print(people, prints);
      String sewn =
          sewing.minutes() > 0
              ? ", and sewing keeps the cloth for " + sewing.wholeMinutesUp().text()
              : "";
      return stretches == 1
          ? hands + " on one stretch of the cloth" + sewn
          : stretches
              + " stretches of the cloth lie on the table one after the other, what is printed"
              + " dries "
              + dries.wholeMinutesUp().text()
              + " in each, and "
              + hands
              + sewn;
    }
  }

  /**
   * All the work that has to be done before the last print is done.
   *
   * @param work of all hands, together
   */
  public record Hands(Span work, int people) implements Binding {
    @Override
    public String text() {
      return "there is "
          + work.wholeMinutesUp().text()
          + " of mixing, printing and handling the cloth for "
          + (people == 1 ? "one person" : people + " people");
    }
  }

  /**
   * One motif is printed colour after colour.
   *
   * @param takes from its first frame to when its last colour is lifted
   */
  public record Motif(String placement, int colours, Span takes) implements Binding {
    @Override
    public String text() {
      return (colours == 1 ? "" : "the " + colours + " colours of ")
          + placement
          + " take "
          + takes.wholeMinutesUp().text()
          + (colours == 1 ? " one beside the other" : " one on the other");
    }
  }

  /**
   * Colours from one on come after those before them on every motif.
   *
   * @param colour the first of those that are printed last
   * @param first from the first frame on, how soon one of them may begin anywhere
   * @param prints how long it takes all hands to print them
   */
  public record Colours(int colour, Span first, Span prints, int people) implements Binding {
    @Override
    public String text() {
      return "no motif can take its colour "
          + colour
          + " sooner than "
          + first.wholeMinutesUp().text()
          + " after the first frame, as what lies under it dries, and then "
          + print(people, prints);
    }
  }

  /**
   * The steps after the prints fit into no day that has begun by then.
   *
   * @param slowly true if that is so on a day of slow drying only, for which the run has to do too
   */
  public record Night(Moment opens, boolean slowly) implements Binding {
    @Override
    public String text() {
      return "what comes after the prints can't be done before the room closes"
          + (slowly ? " where films dry slowly" : "")
          + ", so that it begins "
          + opens.when();
    }
  }
}
