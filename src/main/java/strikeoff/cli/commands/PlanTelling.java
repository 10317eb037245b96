package strikeoff.cli.commands;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.Colouring;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.MaterialsText;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Underway;
import strikeoff.report.HtmlReport;
import strikeoff.report.json.JsonReport;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/** Checks a plan and makes all that is told of it, or takes that from an earlier run. */
final class PlanTelling {

  private final Surroundings here;
  private final Studios studios;
  private final CheckSettings settings;
  private final Outputs<Results> outputs;
  private final boolean further;
  private final PlanText text;
  private final Optional<KeptResults> kept;

  /**
   * @param further whether other runs of a plan are looked at
   */
  PlanTelling(
      Surroundings here,
      Studios studios,
      CheckSettings settings,
      Outputs<Results> outputs,
      boolean further) {
    this.here = here;
    this.studios = studios;
    this.settings = settings;
    this.outputs = outputs;
    this.further = further;
    this.text = new PlanText(ink(), here.width(), settings.detail(), settings.maxFindings());
    this.kept = kept();
  }

  /** What is told of a plan; runs beside other plans, so nothing is told here. */
  PlanTold of(PlanFile plan) {
    Optional<KeptResults.Plan> read = kept.flatMap(k -> k.plan(plan));
    Optional<PlanTold> known = read.flatMap(r -> kept.get().find(r));
    if (known.isPresent()) {
      return known.get();
    }
    PlanTold told = checked(plan, read);
    read.ifPresent(r -> kept.get().keep(r, told));
    return told;
  }

  private PlanTold checked(PlanFile plan, Optional<KeptResults.Plan> read) {
    FurtherLook look = new FurtherLook(further ? studios.judge(plan).checker() : Optional.empty());
    Checked checked =
        studios.checked(plan, read.map(KeptResults.Plan::stream), mendsAreShown(), look::begin);
    PlanTold told = of(checked);
    return look.found()
        .map(end -> told.and(text.sooner((Checked.Judged) checked, end)))
        .orElse(told);
  }

  /** What is told of a plan that was checked, or given up. */
  PlanTold of(Checked result) {
    Underway.at(Underway.Stage.TELLING);
    Checked checked = settings.baseline().map(b -> b.marked(result)).orElse(result);
    return new PlanTold(
        lines(checked),
        outcome(checked).with(settings.baseline().map(b -> b.gone(checked)).orElse(List.of())),
        settings.reports().map(r -> HtmlReport.utf8(checked, settings.artwork())),
        settings.sheets().isPresent() && checked instanceof Checked.Judged judged
            ? Optional.of(HtmlReport.sheets(judged))
            : Optional.empty());
  }

  /** What is kept in a cache may be asked for in any format. */
  private Outcome outcome(Checked checked) {
    Outcome outcome = Outcome.of(checked, 1, Optional.empty());
    return outputs.wants(Formats.JSON) || settings.cache().isPresent()
        ? outcome.supplied(checked)
        : outcome;
  }

  private List<String> lines(Checked checked) {
    List<String> lines = new ArrayList<>(text.of(checked));
    if (settings.materials()) {
      lines.addAll(new MaterialsText(here.width()).of(checked));
    }
    return lines;
  }

  /** To try what mends findings costs a check for each; a verdict alone says nothing of it. */
  private boolean mendsAreShown() {
    return !settings.detail().verdictsAlone()
        || settings.reports().isPresent()
        || outputs.needResults();
  }

  private Ink ink() {
    return outputs.textIsShown() || settings.colour() != Colouring.AUTO
        ? settings.colour().ink(here)
        : new Ink(false);
  }

  /** What earlier runs kept, if a cache is used. */
  private Optional<KeptResults> kept() {
    if (settings.cache().isEmpty()) {
      return Optional.empty();
    }
    List<String> options =
        List.of(
            settings.detail().toString(),
            Boolean.toString(settings.materials()),
            ink().toString(),
            Integer.toString(here.width()),
            Integer.toString(settings.maxFindings()),
            settings.units().toString(),
            Boolean.toString(mendsAreShown()),
            Boolean.toString(further),
            Boolean.toString(settings.reports().isPresent()),
            Boolean.toString(settings.sheets().isPresent()),
            Boolean.toString(settings.artwork()),
            studios.narrowed().map(Object::toString).orElse(""),
            settings.baseline().map(b -> JsonReport.text(b.results())).orElse(""));
    try {
      KeptResults kept =
          new KeptResults(settings.cache().get(), studios, settings.bounds(), options);
      studios.keep(kept.films());
      return Optional.of(kept);
    } catch (IOException e) {
      Complaint.say(here, "the cache isn't used: " + FileTrouble.of(e));
      return Optional.empty();
    }
  }

  /** Ends the use of what earlier runs kept: why something could not be kept, if so. */
  Optional<String> close() {
    return kept.flatMap(KeptResults::close);
  }
}
