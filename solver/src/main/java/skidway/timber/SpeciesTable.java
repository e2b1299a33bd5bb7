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

/**
 * Looks up the species that Skidway knows by the name written in a packing list. The values and
 * where each was read are in {@code species.csv} beside this class.
 */
public final class SpeciesTable {
  private static final String RESOURCE = "species.csv";
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
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
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
    OptionalDouble shrinkagePct =
        cells[4].isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(cells[4]));
    return new Species(cells[0], Double.parseDouble(cells[1]), shrinkagePct);
  }
}
