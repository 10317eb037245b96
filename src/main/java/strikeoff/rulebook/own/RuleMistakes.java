package strikeoff.rulebook.own;

import java.util.List;
import java.util.stream.Collectors;

/** Own rules that can't be used, with every mistake in them. */
public final class RuleMistakes extends Exception {

  /** More than anybody mends in one go. */
  static final int MOST = 100;

  private static final long serialVersionUID = 1L;

  private final transient List<RuleMistake> all;
  private final boolean unread;

  /**
   * @param all at least one
   */
  public RuleMistakes(List<RuleMistake> all) {
    this(all, false);
  }

  /**
   * @param all at least one
   * @param unread true if something is there and can't be read
   */
  RuleMistakes(List<RuleMistake> all, boolean unread) {
    super(all.stream().map(RuleMistake::text).collect(Collectors.joining("\n")));
    this.unread = unread;
    this.all = all.stream().distinct().sorted(RuleMistake.ORDER).toList();
  }

  public List<RuleMistake> all() {
    return all;
  }

  /** True if a file or folder is there and can't be read, which is nobody's mistake in a rule. */
  public boolean unread() {
    return unread;
  }
}
