package strikeoff.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;
import strikeoff.policy.Limit;
import strikeoff.units.Concentration;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Range;
import strikeoff.units.Span;

class WordsTest {

  /** One fact with a value of every kind that facts have. */
  public record Sample(
      Length gap,
      Span shortfall,
      Moment safe,
      Range dryMinutes,
      Range factor,
      int count,
      double ratio,
      boolean sewn,
      List<String> screens,
      Optional<Length> trap,
      Medium medium,
      String cloth,
      Inner later,
      PlanPath path)
      implements Evidence {

    public Length half() {
      return gap.times(0.5);
    }

    public String failing() {
      throw new IllegalStateException("no such thing");
    }
  }

  /** Something inside a fact. */
  public record Inner(String name, int number) {}

  private static final Sample SAMPLE =
      new Sample(
          Length.ofCm(37.5),
          new Span(80),
          Moment.of(2, 9 * 60 + 5),
          new Range(38, 60, 95),
          Range.exactly(1.25),
          9,
          2.0,
          true,
          List.of("ink", "rust", "sand"),
          Optional.empty(),
          Medium.PAINT,
          "linen",
          new Inner("herons 3", 3),
          new PlanPath("run[1]"));

  private static final Limit WEAKEST =
      new Limit("fixing/weakest", new Concentration(30), "why", "source");

  private static final Limit STRONGEST =
      new Limit("fixing/strongest", new Concentration(60), "why", "source");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gap|37.5 cm",
        "half|18.8 cm",
        "shortfall|80 min",
        "safe|day 2, 09:05",
        "dryMinutes|60 min (38 min to 95 min)",
        "factor|1.25",
        "count|9",
        "ratio|2",
        "sewn|yes",
        "screens|ink, rust and sand",
        "trap|not stated",
        "medium|paint",
        "cloth|linen",
        "later|herons 3",
        "later.number|3",
        "limit|30 g/L",
        "limit2|60 g/L",
      })
  void saysEachValueByItsType(String placeholder, String words) {
    assertThat(
            Words.fill(
                "<{" + placeholder + "}>", List.of(SAMPLE, WEAKEST, STRONGEST), Measures.METRIC))
        .isEqualTo("<" + words + ">");
    assertThat(Words.canFill(placeholder, List.of(Sample.class, Limit.class, Limit.class)))
        .isTrue();
  }

  @ParameterizedTest
  @CsvSource({"nothing", "later.colour", "limit3", "''", "wait()", "getClass", "hashCode"})
  void whatNamesNothingIsAFaultOfTheTool(String placeholder) {
    List<Object> facts = List.of(SAMPLE, WEAKEST, STRONGEST);
    assertThatThrownBy(() -> Words.fill("a {" + placeholder + "}", facts, Measures.METRIC))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("{" + placeholder + "}");
    assertThat(Words.canFill(placeholder, List.of(Sample.class, Limit.class, Limit.class)))
        .isFalse();
  }

  @Test
  void aValueThatFailsIsAFaultOfTheTool() {
    assertThatThrownBy(() -> Words.fill("{failing}", List.of(SAMPLE), Measures.METRIC))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no such thing");
  }

  @Test
  void theFirstFactThatHasAValueGivesIt() {
    Inner shell = new Inner("shells 1", 1);
    Inner reed = new Inner("reeds 2", 2);
    assertThat(Words.fill("{name}, {cloth}", List.of(shell, SAMPLE, reed), Measures.METRIC))
        .isEqualTo("shells 1, linen");
  }

  @Test
  void textOfThePlanIsNeverTakenForATemplate() {
    Inner odd = new Inner("{number} $1 \\", 7);
    assertThat(Words.fill("of {name}: {number}", List.of(odd), Measures.METRIC))
        .isEqualTo("of {number} $1 \\: 7");
  }

  @Test
  void noLocaleChangesTheWords() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-thai"));
      assertThat(Words.fill("{medium} {gap} {ratio} {count}", List.of(SAMPLE), Measures.METRIC))
          .isEqualTo("paint 37.5 cm 2 9");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, screen is", "2, screens are", "0, screens are"})
  void wordsAgreeWithAList(int many, String said) {
    Listed listed = new Listed(List.of("heron", "reed").subList(0, many), many, PlanPath.ROOT);
    String template = "screen{screens:|s} {screens:is|are}";
    assertThat(Words.fill(template, List.of(listed), Measures.METRIC)).isEqualTo(said);
    assertThat(Words.fill("screen{count:|s} {count:is|are}", List.of(listed), Measures.METRIC))
        .isEqualTo(said);
    assertThat(Words.placeholders(template)).allMatch(p -> Words.canFill(p, List.of(Listed.class)));
  }

  @Test
  void nothingAgreesWithAText() {
    assertThatThrownBy(() -> Words.fill("{cloth:is|are}", List.of(SAMPLE), Measures.METRIC))
        .hasMessageContaining("{cloth}");
  }

  /** A range of which nobody sees the ends is told as one figure. */
  /** "21 days old, and it lasts 21 days" tells nobody what is wrong. */
  @Test
  void aValueThatReadsLikeTheLimitItMissedSaysByItsSide() {
    String told = "It is {shortfall} old; it lasts {limit}, {count} times.";
    assertThat(Words.tell(told, List.of(SAMPLE, limit(79.6)), Measures.METRIC))
        .isEqualTo("It is just over 80 min old; it lasts 80 min, 9 times.");
    assertThat(Words.tell(told, List.of(SAMPLE, limit(80.4)), Measures.METRIC))
        .startsWith("It is just under 80 min");
    assertThat(Words.tell(told, List.of(SAMPLE, limit(80)), Measures.METRIC))
        .startsWith("It is 80 min old");
    assertThat(Words.tell(told, List.of(SAMPLE, limit(70)), Measures.METRIC))
        .startsWith("It is 80 min old");
    assertThat(Words.tell("It is {shortfall} old.", List.of(SAMPLE, limit(79.6)), Measures.METRIC))
        .isEqualTo("It is 80 min old.");
  }

  private static Limit limit(double minutes) {
    return new Limit("paste/life", new Span(minutes), "why", "from memory");
  }

  @Test
  void aRangeNarrowerThanItsFiguresIsOneFigure() {
    assertThat(
            Words.fill(
                "{partShare}",
                List.of(new Narrow(new Range(0.05799, 0.058, 0.05801), PlanPath.ROOT)),
                Measures.METRIC))
        .isEqualTo("5.8 %");
  }

  /** A share with a range. */
  public record Narrow(Range partShare, PlanPath path) implements Evidence {}

  /** A list and its count. */
  public record Listed(List<String> screens, int count, PlanPath path) implements Evidence {}
}
