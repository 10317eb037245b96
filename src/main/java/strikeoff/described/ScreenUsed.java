package strikeoff.described;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/** A screen of the plan, and the designs that it prints. */
public record ScreenUsed(
    String screen,
    Length frameLength,
    Length frameWidth,
    Length imageLength,
    Length imageWidth,
    MeshCount mesh,
    Length thread,
    boolean squeegeeStated,
    List<String> designs,
    PlanPath path)
    implements Evidence {

  public ScreenUsed {
    designs = List.copyOf(designs);
  }
}
