package strikeoff.fuzz;

/** Any bytes as a plan, through everything that comes of one. */
public final class WholeCheck {

  private WholeCheck() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    Expectations.checked(input);
  }
}
