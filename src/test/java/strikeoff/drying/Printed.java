package strikeoff.drying;

import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.drying.DryingClock.States;
import strikeoff.plan.Cloth;
import strikeoff.plan.Colour;
import strikeoff.plan.Draught;
import strikeoff.plan.DryingTime;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PlainParts;
import strikeoff.plan.Room;
import strikeoff.plan.StrikeOff;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.AirSpeed;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * One print for tests of drying: what is laid down, on what, in which room.
 *
 * @param deposit of all pulls, g/m²
 * @param mass of the cloth, g/m²
 * @param speed of the air, m/s; 0 for still
 */
record Printed(
    Medium medium,
    double deposit,
    String fibre,
    double mass,
    double celsius,
    double humidity,
    double speed) {

  static final Policy POLICY = PolicyReader.builtIn();

  /** Thickened dye on cotton in still air of 20 °C and 50 %. */
  static Printed dye(double deposit, double mass) {
    return new Printed(Medium.DYE, deposit, "cotton", mass, 20, 0.5, 0);
  }

  /** Paint on cotton of 180 g/m², likewise. */
  static Printed paint(double deposit) {
    return new Printed(Medium.PAINT, deposit, "cotton", 180, 20, 0.5, 0);
  }

  Printed in(double celsius, double humidity, double speed) {
    return new Printed(medium, deposit, fibre, mass, celsius, humidity, speed);
  }

  Paste paste() {
    return PlainParts.paste("ink", medium, new Colour(0, 0, 0, "black"), medium == Medium.DYE);
  }

  /** The same paste with what was measured of it. */
  static Paste measured(
      Paste p,
      Optional<DryingTime> frameSafe,
      Optional<DryingTime> liftSafe,
      Optional<StrikeOff> strikeOff) {
    return new Paste(
        p.name(),
        p.medium(),
        p.groups(),
        p.colour(),
        p.transparent(),
        p.amount(),
        p.recipe(),
        p.alkaliInPaste(),
        p.thickener(),
        p.storage(),
        p.mixedBefore(),
        p.deposit(),
        frameSafe,
        liftSafe,
        strikeOff,
        p.label(),
        p.path());
  }

  Cloth cloth() {
    return PlainParts.cloth(
        Map.of(fibre, new Share(1)),
        new ArealMass(mass),
        new Length(4000),
        new Length(1400),
        false,
        new Colour(255, 255, 255, "white"));
  }

  Drying drying(Policy policy) {
    Draught.By by = speed > 0 ? Draught.By.STATED : Draught.By.STILL;
    Room room =
        new Room(
            new Temperature(celsius),
            new Share(humidity),
            new Draught(by, new AirSpeed(speed)),
            new PlanPath("room"));
    return Drying.of(cloth(), room, policy);
  }

  States states() {
    return states(paste());
  }

  States states(Paste paste) {
    return states(paste, POLICY);
  }

  States states(Paste paste, Policy policy) {
    Drying drying = drying(policy);
    return clock(drying).states(drying.need(paste, new ArealMass(deposit), false), 0);
  }

  static DryingClock clock(Drying drying) {
    return new DryingClock(drying, 0);
  }

  /** On how many days a frame laid so long after the print still meets wet paste. */
  double wetAfter(double minutes) {
    return states().frameSafe().chanceAfter(Math.round(minutes * 60));
  }

  /** Minutes until a frame may be laid on it, on an ordinary day. */
  double frameSafe() {
    return states().frameSafe().best() / 60.0;
  }
}
