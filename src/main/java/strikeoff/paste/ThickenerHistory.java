package strikeoff.paste;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Storage;
import strikeoff.policy.Limit;
import strikeoff.units.Span;

/**
 * How a thickener was treated before its paste was mixed.
 *
 * @param stood after it was sprinkled in
 * @param least how long it should stand
 * @param standMore how much longer it should stand, by the policy's shortest time; zero if enough
 * @param age when the plan begins
 * @param path of it in the plan
 */
public record ThickenerHistory(
    String paste, Span stood, Limit least, Span standMore, Span age, Storage storage, PlanPath path)
    implements Evidence {

  public boolean keptWarm() {
    return storage == Storage.ROOM;
  }
}
