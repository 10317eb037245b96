package strikeoff.screens;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Meshes as they are sold, each count with its usual thread: the defaults of a plan's threads. */
final class UsualMeshes {

  private final List<Mesh> all = new ArrayList<>();
  private final double finest;

  UsualMeshes(Policy policy) {
    finest = policy.screens().finestMesh().perCm();
    policy
        .assumed()
        .screen()
        .thread()
        .forEach((count, thread) -> all.add(new Mesh(count, thread.value())));
  }

  /**
   * The coarsest of them that holds a detail, and that paste for cloth goes through.
   *
   * @param openings how many of them the detail has to span
   */
  Optional<Mesh> holding(Length detail, double openings) {
    return all.stream()
        .filter(mesh -> mesh.count().perCm() <= finest && mesh.canBeWoven())
        .filter(mesh -> !detail.finerThan(mesh.opening().mm() * openings))
        .min(Comparator.comparing(Mesh::count));
  }
}
