package skidway.timber;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Looks up the species that Skidway knows by the name written in a packing list. The values and
 * where each was read are in {@code species.csv} beside this class.
 */
public final class SpeciesTable {
  /** Usual within one species: GTR-113 as restated by a secondary text; confirm by weighing. */
  public static final double SPREAD_SHARE = 0.10;

  private static final String RESOURCE = "species.csv";
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]");
  private static final Map<String, Species> BY_KEY = load();

  private SpeciesTable() {}

  /** Finds a species whatever the case, hyphens, spaces and brackets of its name. */
  public static Optional<Species> find(String name) {
    return Optional.ofNullable(BY_KEY.get(key(name)));
  }

  /** Every name in the table, in its order. */
  public static List<String> names() {
    return BY_KEY.values().stream().map(Species::name).toList();
  }

  private static String key(String name) {
    return NO_LETTERS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }

  private static Map<String, Species> load() {
    InputStream in = SpeciesTable.class.getResourceAsStream(RESOURCE);
    if (in == null) {
      throw new IllegalStateException("The species table " + RESOURCE + " is missing.");
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      Map<String, Species> table = new LinkedHashMap<>();
      reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(SpeciesTable::species)
          .forEach(species -> table.put(key(species.name()), species));
      return Collections.unmodifiableMap(table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Species species(String line) {
    String[] cells = line.split(",", -1);
    return new Species(
        cells[0],
        SpecificGravity.basic(Double.parseDouble(cells[1])),
        cells[4].isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(cells[4])),
        green(cells[7], cells[8], cells[9]),
        SPREAD_SHARE);
  }

  private static Optional<Moisture> green(String heart, String average, String sap) {
    if (heart.isEmpty()) {
      return Optional.empty();
    }
    double likelyPct = Double.parseDouble(average);
    double lowPct = Math.min(Double.parseDouble(heart), likelyPct);
    return Optional.of(new Moisture(lowPct, likelyPct, Double.parseDouble(sap)));
  }
}
