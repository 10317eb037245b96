package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strikeoff.cli.files.PlanFiles.PlanFile;

class BatchTest {

  private static final List<PlanFile> PLANS =
      IntStream.range(0, 40).mapToObj(i -> new PlanFile(Path.of(""), "plan " + i)).toList();

  @Test
  void keepsTheOrderWhateverTakesLonger() {
    List<String> done = new ArrayList<>();
    new Batch(8, 60)
        .run(
            PLANS,
            plan -> {
              // The later one of each pair is the quicker one.
              pause(plan.name().endsWith("0") ? 20 : 1);
              return plan.name();
            },
            (plan, failed) -> failed.what(),
            done::add);
    assertThat(done).containsExactlyElementsOf(PLANS.stream().map(PlanFile::name).toList());
  }

  @Test
  void worksOnNoMoreThanAskedAtOnce() {
    AtomicInteger now = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    new Batch(3, 60)
        .run(
            PLANS,
            plan -> {
              most.accumulateAndGet(now.incrementAndGet(), Math::max);
              pause(2);
              now.decrementAndGet();
              return plan.name();
            },
            (plan, failed) -> failed.what(),
            done -> {});
    assertThat(most.get()).isBetween(2, 3);
  }

  @Test
  void onePlansFaultHarmsNoOther() {
    List<String> done = new ArrayList<>();
    new Batch(4, 60)
        .run(
            PLANS.subList(0, 4),
            plan -> {
              switch (plan.name()) {
                case "plan 1" -> throw new IllegalStateException("broken");
                case "plan 2" -> deeper(0);
                default -> {}
              }
              return "checked";
            },
            (plan, failed) -> failed.what(),
            done::add);
    assertThat(done).hasSize(4);
    assertThat(done.get(0)).isEqualTo("checked");
    assertThat(done.get(1)).contains("broken");
    assertThat(done.get(2)).contains("StackOverflowError");
    assertThat(done.get(3)).isEqualTo("checked");
  }

  @Test
  void givesAPlanUpThatNeverEnds() {
    CountDownLatch never = new CountDownLatch(1);
    List<String> done = new ArrayList<>();
    new Batch(2, 1)
        .run(
            PLANS.subList(0, 3),
            plan -> {
              if (plan.name().equals("plan 0")) {
                try {
                  never.await();
                } catch (InterruptedException e) {
                  return "interrupted";
                }
              }
              return plan.name();
            },
            (plan, failed) -> failed.what(),
            done::add);
    assertThat(done).containsExactly("it took more than 1 s and was given up", "plan 1", "plan 2");
  }

  /** Two at a time: while the first one lasts, the second one's place goes from plan to plan. */
  @Test
  void aLongPlanHoldsUpNoOtherAndAllAreStillInOrder() {
    CountDownLatch others = new CountDownLatch(3);
    List<String> done = new ArrayList<>();
    new Batch(2, 60)
        .run(
            PLANS.subList(0, 12),
            plan -> {
              if (plan.name().equals("plan 0")) {
                try {
                  return others.await(20, TimeUnit.SECONDS) ? plan.name() : "held up";
                } catch (InterruptedException e) {
                  return "interrupted";
                }
              }
              others.countDown();
              return plan.name();
            },
            (plan, failed) -> failed.what(),
            done::add);
    assertThat(done)
        .containsExactlyElementsOf(PLANS.subList(0, 12).stream().map(PlanFile::name).toList());
  }

  /** Both run out of memory side by side; the second one alone has enough. */
  @Test
  void aPlanThatRanOutOfMemoryIsCheckedAgainAlone() {
    AtomicInteger now = new AtomicInteger();
    AtomicInteger besides = new AtomicInteger();
    AtomicInteger times = new AtomicInteger();
    List<String> done = new ArrayList<>();
    new Batch(3, 60)
        .run(
            PLANS.subList(0, 12),
            plan -> {
              int others = now.getAndIncrement();
              try {
                pause(5);
                if (plan.name().equals("plan 1")) {
                  besides.addAndGet(times.getAndIncrement() == 0 ? 0 : others);
                  throw new IllegalStateException(new OutOfMemoryError("Java heap space"));
                }
                if (plan.name().equals("plan 2") && times.get() < 2) {
                  throw new OutOfMemoryError("Java heap space");
                }
                return plan.name();
              } finally {
                now.decrementAndGet();
              }
            },
            (plan, failed) -> failed.what(),
            done::add);
    assertThat(times).hasValue(2);
    assertThat(besides).as("others beside the second try").hasValue(0);
    assertThat(done).hasSize(12).startsWith("plan 0", "it needs more memory than there is");
    assertThat(done.subList(2, 12)).allMatch(name -> name.startsWith("plan "));
  }

  private static int deeper(int level) {
    return level < 0 ? 0 : deeper(level + 1) + 1;
  }

  private static void pause(int millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
