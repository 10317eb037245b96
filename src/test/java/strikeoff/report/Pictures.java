package strikeoff.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import strikeoff.check.Verdict;
import strikeoff.findings.Severity;

/** Writes pages made of the test's own plans to a folder, to be looked at; run by hand. */
final class Pictures {

  private Pictures() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    UnaryOperator<String> plain = UnaryOperator.identity();
    var findings =
        List.of(
            Estuary.finding(
                plain, "drying/frame-on-wet-film", Severity.STOP, 80, "herons 1", "herons 2"),
            Estuary.finding(plain, "paste/tight", Severity.RISK, 50, "herons 2"),
            Estuary.accepted(
                Estuary.finding(plain, "care/no-mask", Severity.ADVICE, 90, "reed border 3"),
                "we wear one"));
    var judged = Estuary.plain(findings);
    Files.writeString(folder.resolve("plan.html"), HtmlReport.plan(judged));
    Files.writeString(folder.resolve("clean.html"), HtmlReport.plan(Estuary.plain(List.of())));
    Files.writeString(
        folder.resolve("index.html"),
        HtmlReport.index(
            "Saturday class",
            List.of(
                IndexEntry.of(judged, "plan.html"),
                IndexEntry.of(Estuary.plain(List.of()), "clean.html"),
                new IndexEntry("c.yaml", "c.yaml", "", Verdict.UNREADABLE, Map.of(), "", -1))));
  }
}
