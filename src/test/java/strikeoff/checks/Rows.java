package strikeoff.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import strikeoff.checks.CheckRow.Status;

/** Collects a topic's checks, one source after the other. */
public final class Rows {

  private final List<Check> checks = new ArrayList<>();
  private String source = "";
  private Status status = Status.FROM_MEMORY;

  /** The source of the rows that follow. */
  public Rows from(String source, Status status) {
    this.source = source;
    this.status = status;
    return this;
  }

  /** The rows that follow were read in that source or in a copy of it. */
  public Rows published(String source) {
    return from(source, Status.PUBLISHED);
  }

  /** The rows that follow were worked out from that source's constants. */
  public Rows computed(String source) {
    return from(source, Status.COMPUTED);
  }

  public Rows row(
      String quantity, String conditions, double value, double tolerance, DoubleSupplier is) {
    checks.add(new Check(new CheckRow(quantity, conditions, value, tolerance, source, status), is));
    return this;
  }

  /** The row before this, if ours lies outside its tolerance and no honest change would help. */
  public Rows missed(String why) {
    Check last = checks.remove(checks.size() - 1);
    checks.add(new Check(last.row().missed(why), last.computed()));
    return this;
  }

  /** Anything from low to high is right. */
  public Rows within(
      String quantity, String conditions, double low, double high, DoubleSupplier is) {
    checks.add(new Check(CheckRow.within(low, high, quantity, conditions, source, status), is));
    return this;
  }

  public List<Check> checks() {
    return List.copyOf(checks);
  }
}
