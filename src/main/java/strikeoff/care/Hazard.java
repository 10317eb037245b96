package strikeoff.care;

import java.util.List;
import strikeoff.plan.Protection;

/** What can hurt in a print room, with the body that says so. */
public enum Hazard {
  DYE_POWDER(
      "Reactive dye powder can sensitise the airways, and later even a trace of it brings the trouble"
          + " back. Weigh it out of draughts with a dust mask rated for fine dust (EN 149, FFP2 or"
          + " better) and wetted paper under the scale; wet the powder before it is carried about.",
      "HSE, Dyes and dyeing and TIS5; protection factor 10 for FFP2, EN 149",
      Protection.DUST_MASK,
      Protection.GLOVES),
  ALKALI(
      "Soda ash irritates the eyes severely. Wear goggles and gloves, sprinkle the powder into water,"
          + " never water onto the powder, and keep it from acids.",
      "ILO/WHO International Chemical Safety Card 1135",
      Protection.GOGGLES,
      Protection.GLOVES),
  VESSELS(
      "Pots, spoons, scales and the cold place that are used for dye are never used for food again.",
      "NSEAD safety page; common practice"),
  STEAM(
      "Steam scalds. Open the steamer away from the face and take the cloth out with heat gloves.",
      "common practice, no source",
      Protection.HEAT_GLOVES),
  HOT_IRON(
      "An iron or a press at binder temperature burns at a touch and warms fumes out of the paint."
          + " Air the room.",
      "common practice, no source",
      Protection.HEAT_GLOVES),
  DRAIN(
      "A spent soda bath goes to the drain only as local rules allow: ask the water company or the"
          + " town. Sewer codes limit pH and temperature, and they differ from place to place.",
      "40 CFR 403.5 for the United States; city codes");

  private final String text;
  private final String body;
  private final List<Protection> needed;

  Hazard(String text, String body, Protection... needed) {
    this.text = text;
    this.body = body;
    this.needed = List.of(needed);
  }

  public String text() {
    return text;
  }

  public String body() {
    return body;
  }

  /** What is worn against it. */
  public List<Protection> needed() {
    return needed;
  }
}
