package strikeoff.policy.yaml;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.document.Problem;
import strikeoff.policy.Default;
import strikeoff.policy.DefaultKind;
import strikeoff.policy.DefaultKinds;
import strikeoff.policy.Limit;
import strikeoff.policy.LimitKinds;
import strikeoff.policy.LimitOrder;
import strikeoff.policy.Policy;
import strikeoff.policy.PolicyPack;
import strikeoff.units.Parsed;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;
import strikeoff.yaml.Item;
import strikeoff.yaml.Reading;
import strikeoff.yaml.ValueKinds;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/**
 * Reads the policy that comes with the tool. A fault in it is a fault of the tool, so it throws,
 * and names every fault at once.
 */
public final class PolicyReader {

  /** Beside the rules on the class path; the build writes it. */
  private static final String PACK = "rules/policy.bin";

  private static final int LONGEST = 2000;

  private PolicyReader() {}

  /**
   * The policy on the class path, as the build packed it; from its files where nothing is packed,
   * as when an editor has compiled the classes.
   *
   * @throws IllegalStateException if it cannot be read
   */
  public static Policy builtIn() {
    try (InputStream in = PolicyReader.class.getClassLoader().getResourceAsStream(PACK)) {
      return in == null
          ? written()
          : PolicyPack.read(new DataInputStream(new ByteArrayInputStream(in.readAllBytes())));
    } catch (IOException e) {
      throw new IllegalStateException("the packed policy can't be read", e);
    }
  }

  /**
   * The policy as it is written on the class path: {@code rules/defaults.yaml}, {@code
   * rules/tables.yaml} and the limits of every family that {@code rules/families.yaml} names.
   *
   * @throws IllegalStateException if it cannot be read
   */
  public static Policy written() {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (String family : families()) {
      String file = "rules/" + family + "/limits.yaml";
      // A family whose rules compare facts with nothing has none.
      resource(file).ifPresent(text -> limits.putAll(limits(file, text, family)));
    }
    List<String> missing =
        families().stream()
            .flatMap(
                family ->
                    LimitKinds.missing(family, limits).stream()
                        .map(words -> "rules/" + family + "/limits.yaml: " + words))
            .toList();
    if (!missing.isEmpty()) {
      throw new IllegalStateException(String.join("\n", missing));
    }
    Map<String, Default<?>> defaults =
        defaults("rules/defaults.yaml", required("rules/defaults.yaml"));
    Fields tables = root("rules/tables.yaml", required("rules/tables.yaml"), "tables");
    TableReader reader = new TableReader(tables);
    Policy policy =
        new Policy(limits, defaults, reader.groups(), reader.fibres(), reader.substances());
    tables.done();
    check("rules/tables.yaml", tables.reading());
    return policy;
  }

  /**
   * Packs the written policy for quick starts; the build runs this once the files are copied.
   *
   * @param args the folder of compiled classes
   */
  public static void main(String[] args) throws IOException {
    try (DataOutputStream out =
        new DataOutputStream(
            new BufferedOutputStream(Files.newOutputStream(Path.of(args[0]).resolve(PACK))))) {
      PolicyPack.write(written(), out);
    }
  }

  /** The families in their order, which the list of rules follows. */
  public static List<String> families() {
    String file = "rules/families.yaml";
    Fields root = root(file, required(file), "the list of families");
    List<String> families =
        root.required("families", ValueKinds.oneOrMore(ValueKinds.text("a family's folder", 40)));
    root.done();
    check(file, root.reading());
    return families;
  }

  /** Reads one family's limits; each name begins with the family. */
  static Map<String, Limit> limits(String file, byte[] text, String family) {
    Fields root = root(file, text, "limits");
    Fields list = root.underOrAbsent("limits", "the limits");
    Map<String, Limit> limits = list.each(i -> limit(i, family, root.reading()));
    order(root);
    root.done();
    check(file, root.reading());
    return limits;
  }

  /**
   * What the limits of a family must be to one another, as it stands beside them. Only studios that
   * set limits ask for it, so it isn't packed.
   *
   * @throws IllegalStateException if it cannot be read
   */
  public static LimitOrder order(String family) {
    String file = "rules/" + family + "/limits.yaml";
    Optional<byte[]> text = resource(file);
    return text.isEmpty()
        ? new LimitOrder(List.of(), List.of())
        : order(root(file, text.get(), "limits"));
  }

  private static LimitOrder order(Fields root) {
    Expected<String> name = ValueKinds.text("a limit's name", 80);
    return new LimitOrder(
        root.optional("in order", ValueKinds.oneOrMore(ValueKinds.oneOrMore(name)))
            .orElse(List.of()),
        root.optional("above zero", ValueKinds.oneOrMore(name)).orElse(List.of()));
  }

  private static Limit limit(Item item, String family, Reading reading) {
    String name = item.path().text().substring("limits.".length());
    Fields f = Fields.of(item, "a limit", reading);
    if (!name.startsWith(family + "/")) {
      f.wrong("a limit of this file begins with " + family + "/");
    }
    Limit limit =
        new Limit(
            name,
            f.required("value", TableReader.anyQuantity()),
            f.required("why", words("a sentence")),
            f.required("source", words("a source")));
    if (limit.value() != null) {
      LimitKinds.fault(limit).ifPresent(f::wrong);
    }
    f.done();
    return limit;
  }

  /** Reads the defaults, each as what it has to be; none is missing and none is read by nobody. */
  static Map<String, Default<?>> defaults(String file, byte[] text) {
    Fields root = root(file, text, "defaults");
    Fields list = root.underOrAbsent("defaults", "the defaults");
    Map<String, Default<?>> defaults = list.each(i -> standard(i, root.reading()));
    DefaultKinds.missing(defaults).forEach(list::wrong);
    root.done();
    check(file, root.reading());
    return defaults;
  }

  private static Default<?> standard(Item item, Reading reading) {
    String name = item.path().text().substring("defaults.".length());
    Fields f = Fields.of(item, "a default", reading);
    Optional<DefaultKind> kind = DefaultKinds.kind(name);
    if (kind.isEmpty()) {
      f.wrong("nobody reads a default called " + name);
    }
    String source = f.required("source", words("a source"));
    Expected<Default<?>> value =
        ValueKinds.scalar(
            "a value as a plan would write it",
            new Default<>(name, "", "", source),
            text ->
                kind.isPresent()
                    ? kind.get().read(name, text, source)
                    : Parsed.value(new Default<>(name, text, text, source)));
    Default<?> standard = f.required("value", value);
    f.done();
    return standard;
  }

  private static Expected<String> words(String what) {
    return ValueKinds.text(what, LONGEST);
  }

  private static Fields root(String file, byte[] text, String what) {
    YamlReading read = YamlReader.read(text);
    if (read instanceof YamlReading.Faulty f) {
      throw broken(file, f.problems());
    }
    return Fields.of(Item.root(((YamlReading.Document) read).root()), what, new Reading());
  }

  private static void check(String file, Reading reading) {
    if (!reading.problems().none()) {
      throw broken(file, reading.problems().sorted());
    }
  }

  private static IllegalStateException broken(String file, List<Problem> problems) {
    return new IllegalStateException(
        problems.stream()
            .map(p -> file + ":" + p.position() + ": " + p.message())
            .collect(Collectors.joining("\n", "the policy cannot be read:\n", "")));
  }

  private static byte[] required(String name) {
    return resource(name)
        .orElseThrow(() -> new IllegalStateException(name + " is missing from the class path"));
  }

  private static Optional<byte[]> resource(String name) {
    try (InputStream in = PolicyReader.class.getClassLoader().getResourceAsStream(name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
