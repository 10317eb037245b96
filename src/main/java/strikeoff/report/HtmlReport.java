package strikeoff.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import strikeoff.check.Checked;
import strikeoff.report.compare.Comparison;

/**
 * Checked plans as HTML pages: one self-contained file each, everything in it escaped, the same
 * bytes for the same result. Line ends are {@code \n}.
 */
public final class HtmlReport {

  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

  private HtmlReport() {}

  /** The page of one plan, readable or not. */
  public static String plan(Checked checked) {
    return text(utf8(checked));
  }

  /** The same as it is written into a file: nothing of a batch is larger than its pages. */
  public static byte[] utf8(Checked checked) {
    if (checked instanceof Checked.Judged judged) {
      return rendered("plan.jte", PlanPages.of(judged));
    }
    return rendered("problem.jte", ProblemPages.of(checked));
  }

  /**
   * The page of a batch.
   *
   * @param title what the batch is, for example the folder's name
   * @param entries in the order to list them
   */
  public static String index(String title, List<IndexEntry> entries) {
    return text(rendered("index.jte", IndexPages.of(title, entries)));
  }

  /** The page that compares two versions of a plan or of a batch. */
  public static String comparison(Comparison comparison) {
    return text(rendered("compare.jte", ComparePages.of(comparison)));
  }

  private static byte[] rendered(String template, Object page) {
    Utf8ByteOutput out = new Utf8ByteOutput();
    ENGINE.render(template, Map.of("page", page), out);
    return out.toByteArray();
  }

  private static String text(byte[] utf8) {
    return new String(utf8, StandardCharsets.UTF_8);
  }
}
