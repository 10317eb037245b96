package strikeoff.rulebook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.Rule;
import strikeoff.findings.Grade;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;

/**
 * The list of rules as the build leaves it for the program: which facts each asks for, where its
 * model is made, and its words. So a start makes the models of the rules that it links and reads
 * the words of those that find something. The form is private to one build and has no version.
 */
public final class RulePack {

  /** One line a rule, ASCII: nothing is quicker to take apart before code is compiled. */
  private static final String INDEX = "rules/rules.tsv";

  private static final String WORDS = "rules/words.bin";

  private RulePack() {}

  /**
   * Packs the rules that the build compiled.
   *
   * @param classes the folder of compiled classes, where the rules' models are and the pack goes
   * @param usual classes of the facts that plans without a fault have
   */
  public static void write(Path classes, Collection<String> usual) throws IOException {
    ByteArrayOutputStream words = new ByteArrayOutputStream();
    StringBuilder index = new StringBuilder();
    for (Made made : made(PackagedModel.load())) {
      NeededFacts asked = NeededFacts.by(made.rule());
      byte[] info = written(RuleText.of(made.rule()));
      index
          .append(made.rule().getName())
          .append('\t')
          .append(made.where().getDeclaringClass().getName())
          .append('\t')
          .append(made.where().getName())
          .append('\t')
          .append(usual.containsAll(asked.needed()) ? "usual" : "")
          .append('\t')
          .append(asked.everything() ? "everything" : "")
          .append('\t')
          .append(String.join(" ", new TreeSet<>(asked.needed())))
          .append('\t')
          .append(String.join(" ", new TreeSet<>(asked.read())))
          .append('\t')
          .append(String.join(" ", new TreeSet<>(asked.limits())))
          .append('\t')
          .append(words.size())
          .append('\t')
          .append(info.length)
          .append('\n');
      words.write(info);
    }
    Files.write(classes.resolve(INDEX), index.toString().getBytes(StandardCharsets.US_ASCII));
    Files.write(classes.resolve(WORDS), words.toByteArray());
  }

  /** The rules of the pack; empty where nothing is packed, as when an editor has compiled them. */
  static Optional<List<KnownRule>> read() {
    Optional<byte[]> index = resource(INDEX);
    if (index.isEmpty()) {
      return Optional.empty();
    }
    Words words = new Words();
    List<KnownRule> rules = new ArrayList<>();
    for (String line : new String(index.get(), StandardCharsets.ISO_8859_1).split("\n")) {
      String[] of = line.split("\t");
      NeededFacts asked =
          new NeededFacts(names(of[5]), names(of[6]), names(of[7]), !of[4].isEmpty());
      int from = Integer.parseInt(of[8]);
      int length = Integer.parseInt(of[9]);
      rules.add(
          new KnownRule(
              of[0],
              asked,
              !of[3].isEmpty(),
              () -> made(of[1], of[2]),
              () -> words.info(from, length)));
    }
    return Optional.of(rules);
  }

  private static List<String> names(String joined) {
    return joined.isEmpty() ? List.of() : Arrays.asList(joined.split(" "));
  }

  private static Rule made(String type, String method) {
    try {
      return (Rule) Class.forName(type).getMethod(method).invoke(null);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the rules were not built as this program expects", e);
    }
  }

  /** A rule and the method that makes it. */
  private record Made(Rule rule, Method where) {}

  /**
   * All rules by id with what makes them: public static methods of classes that the generator names
   * after the model's.
   *
   * @throws IllegalStateException if it wrote them in another way
   */
  private static List<Made> made(List<Model> models) {
    Map<String, Made> all = new HashMap<>();
    for (Model model : models) {
      for (Class<?> type : methodsOf(model)) {
        Stream.of(type.getMethods())
            .filter(m -> Modifier.isStatic(m.getModifiers()) && m.getReturnType() == Rule.class)
            .map(m -> new Made(made(type.getName(), m.getName()), m))
            .forEach(made -> all.put(made.rule().getName(), made));
      }
      for (Rule rule : model.getRules()) {
        if (!all.containsKey(rule.getName())) {
          throw new IllegalStateException("no method makes rule " + rule.getName());
        }
      }
    }
    return all.values().stream().sorted(Comparator.comparing(m -> m.rule().getName())).toList();
  }

  private static List<Class<?>> methodsOf(Model model) {
    List<Class<?>> types = new ArrayList<>();
    try {
      while (true) {
        types.add(Class.forName(model.getClass().getName() + "RuleMethods" + types.size()));
      }
    } catch (ClassNotFoundException e) {
      return types;
    }
  }

  private static byte[] written(RuleInfo info) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeUTF(info.id());
    out.writeUTF(info.severity().name());
    out.writeInt(info.grades().size());
    for (Grade grade : info.grades()) {
      out.writeUTF(grade.severity().name());
      out.writeUTF(grade.from());
    }
    for (String text :
        List.of(info.summary(), info.because(), info.message(), info.remedy(), info.mend())) {
      out.writeUTF(text);
    }
    out.writeUTF(info.harms());
    write(out, info.doubts());
    out.writeBoolean(info.atWork());
    out.writeUTF(info.source());
    write(out, info.limits());
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      out.writeUTF(text);
    }
  }

  private static Optional<byte[]> resource(String name) {
    try (InputStream in = RulePack.class.getClassLoader().getResourceAsStream(name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of all rules, opened when the first is asked for. */
  private static final class Words {
    private byte[] all;

    private synchronized byte[] all() {
      if (all == null) {
        all = resource(WORDS).orElseThrow(() -> new IllegalStateException("no " + WORDS));
      }
      return all;
    }

    RuleInfo info(int from, int length) {
      try {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(all(), from, length));
        return new RuleInfo(
            in.readUTF(),
            Severity.valueOf(in.readUTF()),
            grades(in),
            in.readUTF(),
            in.readUTF(),
            in.readUTF(),
            in.readUTF(),
            in.readUTF(),
            in.readUTF(),
            texts(in),
            in.readBoolean(),
            in.readUTF(),
            texts(in));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private static List<Grade> grades(DataInputStream in) throws IOException {
      List<Grade> grades = new ArrayList<>();
      for (int left = in.readInt(); left > 0; left--) {
        grades.add(new Grade(Severity.valueOf(in.readUTF()), in.readUTF()));
      }
      return grades;
    }

    private static List<String> texts(DataInputStream in) throws IOException {
      List<String> texts = new ArrayList<>();
      for (int left = in.readInt(); left > 0; left--) {
        texts.add(in.readUTF());
      }
      return texts;
    }
  }
}
