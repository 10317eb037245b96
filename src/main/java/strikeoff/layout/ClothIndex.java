package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds what lies near a place of the cloth without looking at everything; knows tubes. All shapes
 * go in before the first question.
 *
 * @param <T> what is found
 */
public final class ClothIndex<T> {

  private final Tube tube;
  private final STRtree tree = new STRtree();
  private int size;

  public ClothIndex(Tube tube) {
    this.tube = tube;
  }

  /**
   * Puts a shape in.
   *
   * @throws IllegalStateException if questions have been asked already
   */
  public void add(Geometry shape, T item) {
    Entry<T> entry = new Entry<>(size++, item);
    for (Envelope bounds : tube.bounds(shape.getEnvelopeInternal())) {
      tree.insert(bounds, entry);
    }
  }

  /**
   * Everything whose bounds lie within a reach of a shape's bounds, in the order it was put in: a
   * choice of candidates, to be measured by the caller.
   *
   * @param reach in millimetres, 0 for what may meet it
   */
  public List<T> near(Geometry shape, double reach) {
    if (size == 0) {
      return List.of();
    }
    Envelope wide = new Envelope(shape.getEnvelopeInternal());
    wide.expandBy(reach);
    List<Entry<T>> found = new ArrayList<>();
    for (Envelope bounds : tube.bounds(wide)) {
      tree.query(bounds, item -> found.add(entry(item)));
    }
    found.sort((a, b) -> Integer.compare(a.order, b.order));
    List<T> items = new ArrayList<>(found.size());
    int last = -1;
    for (Entry<T> entry : found) {
      if (entry.order != last) {
        items.add(entry.item);
        last = entry.order;
      }
    }
    return items;
  }

  @SuppressWarnings("unchecked") // the tree holds nothing but entries of this index
  private Entry<T> entry(Object item) {
    return (Entry<T>) item;
  }

  private record Entry<T>(int order, T item) {}
}
