package strikeoff.rulebook.own;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Own rules after compilation, in a form that can be kept as a file.
 *
 * @param rules what they say of themselves
 * @param models names of the classes that are models
 * @param classes bytes of each class by its binary name
 */
record CompiledRules(List<OwnRule> rules, List<String> models, Map<String, byte[]> classes) {

  private static final byte[] MARK = "strikeoff rules 1\n".getBytes(StandardCharsets.US_ASCII);
  private static final int DIGEST = 32;

  CompiledRules {
    rules = List.copyOf(rules);
    models = List.copyOf(models);
    classes = new LinkedHashMap<>(classes);
  }

  /** The whole, with a digest at its end by which damage shows. */
  byte[] bytes() {
    try {
      ByteArrayOutputStream body = new ByteArrayOutputStream();
      body.write(MARK);
      DataOutputStream out = new DataOutputStream(body);
      out.writeInt(rules.size());
      for (OwnRule rule : rules) {
        text(out, rule.id());
        text(out, rule.file());
        out.writeInt(rule.line());
        texts(out, rule.text());
        texts(out, rule.limits());
      }
      texts(out, models);
      out.writeInt(classes.size());
      for (Map.Entry<String, byte[]> one : classes.entrySet()) {
        text(out, one.getKey());
        out.writeInt(one.getValue().length);
        out.write(one.getValue());
      }
      body.write(Digest.of(body.toByteArray()));
      return body.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads {@link #bytes}; empty if they were damaged or are of another version. */
  static Optional<CompiledRules> of(byte[] bytes) {
    int end = bytes.length - DIGEST;
    if (end < MARK.length
        || !Arrays.equals(bytes, 0, MARK.length, MARK, 0, MARK.length)
        || !Arrays.equals(
            Digest.of(Arrays.copyOf(bytes, end)), Arrays.copyOfRange(bytes, end, bytes.length))) {
      return Optional.empty();
    }
    try (DataInputStream in =
        new DataInputStream(new ByteArrayInputStream(bytes, MARK.length, end - MARK.length))) {
      List<OwnRule> rules = new ArrayList<>();
      for (int left = in.readInt(); left > 0; left--) {
        rules.add(new OwnRule(text(in), text(in), in.readInt(), texts(in), texts(in)));
      }
      List<String> models = texts(in);
      Map<String, byte[]> classes = new LinkedHashMap<>();
      for (int left = in.readInt(); left > 0; left--) {
        String name = text(in);
        classes.put(name, in.readNBytes(in.readInt()));
      }
      return Optional.of(new CompiledRules(rules, models, classes));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static void texts(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      text(out, text);
    }
  }

  private static List<String> texts(DataInputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      texts.add(text(in));
    }
    return texts;
  }

  private static void text(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
  }
}
