package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Example;

class BathTablesTest {

  /** A plan that steams has a card of its own for it, and one only. */
  @Test
  void steamHasItsCard() {
    String plan = Example.packaged("care/steam-or-iron-without-heat-gloves").firingText();
    Checked.Judged judged = (Checked.Judged) Checker.builtIn().check("plan.yaml", plan);
    assertThat(BathTables.of(judged)).hasSize(1);
    assertThat(BathTables.of(judged).get(0).tables()).hasSize(1);
    assertThat(BathTables.of(judged).get(0).tables().get(0).caption()).contains("fix by steam");
  }
}
