package strikeoff.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/**
 * A colour is judged on what lies under it where it lands, not on the ground alone. That standard
 * inks do not show on dark, that dark ones do on pale, and that an opaque white printed and dried
 * first mends it: a print shop's page on the primer layer and a hobby page of 2008; the rest is
 * common practice, no source.
 */
class ColourWhereItLandsTest {

  private static final Checker CHECKER = Checker.builtIn();

  private static final String STARS =
      """
      plan: Stars on bands
      cloth: {fibre: cotton, length: 2.2 m, width: 60 cm, washed: yes}
      protection: [dust mask, gloves, goggles, heat gloves]
      table: {length: 2.4 m, width: 1.2 m, railed: yes}
      screens:
        band: {frame: 44 x 44 cm, image: 22 x 22 cm, mesh: 43/cm}
        star: {frame: 26 x 26 cm, image: 6 x 6 cm, mesh: 43/cm}
        white: {frame: 26 x 26 cm, image: 6 x 6 cm, mesh: 43/cm}
      pastes:
        band: {medium: paint, colour: "#1f2f50"}
        star: {medium: paint, colour: "#f2e6c0"}
        white: {medium: paint, colour: white, transparent: no}
      designs:
        band: {size: 20 x 20 cm, separations: [{screen: band, paste: band, covers: 100 %}]}
        star: {size: 5 x 5 cm, separations: [{screen: star, paste: star, covers: 40 %}]}
        under: {size: 5 x 5 cm, separations: [{screen: white, paste: white, covers: 40 %}]}
      placements:
        bands: {design: band, series: 4, pitch: 50 cm, start: 25 cm, across: 20 cm}
        stars: {design: star, series: 4, pitch: 50 cm, start: 32 cm, across: 27 cm, over: bands}
      run:
        - mix: all
        - print: bands
        - dry: until fix-safe
        - print: stars
      """;

  @Test
  void aPaleStarOnANavyBandIsAStop() {
    assertThat(found(STARS)).contains("stop order/colour-lost-on-others");
    assertThat(found(STARS)).doesNotContain("stop layout/placements-overlap");
  }

  /** Without a run, what is printed over the other on purpose lies on it. */
  @Test
  void aPlanThatOnlyLaysOutIsJudgedToo() {
    String layout = STARS.replaceAll("(?s)run:.*", "");
    assertThat(found(layout)).contains("stop order/colour-lost-on-others");
    assertThat(found(layout.replace("over: bands", "over: []").replace(", over: []", "")))
        .doesNotContain("stop order/colour-lost-on-others");
  }

  @Test
  void aDyeOnADyedBandIsJudgedAlike() {
    assertThat(
            found(
                STARS.replace(
                    "medium: paint, colour: \"#", "medium: dye, group: DCT, colour: \"#")))
        .contains("stop order/colour-lost-on-others");
  }

  @Test
  void printedUnderTheBandItIsNoBetter() {
    String first =
        STARS
            .replace("- print: bands", "- print: later")
            .replace("- print: stars", "- print: bands")
            .replace("- print: later", "- print: stars");
    assertThat(found(first))
        .contains("stop order/colour-hidden-under-others")
        .doesNotContain("stop order/colour-lost-on-others");
  }

  @ParameterizedTest
  @CsvSource({
    // a dark star on a pale band, and one that lies beside it
    "'colour: \"#1f2f50\"', 'colour: \"#f2e6a0\"', 'colour: \"#f2e6c0\"', 'colour: \"#303040\"'",
    "'colour: \"#f2e6c0\"', 'colour: \"#f2e6c0\", transparent: no', 'x', 'x'",
    "'start: 32 cm', 'start: 46 cm', 'x', 'x'",
  })
  void whatShowsWhereItLandsIsLetThrough(String find, String put, String findToo, String putToo) {
    assertThat(all(STARS.replace(find, put).replace(findToo, putToo)))
        .doesNotContainAnyElementsOf(LOST);
  }

  /** Opaque paint may stand on what it differs from, and not on its like. */
  @Test
  void aMotifInTheColourOfItsFillIsAStop() {
    String same = STARS.replace("colour: \"#f2e6c0\"", "colour: \"#1f2f51\", transparent: no");
    assertThat(found(same)).contains("stop order/colour-lost-on-others");
  }

  @Test
  void anOpaqueWhiteThatIsPrintedFirstMendsIt() {
    String mended =
        STARS
            .replace(
                "run:",
                "  whites: {design: under, series: 4, pitch: 50 cm, start: 32 cm, across: 27 cm, over: bands}\nrun:")
            .replace(
                "  - print: stars", "  - print: whites\n  - dry: until fix-safe\n  - print: stars")
            .replace("27 cm, over: bands}\n  whites", "27 cm, over: [bands, whites]}\n  whites");
    assertThat(all(mended)).doesNotContainAnyElementsOf(LOST);
    String tooLate =
        mended
            .replace("- print: whites", "- print: x")
            .replace("- print: stars", "- print: whites")
            .replace("- print: x", "- print: stars");
    assertThat(found(tooLate)).contains("stop order/colour-lost-on-others");
  }

  @ParameterizedTest
  @CsvSource({
    "1 %, none",
    "18 %, none",
    "30 %, risk order/colour-partly-lost-on-others",
    "60 %, stop order/colour-lost-on-others",
  })
  void howMuchOfItIsLostDecides(String covers, String expected) {
    Set<String> found = found(STARS.replace("covers: 100 %", "covers: " + covers));
    found.removeIf(f -> LOST.stream().noneMatch(f::endsWith));
    assertThat(found.isEmpty() ? Set.of("none") : found).containsExactly(expected);
  }

  private static final String MOTIF =
      """
      plan: Leaves
      cloth: {fibre: cotton, length: 2.2 m, width: 60 cm, washed: yes, ground: "GROUND"}
      table: {length: 2.4 m, width: 1.2 m, railed: yes}
      screens:
        one: {frame: 44 x 44 cm, image: 22 x 22 cm, mesh: 43/cm}
        two: {frame: 44 x 44 cm, image: 22 x 22 cm, mesh: 43/cm}
        three: {frame: 44 x 44 cm, image: 22 x 22 cm, mesh: 43/cm}
      pastes:
        navy: {medium: paint, colour: "#1f2f50", transparent: NAVY}
        rust: {medium: paint, colour: "#a4532f", transparent: no}
        ink: {medium: paint, colour: "INK", transparent: SEE}
      designs:
        leaf: {size: 20 x 20 cm, separations: [SEPARATIONS]}
      placements:
        leaves: {design: leaf, series: 4, pitch: 50 cm, start: 25 cm, across: 20 cm}
      """;

  private static String motif(String ground, String ink, String... separations) {
    String text = MOTIF.replace("GROUND", ground).replace("INK", ink);
    StringBuilder list = new StringBuilder();
    String[] screens = {"one", "two", "three"};
    for (int i = 0; i < separations.length; i++) {
      String[] words = separations[i].split(" ", 3);
      list.append(i > 0 ? ", " : "")
          .append(
              "{screen: " + screens[i] + ", paste: " + words[0] + ", covers: " + words[1] + " %")
          .append(words.length > 2 ? ", " + words[2] + "}" : "}");
    }
    return text.replace("SEPARATIONS", list);
  }

  private static String opaque(String text) {
    return text.replace("NAVY", "no").replace("SEE", "no");
  }

  private static String clear(String text) {
    return text.replace("NAVY", "yes").replace("SEE", "yes");
  }

  @Test
  void aKeyInTheColourOfItsFillIsAStop() {
    // a second coat of navy dye goes a little deeper, and that is all
    assertThat(found(clear(motif("#ffffff", "#1f2f4f", "navy 40", "ink 9 key: yes"))))
        .contains("stop order/colour-lost-on-others")
        .doesNotContain("advice order/colours-too-alike");
    assertThat(found(opaque(motif("#ffffff", "#1f2f4f", "navy 40", "ink 9 key: yes"))))
        .contains("stop order/colour-lost-on-others")
        .doesNotContain("advice order/colours-too-alike");
    // a pale transparent outline on navy
    assertThat(found(clear(motif("#ffffff", "#f2e6c0", "navy 40", "ink 9 key: yes"))))
        .contains("stop order/colour-lost-on-others");
    assertThat(all(opaque(motif("#ffffff", "#e0d090", "navy 40", "ink 9 key: yes"))))
        .doesNotContainAnyElementsOf(LOST);
  }

  /** It is seen on rust, which is the larger part of its fills. */
  @Test
  void aKeyThatIsLostOnOneOfItsFillsIsARisk() {
    assertThat(found(opaque(motif("#ffffff", "#1f2f4f", "navy 20", "rust 40", "ink 9 key: yes"))))
        .contains("risk order/colour-partly-lost-on-others")
        .doesNotContain("stop order/colour-lost-on-others");
  }

  @ParameterizedTest
  @CsvSource({
    "60, 45, stop order/colour-hidden-under-others",
    "60, 40, stop order/colour-hidden-under-others",
    "30, 30, risk order/key-not-last"
  })
  void opaqueFillsThatLeaveNoRoomHideTheKey(String one, String other, String expected) {
    String text =
        opaque(motif("#ffffff", "#303030", "ink 9 key: yes", "navy " + one, "rust " + other));
    Set<String> found = found(text + "run:\n  - mix: all\n  - print: leaves\n");
    found.retainAll(Set.of("stop order/colour-hidden-under-others", "risk order/key-not-last"));
    assertThat(found).containsExactly(expected);
  }

  @Test
  void aPaleColourThatMustLieOnNavyIsAStopAndNotTheOrdersFault() {
    String run = "run:\n  - mix: all\n  - print: leaves\n";
    String lost = clear(motif("#ffffff", "#f2e6c0", "navy 100", "ink 10")) + run;
    assertThat(found(lost))
        .contains("stop order/colour-lost-on-others")
        .doesNotContain("risk order/dark-before-light");
    // cut to lie beside each other, it is: then only the order counts
    assertThat(found(clear(motif("#ffffff", "#f2e6c0", "navy 60", "ink 10")) + run))
        .contains("risk order/dark-before-light")
        .doesNotContain("stop order/colour-lost-on-others");
  }

  /** Paint with nothing stated is translucent. */
  @ParameterizedTest
  @CsvSource({
    "black, '#f2c800', stop order/colour-lighter-than-ground",
    "'#f2c800', black, none",
  })
  void yellowPaintOnBlackIsFoundAndBlackOnYellowIsNot(String ground, String ink, String expected) {
    String text =
        motif(ground, ink, "ink 30")
            .replace(", transparent: NAVY", "")
            .replace(", transparent: SEE", "");
    Set<String> found = found(text);
    found.removeIf(f -> !f.contains(" order/"));
    assertThat(found.isEmpty() ? Set.of("none") : found).containsExactly(expected);
  }

  @Test
  void yellowOnAnOpaqueWhiteOnBlackIsSeen() {
    String text =
        clear(motif("black", "#f2c800", "rust 40 trap: 1 mm", "ink 30 trap: 1 mm"))
            .replace("#a4532f", "#ffffff");
    assertThat(found(text)).noneMatch(f -> f.startsWith("stop order/"));
  }

  private static final List<String> LOST =
      List.of(
          "order/colour-lost-on-others",
          "order/colour-partly-lost-on-others",
          "order/colour-hidden-under-others",
          "order/colour-mostly-under-others");

  private static Set<String> found(String plan) {
    Checked checked = CHECKER.check("plan.yaml", plan);
    assertThat(checked).as(checked.sentence()).isInstanceOf(Checked.Judged.class);
    return ((Checked.Judged) checked)
        .findings().stream()
            .map(f -> f.severity().name().toLowerCase(java.util.Locale.ROOT) + " " + f.rule().id())
            .collect(Collectors.toSet());
  }

  private static Set<String> all(String plan) {
    return found(plan).stream().map(f -> f.split(" ")[1]).collect(Collectors.toSet());
  }
}
