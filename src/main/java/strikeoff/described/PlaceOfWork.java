package strikeoff.described;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.AirSpeed;
import strikeoff.units.Length;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * Table, room and people.
 *
 * @param stations 0 if the table is used as one run
 * @param worn protection that the plan names
 */
public record PlaceOfWork(
    Length tableLength,
    Length tableWidth,
    boolean railed,
    int stations,
    Temperature temperature,
    Share humidity,
    AirSpeed air,
    int people,
    List<String> worn,
    PlanPath path)
    implements Evidence {

  public PlaceOfWork {
    worn = List.copyOf(worn);
  }
}
