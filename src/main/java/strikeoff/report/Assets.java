package strikeoff.report;

import gg.jte.Content;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import strikeoff.report.page.Head;

/**
 * The style sheet and script that go into a page, and the content security policy that lets them,
 * and nothing else, work: no network, no inline handlers, no other script that a plan's text might
 * smuggle in.
 */
final class Assets {

  private static final String STYLE = read("report.css");

  private Assets() {}

  static Head head(String title, String scriptFile) {
    String script = read(scriptFile);
    String policy =
        "default-src 'none'; style-src '"
            + hash(STYLE)
            + "'; script-src '"
            + hash(script)
            + "'; base-uri 'none'; form-action 'none'";
    return new Head(title, policy, raw(STYLE), raw(script));
  }

  private static Content raw(String text) {
    return out -> out.writeContent(text);
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
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
