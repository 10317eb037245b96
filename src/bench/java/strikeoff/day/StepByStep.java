package strikeoff.day;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import org.yaml.snakeyaml.LoaderOptions;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;

/**
 * A run written out: one step of the plan language for each impression, nothing more than needed.
 */
final class StepByStep {

  private StepByStep() {}

  static String of(PrintPlan plan) {
    StringBuilder text = new StringBuilder("plan: long cloth\nrun:\n");
    Layout layout = Layout.of(plan, PrintDay.POLICY);
    for (Placement placement : layout.placements()) {
      for (Design.Separation colour : plan.designs().get(placement.design()).separations()) {
        text.append("  - {print: ")
            .append(placement.arrangement())
            .append(", only: ")
            .append(placement.number())
            .append(", colours: ")
            .append(colour.screen())
            .append("}\n");
      }
    }
    return text.toString();
  }

  /** Jackson as it comes, but for the length of documents that it takes. */
  static ObjectMapper mapper() {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    return new ObjectMapper(YAMLFactory.builder().loaderOptions(options).build());
  }
}
