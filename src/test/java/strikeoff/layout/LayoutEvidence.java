package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** Facts of one kind that a layout gives the rules. */
final class LayoutEvidence {

  private LayoutEvidence() {}

  /** The only one there is. */
  static <T> T one(Layout layout, Class<T> kind) {
    List<T> facts = facts(layout, kind);
    assertThat(facts).hasSize(1);
    return facts.get(0);
  }

  static <T> List<T> facts(Layout layout, Class<T> kind) {
    return layout.evidence().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
