package strikeoff.report.json;

import java.io.IOException;
import strikeoff.report.outcome.Supplies;

/** Writes what is to be bought and weighed. */
final class SuppliesWriting {

  private SuppliesWriting() {}

  static void write(Json json, Supplies supplies) throws IOException {
    json.each("buy", supplies.buy(), SuppliesWriting::bought);
    json.each("weigh", supplies.weigh(), SuppliesWriting::weighed);
  }

  private static void bought(Json json, Supplies.Bought bought) throws IOException {
    json.put("name", bought.name());
    if (bought.substance().isPresent()) {
      json.put("substance", bought.substance().get());
    }
    if (bought.paste().isPresent()) {
      json.put("paste", bought.paste().get());
    }
    json.put("lowGrams", bought.low())
        .put("grams", bought.best())
        .put("highGrams", bought.high())
        .put("buyGrams", bought.toBuy());
  }

  private static void weighed(Json json, Supplies.Weighed weighed) throws IOException {
    json.put("kind", weighed.kind()).put("name", weighed.name());
    if (weighed.step().isPresent()) {
      json.put("step", weighed.step().getAsInt());
    }
    if (weighed.begins().isPresent()) {
      json.put("startSeconds", weighed.begins().get().seconds());
    }
    if (weighed.amount().isPresent()) {
      json.put("grams", weighed.amount().get());
    }
    json.put("recipe", weighed.recipe());
    json.each(
        "parts",
        weighed.parts(),
        (l, line) ->
            l.put("name", line.name())
                .put("substance", line.substance())
                .put("lowGrams", line.low())
                .put("grams", line.best())
                .put("highGrams", line.high()));
  }
}
