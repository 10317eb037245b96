package strikeoff.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Design and colour, by the names that people give films. */
class FilmNameTest {

  private static final Set<String> COLOURS = Set.of("teal", "navy");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heron-rust.png, heron-key.png            | heron/rust, heron/key",
        "heron-slate-blue.png, heron-key.tif      | heron/slate blue, heron/key",
        "heron_slate_blue.png, heron_slate_grey.png, heron_key.png"
            + "| heron/slate blue, heron/slate grey, heron/key",
        "grey heron-key.png, grey heron-rust.png, grey seal-key.png"
            + "| grey heron/key, grey heron/rust, grey seal/key",
        "heron-key.png, reeds-key.png             | heron/key, reeds/key",
        "teal.svg, Key.svg, 2.svg                 | films/teal, films/Key, films/2",
        "heron.png, reeds.png                     | heron/heron, reeds/reeds",
        "heron.v2.png, --.png                     | heron/v2, --/--",
      })
  void designAndColour(String files, String told) {
    List<FilmName> names =
        FilmName.of(Arrays.asList(files.split(", ")), "films", COLOURS::contains);
    assertThat(names.stream().map(n -> n.design() + "/" + n.colour()))
        .containsExactly(told.strip().split(", "));
  }

  @ParameterizedTest
  @CsvSource({"key,true", "Outline,true", "black,false"})
  void anOutline(String colour, boolean key) {
    assertThat(new FilmName("heron", colour).isKey()).isEqualTo(key);
  }
}
