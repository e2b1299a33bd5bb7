package skidway.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.timber.Species;
import skidway.timber.SpeciesTable;
import skidway.units.Nearest;

/** Reads the species of a row. */
final class WoodCells {
  /** For a name that may be one of the woods that could not be read. */
  static final Species STAND_IN = new Species("", 0.5, OptionalDouble.empty());

  private final Woods woods;

  /** Names are few and rows many. */
  private final Map<String, Optional<Species>> found = new HashMap<>();

  WoodCells(Woods woods) {
    this.woods = woods;
  }

  /** Empty for a name that is not known; that is a problem of the row, or of job.json. */
  Optional<Species> species(CsvRow row) {
    String name = row.text("species");
    Optional<Species> species = found.computeIfAbsent(name, woods::find);
    if (species.isEmpty() && (woods.complete() || name.isEmpty())) {
      List<String> near = Nearest.to(name, woods.names());
      row.report(
          "species",
          "unknown species " + Quote.found(name),
          near.isEmpty()
              ? "species are named as in the Wood Handbook, such as "
                  + String.join(", ", SpeciesTable.names().stream().limit(4).toList())
              : "near names are " + String.join(", ", near),
          "write one of the known names, or add it to \"woods\" in job.json");
    }
    return species;
  }
}
