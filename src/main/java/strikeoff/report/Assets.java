package strikeoff.report;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import strikeoff.report.page.Head;

/**
 * The style sheet and the scripts that go into pages, and the content security policy that lets
 * them, and nothing else, work: no network, no inline handlers, no other script that a plan's text
 * might smuggle in.
 */
enum Assets implements Content {
  STYLE("report.css", "sha256-W/15vgy60PYp5tdLraQYivws6R+CPAPe5N1+2pWdiRg="),
  PLAN_SCRIPT("plan.js", "sha256-T/28tVrF3ryhO7LkYVgmk5XcEUKkPG948c6cJOx7bOM="),
  INDEX_SCRIPT("index.js", "sha256-x5UXmS8v7d0KGBc63YkKeohw2DO/y73rVhWt/ytn67k="),
  WALL_STYLE("wall.css", "sha256-Lu65bZlh8Iuse68q+GBE8+AZNDXxTBTYZfs4e8sVTwE="),
  WALL_SCRIPT("wall.js", "sha256-JjJbN36Hau64lpzDcLV693R/uZq4cyUN8aC4RUQMdgE="),
  LIVE_SCRIPT("live.js", "sha256-josSkeR/basPJ1nw56/pnq9mLS3/CCgHKRZtrpkutQI=");

  private final String file;
  private final String hash;
  private volatile byte[] utf8;

  /**
   * @param hash written down, and held to the file by a test, since a cold start would spend more
   *     time on computing it than on most of a plan
   */
  Assets(String file, String hash) {
    this.file = file;
    this.hash = hash;
  }

  static Head head(PageMark mark, String title, Assets script) {
    return head(mark, title, STYLE, script);
  }

  static Head head(PageMark mark, String title, Assets style, Assets script) {
    String policy =
        "default-src 'none'; style-src '"
            + style.hash
            + "'; script-src '"
            + script.hash
            + "'; base-uri 'none'; form-action 'none'";
    return new Head(mark.generator(), title, policy, style, script);
  }

  String hash() {
    return hash;
  }

  /** The file as it goes into each page, read once. */
  byte[] utf8() {
    if (utf8 == null) {
      utf8 = read(file).getBytes(StandardCharsets.UTF_8);
    }
    return utf8;
  }

  @Override
  public void writeTo(TemplateOutput out) {
    out.writeBinaryContent(utf8());
  }

  private static String read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
