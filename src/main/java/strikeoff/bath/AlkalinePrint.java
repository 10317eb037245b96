package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * A print with its alkali in it that goes into a bath.
 *
 * @param dyes the pastes concerned
 * @param inCloth true if the alkali is in the cloth, from a soak before; false if in the paste
 * @param alkaline true if the bath holds alkali too
 * @param salt true if the bath holds salt
 * @param related the pastes, or the soak that brought the alkali
 * @param path of the bath
 */
public record AlkalinePrint(
    int step,
    List<String> dyes,
    boolean inCloth,
    boolean alkaline,
    boolean salt,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AlkalinePrint {
    dyes = List.copyOf(dyes);
    related = List.copyOf(related);
  }
}
