package strikeoff.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What the program is made of, by the bill of materials (CycloneDX 1.6) that the build lays into
 * it.
 */
public final class BillOfMaterials {

  private static final String BILL = "/META-INF/sbom/strikeoff.cdx.json";

  private BillOfMaterials() {}

  /**
   * Other people's work in the program.
   *
   * @param licences by their SPDX names, those that one may choose from
   */
  public record Component(String name, String version, List<String> licences) {}

  /**
   * All of them in the order of their names.
   *
   * @return none where the build could reach no registry, and made no bill
   */
  public static List<Component> components() throws IOException {
    List<Component> all = new ArrayList<>();
    try (InputStream bill = BillOfMaterials.class.getResourceAsStream(BILL)) {
      if (bill == null) {
        return all;
      }
      for (JsonNode each : new ObjectMapper().readTree(bill).path("components")) {
        List<String> licences = new ArrayList<>();
        for (JsonNode given : each.path("licenses")) {
          JsonNode licence = given.path("license");
          licences.add(licence.path("id").asText(licence.path("name").asText("unknown")));
        }
        all.add(
            new Component(
                each.path("name").asText(), each.path("version").asText(), List.copyOf(licences)));
      }
    }
    all.sort(Comparator.comparing(Component::name));
    return all;
  }
}
