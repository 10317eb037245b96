package strikeoff.report.outcome;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.materials.Materials;
import strikeoff.materials.Purchase;
import strikeoff.materials.WeighedPart;
import strikeoff.materials.Weighing;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/**
 * What to buy and what to weigh, in grams, to a tenth.
 *
 * @param buy in the order of the list
 * @param weigh in the order of the run
 */
public record Supplies(List<Bought> buy, List<Weighed> weigh) {

  /** Words for what is weighed. */
  public static final List<String> KINDS = words(Weighing.Kind.values());

  /** Words for whose recipe it is. */
  public static final List<String> RECIPES = words(Weighing.Recipe.values());

  public Supplies {
    buy = List.copyOf(buy);
    weigh = List.copyOf(weigh);
  }

  /**
   * A thing to buy, or water.
   *
   * @param substance as the tables of substances call it; empty for a paste without a recipe
   * @param paste whose dye or pigment it is, or the paste itself
   * @param low what is weighed of it, by the kindest estimate
   * @param toBuy enough by the most careful estimate, what is spilt included
   */
  public record Bought(
      String name,
      Optional<String> substance,
      Optional<String> paste,
      double low,
      double best,
      double high,
      double toBuy) {}

  /**
   * A batch of paste or a bath.
   *
   * @param kind paste or bath
   * @param recipe plan, studio or unknown
   * @param amount of the paste; empty for a bath
   */
  public record Weighed(
      String kind,
      String name,
      OptionalInt step,
      Optional<Moment> begins,
      Optional<Double> amount,
      String recipe,
      List<Line> parts) {
    public Weighed {
      parts = List.copyOf(parts);
    }
  }

  /** A part of it. */
  public record Line(String name, String substance, double low, double best, double high) {}

  private static List<String> words(Enum<?>[] values) {
    return Stream.of(values).map(Supplies::word).toList();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  static Supplies of(Checked.Judged judged) {
    Materials materials =
        Materials.of(judged.plan(), judged.facts().timeline(), judged.facts().policy());
    return new Supplies(
        materials.purchases().stream().map(Supplies::bought).toList(),
        materials.weighings().stream().map(Supplies::weighed).toList());
  }

  private static Bought bought(Purchase one) {
    Range grams = one.grams();
    return new Bought(
        one.name(),
        one.substance().map(s -> s.name()),
        one.isPaste() ? Optional.of(one.name()) : one.paste(),
        Figures.tenth(grams.low()),
        Figures.tenth(grams.best()),
        Figures.tenth(grams.high()),
        Figures.tenth(one.toBuy()));
  }

  private static Weighed weighed(Weighing one) {
    return new Weighed(
        word(one.kind()),
        one.name(),
        one.step(),
        one.begins(),
        one.amount().map(Mass::grams).map(Figures::tenth),
        word(one.recipe()),
        one.parts().stream().map(Supplies::line).toList());
  }

  private static Line line(WeighedPart part) {
    Range grams = part.grams();
    return new Line(
        part.name(),
        part.substance().name(),
        Figures.tenth(grams.low()),
        Figures.tenth(grams.best()),
        Figures.tenth(grams.high()));
  }
}
