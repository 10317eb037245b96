package strikeoff.cli.text;

import java.util.Collection;
import strikeoff.check.Verdict;

/**
 * How the program ends. Of several plans the worst decides, in this order from worst: {@link
 * #FAULT}, {@link #UNREADABLE}, {@link #NOT_PRINTABLE}, {@link #PRINTABLE}. Wrong usage is found
 * before any plan is read.
 */
public enum Exit {
  /** Every plan is printable. */
  PRINTABLE(0),
  /** At least one plan is not printable. */
  NOT_PRINTABLE(1),
  /** Wrong usage, or what judges has a mistake where it was named. */
  USAGE(2),
  /** At least one plan can't be read. */
  UNREADABLE(3),
  /**
   * The tool failed, a file could not be read or written, or a policy that was found has a mistake.
   */
  FAULT(4);

  /** What stands over a command's exit codes in its help. */
  public static final String HEADING = "%nExit codes:%n";

  public static final String NOTE = "%nNote:%n";

  // As help and manual tell them.
  public static final String ALL_PRINTABLE = "0:every plan is printable";
  public static final String PRINTED = "0:all is printed";
  public static final String SOME_NOT_PRINTABLE =
      "1:at least one plan is not printable, or has what --fail-on names";
  public static final String WRONG_USAGE = "2:wrong usage";
  public static final String WRONG_POLICY =
      "2:wrong usage, or a mistake in what --policy or --rules names";
  public static final String SOME_UNREADABLE = "3:at least one plan can't be read";
  public static final String TOOL_FAILED =
      "4:the tool failed, or a file could not be read or written";
  public static final String POLICY_FAILED =
      "4:the tool failed, a file could not be read or written, or a studio.yaml that was found has a"
          + " mistake";
  public static final String WORST_COUNTS =
      "Of several exit codes the worst counts: 4, then 3, then 1.";

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  public int code() {
    return code;
  }

  public static Exit of(Verdict verdict) {
    return switch (verdict) {
      case PRINTABLE -> PRINTABLE;
      case NOT_PRINTABLE -> NOT_PRINTABLE;
      case UNREADABLE -> UNREADABLE;
      case NOT_CHECKED -> FAULT;
    };
  }

  /** The worst of them; printable if there is none. */
  public static Exit worst(Collection<Exit> exits) {
    return exits.stream().max(Exit::compareTo).orElse(PRINTABLE);
  }
}
