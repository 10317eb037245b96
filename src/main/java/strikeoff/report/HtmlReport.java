package strikeoff.report;

import gg.jte.generated.precompiled.JtecompareGenerated;
import gg.jte.generated.precompiled.JteindexGenerated;
import gg.jte.generated.precompiled.JteplanGenerated;
import gg.jte.generated.precompiled.JteproblemGenerated;
import gg.jte.generated.precompiled.JteproposalGenerated;
import gg.jte.generated.precompiled.JtepupilGenerated;
import gg.jte.generated.precompiled.JterulesGenerated;
import gg.jte.generated.precompiled.JtesheetsGenerated;
import gg.jte.generated.precompiled.JtewallGenerated;
import gg.jte.html.HtmlInterceptor;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.Utf8ByteOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import strikeoff.check.Checked;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Policy;
import strikeoff.propose.Proposal;
import strikeoff.report.compare.Comparison;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.page.IndexPage;
import strikeoff.report.page.PlanPage;
import strikeoff.report.page.SheetsIndexPage;

/**
 * Checked plans as HTML pages: one self-contained file each, everything in it escaped and visible,
 * the same bytes for the same result. Line ends are {@code \n}.
 */
public final class HtmlReport {

  /**
   * As long as the page of a plan or of a batch may get: its lists are cut short until it does, and
   * tell how much they leave out. A sound plan's has a tenth of it.
   */
  public static final int MOST_BYTES = 2 * 1024 * 1024;

  /** Lists of a page that is still too long are down to a few entries then. */
  private static final int SHORTEST = 256;

  private HtmlReport() {}

  /** The page of one plan, readable or not. */
  public static String plan(Checked checked) {
    return text(utf8(checked));
  }

  /** The same as it is written into a file: nothing of a batch is larger than its pages. */
  public static byte[] utf8(Checked checked) {
    return utf8(checked, true);
  }

  /**
   * @param pictures false to draw no film: a page of commissioned work may be handed on
   */
  public static byte[] utf8(Checked checked, boolean pictures) {
    if (checked instanceof Checked.Judged judged) {
      PlanPage page = PlanPages.of(judged, pictures);
      return bounded(JteplanGenerated::render, page, page::cut);
    }
    return rendered(JteproblemGenerated::render, ProblemPages.of(checked));
  }

  /**
   * The page of a batch.
   *
   * @param title what the batch is, for example the folder's name
   * @param entries in the order to list them
   */
  public static String index(String title, List<IndexEntry> entries) {
    return index(title, entries, false, Map.of());
  }

  /**
   * @param byPupil whether plans are grouped by whose they are, rather than by folder
   * @param pages what each pupil gets back, by name, relative
   */
  public static String index(
      String title, List<IndexEntry> entries, boolean byPupil, Map<String, String> pages) {
    IndexPage page = IndexPages.of(title, entries, byPupil, pages);
    return text(bounded(JteindexGenerated::render, page, page::cut));
  }

  /**
   * The page of the rules that judged, to lie beside the index; each stands under its id.
   *
   * @param policy the limits that come with the program
   */
  public static byte[] rules(List<RuleInfo> rules, Policy policy) {
    return rendered(JterulesGenerated::render, RulesPages.of(rules, policy));
  }

  /**
   * The page that a pupil gets back.
   *
   * @param rules all that judged, by id
   * @param narrowed which of them were left out, if not all were asked
   */
  public static byte[] pupil(
      String name, List<Outcome> plans, Map<String, RuleInfo> rules, Optional<Narrowed> narrowed) {
    return rendered(JtepupilGenerated::render, new PupilPages(rules, narrowed).of(name, plans));
  }

  /** The page that compares two versions of a plan or of a batch. */
  public static String comparison(Comparison comparison) {
    return text(rendered(JtecompareGenerated::render, ComparePages.of(comparison)));
  }

  /** The run of a plan as sheets for the wall, and nothing else. */
  public static byte[] sheets(Checked.Judged judged) {
    return rendered(JtewallGenerated::render, WallSheets.of(judged));
  }

  /**
   * The page that leads to the sheets of a batch.
   *
   * @param entries in the order to list them, each with the address of its sheets
   */
  public static byte[] sheetsIndex(String title, List<IndexEntry> entries) {
    SheetsIndexPage page = SheetsIndexPages.of(title, entries);
    return bounded(JtesheetsGenerated::render, page, page::cut);
  }

  /** The page of a proposed run, beside the plan's own. */
  public static String proposal(Proposal.Found found) {
    return text(rendered(JteproposalGenerated::render, ProposalPages.of(found)));
  }

  /** A page's template, as the build has compiled it. */
  interface Template<P> {
    void render(HtmlTemplateOutput out, HtmlInterceptor none, P page);
  }

  private static <P> byte[] bounded(Template<P> template, P page, IntFunction<P> cut) {
    byte[] bytes = rendered(template, page);
    for (int times = 2; bytes.length > MOST_BYTES && times <= SHORTEST; times *= 2) {
      bytes = rendered(template, cut.apply(times));
    }
    return bytes;
  }

  static <P> byte[] rendered(Template<P> template, P page) {
    Utf8ByteOutput out = new Utf8ByteOutput();
    template.render(new OwaspHtmlTemplateOutput(new VisibleOutput(out)), null, page);
    return out.toByteArray();
  }

  private static String text(byte[] utf8) {
    return new String(utf8, StandardCharsets.UTF_8);
  }
}
