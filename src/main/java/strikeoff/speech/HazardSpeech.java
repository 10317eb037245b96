package strikeoff.speech;

import java.util.List;
import strikeoff.care.Hazard;
import strikeoff.care.Hurt;
import strikeoff.units.Phrase;

/** The cautions: what can hurt, what to mind, and who states it. */
public final class HazardSpeech {

  private static final String ELECTRIC = ": no wet hands, no wet cable";

  private HazardSpeech() {}

  /**
   * The same, naming what is used of several things that hurt alike.
   *
   * @param hurts of the hazard
   */
  public static String brief(Hazard hazard, List<Hurt> hurts) {
    List<String> movers =
        hurts.stream()
            .filter(Hurt.MovedAir.class::isInstance)
            .map(hurt -> ((Hurt.MovedAir) hurt).air().by().text())
            .distinct()
            .sorted()
            .toList();
    return movers.isEmpty() ? brief(hazard) : Phrase.list(movers) + ELECTRIC;
  }

  /** For a day sheet: what it is, and the one thing to mind. */
  public static String brief(Hazard hazard) {
    return switch (hazard) {
      case DYE_POWDER -> "dye powder: out of draughts, nobody with asthma near it";
      case ALKALI -> "soda and silicate: keep them out of the eyes";
      case VESSELS -> "pots and spoons for dye: never for food again";
      case CHILDREN -> "the class: an adult does dye powder, soda, steam and heat";
      case LIFTING -> "a long frame: two carry it";
      case ELECTRICITY -> "fan and hair-dryer" + ELECTRIC;
      case STEAM -> "scalding steam: open the lid away from the face";
      case AMMONIA -> "ammonia from urea: steam under an extractor or out of doors";
      case HOT_WATER -> "scalding water: lift the cloth with tongs";
      case HOT_IRON -> "a hot iron or press: air the room, never leave it alone";
      case OVEN -> "the oven: air the room, stay with it, cook no food in it again";
      case SCREEN_WASHING -> "screens and pots: scrape them out before any water";
      case DRAIN -> "soda for the drain: ask first what is allowed";
    };
  }

  public static String text(Hazard hazard) {
    return switch (hazard) {
      case DYE_POWDER ->
          "Reactive dye powder can sensitise the airways, and later even a trace of it brings the trouble"
              + " back. Weigh it out of draughts with a dust mask rated for fine dust (EN 149, FFP2 or"
              + " better) and wetted paper under the scale; wet the powder before it is carried about."
              + " Whoever has asthma, or once reacted to a dye, stays away from the powder and asks a"
              + " doctor first.";
      case ALKALI ->
          "Soda ash irritates the eyes severely, and so does silicate liquid. Wear goggles and gloves, sprinkle the powder into water,"
              + " never water onto the powder, and keep it from acids.";
      case VESSELS ->
          "Pots, spoons, scales and the cold place that are used for dye are never used for food again.";
      case CHILDREN ->
          "Children don't handle dye powder, soda ash, steam or hot tools. An adult mixes the pastes"
              + " before the class comes, does the baths, the steaming and the ironing without the"
              + " children, and stays with them at the table.";
      case LIFTING ->
          "Two people carry a long frame, one at each end and both on one word. Clear the way to the sink"
              + " and to the rack first.";
      case ELECTRICITY ->
          "Water and the mains don't go together. Hold no hair-dryer in wet hands and lay none on the"
              + " cloth; set a fan where it can't fall onto the table, its cable off the wet floor; use a"
              + " socket with a residual-current device (30 mA). An electrician decides what a wet room"
              + " may have.";
      case STEAM ->
          "Steam scalds. Boil the steamer up before the cloth goes in, wrapped in paper so that no face"
              + " touches another. Open the lid away from the face, take the cloth out with long heat gloves, keep"
              + " the water below the false floor, and never leave the steamer boiling alone.";
      case AMMONIA ->
          "Urea in a paste gives off ammonia when it is steamed: it stings eyes and throat, and is worse"
              + " for people with asthma. Steam under an extractor or out of doors.";
      case HOT_WATER ->
          "Water this hot scalds within seconds. Lift the cloth with tongs or in lined rubber gloves that"
              + " reach over the wrist, let the water cool before the bath is carried or poured, and keep"
              + " the floor dry.";
      case HOT_IRON ->
          "An iron or a press at binder temperature burns at a touch and warms fumes out of the paint."
              + " Air the room, keep the cord off the floor, and leave neither alone while it is hot.";
      case OVEN ->
          "Paint gives off fumes in an oven, and they settle in it. An oven that sets paint cooks no food"
              + " again, so take none from a kitchen that is used. Keep the cloth clear of the elements,"
              + " stay with it, and air the room.";
      case SCREEN_WASHING ->
          "Scrape screens, blades and pots out before any water reaches them: what is clean goes back into"
              + " its pot, what is not dries and goes into the bin. “Washable with water” doesn't mean fit"
              + " for the drain.";
      case DRAIN ->
          "What holds soda goes down the drain only as local rules allow: a spent bath, and the first rinse"
              + " of cloth whose paste held alkali. Ask the water company or the town: limits on pH and"
              + " temperature differ from place to place.";
    };
  }

  /** Who states it. */
  public static String body(Hazard hazard) {
    return switch (hazard) {
      case DYE_POWDER -> "HSE, Dyes and dyeing and TIS5; protection factor 10 for FFP2, EN 149";
      case ALKALI -> "ILO/WHO International Chemical Safety Card 1135; silicate: a hand-dyeing FAQ";
      case VESSELS -> "NSEAD safety page; common practice";
      case CHILDREN ->
          "dye powder: a teacher's sheet of 1998 and HSE TIS5; the rest common practice, no source";
      case LIFTING -> "common practice, no source";
      case ELECTRICITY -> "from memory";
      case STEAM -> "common practice, no source";
      case AMMONIA -> "from memory";
      case HOT_WATER ->
          "burns by hot water: Moritz and Henriques, Am. J. Pathol. 23:695, 1947, cited from memory";
      case HOT_IRON -> "school rules for irons; fumes common practice, no source";
      case OVEN -> "common practice, no source";
      case SCREEN_WASHING ->
          "ink makers' sheets in a printmakers' notice of 2023; US EPA 742-F-95-010, 1995";
      case DRAIN -> "40 CFR 403.5 for the United States; city codes";
    };
  }
}
