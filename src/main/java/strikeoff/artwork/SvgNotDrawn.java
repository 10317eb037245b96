package strikeoff.artwork;

import java.util.Optional;

/** Something of a drawing isn't drawn here; the message says what to do about it. */
final class SvgNotDrawn extends Exception {

  private static final long serialVersionUID = 1;

  private final transient Optional<String> name;

  SvgNotDrawn(String advice) {
    super(advice, null, false, false);
    this.name = Optional.empty();
  }

  /**
   * @param name of the attribute that it is about
   */
  SvgNotDrawn(String name, String advice) {
    super(advice, null, false, false);
    this.name = Optional.of(name);
  }

  /** What it is about, if that isn't the whole element. */
  Optional<String> name() {
    return name;
  }
}
