package strikeoff.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.facts.Facts;
import strikeoff.findings.Severity;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** Writes pages of made and of read plans to a folder, to be looked at; run by hand. */
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
    Files.writeString(folder.resolve("made.html"), HtmlReport.plan(judged));
    List<IndexEntry> entries = new ArrayList<>();
    entries.add(IndexEntry.of(judged, "made.html"));
    entries.add(
        new IndexEntry(
            "c.yaml",
            "c.yaml",
            "",
            Verdict.UNREADABLE,
            Map.of(),
            "",
            -1,
            List.of(),
            0,
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.empty(),
            "Line 2: unknown key"));
    Policy policy = PolicyReader.builtIn();
    for (int i = 1; i < arguments.length; i++) {
      Checked checked = checked(Path.of(arguments[i]), policy);
      Files.writeString(folder.resolve("plan" + i + ".html"), HtmlReport.plan(checked));
      entries.add(IndexEntry.of(checked, "plan" + i + ".html"));
    }
    Files.writeString(folder.resolve("index.html"), HtmlReport.index("Saturday class", entries));
  }

  private static Checked checked(Path file, Policy policy) throws IOException {
    PlanReading reading =
        PlanReader.read(file.getFileName().toString(), Files.readString(file), policy);
    if (reading instanceof PlanReading.Readable read) {
      return new Checked.Judged(
          file.getFileName().toString(),
          read.plan(),
          read.map(),
          Facts.derive(read.plan(), policy),
          List.of(),
          List.of());
    }
    PlanReading.Unreadable refused = (PlanReading.Unreadable) reading;
    return new Checked.Unreadable(
        file.getFileName().toString(), refused.lines(), refused.problems(), "");
  }
}
