package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a library draws otherwise than SVG 2 has it is refused by name and line, never drawn. */
class SvgRefusedTest {

  private static void look(String head, String body) throws UnreadablePicture {
    SvgLook.through(
        (head
                + "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
                + " viewBox='0 0 9 9'>\n"
                + body
                + "</svg>")
            .getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "path | <clipPath id='c'><path clip-rule='evenodd' d='M0 0h5'/></clipPath><g clip-path='url(#c)'/>",
        "path | <g clip-rule='evenodd'><clipPath id='c'><path d='M0 0h5'/></clipPath></g><g clip-path='url(#c)'/>",
        "transform | <clipPath id='c' transform='scale(2)'><path d='M0 0h5'/></clipPath><g clip-path='url(#c)'/>",
        "clip-path | <clipPath id='c' clip-path='url(#d)'><path d='M0 0h5'/></clipPath><g clip-path='url(#c)'/>",
        "display | <clipPath id='c'><path display='none' d='M0 0h5'/></clipPath><g clip-path='url(#c)'/>",
        "clip-path | <g style='clip-path:circle(5px)'/>",
        "clipPathUnits | <clipPath id='c' clipPathUnits='objectBoundingBox'/><g clip-path='url(#c)'/>",
        "#no | <g clip-path='url(#no)'/>",
        "style | <style>g rect{fill:white}</style>",
        "style | <style>rect.a{fill:white}</style>",
        "style | <style>*{fill:white}</style>",
        "style | <style>g>rect{fill:white}</style>",
        "style | <style>[x]{fill:white}</style>",
        "style | <style>rect:hover{fill:white}</style>",
        "style | <style>@media print{rect{fill:white}}</style>",
        "style | <style>rect{fill:white !important}</style>",
        "style | <style>rect{fill:white</style>",
        "style | <style media='print'>rect{fill:white}</style>",
        "style | <rect style='FILL:white'/>",
        "style | <rect style='fill white'/>",
        "style | <rect style='scale:2'/>",
        "style | <rect style='d:path()'/>",
        "style | <rect style='transform:scale(2)'/>",
        "fill | <rect fill='hsl(120,100%,20%)'/>",
        "fill | <rect fill='lab(1 2 3)'/>",
        "fill | <rect fill='device-cmyk(0,0,0,1)'/>",
        "fill | <rect fill='#000 icc-color(x,0)'/>",
        "fill | <rect fill='blurple'/>",
        "fill | <rect fill='currentColor'/>",
        "fill | <rect fill='var(--x)'/>",
        "fill | <rect fill='inherit'/>",
        "fill | <rect fill='rgba(0,0,0,.6)'/>",
        "fill | <rect fill='#0008'/>",
        "fill | <rect fill='#00000080'/>",
        "fill | <rect fill='rgb(0 0 0 / 50%)'/>",
        "stroke-opacity | <rect stroke-opacity='.7'/>",
        "visibility | <g visibility='hidden'><rect visibility='visible'/></g>",
        "paint-order | <rect paint-order='stroke'/>",
        "refX | <symbol id='s' viewBox='0 0 1 1' refX='1'/><use href='#s' width='1' height='1'/>",
        "width | <rect width='2em' height='1'/>",
        "stroke-width | <rect stroke-width='1ex'/>",
        "stroke-width | <rect stroke-width='-1'/>",
        "href | <rect id='a'/><use href='#a' xlink:href='#a'/>",
        "d | <path d='M0 0 L5'/>",
        "d | <path d='M0 0 Lx 5'/>",
        "d | <path d='M0 0 A1 1 0 2 0 5 5'/>",
        "d | <path d='M0 0 A1e-5 1e5 0 1 0 5 5'/>",
        "points | <polygon points='1,1 2,2 3'/>",
        "transform | <g transform='rotate(1 2)'/>",
        "transform | <g transform='scale(2) x'/>",
        "transform | <g transform='scale(0)'/>",
        "width | <rect width='1e7' height='1'/>",
        "#no | <use href='#no'/>",
        "#a | <g id='a'><use href='#a'/></g>",
        "a | <rect id='a'/><rect id='a'/><use href='#a'/>",
        "include | <x:include xmlns:x='http://www.w3.org/2001/XInclude' href='a'/>"
      })
  void eachIsRefusedByNameAndLine(String name, String body) {
    assertThatThrownBy(() -> look("", body))
        .isInstanceOf(UnreadablePicture.class)
        .hasMessageContaining("line 2 “" + name + "” (");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<?xml-stylesheet href='a.css'?>",
        "<!DOCTYPE svg [<!ENTITY a 'b'>]>",
        "<!-- <!DOCTYPE svg> --><!DOCTYPE svg [<!ENTITY a 'b'>]>"
      })
  void whatLiesOutsideIsRefused(String head) {
    assertThatThrownBy(() -> look(head, "<g/>"))
        .isInstanceOf(UnreadablePicture.class)
        .hasMessageContaining("line 1 “");
  }

  /** As editors save it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<defs><linearGradient id='g'><stop/></linearGradient><text id='t'>a</text></defs>",
        "<g display='none'><text>a</text></g><g opacity='0'><image/></g>",
        "<a href='#x'><rect/></a><view id='v'/>",
        "<path fill-rule='evenodd' clip-rule='evenodd' d='M1,1h5v5z'/>",
        "<style>/* a */ .a{fill:#000;} .a,.b{stroke:none;;}</style><rect class='a b'/>",
        "<rect style=\"font-family:'A B';-x-y:z;paint-order:markers fill stroke\"/>"
      })
  void ordinaryExportsPass(String body) {
    assertThatCode(
            () ->
                look(
                    "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\""
                        + " \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">",
                    body))
        .doesNotThrowAnyException();
  }
}
