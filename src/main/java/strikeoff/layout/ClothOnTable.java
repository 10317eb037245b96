package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * The cloth's width against the table's.
 *
 * @param hangsOver how much wider the cloth is; zero if it lies on the table whole
 */
public record ClothOnTable(
    Length clothWidth, Length tableWidth, Length hangsOver, PlanPath path, PlanPath clothPath)
    implements Evidence {

  static ClothOnTable of(PrintPlan plan) {
    double over = plan.cloth().width().mm() - plan.table().width().mm();
    return new ClothOnTable(
        plan.cloth().width(),
        plan.table().width(),
        new Length(Math.max(0, over)),
        plan.table().path().key("width"),
        plan.cloth().path());
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.CLOTH, clothPath));
  }
}
