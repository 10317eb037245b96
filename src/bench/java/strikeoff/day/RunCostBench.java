package strikeoff.day;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;

/**
 * What simulating a run with its contacts costs, beside reading it written out step by step. The
 * JVM is asked for what the launcher asks it for, since that is what people wait for.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xmx3g", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 10, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class RunCostBench {

  /** A long cloth on one table, laid out before the clock starts. */
  @State(Scope.Benchmark)
  public static class Day {

    @Param({"1000", "10000", "100000"})
    int impressions;

    @Param({"NONE", "FEW", "MANY"})
    LongCloth.Contacts contacts;

    PrintPlan plan;
    Layout layout;

    @Setup
    public void lay() {
      plan = LongCloth.of(impressions, contacts);
      layout = Layout.of(plan, PrintDay.POLICY);
    }
  }

  /** The same run as a document with a step for each impression. */
  @State(Scope.Benchmark)
  public static class Document {

    @Param({"10000"})
    int impressions;

    @Param({"NONE", "MANY"})
    LongCloth.Contacts contacts;

    final ObjectMapper yaml = StepByStep.mapper();
    String text;

    @Setup
    public void write() {
      text = StepByStep.of(LongCloth.of(impressions, contacts));
    }
  }

  /** Processor time, which busy neighbours on a machine lengthen much less than the clock's. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Processor {

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    public long nanos;
    public long runs;

    void ran(long since) {
      nanos += now() - since;
      runs++;
    }

    long now() {
      return threads.getCurrentThreadCpuTime();
    }
  }

  @Benchmark
  public int simulate(Day day, Processor processor) {
    long start = processor.now();
    DayRun simulated = DayRun.of(day.plan, day.layout, PrintDay.POLICY);
    processor.ran(start);
    return simulated.impressions().size() + simulated.contacts().size();
  }

  @Benchmark
  public JsonNode read(Document document, Processor processor) throws IOException {
    long start = processor.now();
    JsonNode tree = document.yaml.readTree(document.text);
    processor.ran(start);
    return tree;
  }
}
