package strikeoff.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.plan.Step;
import strikeoff.speech.StepSpeech;
import strikeoff.units.ArealMass;
import strikeoff.units.Concentration;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/** Says a value by its type, as a printer would. */
final class Spoken {

  /** A {@link Range} has no unit of its own: the name of the value ends with it. */
  private static final Map<String, DoubleFunction<Quantity>> RANGE_UNITS =
      Map.of(
          "minutes", Span::new,
          "mm", Length::new,
          "grams", Mass::new,
          "litres", Volume::new,
          "celsius", Temperature::new,
          "gramsperlitre", Concentration::new,
          "gramspersquaremetre", ArealMass::new,
          "share", Share::new);

  private Spoken() {}

  static String text(Object value, String name, Measures units) {
    if (value == null) {
      throw new IllegalArgumentException("{" + name + "} has no value");
    }
    if (value instanceof String text) {
      return text;
    }
    if (value instanceof Quantity quantity) {
      return quantity.text(units);
    }
    if (value instanceof Moment moment) {
      return moment.text();
    }
    if (value instanceof Range range) {
      return range(range, name, units);
    }
    if (value instanceof Collection<?> many) {
      return list(many, name, units);
    }
    if (value instanceof Optional<?> perhaps) {
      return perhaps.map(v -> text(v, name, units)).orElse("not stated");
    }
    if (value instanceof OptionalInt perhaps) {
      return perhaps.isPresent() ? Integer.toString(perhaps.getAsInt()) : "not stated";
    }
    if (value instanceof OptionalDouble perhaps) {
      return perhaps.isPresent() ? number(perhaps.getAsDouble()) : "not stated";
    }
    if (value instanceof Double || value instanceof Float) {
      return number(((Number) value).doubleValue());
    }
    if (value instanceof Number whole) {
      return whole.toString();
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Step step) {
      return StepSpeech.numbered(step, units);
    }
    if (value instanceof PlanPath path) {
      return path.spoken();
    }
    return named(value, name, units);
  }

  /** Tells whether words about it stand in the singular. */
  static boolean isOne(Object value, String name) {
    if (value instanceof Collection<?> many) {
      return many.size() == 1;
    }
    if (value instanceof Number number) {
      return number.doubleValue() == 1;
    }
    throw new IllegalArgumentException("{" + name + "} is neither a list nor a number");
  }

  /** Something of the trade: its own text, title or name. */
  private static String named(Object value, String name, Measures units) {
    for (String saying : List.of("text", "title", "name")) {
      if (FactValues.has(value.getClass(), saying)
          && FactValues.follow(value, saying, units) instanceof String text) {
        return value instanceof Enum<?> && saying.equals("name")
            ? text.toLowerCase(Locale.ROOT).replace('_', ' ')
            : text;
      }
    }
    throw new IllegalArgumentException(
        "{" + name + "}: no words for a " + value.getClass().getSimpleName());
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "unknown" : "without bound";
    }
    return new Ratio(value).text();
  }

  private static String range(Range range, String name, Measures units) {
    String lower = name.toLowerCase(Locale.ROOT);
    DoubleFunction<Quantity> unit =
        RANGE_UNITS.entrySet().stream()
            .filter(u -> lower.endsWith(u.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(Ratio::new);
    String best = unit.apply(range.best()).text(units);
    String low = unit.apply(range.low()).text(units);
    String high = unit.apply(range.high()).text(units);
    // A range that is narrower than its figures are told is none.
    return low.equals(best) && high.equals(best) ? best : best + " (" + low + " to " + high + ")";
  }

  private static String list(Collection<?> many, String name, Measures units) {
    List<String> words = new ArrayList<>();
    for (Object one : many) {
      words.add(text(one, name, units));
    }
    return Phrase.list(words);
  }
}
