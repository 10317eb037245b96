package strikeoff.cli.commands;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.Scalars;
import strikeoff.findings.Severity;
import strikeoff.plan.Colour;
import strikeoff.start.Said;
import strikeoff.start.Wishes;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Parsed;
import strikeoff.units.Phrase;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;

/**
 * Reads answers to questions about a first plan. What a plan would refuse is refused in the words
 * of the plan's own reader.
 */
final class AnswerReading {

  static final int MOST_COLOURS = 8;

  private static final String UNKNOWN = "The check knows no such plan.";

  private AnswerReading() {}

  static <Q extends Quantity> Parsed<Said<Q>> above(String text, Class<Q> type) {
    Parsed<Q> parsed = Quantities.parse(text, type);
    return parsed.toOptional().filter(q -> q.base() <= 0).isPresent()
        ? Parsed.refused(Phrase.capital(Quantities.expected(type)) + " was expected.")
        : parsed.map(q -> new Said<>(text, q));
  }

  static Parsed<Said<Pair>> size(String text, Predicate<Pair> fits, String otherwise) {
    Parsed<Pair> parsed = Pair.size(text);
    Optional<Pair> size = parsed.toOptional();
    return size.filter(p -> p.along().mm() < 1 || p.across().mm() < 1).isPresent()
        ? Parsed.refused("It measures at least 1 mm each way.")
        : size.filter(fits.negate()).isPresent()
            ? Parsed.refused(otherwise)
            : parsed.map(p -> new Said<>(text, p));
  }

  static Parsed<Integer> count(String text, int least, int most) {
    return text.matches("\\d{1,6}")
            && Integer.parseInt(text) >= least
            && Integer.parseInt(text) <= most
        ? Parsed.value(Integer.parseInt(text))
        : Parsed.refused(
            least == most
                ? "There is room for " + most + "."
                : "Say a number from " + least + " to " + most + ".");
  }

  static Parsed<List<String>> colours(String text) {
    List<String> colours = Arrays.stream(text.split(",", -1)).map(String::strip).toList();
    if (colours.size() > MOST_COLOURS) {
      return Parsed.refused("A first plan has at most " + MOST_COLOURS + " colours.");
    }
    for (String colour : colours) {
      if (read("pastes: {a: {medium: paint, colour: %s}}", colour)
          instanceof Parsed.Refused<String> r) {
        return Parsed.refused(r.message());
      }
    }
    return Parsed.value(colours);
  }

  /** A colour as plans write it; empty if it is none. */
  static Optional<Colour> colour(String text) {
    String plan =
        "plan: A\ncloth: {length: 1 m, width: 1 m}\npastes: {a: {medium: paint, colour: %s}}\n";
    return Checker.builtIn().check("the plan", plan.replace("%s", Scalars.quoted(text)))
            instanceof Checked.Judged judged
        ? judged.plan().pastes().values().stream().map(paste -> paste.colour()).findFirst()
        : Optional.empty();
  }

  static Parsed<Said<MeshCount>> mesh(String text) {
    Parsed<String> read =
        read("screens: {a: {frame: 60 x 60 cm, image: 20 x 20 cm, mesh: %s}}", text);
    return read instanceof Parsed.Refused<String> refused
        ? Parsed.refused(refused.message())
        : above(text, MeshCount.class);
  }

  static Parsed<String> fibre(String text) {
    Parsed<String> read = read("cloth: {length: 1 m, width: 1 m, fibre: %s}", text);
    if (read instanceof Parsed.Refused<String>) {
      return read;
    }
    Optional<String> painted = stop(text, false);
    return painted.isPresent() && stop(text, true).isPresent()
        ? Parsed.refused(painted.get())
        : read;
  }

  static Parsed<Boolean> medium(String text, String fibre) {
    Parsed<Boolean> dye = Asking.word(List.of("dye", "paint"), List.of(true, false)).apply(text);
    Optional<String> stop = dye.toOptional().flatMap(isDye -> stop(fibre, isDye));
    return stop.<Parsed<Boolean>>map(Parsed::refused).orElse(dye);
  }

  /** What keeps even a small print on that fibre from being printable. */
  private static Optional<String> stop(String fibre, boolean dye) {
    Pair motif = new Pair(new Length(200), new Length(200));
    Wishes small =
        new Wishes(
            "A",
            dye,
            fibre,
            List.of("teal"),
            motif.along(),
            motif.across(),
            1,
            Measures.of(List.of()));
    return stop(FirstPlan.of(small, "the plan").checked());
  }

  /** The first thing that makes a plan unprintable. */
  static Optional<String> stop(Checked checked) {
    return checked instanceof Checked.Judged judged
        ? judged.of(Severity.STOP).findFirst().map(f -> f.message())
        : Optional.of(UNKNOWN);
  }

  /** The answer, if a plan that holds it is read without a mistake there. */
  static Parsed<String> read(String piece, String text) {
    String plan =
        (piece.startsWith("plan:") ? "" : "plan: A\n")
            + (piece.startsWith("cloth:") ? "" : "cloth: {length: 1 m, width: 1 m}\n")
            + piece.replace("%s", Scalars.quoted(text))
            + "\n";
    return Checker.builtIn().check("the plan", plan) instanceof Checked.Unreadable unreadable
        ? Parsed.refused(Phrase.capital(unreadable.problems().get(0).message()) + ".")
        : Parsed.value(text);
  }
}
