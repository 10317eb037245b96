package strikeoff.report;

import gg.jte.generated.precompiled.JteabsentGenerated;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import strikeoff.document.Sha256;

/**
 * Pages as a browser gets them while they may change: with a script that asks where the page came
 * from for word of a newer one, and a policy that lets it ask there and nowhere else. What is
 * written into files stays without both.
 */
public final class ServedPages {

  /** The version of a page that isn't there. */
  public static final String NONE = "none";

  private static final String SCRIPTS = "script-src &#39;";
  private static final String END = "</head>";

  private ServedPages() {}

  /** What only the same bytes have: in hexadecimal, also after a new start of the program. */
  public static String version(byte[] page) {
    return HexFormat.of().formatHex(Sha256.begun().digest(page), 0, 16);
  }

  /**
   * The page with that script.
   *
   * @param page as it would be written into a file
   */
  public static byte[] of(byte[] page, String version) {
    String html = new String(page, StandardCharsets.UTF_8);
    int scripts = html.indexOf(SCRIPTS);
    int end = html.indexOf(END);
    if (scripts < 0 || end < scripts) {
      throw new IllegalArgumentException("this is no page with a policy in its head");
    }
    return (html.substring(0, scripts)
            + "connect-src &#39;self&#39;; "
            + SCRIPTS
            + Assets.LIVE_SCRIPT.hash()
            + "&#39; &#39;"
            + html.substring(scripts + SCRIPTS.length(), end)
            + "<script data-version=\""
            + version
            + "\">"
            + new String(Assets.LIVE_SCRIPT.utf8(), StandardCharsets.UTF_8)
            + "</script>\n"
            + html.substring(end))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** What stands where no page is: it asks for one too. */
  public static byte[] absent() {
    return of(
        HtmlReport.rendered(
            JteabsentGenerated::render,
            Assets.head(PageMark.CHECK, "No page yet", Assets.PLAN_SCRIPT)),
        NONE);
  }
}
