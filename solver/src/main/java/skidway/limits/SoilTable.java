package skidway.limits;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;

/**
 * Looks up what pressure ground of a kind may be taken to bear where nobody tested it (IBC 2012
 * Table 1806.2, IRC R401.4.1). It holds for undisturbed ground; the local code and whoever tested
 * the ground govern.
 */
public final class SoilTable {
  /**
   * A kind of ground.
   *
   * @param kpa pressure it may get; empty where the table says that none may be assumed
   * @param covers what else goes by this name
   */
  public record Soil(String name, OptionalDouble kpa, String covers) {}

  private static final Quantities US = new Quantities(UnitSystem.US);
  private static final Map<String, Soil> BY_KEY = load();

  private SoilTable() {}

  /** Finds a kind of ground whatever the case and spaces of its name. */
  public static Optional<Soil> find(String name) {
    return Optional.ofNullable(BY_KEY.get(key(name)));
  }

  /** Every kind in the table, in its order. */
  public static List<Soil> all() {
    return List.copyOf(BY_KEY.values());
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
  }

  private static Map<String, Soil> load() {
    Map<String, Soil> table = new LinkedHashMap<>();
    for (List<String> row : CsvResource.rows("soil.csv")) {
      OptionalDouble kpa =
          row.get(1).isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(US.bare(Measure.PRESSURE, Double.parseDouble(row.get(1))));
      table.put(key(row.get(0)), new Soil(row.get(0), kpa, row.get(2)));
    }
    return table;
  }
}
