package strikeoff.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgTest {

  @Test
  void numbersHaveAPointAndNoNeedlessDigits() {
    assertThat(Svg.number(12)).isEqualTo("12");
    assertThat(Svg.number(-0.001)).isEqualTo("0");
    assertThat(Svg.number(0.05)).isEqualTo("0.05");
    assertThat(Svg.number(-3.499)).isEqualTo("-3.5");
    assertThat(Svg.number(4300.126)).isEqualTo("4300.13");
    assertThatThrownBy(() -> Svg.number(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whateverTheWordsTheElementIsWellFormedAndSaysThem() throws Exception {
    String words = "</title><script>&\"'" + '\u0007' + "]]>";
    String xml = Svg.of("g").with("class", words).titled(words).add(words).toString();
    Document parsed =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(xml)));
    String kept = words.replace("\u0007", "[U+0007]");
    assertThat(parsed.getDocumentElement().getAttribute("class")).isEqualTo(kept);
    assertThat(parsed.getDocumentElement().getTextContent()).isEqualTo(kept + kept);
    assertThat(parsed.getElementsByTagName("script").getLength()).isZero();
  }

  @Test
  void longWordsAreCutBetweenCharacters() {
    assertThat(FittedWords.shortened("🦢🦢🦢🦢", 3)).isEqualTo("🦢🦢…");
    assertThat(FittedWords.shortened("reeds", 5)).isEqualTo("reeds");
  }
}
