package strikeoff.artwork;

import java.util.Optional;

/** Measures of films that earlier runs made. Threads may share it. */
public interface KeptMeasures {

  /** Of a run that keeps nothing. */
  KeptMeasures NONE =
      new KeptMeasures() {
        @Override
        public Optional<byte[]> find(String of) {
          return Optional.empty();
        }

        @Override
        public void keep(String of, byte[] measures) {
          // There is nowhere to keep it.
        }
      };

  /**
   * What was measured.
   *
   * @param of all that it depends on, but for the program
   */
  Optional<byte[]> find(String of);

  void keep(String of, byte[] measures);
}
