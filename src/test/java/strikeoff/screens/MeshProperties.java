package strikeoff.screens;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.checks.Worked;
import strikeoff.policy.Default;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;

/** Laws of meshes, whatever the figures. */
class MeshProperties {

  @Property(seed = Draws.ALIKE)
  void ofTheSameThreadAFinerMeshNeverDepositsMore(
      @ForAll @DoubleRange(min = 5, max = 200) double count,
      @ForAll @DoubleRange(min = 0.01, max = 100) double finer,
      @ForAll @DoubleRange(min = 20, max = 300) double micrometres) {
    Range coarse = mesh(count, micrometres).theoreticalVolume();
    Range fine = mesh(count + finer, micrometres).theoreticalVolume();
    assertThat(fine.low()).isLessThanOrEqualTo(coarse.low());
    assertThat(fine.best()).isLessThanOrEqualTo(coarse.best());
    assertThat(fine.high()).isLessThanOrEqualTo(coarse.high());
  }

  /**
   * For the meshes that a plan gets if it names no thread, thinner ones included, the law holds
   * from a tenth more threads on. Nearer ones need not obey: 72-48 holds more than 68-64, 30.8
   * cm³/m² against 30.6, since its threads leave more open.
   */
  @Test
  void ofTheUsualMeshesOneATenthFinerNeverDepositsMore() {
    Map<Integer, Double> volumes = new TreeMap<>();
    for (Map.Entry<String, Default<?>> one : Worked.POLICY.defaults().entrySet()) {
      if (one.getKey().startsWith("screen.thread.")) {
        int count = Integer.parseInt(one.getKey().replaceAll("\\D+", " ").trim());
        double thread = Double.parseDouble(one.getValue().text().replaceAll("[^0-9.]", ""));
        volumes.put(count, mesh(count, thread).theoreticalVolume().best());
      }
    }
    assertThat(volumes).hasSizeGreaterThan(10);
    volumes.forEach(
        (coarse, most) ->
            volumes.forEach(
                (fine, volume) -> {
                  if (fine >= 1.1 * coarse) {
                    assertThat(volume).as(coarse + " and " + fine).isLessThanOrEqualTo(most);
                  }
                }));
  }

  private static Mesh mesh(double count, double micrometres) {
    return new Mesh(new MeshCount(count), new Length(micrometres / 1000));
  }
}
