package strikeoff.fuzz;

import strikeoff.findings.RuleInfo;
import strikeoff.studio.StudioReader;
import strikeoff.studio.StudioReading;

/** Any bytes in a policy file's place: read, or refused with every mistake at its place. */
public final class PolicyText {

  private PolicyText() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    StudioReading reading =
        StudioReader.read(
            "studio.yaml",
            input,
            Expectations.checker().policy(),
            Expectations.checker().rules().rules().stream().map(RuleInfo::id).toList());
    if (reading instanceof StudioReading.Faulty faulty) {
      Expectations.told(faulty.problems(), input);
    }
  }
}
