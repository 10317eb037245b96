package strikeoff.policy;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Map;
import strikeoff.plan.Draught;
import strikeoff.plan.DyeFixing;
import strikeoff.units.AirSpeed;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * What is taken where a plan leaves a value open, by subject, each of the kind that it has to be.
 * The values and who says so stand in {@code rules/defaults.yaml}, where each has the name of its
 * component: {@code handling.wash screen} is {@code handling().washScreen()}. Words that only a
 * plan's reader understands, as colours and opening hours, are there as a plan would write them.
 */
public record Defaults(
    Cloth cloth,
    Seam seam,
    Table table,
    Stations stations,
    Room room,
    Air air,
    @Within(least = 1, most = strikeoff.plan.Crew.MOST) Default<Integer> crew,
    Default<String> hours,
    Handling handling,
    Equipment equipment,
    Screen screen,
    Paste paste,
    Thickener thickener,
    Separation separation,
    Fill fill,
    Fix fix,
    Rinse rinse,
    Wash wash,
    @Named("heat-set") HeatSet heatSet) {

  /** What it is called where a component can't be. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Named {
    String value();
  }

  /** Of a quantity: more than nothing. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface AboveZero {}

  /** The bounds of a number, or of a quantity in the base unit of its kind. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Within {
    double least() default 0;

    double most();
  }

  /** What the cloth is, and how it was treated. */
  public record Cloth(
      Default<String> fibre,
      Default<String> form,
      @AboveZero Default<ArealMass> mass,
      Default<String> ground,
      Default<Boolean> washed,
      Default<Length> selvedge,
      Default<Length> allowance,
      Shrinkage shrinkage) {}

  /**
   * What cloth loses in its first wash.
   *
   * @param lengthOf of fibres that lose another share of it, by their names
   * @param widthOf likewise
   * @param washed of cloth that was washed before
   */
  public record Shrinkage(
      @Within(most = 1) Default<Share> length,
      @Within(most = 1) Default<Share> width,
      @Named("length") @Within(most = 1) Map<String, Default<Share>> lengthOf,
      @Named("width") @Within(most = 1) Map<String, Default<Share>> widthOf,
      @Within(most = 1) Default<Share> washed) {}

  /** Allowance and ridge. */
  public record Seam(Default<Length> allowance, Default<Boolean> padded) {}

  /** Its size, and whether frames are laid against a rail. */
  public record Table(
      @AboveZero Default<Length> length,
      @AboveZero Default<Length> width,
      Default<Boolean> railed) {}

  /** Room between boards and around frames. */
  public record Stations(Default<Length> gap, Default<Length> clearance) {}

  /** The air in it. */
  public record Room(
      @Within(least = strikeoff.plan.Room.COLDEST, most = strikeoff.plan.Room.HOTTEST)
          Default<Temperature> temperature,
      @Within(most = 1) Default<Share> humidity,
      Default<String> air) {}

  /** How fast air is that a plan calls by a word. */
  public record Air(
      Default<AirSpeed> still,
      Default<AirSpeed> fan,
      @Named("hair-dryer") Default<AirSpeed> hairDryer) {

    /**
     * By what moves it.
     *
     * @throws IllegalArgumentException for a speed that a plan states
     */
    public Default<AirSpeed> of(Draught.By by) {
      return switch (by) {
        case STILL -> still;
        case FAN -> fan;
        case HAIR_DRYER -> hairDryer;
        case STATED -> throw new IllegalArgumentException("a stated speed is open no more");
      };
    }
  }

  /** How long each handling takes. */
  public record Handling(
      Default<Span> lay,
      Default<Span> pull,
      Default<Span> lift,
      Default<Span> load,
      Default<Span> move,
      Default<Span> mix,
      Default<Span> sew,
      Default<Span> brush,
      Default<Span> washScreen,
      Default<Span> dryScreen) {}

  /** How much of it the room has. */
  public record Equipment(
      @Within(most = strikeoff.plan.Equipment.MOST) Default<Integer> sinks,
      @Within(most = strikeoff.plan.Equipment.MOST) Default<Integer> fans,
      @Within(most = strikeoff.plan.Equipment.MOST) Default<Integer> hairDryers,
      @Within(most = strikeoff.plan.Equipment.MOST) Default<Integer> dryingPlaces) {}

  /**
   * Frame and mesh.
   *
   * @param thread of the usual meshes
   */
  public record Screen(
      @AboveZero Default<Length> rail, @AboveZero Map<MeshCount, Default<Length>> thread) {}

  /** How it covers, where its alkali is and where it is kept. */
  public record Paste(Transparent transparent, Default<String> alkali, Default<String> kept) {}

  /** Whether what lies under it shows. */
  public record Transparent(Default<Boolean> dye, Default<Boolean> paint) {}

  /** Where it is kept. */
  public record Thickener(Default<String> kept) {}

  /** How it is printed, and how its film is read. */
  public record Separation(
      @Within(least = 1, most = strikeoff.plan.Design.MOST_PULLS) Default<Integer> pulls,
      Default<String> prints,
      Default<String> reads,
      Default<Length> margin) {}

  /** What it keeps from others. */
  public record Fill(Default<Length> clear) {}

  /** How warm each way of fixing is. */
  public record Fix(Warmth temperature) {}

  /** By the way of fixing. */
  public record Warmth(
      Default<Temperature> soak, Default<Temperature> batch, Default<Temperature> steam) {

    /** Of that way. */
    public Default<Temperature> of(DyeFixing how) {
      return switch (how) {
        case SOAK -> soak;
        case BATCH -> batch;
        case STEAM -> steam;
      };
    }
  }

  /** How warm and how long. */
  public record Rinse(
      Default<Temperature> temperature, @AboveZero @Named("for") Default<Span> lasts) {}

  /** How warm and how long. */
  public record Wash(
      Default<Temperature> temperature, @AboveZero @Named("for") Default<Span> lasts) {}

  /** How warm and how long. */
  public record HeatSet(
      Default<Temperature> temperature, @AboveZero @Named("for") Default<Span> lasts) {}
}
