package strikeoff.report;

import java.util.regex.Pattern;

/**
 * By what a page is known again as one that strikeoff wrote, and as whose: only such a page is ever
 * written over or taken away.
 */
public enum PageMark {
  /** The page of a plan, of a batch, or of the rules. */
  CHECK("strikeoff check"),
  /** The page that compares two versions. */
  COMPARE("strikeoff compare"),
  /** The page of a proposed run. */
  PROPOSE("strikeoff propose"),
  /** Sheets for the wall. */
  SHEETS("strikeoff check --sheets");

  private static final String HEAD = "<!doctype html>\n<html lang=\"en\">\n<head>\n";

  /** How pages began before they had a mark. */
  private static final String UNMARKED =
      HEAD
          + "<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\""
          + " content=\"default-src &#39;none&#39;; style-src &#39;sha256-";

  private static final Pattern UNMARKED_COMPARISON = Pattern.compile(": what changed</title>");

  private final String generator;

  PageMark(String generator) {
    this.generator = generator;
  }

  /** What the page's head says, under the name that HTML has for this. */
  String generator() {
    return generator;
  }

  /** True if a file that begins so is such a page. */
  public boolean stands(String beginning) {
    if (beginning.startsWith(UNMARKED)) {
      return (this == COMPARE) == UNMARKED_COMPARISON.matcher(beginning).find();
    }
    return beginning.startsWith(HEAD + "<meta name=\"generator\" content=\"" + generator + "\">\n");
  }
}
