package strikeoff.policy;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * The policy as the build leaves it for the program: read from YAML and checked once, so that no
 * start has to parse it again. The form is private to one build and has no version.
 */
public final class PolicyPack {

  private PolicyPack() {}

  /** Writes a policy; the same one always gives the same bytes. */
  public static void write(Policy policy, DataOutputStream out) throws IOException {
    out.writeInt(policy.limits().size());
    for (Limit limit : policy.limits().values()) {
      out.writeUTF(limit.name());
      write(limit.value(), out);
      out.writeUTF(limit.why());
      out.writeUTF(limit.source());
    }
    out.writeInt(policy.defaults().size());
    for (Default<?> standard : policy.defaults().values()) {
      out.writeUTF(standard.name());
      writeValue(standard.value(), out);
      out.writeUTF(standard.text());
      out.writeUTF(standard.source());
    }
    out.writeInt(policy.groups().size());
    for (ReactiveGroup group : policy.groups()) {
      write(group, out);
    }
    out.writeInt(policy.fibres().size());
    for (Fibre fibre : policy.fibres()) {
      out.writeUTF(fibre.name());
      write(fibre.aliases(), out);
      write(fibre.takesDye(), out);
      out.writeBoolean(fibre.cellulose());
      write(fibre.uptake(), out);
      write(fibre.warmestWash(), out);
      write(fibre.usualWash(), out);
      write(fibre.standsSoda(), out);
      write(fibre.feltsFrom(), out);
      write(fibre.heatHarms(), out);
      write(fibre.heatSpoils(), out);
      out.writeBoolean(fibre.softens());
      write(fibre.ureaFactor(), out);
      write(fibre.countsFrom(), out);
      out.writeUTF(fibre.source());
    }
    out.writeInt(policy.substances().size());
    for (Substance substance : policy.substances()) {
      write(substance, out);
    }
  }

  /** Reads what {@link #write} wrote, to an equal policy. */
  public static Policy read(DataInputStream in) throws IOException {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (int left = in.readInt(); left > 0; left--) {
      String name = in.readUTF();
      limits.put(name, new Limit(name, quantity(in), in.readUTF(), in.readUTF()));
    }
    Map<String, Default<?>> defaults = new LinkedHashMap<>();
    for (int left = in.readInt(); left > 0; left--) {
      String name = in.readUTF();
      defaults.put(name, new Default<>(name, value(in), in.readUTF(), in.readUTF()));
    }
    List<ReactiveGroup> groups = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      groups.add(group(in));
    }
    List<Fibre> fibres = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      fibres.add(
          new Fibre(
              in.readUTF(),
              words(in),
              (Share) quantity(in),
              in.readBoolean(),
              (Share) quantity(in),
              (Temperature) quantity(in),
              optional(in).map(Temperature.class::cast),
              optional(in).map(Span.class::cast),
              optional(in).map(Temperature.class::cast),
              (Temperature) quantity(in),
              (Temperature) quantity(in),
              in.readBoolean(),
              (Ratio) quantity(in),
              optional(in).map(Share.class::cast),
              in.readUTF()));
    }
    List<Substance> substances = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      substances.add(substance(in));
    }
    return new Policy(limits, defaults, groups, fibres, substances);
  }

  private static void write(ReactiveGroup group, DataOutputStream out) throws IOException {
    out.writeUTF(group.name());
    write(group.aliases(), out);
    for (Quantity each :
        List.of(
            group.coolest(),
            group.warmest(),
            group.soak().pale(),
            group.soak().deep(),
            group.soak().at(),
            group.batch().pale(),
            group.batch().deep(),
            group.batch().at(),
            group.shortestSteam(),
            group.longestSteam(),
            group.lifeWithAlkali(),
            group.lifeWithAlkaliCold(),
            group.lifeWithoutAlkali(),
            group.lifeWithoutAlkaliCold())) {
      write(each, out);
    }
    out.writeUTF(group.source());
  }

  private static ReactiveGroup group(DataInputStream in) throws IOException {
    return new ReactiveGroup(
        in.readUTF(),
        words(in),
        (Temperature) quantity(in),
        (Temperature) quantity(in),
        stated(in),
        stated(in),
        (Span) quantity(in),
        (Span) quantity(in),
        (Span) quantity(in),
        (Span) quantity(in),
        (Span) quantity(in),
        (Span) quantity(in),
        in.readUTF());
  }

  private static ReactiveGroup.Stated stated(DataInputStream in) throws IOException {
    return new ReactiveGroup.Stated(
        (Span) quantity(in), (Span) quantity(in), (Temperature) quantity(in));
  }

  private static void write(Substance substance, DataOutputStream out) throws IOException {
    out.writeUTF(substance.name());
    write(substance.aliases(), out);
    out.writeUTF(substance.role().name());
    out.writeBoolean(substance.gramsPerMl().isPresent());
    if (substance.gramsPerMl().isPresent()) {
      Range density = substance.gramsPerMl().get();
      out.writeDouble(density.low());
      out.writeDouble(density.best());
      out.writeDouble(density.high());
    }
    out.writeBoolean(substance.alkaliFactor().isPresent());
    if (substance.alkaliFactor().isPresent()) {
      out.writeDouble(substance.alkaliFactor().get());
    }
    out.writeBoolean(substance.sulphate());
    out.writeUTF(substance.source());
  }

  private static Substance substance(DataInputStream in) throws IOException {
    return new Substance(
        in.readUTF(),
        words(in),
        Substance.Role.valueOf(in.readUTF()),
        in.readBoolean()
            ? Optional.of(new Range(in.readDouble(), in.readDouble(), in.readDouble()))
            : Optional.empty(),
        in.readBoolean() ? Optional.of(in.readDouble()) : Optional.empty(),
        in.readBoolean(),
        in.readUTF());
  }

  /** What a default is: a letter says of which kind. */
  private static void writeValue(Object value, DataOutputStream out) throws IOException {
    if (value instanceof Quantity quantity) {
      out.writeChar('q');
      write(quantity, out);
    } else if (value instanceof Integer number) {
      out.writeChar('n');
      out.writeInt(number);
    } else if (value instanceof Boolean yes) {
      out.writeChar('b');
      out.writeBoolean(yes);
    } else {
      out.writeChar('w');
      out.writeUTF((String) value);
    }
  }

  private static Object value(DataInputStream in) throws IOException {
    char kind = in.readChar();
    return switch (kind) {
      case 'q' -> quantity(in);
      case 'n' -> in.readInt();
      case 'b' -> in.readBoolean();
      case 'w' -> in.readUTF();
      default -> throw new IOException("no kind of default: " + kind);
    };
  }

  private static void write(Optional<? extends Quantity> quantity, DataOutputStream out)
      throws IOException {
    out.writeBoolean(quantity.isPresent());
    if (quantity.isPresent()) {
      write(quantity.get(), out);
    }
  }

  private static Optional<Quantity> optional(DataInputStream in) throws IOException {
    return in.readBoolean() ? Optional.of(quantity(in)) : Optional.empty();
  }

  private static void write(Quantity quantity, DataOutputStream out) throws IOException {
    out.writeUTF(Quantities.dimension(quantity));
    out.writeDouble(quantity.base());
  }

  private static Quantity quantity(DataInputStream in) throws IOException {
    return Quantities.of(in.readUTF(), in.readDouble());
  }

  private static void write(List<String> words, DataOutputStream out) throws IOException {
    out.writeInt(words.size());
    for (String word : words) {
      out.writeUTF(word);
    }
  }

  private static List<String> words(DataInputStream in) throws IOException {
    List<String> words = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      words.add(in.readUTF());
    }
    return words;
  }
}
