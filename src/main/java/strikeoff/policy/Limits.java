package strikeoff.policy;

import strikeoff.plan.Medium;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Concentration;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeshCount;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/**
 * The limits that derivations read, by subject, each of the kind that it has to be. What a limit
 * means, why it is so and who says so stands beside it in {@code rules/SUBJECT/limits.yaml}, where
 * it has the name of its component: {@code screens/side-margin} is {@code screens().sideMargin()}.
 * One that a fact hands on for a rule to compare with is there whole, as a {@link Limit}. What
 * rules alone read is not here.
 */
public record Limits(
    Artwork artwork,
    Care care,
    Cloth cloth,
    Drying drying,
    Fixing fixing,
    Layout layout,
    Media media,
    Order order,
    Paste paste,
    Screens screens,
    Seams seams,
    Table table,
    Time time) {

  /** Of {@code rules/artwork/limits.yaml}. */
  public record Artwork(
      Share greyFrom,
      Share greyTo,
      Limit greyMost,
      Limit gapOpenings,
      Limit meshOfRuling,
      Area speckArea,
      Limit pointsLeast,
      Ratio stretchedMost,
      Ratio resolutionStep,
      Share samePage,
      Length stripLeast,
      Length bareStrip,
      Length buttLeast,
      Length rimSeen,
      Length rimLeast,
      Share rimOfEdge,
      Ratio rimOfLine,
      Length filmMovedMost,
      Angle filmSkewedMost,
      Ratio movedBetter,
      Share edgesMet,
      Share edgesShared,
      Share edgesNear,
      Length stripEven,
      Length edgesLeast,
      Share edgesRound,
      Length edgesLeastRound,
      Ratio turnedBetter,
      Area bareSeen,
      Share negativePrints,
      Share negativeBorder,
      Share negativeBare,
      Share negativeOver,
      Share negativeEnclosed,
      Share underlayCovered,
      Share underlaySeen,
      Length underlayRim,
      Length markMost,
      Length markStrip) {}

  /** Of {@code rules/care/limits.yaml}. */
  public record Care(Temperature scaldsAbove) {}

  /** Of {@code rules/cloth/limits.yaml}. */
  public record Cloth(
      Ratio strongestMix,
      Concentration proteinSoda,
      Span silkInSoda,
      ArealMass lightest,
      ArealMass heaviest) {}

  /** Of {@code rules/drying/limits.yaml}. */
  public record Drying(
      Share wetStop,
      Share wetAdvice,
      ArealMass wetOnWetCloth,
      Ratio wetOnWetPulls,
      MeshCount wetOnWetMesh,
      Share waterOfDye,
      Share waterOfPaint,
      Share waterSpread,
      Ratio depositSpread,
      Ratio weighedDepositSpread,
      Ratio pullSpread,
      Share mobileOfDye,
      Share mobileOfPaint,
      Ratio mobileSpread,
      Ratio uptakeBend,
      Span soakTimeOfDye,
      Span soakTimeOfPaint,
      Ratio soakTimeSpread,
      Ratio uptakeSpread,
      Ratio hollows,
      Ratio hollowsSpread,
      Share touchDryOfPaint,
      Share touchDrySpread,
      Concentration densityOfSolids,
      Share liftMoisture,
      Ratio liftMoistureSpread,
      Share handDry,
      Share skinSlowest,
      Share activityOfDye,
      Share activityOfPaint,
      Ratio heatTransfer,
      AirSpeed stillAir,
      Ratio stillAirSpread,
      Ratio movedAirSpread,
      Ratio namedAirSpread,
      Ratio airTodaySpread,
      Share emissivity,
      Ratio backing,
      Ratio backingSpread,
      Ratio temperatureSpread,
      Share humiditySpread,
      Ratio wallsSpread,
      Temperature coldestAir,
      Temperature hottestAir,
      AirSpeed fastestAir,
      Share spunClothHolds,
      Share wrungClothHolds,
      Share feelsDry,
      ArealMass hungClothLoses,
      Ratio movedAirQuickens,
      Length wetStretch,
      Ratio seenSpread,
      Span shortestTold,
      Ratio weighedSpread,
      Span never,
      Limit inMeshOfDye,
      Limit inMeshOfPaint,
      Span coveredAfter) {

    /** How long paste of that medium may stand in a mesh. */
    public Limit inMesh(Medium medium) {
      return medium == Medium.DYE ? inMeshOfDye() : inMeshOfPaint();
    }

    /** In air more humid than this a film of that medium never dries. */
    public Share activity(Medium medium) {
      return medium == Medium.DYE ? activityOfDye() : activityOfPaint();
    }
  }

  /** Of {@code rules/fixing/limits.yaml}. */
  public record Fixing(
      Limit weakestBath,
      Limit strongestBath,
      Limit tightLiquorRatio,
      Temperature temperatureTolerance,
      Ratio activationEnergyLeast,
      Ratio activationEnergyUsual,
      Ratio activationEnergyMost,
      Temperature coolestSteam,
      Temperature coolestHeatSet,
      Span shortestHeatSet,
      Temperature usualHeatSet,
      Ratio heatSetHalving,
      Area ironSole,
      Area pressPlaten,
      Limit leftInBath,
      Limit leftUnwashed,
      Span onlyWetting,
      Temperature ironAboveFilm,
      Volume measureWater,
      Concentration usualBath,
      Concentration timedSoak,
      Concentration sodaForWater,
      Concentration bicarbonateInWater,
      Ratio acidOfClothLeast,
      Ratio acidOfClothUsual,
      Ratio acidOfClothMost,
      Ratio leastPace,
      Temperature hopelessBelow,
      Ratio slowerWhenCold,
      Temperature coldestHotFixing,
      Share shareAtStatedTime,
      Ratio changeSeen,
      Ratio deepShade,
      Span longestBatch,
      Span longestSoak,
      Ratio potSteamerTimes,
      Span silicateBatchPale,
      Span silicateBatchDeep,
      Temperature silicateBatchAt,
      Share silicatePickUp,
      Volume measureSilicate,
      Span silkBatchPale,
      Span silkBatchDeep,
      Limit enoughSalt,
      Share fibreCounts,
      Limit hotWash,
      Temperature hottestMachine,
      Temperature sureHeatSet,
      Share pressShare,
      Span shortestPress,
      Ratio alkaliLowPerDye,
      Ratio alkaliRecipeLeast,
      Ratio alkaliRecipeMost,
      Ratio someUrea,
      Limit saltDissolves) {}

  /** Of {@code rules/layout/limits.yaml}. */
  public record Layout(Length closingTolerance, Share mirrorPartner) {}

  /** Of {@code rules/media/limits.yaml}. */
  public record Media(Span dryAfterBath) {}

  /** Of {@code rules/order/limits.yaml}. */
  public record Order(
      Share hidingShare,
      Share translucentHidesLeast,
      Share translucentHidesUsual,
      Share translucentHidesMost,
      Limit veryDark,
      Limit fairlyDark,
      Share softening,
      Limit showsFrom,
      Limit toldApart,
      Limit lighterThanGround,
      Share partlyLost,
      Ratio trace,
      Length registrationRailed,
      Length registrationByEye,
      Ratio strongestMix,
      Ratio lightSpread) {}

  /** Of {@code rules/paste/limits.yaml}. */
  public record Paste(
      Share waste,
      Share shoppingWaste,
      Ratio beadLeast,
      Ratio beadUsual,
      Ratio beadMost,
      Share scrapedBackLeast,
      Share scrapedBackUsual,
      Share scrapedBackMost,
      Mass leftOnBladeLeast,
      Mass leftOnBladeUsual,
      Mass leftOnBladeMost,
      Ratio activationEnergyLeast,
      Ratio activationEnergyUsual,
      Ratio activationEnergyMost,
      Temperature roomTemperature,
      Ratio bicarbonateTimes,
      Temperature carriedOver,
      Limit thickenerStands,
      Limit thinnest,
      Share thinnestOfThinGrade,
      Limit thickest,
      Limit thinOnCoarse,
      Limit thickOnFine,
      Share filledByEye,
      Mass weighFine,
      Mass weighCoarse,
      Mass weighCoarselyFrom,
      Ratio leastDye,
      Ratio strongDye,
      Ratio darkDye,
      Ratio blackDye,
      Ratio ureaLeast,
      Ratio ureaMost) {}

  /** Of {@code rules/screens/limits.yaml}. */
  public record Screens(
      Share transferLeast,
      Share transferUsual,
      ArealMass lightCloth,
      Share transferLightCloth,
      ArealMass heavyCloth,
      Share transferHeavyCloth,
      Share transferMost,
      Share secondPull,
      Share secondPullLeast,
      Share secondPullMost,
      Share furtherPull,
      Share furtherPullLeast,
      Share furtherPullMost,
      Concentration densityDyePaste,
      Concentration densityPaint,
      Limit wellMargin,
      Limit sideMargin,
      Length squeegeeOverlap,
      Length squeegeeEnds,
      Limit squeegeeRunsOff,
      MeshCount finestMesh,
      Length finestThread,
      Limit detailOpenings,
      MeshCount coarsestMesh,
      Limit mostPulls,
      MeshCount finestWoven,
      Share threadUnknown) {

    /** The density of paste of that medium. */
    public Concentration density(Medium medium) {
      return medium == Medium.DYE ? densityDyePaste() : densityPaint();
    }
  }

  /** Of {@code rules/seams/limits.yaml}. */
  public record Seams(Ratio awayAfterSewing) {}

  /** Of {@code rules/table/limits.yaml}. */
  public record Table(Limit longestHandFrame) {}

  /** Of {@code rules/time/limits.yaml}. */
  public record Time(
      Span fewMinutesOver, Span soonerRunWorthTelling, Share youngerFilmWorthTelling) {}
}
