package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.care.Hazard;
import strikeoff.check.Checked;
import strikeoff.materials.Materials;
import strikeoff.materials.Weighing;
import strikeoff.paste.ThickenerStrength;
import strikeoff.report.page.Listed;
import strikeoff.report.page.MaterialsList;
import strikeoff.speech.MaterialsSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Share;

/** Lists what to buy and what to weigh. */
final class MaterialsLists {

  /** What the scales have to do with. */
  private static final Set<Hazard> AT_THE_SCALES =
      EnumSet.of(Hazard.DYE_POWDER, Hazard.ALKALI, Hazard.VESSELS, Hazard.CHILDREN);

  private MaterialsLists() {}

  static MaterialsList of(Checked.Judged judged) {
    Measures units = judged.plan().measures();
    Materials materials =
        Materials.of(judged.plan(), judged.facts().timeline(), judged.facts().policy());
    List<MaterialsList.Bought> buy =
        materials.purchases().stream()
            .map(
                purchase ->
                    new MaterialsList.Bought(
                        MaterialsSpeech.toBuy(purchase, units),
                        MaterialsSpeech.name(purchase),
                        MaterialsSpeech.shares(purchase, units)))
            .toList();
    List<MaterialsList.Weighed> weigh =
        materials.weighings().stream().map(weighing -> weighed(weighing, judged)).toList();
    List<String> notes = new ArrayList<>();
    notes.add(MaterialsSpeech.unknown(materials));
    notes.add(MaterialsSpeech.basis(materials));
    notes.removeIf(String::isEmpty);
    return new MaterialsList(
        Listed.of(buy, Listed.ROWS),
        Listed.of(weigh, Listed.BLOCKS),
        notes,
        Cautions.worn(judged.facts().care(), c -> AT_THE_SCALES.contains(c.hazard())),
        Cautions.minded(judged.facts().care(), AT_THE_SCALES));
  }

  private static MaterialsList.Weighed weighed(Weighing weighing, Checked.Judged judged) {
    Measures units = judged.plan().measures();
    String recipe = MaterialsSpeech.recipe(weighing);
    return new MaterialsList.Weighed(
        MaterialsSpeech.title(weighing, units),
        MaterialsSpeech.when(weighing) + (recipe.isEmpty() ? "" : "; " + recipe),
        weighing.parts().stream()
            .map(
                part ->
                    new MaterialsList.Line(
                        MaterialsSpeech.weigh(part, units),
                        part.name(),
                        MaterialsSpeech.measure(part, units)))
            .toList(),
        weighing.recipe() == Weighing.Recipe.PLAN ? thickener(weighing, judged) : "");
  }

  private static String thickener(Weighing weighing, Checked.Judged judged) {
    return judged.facts().pastes().evidence().stream()
        .filter(ThickenerStrength.class::isInstance)
        .map(ThickenerStrength.class::cast)
        .filter(
            strength ->
                weighing.kind() == Weighing.Kind.PASTE && strength.paste().equals(weighing.name()))
        .map(
            strength ->
                "Thickener "
                    + Estimates.best(strength.share(), Share::new, Measures.METRIC)
                    + " w/v.")
        .collect(Collectors.joining(" "));
  }
}
