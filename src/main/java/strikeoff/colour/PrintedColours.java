package strikeoff.colour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;

/** Which pastes and designs the layout really uses, and where. */
final class PrintedColours {

  private final Map<String, Set<String>> placementsByPaste = new LinkedHashMap<>();
  private final Set<String> designs = new LinkedHashSet<>();

  PrintedColours(Layout layout) {
    for (Footprint footprint : layout.footprints()) {
      placementsByPaste
          .computeIfAbsent(footprint.paste().name(), name -> new LinkedHashSet<>())
          .add(footprint.placement().name());
      designs.add(footprint.placement().design());
    }
  }

  boolean places(String design) {
    return designs.contains(design);
  }

  List<String> placements(String paste) {
    return new ArrayList<>(placementsByPaste.getOrDefault(paste, Set.of()));
  }
}
