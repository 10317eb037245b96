package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * A print with its alkali in it that goes into a bath.
 *
 * @param dyes the pastes concerned
 * @param from where the alkali is, in words: in the paste, or in the cloth
 * @param alkaline true if the bath holds alkali too
 * @param holds what the bath holds, in words
 * @param related the pastes, or the soak that brought the alkali
 * @param path of the bath
 */
public record AlkalinePrint(
    int step,
    List<String> dyes,
    String from,
    boolean alkaline,
    String holds,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AlkalinePrint {
    dyes = List.copyOf(dyes);
    related = List.copyOf(related);
  }
}
