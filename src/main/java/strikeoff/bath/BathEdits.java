package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.document.Edit;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Volume;

/**
 * Writes what a bath is to hold in all: over the soda or the salt that it names, by whatever name,
 * or beside the others if it has none. Which of two sodas to change is for the printer to say.
 *
 * @param units to write it in
 */
public record BathEdits(Step.Fix fix, Policy policy, Measures units) {

  /**
   * @param anhydrous as soda ash without its water
   */
  public Optional<Edit> soda(Mass anhydrous) {
    List<Ingredient> sodas = parts(s -> s.alkaliFactor().isPresent() && !s.bicarbonate());
    double factor =
        sodas.size() == 1
            ? policy.substance(sodas.get(0).substance()).alkaliFactor().orElse(1.0)
            : 1;
    return write(sodas, "soda ash", new Mass(anhydrous.grams() / factor).enough(units));
  }

  public Optional<Edit> salt(Mass all) {
    return salt(all.enough(units));
  }

  /** No more than so much salt. */
  public Optional<Edit> saltAtMost(Mass all) {
    return salt(all.most(units));
  }

  private Optional<Edit> salt(String all) {
    return write(parts(s -> s.role() == Substance.Role.SALT), "salt", all);
  }

  public Optional<Edit> water(Volume all) {
    return write(parts(s -> s.role() == Substance.Role.WATER), "water", all.enough(units));
  }

  List<Edit> withoutBakingSoda() {
    return parts(Substance::bicarbonate).stream()
        .<Edit>map(part -> new Edit.Remove(part.path()))
        .toList();
  }

  /** One alternative of several edits; none if one of them can't be made. */
  @SafeVarargs
  static List<List<Edit>> together(Optional<Edit>... edits) {
    List<Edit> all = new ArrayList<>();
    for (Optional<Edit> edit : edits) {
      if (edit.isEmpty()) {
        return List.of();
      }
      all.add(edit.get());
    }
    return List.of(all);
  }

  private List<Ingredient> parts(Predicate<Substance> which) {
    return fix.bath().stream().filter(i -> which.test(policy.substance(i.substance()))).toList();
  }

  private Optional<Edit> write(List<Ingredient> there, String added, String amount) {
    return switch (there.size()) {
      case 0 -> Optional.of(new Edit.Write(fix.path().key("bath").key(added), amount));
      case 1 -> Optional.of(new Edit.Write(there.get(0).path(), amount));
      default -> Optional.empty();
    };
  }
}
