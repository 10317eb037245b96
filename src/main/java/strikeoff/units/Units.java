package strikeoff.units;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Every unit that plans may use. Factors are exact by definition: the inch is 25.4 mm, the pound
 * 453.59237 g, the US gallon 231 in³, the imperial gallon 4.54609 L (NIST SP 811 appendix B; UCUM).
 */
final class Units {

  private static final Map<String, List<Unit>> BY_SPELLING = new LinkedHashMap<>();

  static {
    Unit inch = Unit.of(Dimension.LENGTH, "in", "25.4");
    Unit foot = Unit.of(Dimension.LENGTH, "ft", "304.8");
    put(Unit.of(Dimension.LENGTH, "mm", "1"), "mm|millimetre(s)|millimeter(s)");
    put(Unit.of(Dimension.LENGTH, "cm", "10"), "cm|cms|centimetre(s)|centimeter(s)");
    put(Unit.of(Dimension.LENGTH, "m", "1000"), "m|metre(s)|meter(s)");
    put(Unit.of(Dimension.LENGTH, "µm", "0.001"), "µm|um|micron(s)|micrometre(s)|micrometer(s)");
    put(inch, "in|in.|ins|inch|inches|\"|″");
    put(foot, "ft|ft.|foot|feet|′");
    put(Unit.of(Dimension.LENGTH, "yd", "914.4"), "yd|yds|yd.|yard(s)");

    put(Unit.of(Dimension.AREA, "cm²", "1"), "cm2|sq cm|square centimetre(s)");
    put(Unit.of(Dimension.AREA, "mm²", "0.01"), "mm2|sq mm|square millimetre(s)");
    put(Unit.of(Dimension.AREA, "m²", "10000"), "m2|sq m|square metre(s)|square meter(s)");
    put(Unit.of(Dimension.AREA, "in²", "6.4516"), "in2|sq in|square inch|square inches");
    put(Unit.of(Dimension.AREA, "yd²", "8361.2736"), "yd2|sq yd|square yard(s)");

    put(Unit.of(Dimension.MASS, "g", "1"), "g|gr|gm|gms|gram(s)|gramme(s)");
    put(Unit.of(Dimension.MASS, "kg", "1000"), "kg|kgs|kilo(s)|kilogram(s)|kilogramme(s)");
    put(Unit.of(Dimension.MASS, "mg", "0.001"), "mg|milligram(s)");
    put(Unit.of(Dimension.MASS, "oz", "28.349523125"), "oz|oz.|ounce(s)");
    put(Unit.of(Dimension.MASS, "lb", "453.59237"), "lb|lb.|lbs|pound(s)");

    volumes();

    put(Unit.of(Dimension.SPAN, "s", "1", "60"), "s|sec|secs|second(s)");
    put(Unit.of(Dimension.SPAN, "min", "1"), "min|mins|minute(s)");
    put(Unit.of(Dimension.SPAN, "h", "60"), "h|hr|hrs|hour(s)");
    put(Unit.of(Dimension.SPAN, "days", "1440"), "d|day(s)");
    put(Unit.of(Dimension.SPAN, "weeks", "10080"), "week(s)");

    Unit fahrenheit = Unit.of(Dimension.TEMPERATURE, "°F", "5", "9").withZero("32");
    put(
        Unit.of(Dimension.TEMPERATURE, "°C", "1"),
        "°c|c|℃|deg c|degrees c|celsius|degrees celsius");
    put(fahrenheit, "°f|f|℉|deg f|degrees f|fahrenheit|degrees fahrenheit");

    put(Unit.of(Dimension.SHARE, "%", "1", "100"), "%|percent|per cent|pct");

    put(
        Unit.of(Dimension.AREAL_MASS, "g/m²", "1"),
        "g/m2|g/sq m|gsm|g per m2|grams per square metre|grams per square meter");
    put(
        Unit.of(Dimension.AREAL_MASS, "oz/yd²", "28.349523125", "0.83612736"),
        "oz/yd2|oz/sq yd|oz per yd2|ounces per square yard");

    put(
        Unit.of(Dimension.CONCENTRATION, "g/L", "1"),
        "g/l|g per l|g/litre|g/liter|grams per litre|grams per liter|g/dm3|kg/m3|mg/ml");
    put(Unit.of(Dimension.CONCENTRATION, "g/ml", "1000"), "g/ml|kg/l|g/cm3");
    put(Unit.of(Dimension.CONCENTRATION, "% w/v", "10"), "% w/v");
    put(
        Unit.of(Dimension.CONCENTRATION, "oz/US gal", "28.349523125", "3.785411784"),
        "oz/us gal|oz/us gallon|oz per us gal");
    put(
        Unit.of(Dimension.CONCENTRATION, "oz/gal", "28.349523125", "3.785411784")
            .noted("a gallon is taken as the US gallon, 3.785 L"),
        "oz/gal|oz/gallon|oz per gallon|oz per gal");
    put(
        Unit.of(Dimension.CONCENTRATION, "oz/imp gal", "28.349523125", "4.54609"),
        "oz/imp gal|oz/imperial gallon");

    put(Unit.of(Dimension.MESH_COUNT, "/cm", "1"), "/cm|per cm|threads/cm|threads per cm|t");
    put(
        Unit.of(Dimension.MESH_COUNT, "/in", "1", "2.54"),
        "/in|/inch|per in|per inch|threads/in|threads/inch|threads per inch");

    put(
        Unit.of(Dimension.AIR_SPEED, "m/s", "1"),
        "m/s|m per s|metres per second|meters per second");
    put(Unit.of(Dimension.AIR_SPEED, "km/h", "1", "3.6"), "km/h|kph");
    put(Unit.of(Dimension.AIR_SPEED, "ft/min", "0.3048", "60"), "ft/min|fpm");

    put(Unit.of(Dimension.ANGLE, "°", "1"), "°|deg|degree(s)");
  }

  private Units() {}

  private static void volumes() {
    put(Unit.of(Dimension.VOLUME, "L", "1"), "l|litre(s)|liter(s)");
    put(Unit.of(Dimension.VOLUME, "ml", "0.001"), "ml|millilitre(s)|milliliter(s)|cc|cm3");
    put(Unit.of(Dimension.VOLUME, "cl", "0.01"), "cl|centilitre(s)|centiliter(s)");
    put(Unit.of(Dimension.VOLUME, "dl", "0.1"), "dl|decilitre(s)|deciliter(s)");

    // Plain names differ by country: they are taken as US ones, and the plan's reader says so.
    customary("gal", "3.785411784", "4.54609", "gal|gal.|gals|gallon(s)", "3.785 L");
    customary("qt", "0.946352946", "1.1365225", "qt|qts|quart(s)", "946 ml");
    customary("pt", "0.473176473", "0.56826125", "pt|pts|pint(s)", "473 ml");
    customary("cup", "0.2365882365", "0.284130625", "cup(s)", "236.6 ml");
    customary(
        "fl oz", "0.0295735295625", "0.0284130625", "fl oz|fl. oz|floz|fluid ounce(s)", "29.57 ml");
    customary(
        "tbsp", "0.01478676478125", "0.01775816406250", "tbsp|tbsps|tbs|tablespoon(s)", "14.79 ml");
    customary("tsp", "0.00492892159375", "0.00591938802083", "tsp|tsps|teaspoon(s)", "4.93 ml");

    // The kitchen cup of 250 ml (UCUM's metric cup is 240 ml: one says which is meant).
    put(
        Unit.of(Dimension.VOLUME, "metric cup", "0.25")
            .noted("a metric cup is taken as 250 ml, not the 240 ml of food labels"),
        "metric cup(s)");
    put(Unit.of(Dimension.VOLUME, "metric tbsp", "0.015"), "metric tbsp|metric tablespoon(s)");
    put(Unit.of(Dimension.VOLUME, "metric tsp", "0.005"), "metric tsp|metric teaspoon(s)");
    put(
        Unit.of(Dimension.VOLUME, "Australian tbsp", "0.02"),
        "australian tbsp|australian tablespoon(s)");
  }

  private static void customary(
      String symbol, String us, String imperial, String spellings, String size) {
    Unit bare =
        Unit.of(Dimension.VOLUME, symbol, us)
            .noted("“" + symbol + "” is taken as the US " + symbol + ", " + size);
    put(bare, spellings);
    for (String one : spellings.split("\\|")) {
      put(Unit.of(Dimension.VOLUME, "US " + symbol, us), "us " + one + "|u.s. " + one);
      boolean spoon = symbol.equals("tbsp") || symbol.equals("tsp");
      // An imperial spoon has no legal size; better an unknown unit than a guess.
      if (!spoon) {
        put(
            Unit.of(Dimension.VOLUME, "imp " + symbol, imperial),
            "imp " + one + "|imp. " + one + "|imperial " + one + "|uk " + one);
      }
    }
  }

  /** {@code spellings} are separated by bars; {@code (s)} stands for with and without it. */
  private static void put(Unit unit, String spellings) {
    for (String spelling : spellings.split("\\|")) {
      if (spelling.endsWith("(s)")) {
        String single = spelling.substring(0, spelling.length() - 3);
        add(single, unit);
        add(single + "s", unit);
      } else {
        add(spelling, unit);
      }
    }
  }

  private static void add(String spelling, Unit unit) {
    BY_SPELLING.computeIfAbsent(spelling, k -> new ArrayList<>()).add(unit);
  }

  /** The unit of that spelling, of the expected dimension if it is one; else of any. */
  static Optional<Unit> find(String spelling, Dimension expected) {
    List<Unit> found = BY_SPELLING.getOrDefault(spelling.toLowerCase(Locale.ROOT), List.of());
    for (Unit unit : found) {
      if (unit.dimension() == expected) {
        return Optional.of(unit);
      }
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  /** Spellings of one dimension, shortest known ones first. */
  static List<String> spellings(Dimension dimension) {
    return BY_SPELLING.entrySet().stream()
        .filter(e -> e.getValue().stream().anyMatch(u -> u.dimension() == dimension))
        .map(Map.Entry::getKey)
        .toList();
  }

  static List<String> spellings() {
    return List.copyOf(BY_SPELLING.keySet());
  }
}
