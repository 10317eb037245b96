package strikeoff.artwork;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The films of the estuary curtains: a heron, reeds and a cockle shell, drawn for them here. Where
 * two colours meet the earlier one runs 1.5 mm under the later one and a little more, and no line
 * is finer than its mesh holds.
 */
final class EstuaryFilms {

  /** The finest line, of 1 mm, is six points wide. */
  private static final int PER_INCH = 150;

  /** How far colours lap, in mm. */
  private static final double LAP = 1.6;

  private EstuaryFilms() {}

  /** By name, beside the plan. */
  static Map<String, byte[]> all() {
    Map<String, byte[]> films = new LinkedHashMap<>();
    films.put("heron-rust.png", heronRust().png());
    films.put("heron-blue.png", heronBlue().png());
    films.put("heron-key.png", heronKey().png());
    films.put("reeds-green.png", reedsGreen().png());
    films.put("reeds-key.png", reedsKey().png());
    films.put("shell-sand.png", shellSand().png());
    films.put("shell-rust.png", shellRust().png());
    return films;
  }

  private static Inked heron() {
    return new Inked(340, 520, PER_INCH);
  }

  /** The bird without beak and legs, from the forehead over back, tail and breast. */
  private static Curve bird() {
    return Curve.from(80, 62)
        .to(90, 46, 116, 44, 130, 58)
        .to(148, 76, 138, 104, 126, 128)
        .to(114, 154, 130, 174, 164, 188)
        .to(218, 208, 262, 262, 316, 352)
        .to(306, 362, 292, 362, 278, 356)
        .to(236, 388, 172, 380, 138, 334)
        .to(110, 294, 112, 246, 104, 206)
        .to(96, 168, 84, 148, 92, 118)
        .to(95, 106, 92, 98, 78, 95)
        .to(76, 84, 76, 72, 80, 62);
  }

  private static Inked heronBlue() {
    return heron()
        .area(bird())
        .hole(103, 70, 14)
        .scratch(wing(), 3, 4)
        .scratch(Curve.from(112, 112).to(106, 150, 122, 190, 128, 240), 2.4, 2)
        .stroke(Curve.from(28, 506).to(50, 499, 80, 499, 108, 505), 2, 4)
        .stroke(Curve.from(62, 514).to(96, 508, 122, 508, 140, 512), 3, 2)
        .stroke(Curve.from(250, 505).to(270, 498, 296, 499, 322, 506), 4, 2)
        .stroke(Curve.from(232, 513).to(254, 508, 276, 508, 300, 513), 2, 3);
  }

  /** Where the folded wing lies on the body. */
  private static Curve wing() {
    return Curve.from(160, 214).to(142, 268, 176, 322, 286, 338);
  }

  private static Inked heronRust() {
    // What lies deeper in the bird than the lap is left out.
    Inked inside = heron().area(bird()).scratch(bird(), 2 * LAP, 2 * LAP);
    return heron()
        .area(
            Curve.from(100, 68)
                .to(66, 70, 36, 80, 14, 88.5)
                .to(13, 89, 13, 91, 14, 91.5)
                .to(40, 93, 70, 94, 100, 92))
        .stroke(leg(176, 352), 7, 6)
        .stroke(leg(222, 350), 7, 6)
        .dot(172, 424, 11)
        .dot(218, 422, 11)
        .stroke(Curve.from(175, 490).to(160, 492, 150, 498, 142, 500), 6, 3.5)
        .stroke(Curve.from(175, 490).to(184, 494, 190, 498, 194, 503), 6, 3.5)
        .stroke(Curve.from(175, 490).to(170, 496, 166, 502, 160, 508), 6, 3.5)
        .stroke(Curve.from(221, 488).to(208, 490, 203, 492, 198, 494), 6, 3.5)
        .stroke(Curve.from(221, 488).to(230, 491, 236, 494, 242, 497), 6, 3.5)
        .stroke(Curve.from(221, 488).to(220, 494, 216, 500, 210, 506), 6, 3.5)
        .without(inside);
  }

  private static Curve leg(double x, double y) {
    return Curve.from(x, y).to(x - 4, 424 + (y - 352)).to(x - 1, 490 + (y - 352));
  }

  private static Inked heronKey() {
    Inked key =
        heron()
            .stroke(bird(), 2 * LAP, 2 * LAP)
            .dot(103, 70, 7)
            .stroke(Curve.from(116, 64).to(140, 60, 166, 74, 198, 108), 7, 2)
            .stroke(Curve.from(124, 77).to(146, 80, 162, 92, 176, 118), 4, 1.6)
            .stroke(Curve.from(26, 90).to(44, 86, 58, 84, 70, 82), 1, 1.6);
    // Flight feathers lie side by side, from the shoulder to the tail.
    for (int i = 0; i < 6; i++) {
      double t = i / 5.0;
      key.stroke(
          Curve.from(166 + 28 * t, 224 - 6 * t)
              .to(
                  152 + 72 * t,
                  274 - 38 * t,
                  188 + 66 * t,
                  312 - 40 * t,
                  268 + 22 * t,
                  328 - 6 * t),
          1.4,
          2.6);
    }
    // Plumes hang down from the breast.
    for (int i = 0; i < 4; i++) {
      double x = 123 + 4 * i;
      double y = 240 + 26 * i;
      key.stroke(Curve.from(x, y).to(x + 1, y + 10, x + 4, y + 18, x + 11, y + 25), 2.4, 1.2);
    }
    return key;
  }

  private static Inked reeds() {
    return new Inked(300, 220, PER_INCH);
  }

  /** Foot, height, lean of the tip and greatest width of each blade. */
  private static final double[][] BLADES = {
    {14, 96, -6, 11},
    {26, 168, -10, 14},
    {38, 118, 8, 12},
    {54, 70, -10, 10},
    {64, 132, 12, 13},
    {77, 190, -6, 15},
    {90, 108, 14, 12},
    {105, 84, -3, 10},
    {117, 150, -14, 13},
    {128, 100, 6, 11},
    {143, 64, 10, 10},
    {153, 176, 16, 15},
    {165, 122, -12, 12},
    {178, 88, 8, 11},
    {190, 140, -14, 13},
    {203, 104, 10, 11},
    {218, 196, 10, 15},
    {230, 116, -12, 12},
    {242, 74, 8, 10},
    {252, 144, -14, 13},
    {264, 106, 6, 11},
    {277, 162, 10, 14},
    {288, 82, 4, 10}
  };

  /** A blade from one share of its height to another. */
  private static Curve blade(double[] blade, double from, double to) {
    double x0 = blade[0] + blade[2] * from * from;
    double x1 = blade[0] + blade[2] * from * to;
    double x2 = blade[0] + blade[2] * to * to;
    double y0 = FOOT - blade[1] * from;
    double y2 = FOOT - blade[1] * to;
    return Curve.from(x0, y0)
        .to(
            x0 + (x1 - x0) * 2 / 3,
            y0 + (y2 - y0) / 3,
            x2 + (x1 - x2) * 2 / 3,
            y0 + (y2 - y0) * 2 / 3,
            x2,
            y2);
  }

  private static final double FOOT = 210;

  /** Foot and height of stems with a head. */
  private static final double[][] STEMS = {{46, 142}, {121, 150}, {184, 146}, {259, 138}};

  private static Curve stem(double[] stem, double from, double to) {
    return Curve.from(stem[0], FOOT - from).to(stem[0], FOOT - to);
  }

  private static Inked reedsGreen() {
    Inked green = reeds();
    for (double[] blade : BLADES) {
      green
          .stroke(blade(blade, 0, 0.3), 0.6 * blade[3], blade[3])
          .stroke(blade(blade, 0.3, 1), blade[3], 1.6);
    }
    for (double[] stem : STEMS) {
      green.stroke(stem(stem, 0, 50), 10, 3).stroke(stem(stem, 50, stem[1] + 6), 3, 3);
    }
    return green;
  }

  private static Inked reedsKey() {
    Inked key = reeds();
    for (double[] blade : BLADES) {
      key.stroke(blade(blade, 0.1, 0.6), 2, 1);
    }
    for (double[] stem : STEMS) {
      key.stroke(stem(stem, stem[1] + 4, stem[1] + 38), 9, 9);
      key.stroke(stem(stem, stem[1] + 38, stem[1] + 54), 2, 1.6);
    }
    return key;
  }

  private static Inked shell() {
    return new Inked(80, 70, PER_INCH);
  }

  /** Where ribs end, from the left ear over the top to the right one. */
  private static final double[][] EDGE = {
    {5, 44}, {6, 31}, {13, 19}, {24, 10}, {40, 6}, {56, 10}, {67, 19}, {74, 31}, {75, 44}
  };

  private static Inked shellSand() {
    Curve fan = Curve.from(34, 60).to(22, 58, 10, 52, EDGE[0][0], EDGE[0][1]);
    for (int i = 1; i < EDGE.length; i++) {
      double[] a = EDGE[i - 1];
      double[] b = EDGE[i];
      double out = 0.16;
      double ax = a[0] + out * (a[0] - 40);
      double ay = a[1] + out * (a[1] - 50);
      double bx = b[0] + out * (b[0] - 40);
      double by = b[1] + out * (b[1] - 50);
      fan.to(ax, ay, bx, by, b[0], b[1]);
    }
    fan.to(70, 52, 58, 58, 46, 60).to(56, 60).to(54, 66).to(26, 66).to(24, 60);
    return shell().area(fan);
  }

  private static Inked shellRust() {
    Inked rust = shell();
    for (int i = 0; i < EDGE.length; i++) {
      double[] end = EDGE[i];
      double x = 40 + 0.9 * (end[0] - 40);
      double y = 58 + 0.9 * (end[1] - 58);
      rust.stroke(Curve.from(40 + 0.3 * (x - 40), 58 + 0.3 * (y - 58)).to(x, y), 1.2, 2.4);
    }
    return rust.stroke(Curve.from(30, 57).to(34, 52, 46, 52, 50, 57), 1.6, 1.6)
        .stroke(Curve.from(30, 62.6).to(50, 62.6), 1.6, 1.6);
  }
}
