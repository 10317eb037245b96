package strikeoff.document;

/** Work on a plan ended for want of memory: the same plan may pass when nothing else is in work. */
public final class ShortOfMemory {

  private static final int DEEPEST_CAUSE = 50;

  private ShortOfMemory() {}

  /** True if it came of too little memory, whatever has been wrapped around that. */
  public static boolean caused(Throwable thrown) {
    Throwable at = thrown;
    for (int deep = 0; at != null && deep < DEEPEST_CAUSE; deep++) {
      // A class that could not be set up for want of memory is missing from then on.
      if (at instanceof OutOfMemoryError || at instanceof NoClassDefFoundError) {
        return true;
      }
      at = at.getCause();
    }
    return false;
  }
}
