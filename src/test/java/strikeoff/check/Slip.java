package strikeoff.check;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One realistic mistake, made in a plan's text at the first place that it fits.
 *
 * @param slip what went wrong, in words
 * @param find the place, a regular expression
 * @param put what stands there instead
 * @param finds rules of which one must answer; {@code reader} if the file must be refused
 * @param also rules that may answer too, since what they find follows from the slip
 * @param in the plans it is made in; all where it fits, if none is named
 * @param not plans it is not made in
 */
record Slip(
    String slip,
    String find,
    String put,
    List<String> finds,
    List<String> also,
    List<String> in,
    List<String> not) {

  Slip {
    also = also == null ? List.of() : also;
    in = in == null ? List.of() : in;
    not = not == null ? List.of() : not;
  }

  /** All of {@code slips.yaml}. */
  static List<Slip> all() throws IOException {
    try (InputStream in = Slip.class.getResourceAsStream("slips.yaml")) {
      return new ObjectMapper(new YAMLFactory()).readValue(in, new TypeReference<>() {});
    }
  }

  /** The plan with the slip in it; empty if it has no place for it. */
  Optional<String> in(String plan, String text) {
    Matcher place = Pattern.compile(find).matcher(text);
    boolean wanted = (in.isEmpty() || in.contains(plan)) && !not.contains(plan);
    return wanted && place.find() ? Optional.of(place.replaceFirst(put)) : Optional.empty();
  }
}
