package strikeoff.artwork;

/** A drawing has more than is taken in; the message says of what. */
final class SvgTooMuch extends RuntimeException {

  private static final long serialVersionUID = 1;

  SvgTooMuch(String what) {
    super(what, null, false, false);
  }
}
