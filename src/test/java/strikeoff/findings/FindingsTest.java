package strikeoff.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.SourceMap;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Acceptance;

class FindingsTest {

  private static final SourceMap SOURCE =
      new SourceMap(
          "plan.yaml",
          List.of("run:", "  - print: herons", "  - print: reeds", "accept:"),
          Map.of(
              new PlanPath("run"), new Position(1, 1),
              new PlanPath("run[0]"), new Position(2, 5),
              new PlanPath("run[1]"), new Position(3, 5)),
          Map.of());

  private static final RuleInfo STOP = rule("drying/too-wet", Severity.STOP);
  private static final RuleInfo RISK = rule("drying/perhaps-wet", Severity.RISK);

  private record Fact(PlanPath path, List<Related> related, List<String> marks)
      implements Evidence {}

  @Test
  void standsAtTheNearestPlaceThatTheFileHas() {
    Finding found = only(reported(STOP, "wet", "run[1].print.pause"), List.of());
    assertThat(found.place())
        .isEqualTo(
            new Place(
                "", new PlanPath("run[1].print.pause"), new Position(3, 5), "  - print: reeds"));
  }

  @Test
  void keepsRelatedPlacesAndMarksOfAllItsFacts() {
    Fact judged =
        new Fact(
            new PlanPath("run[1]"),
            List.of(new Evidence.Related(Tie.PRINTED_BEFORE, new PlanPath("run[0]"))),
            List.of("reeds 1", "herons 2"));
    Fact further = new Fact(new PlanPath("run"), List.of(), List.of("herons 2", "herons 3"));
    Finding found = only(new Reported(STOP, "m", "r", judged, List.of(judged, further)), List.of());
    assertThat(found.related())
        .extracting(Place::label, p -> p.position().line())
        .containsExactly(tuple("printed before", 2), tuple("see also", 1));
    assertThat(found.marks()).containsExactly("reeds 1", "herons 2", "herons 3");
  }

  @Test
  void theSameThingTwiceIsOneFinding() {
    Reported one = reported(STOP, "wet", "run[0]");
    assertThat(Findings.of(List.of(one, one), List.of(), SOURCE, Bounds.USUAL)).hasSize(1);
    assertThat(
            Findings.of(
                List.of(one, reported(STOP, "wet", "run[1]")), List.of(), SOURCE, Bounds.USUAL))
        .hasSize(2);
  }

  @Test
  void theOrderOfFiringNeverShows() {
    List<Reported> reported = new ArrayList<>();
    for (String path : List.of("run[0]", "run[1]", "run[0].pause", "elsewhere")) {
      for (String message : List.of("a", "b")) {
        reported.add(reported(RISK, message, path));
        reported.add(reported(STOP, message, path));
      }
    }
    List<Finding> sorted = Findings.of(reported, List.of(), SOURCE, Bounds.USUAL);
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      Collections.shuffle(reported, random);
      assertThat(Findings.of(reported, List.of(), SOURCE, Bounds.USUAL)).isEqualTo(sorted);
    }
    assertThat(sorted).extracting(Finding::severity).isSorted();
  }

  @Test
  void anAcceptanceHoldsForItsRuleAndAtItsPlaceOnly() {
    Acceptance all = accept("drying/too-wet", null);
    Acceptance first = accept("drying/too-wet", "run[1]");
    assertThat(only(reported(STOP, "wet", "run[0]"), List.of(all)).accepted()).contains(all);
    assertThat(only(reported(RISK, "wet", "run[0]"), List.of(all)).accepted()).isEmpty();
    assertThat(only(reported(STOP, "wet", "run[1].pause"), List.of(first)).accepted())
        .contains(first);
    assertThat(only(reported(STOP, "wet", "run[1]"), List.of(first)).accepted()).contains(first);
    assertThat(only(reported(STOP, "wet", "run[12]"), List.of(first)).accepted()).isEmpty();
    assertThat(only(reported(STOP, "wet", "run"), List.of(first)).accepted()).isEmpty();
  }

  @Test
  void anAcceptedStopStillShowsButBlocksNoMore() {
    Finding found = only(reported(STOP, "wet", "run[0]"), List.of(accept(STOP.id(), null)));
    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.blocks()).isFalse();
  }

  @Test
  void answersToTheAcceptancesThatHoldItsPlace() {
    Acceptance used = accept("drying/too-wet", "run[0]");
    Acceptance moved = accept("drying/too-wet", "run[1]");
    Acceptance mended = accept("drying/perhaps-wet", null);
    List<Acceptance> all = List.of(used, moved, mended);
    List<Finding> found =
        Findings.of(List.of(reported(STOP, "wet", "run[0].pause")), all, SOURCE, Bounds.USUAL);
    assertThat(all)
        .filteredOn(
            a -> found.stream().noneMatch(f -> f.answers(new AcceptEntry(a, Optional.empty()))))
        .containsExactly(moved, mended);
  }

  private static Finding only(Reported reported, List<Acceptance> acceptances) {
    List<Finding> found = Findings.of(List.of(reported), acceptances, SOURCE, Bounds.USUAL);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Reported reported(RuleInfo rule, String message, String path) {
    Fact fact = new Fact(new PlanPath(path), List.of(), List.of());
    return new Reported(rule, message, "wait", fact, List.of(fact));
  }

  private static Acceptance accept(String rule, String at) {
    return new Acceptance(rule, Optional.ofNullable(at), "it is a rag", new PlanPath("accept[0]"));
  }

  private static RuleInfo rule(String id, Severity severity) {
    return new RuleInfo(id, severity, "s", "b", "m", "r", "common practice, no source", List.of());
  }
}
