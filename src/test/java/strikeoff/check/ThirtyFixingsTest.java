package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.findings.Severity;

/**
 * Thirty fixings worked out from published advice, from plan text to verdict. Each row names its
 * source; what is sound finds neither stop nor risk, of any rule.
 */
class ThirtyFixingsTest {

  private static final Checker CHECKER = Checker.builtIn();

  private static final String COTTON =
      "fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes";
  private static final String UREA_PASTE =
      "medium: dye, group: %s, colour: \"#6f7f45\","
          + " recipe: {dye: 4 g, urea: 10 g, alginate: 2.5 g, %swater: 82 ml}";
  private static final String DCT = UREA_PASTE.formatted("DCT", "");
  private static final String PAINT = "medium: paint, colour: \"#2b3440\", amount: 100 g";
  private static final String PRINT = "- mix: all\n- print: reeds\n";
  private static final String WASHED = "- rinse: 20 °C\n- wash: 60 °C\n- wash: 60 °C\n";
  private static final String OVERNIGHT = "- end of day\n";
  private static final String DRIED = OVERNIGHT + "- dry: until fix-safe\n";

  /** Number, source, plan, and what it must find: stops and risks by severity and rule. */
  static Stream<Arguments> rows() {
    String bicarbonate = "baking soda: 2 g, ";
    String soda = "soda ash: 2 g, ";
    String mctSoda = UREA_PASTE.formatted("MCT", soda);
    String mct = UREA_PASTE.formatted("MCT", "baking soda: 1.5 g, ");
    return Stream.of(
        row(
            "1: DCT on soda-soaked cotton, wrapped 24 h at 24 °C",
            "dye maker's staff forum; Burch, FAQ washing out",
            reeds(COTTON, DCT, presoak(190) + PRINT + batch(24, "24 h") + WASHED)),
        row(
            "2: as 1, at 15 °C",
            "Burch, FAQ temperature",
            reeds(COTTON, DCT, presoak(190) + PRINT + batch(15, "24 h") + WASHED),
            "risk fixing/bath-too-cold"),
        row(
            "3: DCT with baking soda, dried, pot steam 20 min",
            "dye maker's staff forum; Burch, forum",
            reeds(COTTON, dct(bicarbonate), PRINT + DRIED + steam(100, "20 min") + WASHED)),
        row(
            "4: as 3, printed 6 h after the baking soda at 22 °C",
            "dye maker's staff forum: 4 h",
            reeds(
                    COTTON,
                    dct(bicarbonate),
                    "- mix: all\n- dry: 6 h\n- print: reeds\n"
                        + DRIED
                        + steam(100, "20 min")
                        + WASHED)
                .replace("room: {", "room: {temperature: 22 °C, "),
            "risk paste/may-be-past-its-life"),
        row(
            "5: DCT, no alkali anywhere, an hour in plain water",
            "Burch, blog May 2008",
            reeds(COTTON, DCT, PRINT + DRIED + soak("water: 10 L", 20, "60 min") + WASHED),
            "stop fixing/no-alkali"),
        row(
            "6: soda in the paste, an hour in plain water for a batch",
            "Burch, blog July 2013",
            reeds(COTTON, dct(soda), PRINT + DRIED + soak("water: 10 L", 20, "60 min") + WASHED),
            "stop fixing/alkali-soaked-out"),
        row(
            "7: dried DCT, soda and salt, 35 °C, 45 min",
            "dye maker's staff forum; UK supplier",
            reeds(COTTON, DCT, PRINT + DRIED + salted(35, "45 min") + WASHED)),
        row(
            "8: as 7, no salt on white",
            "maker's liquid fixative; dye maker's staff forum",
            reeds(
                COTTON,
                DCT,
                PRINT + DRIED + soak("soda ash: 274 g, water: 7.2 L", 35, "45 min") + WASHED),
            "risk fixing/soak-without-salt"),
        row(
            "9: as 7, 10 min",
            "UK supplier; dye maker's staff forum",
            reeds(COTTON, DCT, PRINT + DRIED + salted(35, "10 min") + WASHED),
            "stop fixing/too-short"),
        row(
            "10: MCT with soda, batch 24 h at 21 °C",
            "Burch, blog Dec 2009; Canadian supplier",
            reeds(COTTON, mctSoda, PRINT + batch(21, "24 h") + WASHED),
            "stop fixing/bath-far-too-cold"),
        row(
            "11: MCT with baking soda and urea, steam 10 min",
            "textile-teaching blog; slides on resist printing",
            reeds(COTTON, mct, PRINT + DRIED + steam(101, "10 min") + WASHED)),
        row(
            "12: as 11 on viscose, no urea",
            "textile-teaching blog",
            reeds(
                COTTON.replace("cotton", "viscose"),
                mct.replace("urea: 10 g, ", "").replace("82 ml", "92 ml"),
                PRINT + DRIED + steam(101, "10 min") + WASHED),
            "risk fixing/no-urea-in-steam"),
        row(
            "13: MFT on soda-soaked cotton, damp 24 h at 27 °C",
            "class handout; Burch, FAQ temperature",
            reeds(
                COTTON,
                UREA_PASTE.formatted("MFT", ""),
                presoak(190) + PRINT + batch(27, "24 h") + WASHED)),
        row(
            "13: the same in a dark shade, 48 h",
            "class handout",
            reeds(
                COTTON,
                dark(UREA_PASTE.formatted("MFT", "")),
                presoak(190) + PRINT + batch(27, "48 h") + WASHED)),
        row(
            "13: the same in a dark shade, 24 h: advice",
            "class handout",
            reeds(
                COTTON,
                dark(UREA_PASTE.formatted("MFT", "")),
                presoak(190) + PRINT + batch(27, "24 h") + WASHED),
            "advice fixing/fixed-not-quite"),
        row(
            "14: dried VS, silicate brushed on, wrapped 13 h at 22 °C",
            "student assignment on printing cotton",
            reeds(
                COTTON,
                UREA_PASTE.formatted("VS", ""),
                PRINT
                    + DRIED
                    + soak("sodium silicate: 1 L", 22, "10 min")
                    + batch(22, "13 h")
                    + WASHED)),
        row(
            "14: the same said as one batch",
            "student assignment on printing cotton",
            reeds(
                COTTON,
                UREA_PASTE.formatted("VS", ""),
                PRINT
                    + DRIED
                    + "- {fix: batch, bath: {sodium silicate: 1 L}, temperature: 22 °C, for: 13 h}\n"
                    + OVERNIGHT
                    + WASHED)),
        row(
            "15: VS with soda, batch 8 h at 20 °C",
            "Burch, FAQ temperature",
            reeds(COTTON, UREA_PASTE.formatted("VS", soda), PRINT + batch(20, "8 h") + WASHED),
            "risk fixing/fixed-in-part"),
        row(
            "16: silk, soda 19 g/L, batch 5 h at 24 °C",
            "suppliers' guidance for silk",
            reeds(SILK, DCT, presoak(95) + PRINT + batch(24, "5 h") + WASHED)),
        row(
            "16: the same for 12 h",
            "suppliers' guidance for silk",
            reeds(SILK, DCT, presoak(95) + PRINT + batch(24, "12 h") + WASHED),
            "risk cloth/protein-fibre-long-in-soda"),
        row(
            "17: silk, soda 20 g/kg in the paste, steam 30 min",
            "US supplier; dye maker's staff forum",
            reeds(SILK, dct(soda), PRINT + DRIED + steam(100, "30 min") + WASHED),
            "risk cloth/protein-fibre-in-soda-paste"),
        row(
            "17: the same with baking soda",
            "US supplier",
            reeds(SILK, dct(bicarbonate), PRINT + DRIED + steam(100, "30 min") + WASHED)),
        row(
            "18: DCT and MCT with baking soda, one steam",
            "windows of the groups; textile-teaching blog",
            two(bicarbonate, PRINT2 + DRIED + steam(101, "12 min") + WASHED)),
        row(
            "19: the same two in one soak at 40 °C",
            "windows of the groups",
            two("", PRINT2 + DRIED + salted(40, "60 min") + WASHED),
            "stop fixing/no-common-temperature"),
        row(
            "20: MCT, 4 g of dye and 0.2 g of baking soda, steamed",
            "0.11 g for each g of dye, computed",
            reeds(
                COTTON,
                UREA_PASTE.formatted("MCT", "baking soda: 0.2 g, "),
                PRINT + DRIED + steam(101, "12 min") + WASHED),
            "stop fixing/paste-alkali-spent"),
        row(
            "21: first rinse at 70 °C straight after the batch",
            "Burch, FAQ washing out; auxiliaries maker",
            reeds(
                COTTON,
                DCT,
                presoak(190) + PRINT + batch(24, "24 h") + "- rinse: 70 °C\n- wash: 60 °C\n"),
            "risk fixing/rinsed-hot"),
        row(
            "22: paint dried 4 h, ironed 4 min each side",
            "maker's direction in a blog, Nov 2012",
            reeds(
                COTTON,
                PAINT,
                PRINT
                    + "- dry: 4 h\n- heat-set: iron\n  temperature: 180 °C\n  for: 4 min\n"
                    + "  both sides: yes\n")),
        row("23: tunnel 160 °C 3 min", "ink supplier", heated(COTTON, PAINT, "oven", 160, "3 min")),
        row(
            "23: tunnel 160 °C 1 min 50 s",
            "ink supplier",
            heated(COTTON, PAINT, "oven", 160, "110 s"),
            "risk fixing/heat-set-too-short"),
        row("24: press 180 °C 30 s", "ink supplier", heated(COTTON, PAINT, "press", 180, "30 s")),
        row(
            "24: tunnel 180 °C 45 s",
            "ink supplier",
            heated(COTTON, PAINT, "oven", 180, "45 s"),
            "risk fixing/heat-set-too-short"),
        row(
            "25: tunnel 120 °C 6 min with that label",
            "ink supplier",
            heated(
                COTTON,
                PAINT + ", label: {temperature: 120 °C, for: 6 min}",
                "oven",
                120,
                "6 min")),
        row(
            "25: the same without a label",
            "ink supplier",
            heated(COTTON, PAINT, "oven", 120, "6 min"),
            "risk fixing/heat-set-cool"),
        row(
            "26: nylon, 180 °C 3 min",
            "three iron guides",
            heated(COTTON.replace("cotton", "nylon"), PAINT, "oven", 180, "3 min"),
            "stop fixing/heat-set-too-hot"),
        row(
            "26: acrylic, 150 °C 4 min",
            "three iron guides",
            heated(COTTON.replace("cotton", "acrylic"), PAINT, "oven", 150, "4 min"),
            "stop fixing/heat-set-too-hot"),
        row(
            "27: paint dried by hair-dryer alone, then washed",
            "ink supplier",
            reeds(
                COTTON,
                PAINT,
                PRINT + "- dry: 20 min\n  air: hair-dryer\n" + OVERNIGHT + "- wash: 40 °C\n"),
            "stop media/wet-bath-over-unset-paint"),
        row(
            "28: standard yellow paint on black cotton",
            "print shop, primer layer",
            heated(
                COTTON + ", ground: black",
                "medium: paint, colour: \"#f2c800\", amount: 100 g",
                "oven",
                150,
                "4 min"),
            "stop order/colour-lighter-than-ground"),
        row(
            "28: the other way round, black on yellow",
            "hobby page, 2008",
            heated(
                COTTON + ", ground: \"#f2c800\"",
                "medium: paint, colour: black, amount: 100 g",
                "oven",
                150,
                "4 min")),
        row(
            "29: loom-state calico, unscoured",
            "dyers' blog; school glossary",
            reeds(
                COTTON.replace("washed: yes", "loom-state: yes"),
                DCT,
                presoak(190) + PRINT + batch(24, "24 h") + WASHED),
            "risk cloth/loom-state"),
        row(
            "30: 60/40 cotton and polyester, cut for 3.6 %",
            "consumer pages on blends: 1-3 %, others under 5 %",
            heated(
                "fibre: {cotton: 60 %, polyester: 40 %}, mass: 180 g/m², length: 2.08 m, width: 1 m",
                PAINT, "oven", 150, "4 min")));
  }

  private static final String SILK = COTTON.replace("cotton", "silk");
  private static final String PRINT2 = "- mix: all\n- print: all\n";

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void isFoundAsPublishedAdviceHasIt(
      String name, String source, String plan, TreeSet<String> expected) {
    assertThat(source).isNotBlank();
    Checked checked = CHECKER.check("fixing.yaml", plan);
    assertThat(checked).as("%s", checked).isInstanceOf(Checked.Judged.class);
    Checked.Judged judged = (Checked.Judged) checked;
    assertThat(judged.failedRules()).isEmpty();
    TreeSet<String> found = new TreeSet<>();
    judged
        .findings()
        .forEach(
            f -> {
              String told =
                  f.severity().name().toLowerCase(java.util.Locale.ROOT) + " " + f.rule().id();
              if (f.severity() != Severity.ADVICE || expected.contains(told)) {
                found.add(told);
              }
            });
    assertThat(found)
        .as(
            () ->
                judged.findings().stream().map(f -> f.rule().id() + ": " + f.message()).toList()
                    + "")
        .isEqualTo(expected);
  }

  private static Arguments row(String name, String source, String plan, String... finds) {
    return Arguments.of(name, source, plan, new TreeSet<>(java.util.List.of(finds)));
  }

  private static String dct(String alkali) {
    return UREA_PASTE.formatted("DCT", alkali);
  }

  private static String dark(String paste) {
    return paste.replace("#6f7f45", "#1f2a3a");
  }

  /** The cloth lies in soda before it is printed, and dries overnight. */
  private static String presoak(int grams) {
    return "- fix: soak\n  bath: {soda ash: %d g, water: 5 L}\n  temperature: 22 °C\n  for: 15 min\n"
            .formatted(grams)
        + OVERNIGHT
        + "- dry: 1 h\n";
  }

  private static String salted(int celsius, String lasts) {
    return soak("soda ash: 274 g, salt: 1080 g, water: 7.2 L", celsius, lasts);
  }

  private static String soak(String bath, int celsius, String lasts) {
    return "- fix: soak\n  bath: {%s}\n  temperature: %d °C\n  for: %s\n"
        .formatted(bath, celsius, lasts);
  }

  private static String batch(int celsius, String lasts) {
    return "- fix: batch\n  temperature: %d °C\n  for: %s\n".formatted(celsius, lasts) + OVERNIGHT;
  }

  private static String steam(int celsius, String lasts) {
    return "- fix: steam\n  temperature: %d °C\n  for: %s\n".formatted(celsius, lasts);
  }

  private static String heated(String cloth, String paint, String with, int celsius, String lasts) {
    return reeds(
        cloth,
        paint,
        PRINT
            + DRIED
            + "- heat-set: %s\n  temperature: %d °C\n  for: %s\n".formatted(with, celsius, lasts));
  }

  private static String reeds(String cloth, String green, String steps) {
    return plan(
        cloth,
        "  green: {" + green + "}\n",
        "  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}\n",
        "  reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}\n",
        steps);
  }

  private static String two(String alkali, String steps) {
    return plan(
        COTTON,
        "  green: {"
            + UREA_PASTE.formatted("DCT", alkali)
            + "}\n  rust: {"
            + UREA_PASTE.formatted("MCT", alkali).replace("#6f7f45", "#b5653a")
            + "}\n",
        """
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
          shells: {size: 30 x 22 cm, separations: [{screen: shells, paste: rust, covers: 40 %}]}
        """,
        """
          reeds: {design: reeds, series: 1, pitch: 60 cm, start: 10 cm, across: 30 cm}
          shells: {design: shells, series: 1, pitch: 60 cm, start: 110 cm, across: 30 cm}
        """,
        steps);
  }

  private static String plan(
      String cloth, String pastes, String designs, String placements, String steps) {
    return """
    plan: A fixing
    cloth: {%s}
    table: {length: 2.4 m, width: 1.4 m}
    room: {humidity: 50 %%}
    hours: "08:00-20:00"
    protection: [dust mask, gloves, goggles, heat gloves]
    screens:
      reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
      shells: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
    pastes:
    %sdesigns:
    %splacements:
    %srun:
    %s"""
        .formatted(cloth, pastes, designs, placements, steps.indent(2));
  }
}
