package skidway.job;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import skidway.timber.Species;
import skidway.timber.SpeciesTable;
import skidway.timber.WoodDensity;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/** Reads a row's species and moisture, which belong together: each wood holds so much water. */
final class WoodCells {
  private static final Quantities PLAIN = new Quantities(UnitSystem.METRIC);

  /** Names are few and rows many. */
  private final Map<String, Optional<Species>> found = new HashMap<>();

  Optional<Species> species(CsvRow row) {
    String name = row.text("species");
    Optional<Species> species = found.computeIfAbsent(name, SpeciesTable::find);
    if (species.isEmpty()) {
      List<String> near = Nearest.to(name, SpeciesTable.names());
      row.report(
          "species",
          "unknown species " + Quote.found(name),
          near.isEmpty()
              ? "species are named as in the Wood Handbook, such as "
                  + String.join(", ", SpeciesTable.names().stream().limit(4).toList())
              : "near names are " + String.join(", ", near),
          "write one of the known names");
    }
    return species;
  }

  /**
   * Percent of the oven-dry mass, a percent sign allowed. Between 0 and 1 it is refused: that is a
   * share written where percent is asked for, and would make timbers seem lighter than they are.
   */
  double moisturePct(CsvRow row, Optional<Species> species) {
    String text = row.text("moisture");
    double pct;
    try {
      pct = number(text);
    } catch (UnreadableQuantity e) {
      pct = Double.NaN;
    }
    double most = species.map(WoodDensity::mostMoisturePct).orElse(Double.MAX_VALUE);
    boolean share = pct > 0 && pct < 1;
    if (Double.isNaN(pct) || pct > most || share) {
      String limit =
          species.isEmpty()
              ? "moisture is a number of percent, such as 18"
              : String.format(
                  Locale.ROOT,
                  "moisture is 0 to %.0f percent of the dry mass in %s, such as 18",
                  Math.floor(most),
                  species.get().name());
      row.report(
          "moisture",
          Quote.found(text) + " as moisture",
          limit,
          share ? "write percent, not a share of one" : "correct it");
    }
    return pct;
  }

  private static double number(String text) {
    String bare = text.endsWith("%") ? text.substring(0, text.length() - 1) : text;
    return PLAIN.read(Measure.RATIO, bare);
  }
}
