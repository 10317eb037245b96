package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/**
 * A remedy followed to the letter clears its finding and rouses no other: {@code followed.yaml}
 * says which figure of it goes where.
 */
class FollowedRemedyTest {

  private static final Checker CHECKER = Checker.builtIn();

  /**
   * One remedy, followed.
   *
   * @param spoil what of the example is changed first
   * @param take reads figures out of the remedy; empty where it has none
   * @param find where in the plan, a regular expression
   * @param put what stands there then
   * @param also rules that may find something then, since the remedy warns of it
   */
  record Followed(
      String rule,
      Map<String, String> spoil,
      String take,
      String find,
      String put,
      List<String> also) {

    Followed {
      spoil = spoil == null ? Map.of() : spoil;
      take = take == null ? "" : take;
      also = also == null ? List.of() : also;
    }

    static List<Followed> all() throws IOException {
      try (InputStream in = Followed.class.getResourceAsStream("followed.yaml")) {
        return new ObjectMapper(new YAMLFactory()).readValue(in, new TypeReference<>() {});
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> remediesHold() throws IOException {
    return Followed.all().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.rule() + ", " + one.spoil() + " " + one.take(), () -> follow(one)));
  }

  private static void follow(Followed one) {
    String plan = Example.packaged(one.rule()).firingText();
    for (Map.Entry<String, String> spoilt : one.spoil().entrySet()) {
      assertThat(plan).contains(spoilt.getKey());
      plan = plan.replace(spoilt.getKey(), spoilt.getValue());
    }
    List<Finding> before = findings(one.rule(), plan);
    Optional<Finding> found =
        before.stream().filter(f -> f.rule().id().equals(one.rule())).findFirst();
    assertThat(found).as("the rule fires on\n%s", plan).isPresent();
    String remedy = found.get().remedy();
    Matcher taken = Pattern.compile(one.take()).matcher(remedy);
    assertThat(taken.find()).as("%s in: %s", one.take(), remedy).isTrue();
    String put = one.put();
    for (int i = 1; i <= taken.groupCount(); i++) {
      put = put.replace("{" + i + "}", taken.group(i));
    }
    Matcher place = Pattern.compile(one.find()).matcher(plan);
    assertThat(place.find()).as("%s in\n%s", one.find(), plan).isTrue();
    String mended = place.replaceFirst(put);
    Set<String> fresh = grave(findings(one.rule(), mended));
    fresh.removeAll(grave(before));
    fresh.removeAll(one.also());
    assertThat(findings(one.rule(), mended))
        .as("%s\nfollowed in\n%s", remedy, mended)
        .extracting(f -> f.rule().id())
        .doesNotContain(one.rule());
    assertThat(fresh).as("%s\nfollowed in\n%s", remedy, mended).isEmpty();
  }

  private static Set<String> grave(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.severity() != Severity.ADVICE)
        .map(f -> f.rule().id())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<Finding> findings(String rule, String plan) {
    Checked checked = CHECKER.of(Example.packaged(rule)).check("plan.yaml", plan);
    assertThat(checked).as(plan).isInstanceOf(Checked.Judged.class);
    return ((Checked.Judged) checked).findings();
  }
}
