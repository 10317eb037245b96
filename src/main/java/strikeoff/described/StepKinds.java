package strikeoff.described;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Step;

/** What steps are called, as a plan writes them. */
public final class StepKinds {

  private StepKinds() {}

  /** Everything that a step can be. */
  public static List<String> all() {
    List<String> all = new ArrayList<>();
    for (Class<?> kind : Step.class.getPermittedSubclasses()) {
      if (kind == Step.Fix.class) {
        Stream.of(DyeFixing.values()).map(DyeFixing::text).forEach(all::add);
      } else {
        all.add(words(kind));
      }
    }
    return List.copyOf(all);
  }

  /** What fixes dye. */
  public static List<String> fixing() {
    return Stream.of(DyeFixing.values()).map(DyeFixing::text).toList();
  }

  /** What fixes or finishes the cloth. */
  public static List<String> baths() {
    return Stream.concat(
            fixing().stream(),
            Stream.of(Step.Rinse.class, Step.Wash.class, Step.HeatSet.class).map(StepKinds::words))
        .toList();
  }

  static String of(Step step) {
    return step instanceof Step.Fix fix ? fix.how().text() : words(step.getClass());
  }

  /** Steps are named by what they are: PrintStep, HeatSet, EndOfDay. */
  private static String words(Class<?> kind) {
    return switch (kind.getSimpleName()) {
      case "HeatSet" -> "heat-set";
      case "EndOfDay" -> "end of day";
      case "PrintStep" -> "print";
      case "WashScreen" -> "wash screen";
      default -> kind.getSimpleName().toLowerCase(Locale.ROOT);
    };
  }
}
