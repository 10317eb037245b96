package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** A drawing prints what geometry says that it prints, as large as it says. */
class SvgReadingTest {

  private static final double PER_MM = 600 / 25.4;
  private static final String BOX = "width='100mm' height='100mm' viewBox='0 0 100 100'";

  private static Picture picture(String root, String body, Optional<Double> resolution)
      throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
            + "xmlns:editor='urn:editor' "
            + root
            + ">"
            + body
            + "</svg>";
    return Pictures.head(
        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
        new Wanted(
            "f.svg",
            Tone.DARK,
            false,
            resolution,
            new Length(0),
            new Pair(new Length(100), new Length(100))));
  }

  private static OpenPoints read(String body, Tone tone) throws Exception {
    Picture picture = picture(BOX, body, Optional.empty());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(tone, open);
    return open;
  }

  /** Printed area, in mm². */
  private static double area(String body) throws Exception {
    return read(body, Tone.DARK).bits().count() / PER_MM / PER_MM;
  }

  /** Areas that anybody can work out; edges lie between points, so a point of each edge is open. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "400   | <rect x='10' y='10' width='20' height='20'/>",
        "78.54 | <circle cx='50' cy='50' r='5'/>",
        "31.42 | <ellipse cx='50' cy='50' rx='5' ry='2'/>",
        "50    | <path d='M10 10 h10 v10 z'/>",
        "50    | <polygon points='10,10 20,10 20,20'/>",
        "30    | <line x1='10' y1='10' x2='70' y2='10' stroke='black' stroke-width='.5'/>",
        "30    | <line x1='10' y1='10' x2='70' y2='10' style='stroke:#000;stroke-width:0.5'/>",
        "44    | <rect x='10' y='10' width='10' height='10' fill='none' stroke='#000'"
            + " stroke-width='1.1'/>",
        "75    | <path fill-rule='evenodd' d='M10 10 h10 v10 h-10z M12 12 h5 v5 h-5z'/>",
        "400   | <g transform='translate(5 5) scale(2)'><rect width='10' height='10'/></g>",
        "200   | <defs><rect id='a' width='10' height='10'/></defs><use xlink:href='#a'/><use"
            + " href='#a' x='20'/>",
        "400   | <symbol id='s' viewBox='0 0 1 1'><rect width='1' height='1'/></symbol><use"
            + " href='#s' width='20' height='20'/>",
        "50    | <clipPath id='c'><rect x='5' width='5' height='10'/></clipPath><rect width='10'"
            + " height='10' clip-path='url(#c)'/>",
        "50    | <rect id='o' x='50' width='0' height='0'/><path id='p' fill='none' d='M0 0 h5 v10"
            + " h-5z'/><clipPath id='c'><use href='#p'/></clipPath><rect width='10' height='10'"
            + " clip-path='url(#c)'/>",
        "75    | <rect width='10' height='10'/><rect width='5' height='5' fill='white'/>",
        "100   | <style>.st0{fill:#000}.st1{display:none}</style><rect class='st0' width='10'"
            + " height='10'/><rect class='st1' width='50' height='50'/>",
        "0     | <rect width='50' height='50' display='none'/><g><rect visibility='hidden'"
            + " width='9' height='9'/></g>",
        "0     | <title>A leaf</title><desc>it</desc><metadata><editor:x><rect"
            + " width='9'/></editor:x></metadata>",
        "100   | <editor:view zoom='3'><editor:grid/></editor:view><rect width='10' height='10'"
            + " editor:label='leaf' font-family='x'/>",
        "0     | <rect width='10' height='10' fill-opacity='0'/>"
      })
  void areasThatAnybodyCanWorkOut(double expected, String body) throws Exception {
    assertThat(area(body)).isCloseTo(expected, within(Math.max(0.05, expected * 0.02)));
  }

  @Test
  void whatIsBareTakesNoPasteInEitherTone() throws Exception {
    assertThat(read("<rect width='10' height='10' fill='#fff'/>", Tone.LIGHT).bits().count())
        .isEqualTo(236 * 236);
    assertThat(read("", Tone.LIGHT).bits().count()).isZero();
  }

  @Test
  void greyIsToldAsGrey() throws Exception {
    OpenPoints open = read("<rect width='100' height='100' fill='#808080'/>", Tone.DARK);
    assertThat(open.tones().counts().get(50)).isEqualTo(2362L * 2362);
  }

  /** CSS Values and Units Level 3, 6.2: absolute lengths. */
  @ParameterizedTest
  @CsvSource({
    "420mm,297mm,420,297",
    "42cm,29.7cm,420,297",
    "16.5in,11.7in,419.1,297.18",
    "1190.55pt,841.89pt,420,297",
    "1680q,1188Q,420,297"
  })
  void sizesAreAsTheySay(String width, String height, double along, double across)
      throws Exception {
    Picture picture =
        picture(
            "width='" + width + "' height='" + height + "' viewBox='0 0 420 297'",
            "",
            Optional.of(10.0));
    assertThat(picture.columns() / picture.grid().orElseThrow().along())
        .isCloseTo(along, within(0.01));
    assertThat(picture.rows() / picture.grid().orElseThrow().across())
        .isCloseTo(across, within(0.01));
    assertThat(picture.columns()).isEqualTo((int) Math.round(along * 10));
  }

  /** Points of a screen are as large as the screen: the plan's size holds then. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "viewBox='0 0 50 50'",
        "width='50' height='50'",
        "width='50px' height='50px'",
        "width='100%' height='100%' viewBox='0 0 50 50'"
      })
  void withoutASizeItIsThePlans(String root) throws Exception {
    Picture picture = picture(root, "<rect width='25' height='50'/>", Optional.empty());
    assertThat(picture.grid()).isEmpty();
    assertThat(picture.columns()).isEqualTo(2362);
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    assertThat(open.bits().count() / PER_MM / PER_MM).isCloseTo(5000, within(5.0));
  }

  @Test
  void theRootHandsItsAttributesDown() throws Exception {
    Picture picture =
        picture(BOX + " fill='none'", "<rect width='50' height='50'/>", Optional.of(5.0));
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    assertThat(open.bits().count()).isZero();
  }

  /** As often as may be over a film of 600 million points: many seconds, if nobody ended it. */
  @Test
  void drawingEndsWhenNobodyWaits() throws Exception {
    Picture picture =
        picture(BOX, "<rect width='100' height='100'/>".repeat(39), Optional.of(250.0));
    Thread self = Thread.currentThread();
    Thread soon =
        new Thread(
            () -> {
              try {
                Thread.sleep(700);
              } catch (InterruptedException e) {
                // Then now.
              }
              self.interrupt();
            });
    soon.start();
    long before = System.nanoTime();
    assertThatThrownBy(() -> picture.read(Tone.DARK, new OpenPoints(picture, 0, 0)))
        .isInstanceOf(GivenUp.class);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(System.nanoTime() - before).isLessThan(10_000_000_000L);
  }
}
