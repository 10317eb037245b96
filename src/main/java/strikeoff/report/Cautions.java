package strikeoff.report;

import java.util.List;
import strikeoff.check.Checked;
import strikeoff.report.page.Caution;

/** The cautions that a plan calls for. */
final class Cautions {

  private Cautions() {}

  static List<Caution> of(Checked.Judged judged) {
    return List.of();
  }
}
