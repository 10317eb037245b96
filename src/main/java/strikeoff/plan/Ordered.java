package strikeoff.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies maps without losing the document's order, which {@link Map#copyOf} would. */
final class Ordered {

  private Ordered() {}

  static <K, V> Map<K, V> copy(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
