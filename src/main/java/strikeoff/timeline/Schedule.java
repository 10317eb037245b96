package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;

/**
 * Operations with their times, worked in the order in which they are listed.
 *
 * @param booked those that can be done, in their order
 * @param stuck those that can never start
 */
public record Schedule(List<Booked> booked, List<Stuck> stuck) {

  public Schedule {
    booked = List.copyOf(booked);
    stuck = List.copyOf(stuck);
  }

  /**
   * Books every operation as soon as its predecessors have ended and its resources are free. One
   * pass: an operation that waits for a later one, or for one that is stuck, is stuck itself.
   */
  public static Schedule of(List<Operation> operations, Moment start) {
    Bookings bookings = new Bookings();
    List<Booked> booked = new ArrayList<>();
    List<Stuck> stuck = new ArrayList<>();
    Long[] ends = new Long[operations.size()];
    for (int i = 0; i < operations.size(); i++) {
      Operation operation = operations.get(i);
      long earliest = start.seconds();
      Integer missing = null;
      for (int predecessor : operation.predecessors()) {
        Long end = predecessor >= 0 && predecessor < i ? ends[predecessor] : null;
        if (end == null) {
          missing = predecessor;
          break;
        }
        earliest = Math.max(earliest, end);
      }
      if (missing != null) {
        stuck.add(new Stuck(operation, missing));
        continue;
      }
      long from = bookings.start(operation.resources(), earliest);
      long seconds = new Moment(0).plus(operation.duration()).seconds();
      ends[i] = bookings.hold(operation.resources(), from, seconds);
      booked.add(new Booked(operation, new Moment(from), new Moment(ends[i])));
    }
    return new Schedule(booked, stuck);
  }

  /** When the last operation ends; {@code otherwise} if none was booked. */
  public Moment finish(Moment otherwise) {
    return booked.stream().map(Booked::end).reduce(otherwise, Moment::later);
  }

  /** An operation and its time. */
  public record Booked(Operation operation, Moment start, Moment end) {}

  /**
   * An operation that never starts.
   *
   * @param waitsFor index of the operation it waits for
   */
  public record Stuck(Operation operation, int waitsFor) {}
}
