package strikeoff.report;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import strikeoff.report.page.Head;

/**
 * The style sheet and script that go into a page, and the content security policy that lets them,
 * and nothing else, work: no network, no inline handlers, no other script that a plan's text might
 * smuggle in.
 */
final class Assets {

  private static final Asset STYLE = Asset.read("report.css");

  private static final Map<String, Asset> SCRIPTS = new ConcurrentHashMap<>();

  private Assets() {}

  static Head head(String title, String scriptFile) {
    Asset script = SCRIPTS.computeIfAbsent(scriptFile, Asset::read);
    String policy =
        "default-src 'none'; style-src '"
            + STYLE.hash()
            + "'; script-src '"
            + script.hash()
            + "'; base-uri 'none'; form-action 'none'";
    return new Head(title, policy, STYLE, script);
  }

  /** A file that goes into pages as it is: the same for all of them, so it is read once. */
  private record Asset(byte[] utf8, String hash) implements Content {

    static Asset read(String name) {
      byte[] utf8 = Assets.read(name).getBytes(StandardCharsets.UTF_8);
      return new Asset(utf8, Assets.hash(utf8));
    }

    @Override
    public void writeTo(TemplateOutput out) {
      out.writeBinaryContent(utf8);
    }
  }

  private static String hash(byte[] utf8) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(utf8);
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
