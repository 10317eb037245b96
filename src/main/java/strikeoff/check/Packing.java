package strikeoff.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.artwork.Artworks;
import strikeoff.document.Bounds;
import strikeoff.facts.Facts;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.rulebook.RulePack;
import strikeoff.units.UnitChoice;

/** Packs the rules for quick starts, once the build has compiled them. */
public final class Packing {

  private Packing() {}

  /**
   * @param args the folder of compiled classes, and plans as they should be: the rules that their
   *     facts ask for are linked ahead
   */
  public static void main(String[] args) throws IOException {
    Policy policy = PolicyReader.builtIn();
    Set<String> usual = new TreeSet<>();
    usual.add(Limit.class.getName());
    for (String file : List.of(args).subList(1, args.length)) {
      PlanReading reading =
          PlanReader.read(
              file,
              Files.readAllBytes(Path.of(file)),
              policy,
              Stock.NONE,
              Bounds.USUAL,
              UnitChoice.PLAN,
              Artworks.nowhere().beside(Path.of(file)));
      if (!(reading instanceof PlanReading.Readable read)) {
        throw new IllegalArgumentException(file + " can't be read");
      }
      Facts.derive(read.plan(), policy)
          .evidence()
          .forEach(fact -> usual.add(fact.getClass().getName()));
    }
    RulePack.write(Path.of(args[0]), usual);
  }
}
