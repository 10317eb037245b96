package strikeoff.described;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;

/** A design and its colours. */
public record DesignPrinted(
    String design,
    Length length,
    Length width,
    int colours,
    boolean withKey,
    List<String> pastes,
    List<String> screens,
    PlanPath path)
    implements Evidence {

  public DesignPrinted {
    pastes = List.copyOf(pastes);
    screens = List.copyOf(screens);
  }
}
