package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A drawing that a film can't be ends in a sentence that names what and where. */
class HostileDrawingsTest {

  private static final String ROOT =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
          + " width='10mm' height='10mm' viewBox='0 0 100 100'>";

  @TempDir Path folder;

  /** Empty if it is read. */
  private String refused(String svg) throws IOException {
    Files.writeString(folder.resolve("f.svg"), svg);
    return new BesidePlan(folder).refused(BesidePlan.wanted("f.svg", 50));
  }

  private static String copies(String leaf) {
    return "<defs><g id='a0'>"
        + leaf
        + "</g>"
        + IntStream.range(1, 14)
            .mapToObj(
                i -> "<g id='a" + i + "'>" + ("<use href='#a" + (i - 1) + "'/>").repeat(9) + "</g>")
            .collect(Collectors.joining())
        + "</defs><use href='#a13'/>";
  }

  private static Map<String, String[]> hostile() {
    Map<String, String[]> all = new LinkedHashMap<>();
    put(all, "letters", "\n<text x='1'>a</text>", "line 2 “text” (convert letters to outlines)");
    put(all, "a picture", "<image href='a.png'/>", "“image” (trace it");
    put(all, "a script", "<script>x()</script>", "“script” (nothing runs");
    put(all, "what runs when it is loaded", "<rect onload='x()'/>", "“onload” (nothing runs");
    put(all, "what moves", "<rect><animate attributeName='x'/></rect>", "“animate” (nothing runs");
    put(all, "a filter", "<g filter='url(#f)'/>", "“filter” (a film is dark or clear");
    put(all, "a mask", "<g style='mask:url(#m)'/>", "“mask” (a film is dark or clear");
    put(all, "a gradient", "<linearGradient id='a'/><g fill='url(#a)'/>", "“fill” (a film is");
    put(all, "a pattern", "<pattern id='a'/><g style='fill:url(#a)'/>", "“fill” (a film is");
    put(all, "dashes", "<path stroke-dasharray='1 2'/>", "“stroke-dasharray” (expand strokes");
    put(all, "half transparent", "<g opacity='.5'/>", "“opacity” (a film is dark or clear");
    put(all, "filled by a reference", "<rect fill='url(#a)'/>", "“fill” (a film is");
    put(all, "a file elsewhere", "<use href='http://example.org/a.svg#b'/>", "“href” (name only");
    put(all, "a file beside", "<use xlink:href='a.svg#b'/>", "“href” (name only what is");
    put(all, "a data address", "<use href='data:image/svg+xml,a#b'/>", "“href” (name only");
    put(all, "a base", "<g xml:base='http://example.org/'/>", "“xml:base” (delete it)");
    put(
        all,
        "a sheet elsewhere",
        "<style>@import url(a.css);</style>",
        "“style” (write it without");
    put(
        all,
        "an address in a sheet",
        "<style>.a{fill:url(http://a)}</style><g class='a'/>",
        "“fill” (a film");
    put(all, "an escape in a sheet", "<style>.a{f\\69lter:x}</style>", "“style” (write it without");
    put(all, "a choice by place", "<style>g:first-child{fill:red}</style>", "names of classes");
    put(all, "what another language shows", "<g systemLanguage='de'/>", "“systemLanguage”");
    put(all, "html within", "<foreignObject/>", "“foreignObject” (delete it)");
    put(all, "strokes of a screen's width", "<path vector-effect='non-scaling-stroke'/>", "expand");
    put(
        all,
        "a group in a clip",
        "<clipPath id='c'><g/></clipPath><g clip-path='url(#c)'/>",
        "“g” (cut the shapes");
    put(
        all,
        "a clip by a group",
        "<g id='g'/><clipPath id='c'><use href='#g'/></clipPath><g clip-path='url(#c)'/>",
        "“#g” (it clips, but is no plain outline");
    put(
        all,
        "a clip of many letters",
        "<clipPath id='c'><path d='M0 0"
            + " L9 9".repeat(1000)
            + "'/></clipPath><g clip-path='url(#c)'/>",
        "clips by outlines of more than 4000 letters");
    put(
        all,
        "a clip by a copy of many letters",
        "<path id='p' d='M0 0"
            + " L9 9".repeat(1000)
            + "'/><clipPath id='c'><use href='#p'/></clipPath><g clip-path='url(#c)'/>",
        "clips by outlines of more than 4000 letters");
    put(all, "copies of copies", copies("<rect width='1' height='1'/>"), "copies of copies");
    put(all, "copies of copies of nothing", copies(""), "copies of copies");
    put(
        all,
        "a copy of itself",
        "<g id='a'><use href='#a'/></g>",
        "“#a” (it is copied into itself");
    put(
        all,
        "the whole film over and over",
        "<path d='M0 0H100V100H0Z'/>".repeat(41),
        "paint the film over more than 40 times");
    put(
        all,
        "thick lines over and over",
        "<path stroke='#000' stroke-width='60' stroke-linecap='round' d='M0 50L100 50'/>"
            .repeat(80),
        "paint the film over more than 40 times");
    put(
        all,
        "a sheet of many rules",
        "<style>" + ".a{fill:#000}".repeat(10_001) + "</style>",
        "it has more than 10000 rules");
    put(all, "too many parts", "<g/>".repeat(60_000), "more than 50000 parts");
    put(all, "parts in each other", "<g>".repeat(200_000), "more than 100 parts in each other");
    all.put(
        "a million corners",
        new String[] {
          ROOT + "<path d='M0 0" + "h9".repeat(1_100_000) + "'/></svg>", "more than 400000 corners"
        });
    all.put("broken", new String[] {ROOT + "\n<rect></svg>", "line 2 breaks the rules of XML"});
    all.put("not ended", new String[] {ROOT, "breaks the rules of XML"});
    all.put("another XML", new String[] {"<?xml version='1.0'?><plan/>", "XML, but no SVG"});
    all.put("html", new String[] {"<!DOCTYPE html><html><body>", "XML, but no SVG"});
    all.put(
        "a file of entities",
        new String[] {
          "<!DOCTYPE svg [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;'>]>" + ROOT + "<g id='&b;'/></svg>",
          "“DOCTYPE” (delete it"
        });
    all.put(
        "a file that it is to fetch",
        new String[] {
          "<!DOCTYPE svg SYSTEM 'file:///etc/passwd'>" + ROOT + "<g/></svg>", "“DOCTYPE” (delete it"
        });
    put(all, "an entity", "<g>&a;</g>", "“&a;” (write it out)");
    put(all, "an entity in an attribute", "<g id='&a;'/>", "breaks the rules of XML");
    root(all, "no size", "", "neither its width and height nor its viewBox");
    root(all, "no number", "width='wide' height='1mm'", "width or height that can be read");
    root(all, "below nothing", "width='-1mm' height='1mm'", "width or height that can be read");
    root(all, "no box", "viewBox='0 0 0 0'", "the viewBox of this drawing is none");
    root(all, "half a box", "viewBox='0 0 9'", "the viewBox of this drawing is none");
    root(all, "beyond numbers", "viewBox='0 0 NaN 1e999'", "the viewBox of this drawing is none");
    root(all, "huge", "width='90m' height='90m' viewBox='0 0 1 1'", "that can be read");
    root(all, "very huge", "width='900cm' height='900cm'", "at most 100000");
    root(all, "large", "width='90cm' height='90cm'", "write a lower “resolution”, as 300/in");
    root(all, "shaped otherwise", "width='9cm' height='9cm' viewBox='0 0 9 2'", "another shape");
    root(all, "shaped otherwise than the plan", "viewBox='0 0 9 2'", "the shape of the separation");
    return all;
  }

  private static void put(Map<String, String[]> all, String name, String body, String says) {
    all.put(name, new String[] {ROOT + body + "</svg>", says});
  }

  private static void root(Map<String, String[]> all, String name, String root, String says) {
    all.put(name, new String[] {"<svg xmlns='http://www.w3.org/2000/svg' " + root + "/>", says});
  }

  @TestFactory
  Stream<DynamicTest> eachEndsInASentence() {
    return hostile().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () ->
                        assertTimeout(
                            Duration.ofSeconds(20),
                            () ->
                                assertThat(refused(one.getValue()[0]))
                                    .contains(one.getValue()[1]))));
  }

  /** Nothing besides goes to the terminal, where the JDK tells such bytes by itself. */
  @Test
  void bytesThatAreNoLettersEndInASentenceAndNowhereElse() throws IOException {
    PrintStream terminal = System.err;
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    System.setErr(new PrintStream(told, true, StandardCharsets.UTF_8));
    try {
      assertThat(refused(ROOT + "<title>\u00e9(</title></svg>", StandardCharsets.ISO_8859_1))
          .contains("no letters in UTF-8");
      assertThat(
              refused(
                  "<?xml version='1.0' encoding='US-ASCII'?>"
                      + ROOT
                      + "<title>\u00e9</title></svg>",
                  StandardCharsets.ISO_8859_1))
          .contains("no letters as its first line says");
      assertThat(
              refused(
                  "<?xml version='1.0' encoding='no-such'?>" + ROOT + "</svg>",
                  StandardCharsets.UTF_8))
          .contains("no letters as its first line says");
    } finally {
      System.setErr(terminal);
    }
    assertThat(told.toString(StandardCharsets.UTF_8)).isEmpty();
    for (String begins :
        new String[] {
          "<?xml version='1.0' encoding='ISO-8859-1'?>", "<?xml version=\"1.0\"?>", ""
        }) {
      Charset letters =
          begins.contains("8859") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
      assertThat(refused(begins + ROOT + "<title>\u00e9</title></svg>", letters)).isEmpty();
    }
    assertThat(refused("\ufeff" + ROOT + "</svg>", StandardCharsets.UTF_8)).isEmpty();
  }

  private String refused(String svg, Charset letters) throws IOException {
    Files.write(folder.resolve("f.svg"), svg.getBytes(letters));
    return new BesidePlan(folder).refused(BesidePlan.wanted("f.svg", 100));
  }

  @Test
  void allThatIsWrongIsToldAtOnce() throws IOException {
    assertThat(
            refused(
                ROOT
                    + "\n<text>a</text>\n<image/>\n<g opacity='.3' filter='url(#f)'>"
                    + "<script/><set/><blob/></g></svg>"))
        .isEqualTo(
            "this drawing holds what a film can't: line 2 “text” (convert letters to outlines);"
                + " line 3 “image” (trace it, or save the whole film as PNG); line 4 “opacity” (a"
                + " film is dark or clear: make it solid); line 4 “filter” (a film is dark or clear:"
                + " draw plain areas, or save it as PNG); line 4 “script” (nothing runs or moves"
                + " here: delete it); and 2 more of the like");
  }
}
