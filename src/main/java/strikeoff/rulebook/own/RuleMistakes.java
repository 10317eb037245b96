package strikeoff.rulebook.own;

import java.util.List;
import java.util.stream.Collectors;

/** Own rules that can't be used, with every mistake in them. */
public final class RuleMistakes extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<RuleMistake> all;

  /**
   * @param all at least one
   */
  public RuleMistakes(List<RuleMistake> all) {
    super(all.stream().map(RuleMistake::text).collect(Collectors.joining("\n")));
    this.all = all.stream().distinct().sorted(RuleMistake.ORDER).toList();
  }

  public List<RuleMistake> all() {
    return all;
  }
}
