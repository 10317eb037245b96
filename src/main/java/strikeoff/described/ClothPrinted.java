package strikeoff.described;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;

/** The cloth. */
public record ClothPrinted(
    List<String> fibres,
    Length length,
    Length width,
    ArealMass mass,
    boolean closed,
    boolean washed,
    int seams,
    PlanPath path)
    implements Evidence {

  public ClothPrinted {
    fibres = List.copyOf(fibres);
  }
}
