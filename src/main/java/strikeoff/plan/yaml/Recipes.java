package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Parsed;
import strikeoff.units.Quantity;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Item;
import strikeoff.yaml.Node;
import strikeoff.yaml.QuantityKinds;
import strikeoff.yaml.Reading;

/** Reads what a paste or a bath is mixed from: amounts by substance. */
final class Recipes {

  private Recipes() {}

  static Expected<List<Ingredient>> recipe(Policy policy) {
    return new Expected<>() {
      @Override
      public String words() {
        return "amounts by substance such as {soda ash: 200 g, water: 5 L}";
      }

      @Override
      public List<Ingredient> standIn() {
        return List.of();
      }

      @Override
      public Optional<List<Ingredient>> read(Item item, Reading reading) {
        if (!(item.node() instanceof Node.Mapping m) || m.entries().isEmpty()) {
          reading.wrong(item, words() + " were expected, and " + kind(item) + " stands here");
          return Optional.empty();
        }
        List<Ingredient> lines = new ArrayList<>();
        for (Node.Entry e : m.entries().values()) {
          line(new Item(e.value(), item.path().key(e.key()), e.at()), e.key(), policy, reading)
              .ifPresent(lines::add);
        }
        return lines.size() == m.entries().size() ? Optional.of(lines) : Optional.empty();
      }
    };
  }

  private static String kind(Item item) {
    return item.node() instanceof Node.Mapping ? "an empty mapping" : item.node().kind();
  }

  private static Optional<Ingredient> line(Item item, String name, Policy policy, Reading reading) {
    Parsed<String> substance = Lookup.substance(name, policy);
    if (substance instanceof Parsed.Refused<String> r) {
      reading.problems().add(item.key(), item.path(), r.message());
    }
    if (item.node() instanceof Node.Nothing) {
      reading
          .problems()
          .add(
              item.key(),
              item.path(),
              QuantityKinds.amount().words() + " was expected, and nothing stands here");
      return Optional.empty();
    }
    Optional<Quantity> amount = QuantityKinds.amount().read(item, reading);
    if (amount.isEmpty() || substance.toOptional().isEmpty()) {
      return Optional.empty();
    }
    String known = substance.toOptional().get();
    if (!(amount.get() instanceof Mass) && policy.substance(known).gramsPerMl().isEmpty()) {
      reading.wrong(item, "the density of " + known + " is not known; give its mass such as 90 g");
      return Optional.empty();
    }
    String written = ((Node.Scalar) item.node()).text();
    return Optional.of(new Ingredient(known, amount.get(), written, item.path()));
  }

  static boolean holds(List<Ingredient> lines, Substance.Role role, Policy policy) {
    return lines.stream().anyMatch(i -> policy.substance(i.substance()).role() == role);
  }
}
