package strikeoff.care;

import java.util.List;
import strikeoff.plan.Protection;

/** What can hurt in a print room, with the body that says so. */
public enum Hazard {
  DYE_POWDER(
      "dye powder: out of draughts, nobody with asthma near it",
      "Reactive dye powder can sensitise the airways, and later even a trace of it brings the trouble"
          + " back. Weigh it out of draughts with a dust mask rated for fine dust (EN 149, FFP2 or"
          + " better) and wetted paper under the scale; wet the powder before it is carried about."
          + " Whoever has asthma, or once reacted to a dye, stays away from the powder and asks a"
          + " doctor first.",
      "HSE, Dyes and dyeing and TIS5; protection factor 10 for FFP2, EN 149",
      Protection.DUST_MASK,
      Protection.GLOVES),
  ALKALI(
      "soda and silicate: keep them out of the eyes",
      "Soda ash irritates the eyes severely, and so does silicate liquid. Wear goggles and gloves, sprinkle the powder into water,"
          + " never water onto the powder, and keep it from acids.",
      "ILO/WHO International Chemical Safety Card 1135; silicate: a hand-dyeing FAQ",
      Protection.GOGGLES,
      Protection.GLOVES),
  VESSELS(
      "pots and spoons for dye: never for food again",
      "Pots, spoons, scales and the cold place that are used for dye are never used for food again.",
      "NSEAD safety page; common practice"),
  CHILDREN(
      "the class: an adult does dye powder, soda, steam and heat",
      "Children don't handle dye powder, soda ash, steam or hot tools. An adult mixes the pastes"
          + " before the class comes, does the baths, the steaming and the ironing without the"
          + " children, and stays with them at the table.",
      "dye powder: a teacher's sheet of 1998 and HSE TIS5; the rest common practice, no source"),
  LIFTING(
      "a long frame: two carry it",
      "Two people carry a long frame, one at each end and both on one word. Clear the way to the sink"
          + " and to the rack first.",
      "common practice, no source"),
  ELECTRICITY(
      "fan and hair-dryer: no wet hands, no wet cable",
      "Water and the mains don't go together. Hold no hair-dryer in wet hands and lay none on the"
          + " cloth; set a fan where it can't fall onto the table, its cable off the wet floor; use a"
          + " socket with a residual-current device (30 mA). An electrician decides what a wet room"
          + " may have.",
      "from memory"),
  STEAM(
      "scalding steam: open the lid away from the face",
      "Steam scalds. Open the lid away from the face, take the cloth out with long heat gloves, keep"
          + " the water below the false floor, and never leave the steamer boiling alone.",
      "common practice, no source",
      Protection.HEAT_GLOVES),
  AMMONIA(
      "ammonia from urea: steam under an extractor or out of doors",
      "Urea in a paste gives off ammonia when it is steamed: it stings eyes and throat, and is worse"
          + " for people with asthma. Steam under an extractor or out of doors.",
      "from memory"),
  HOT_WATER(
      "scalding water: lift the cloth with tongs",
      "Water this hot scalds within seconds. Lift the cloth with tongs or in lined rubber gloves that"
          + " reach over the wrist, let the water cool before the bath is carried or poured, and keep"
          + " the floor dry.",
      "burns by hot water: Moritz and Henriques, Am. J. Pathol. 23:695, 1947, cited from memory",
      Protection.HEAT_GLOVES),
  HOT_IRON(
      "a hot iron or press: air the room, never leave it alone",
      "An iron or a press at binder temperature burns at a touch and warms fumes out of the paint."
          + " Air the room, keep the cord off the floor, and leave neither alone while it is hot.",
      "school rules for irons; fumes common practice, no source",
      Protection.HEAT_GLOVES),
  OVEN(
      "the oven: air the room, stay with it, cook no food in it again",
      "Paint gives off fumes in an oven, and they settle in it. An oven that sets paint cooks no food"
          + " again, so take none from a kitchen that is used. Keep the cloth clear of the elements,"
          + " stay with it, and air the room.",
      "common practice, no source",
      Protection.HEAT_GLOVES),
  SCREEN_WASHING(
      "screens and pots: scrape them out before any water",
      "Scrape screens, blades and pots out before any water reaches them: what is clean goes back into"
          + " its pot, what is not dries and goes into the bin. “Washable with water” doesn't mean fit"
          + " for the drain.",
      "ink makers' sheets in a printmakers' notice of 2023; US EPA 742-F-95-010, 1995"),
  DRAIN(
      "soda for the drain: ask first what is allowed",
      "What holds soda goes down the drain only as local rules allow: a spent bath, and the first rinse"
          + " of cloth whose paste held alkali. Ask the water company or the town: limits on pH and"
          + " temperature differ from place to place.",
      "40 CFR 403.5 for the United States; city codes");

  private final String brief;
  private final String text;
  private final String body;
  private final List<Protection> needed;

  Hazard(String brief, String text, String body, Protection... needed) {
    this.brief = brief;
    this.text = text;
    this.body = body;
    this.needed = List.of(needed);
  }

  /** For a day sheet: what it is, and the one thing to mind. */
  public String brief() {
    return brief;
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
