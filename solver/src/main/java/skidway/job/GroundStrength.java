package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import skidway.limits.SoilTable;
import skidway.limits.SoilTable.Soil;
import skidway.units.Measure;
import skidway.units.Nearest;

/**
 * What a yard's ground may be pressed with: told outright, by its soil, or both.
 *
 * @param allowedKpa not a number after a problem
 * @param soil as the table names it, or an empty text
 */
record GroundStrength(double allowedKpa, String soil) {
  /** Figures are written to a tenth of a kilopascal or a whole pound, and so copied. */
  private static final double ROUNDING_KPA = 0.05;

  private static final GroundStrength UNKNOWN = new GroundStrength(Double.NaN, "");

  static GroundStrength read(Fields f) {
    int before = f.problemCount();
    OptionalDouble allowedKpa = f.optional("allowed", Bounds.ALLOWED_LOAD);
    boolean named = f.has("soil");
    Optional<Soil> soil = named ? soil(f) : Optional.empty();
    if (f.problemCount() > before) {
      return UNKNOWN;
    }
    OptionalDouble tableKpa = soil.map(Soil::kpa).orElse(OptionalDouble.empty());
    if (allowedKpa.isEmpty() && tableKpa.isEmpty()) {
      unknown(soil, f);
      return UNKNOWN;
    }
    if (f.unitsKnown()
        && allowedKpa.isPresent()
        && tableKpa.isPresent()
        && allowedKpa.getAsDouble() > tableKpa.getAsDouble() + ROUNDING_KPA) {
      f.report(
          f.at("allowed"),
          f.figure(Measure.PRESSURE, allowedKpa.getAsDouble()) + " allowed on " + words(soil.get()),
          "the table presumes "
              + f.figure(Measure.PRESSURE, tableKpa.getAsDouble())
              + " for it (IBC 2012 Table 1806.2)",
          "correct \"allowed\" or \"soil\"; remove \"soil\" if somebody tested the ground");
    }
    double kpa = allowedKpa.orElseGet(tableKpa::getAsDouble);
    return new GroundStrength(kpa, soil.map(Soil::name).orElse(""));
  }

  private static Optional<Soil> soil(Fields f) {
    String name = Plain.line(f, "soil");
    Optional<Soil> soil = SoilTable.find(name);
    if (soil.isEmpty() && !name.isEmpty()) {
      List<String> names = SoilTable.all().stream().map(Soil::name).toList();
      f.report(
          f.at("soil"),
          "unknown soil " + Quote.found(name) + Nearest.hint(name, names),
          "a soil is one of " + String.join(", ", names),
          "correct it, or give \"allowed\" instead");
    }
    return soil;
  }

  private static void unknown(Optional<Soil> soil, Fields f) {
    if (soil.isPresent()) {
      f.report(
          f.at("soil"),
          words(soil.get()) + " without \"allowed\"",
          soil.get().covers(),
          "add \"allowed\", as whoever knows the ground says");
    } else {
      f.report(
          f.at("allowed"),
          "a yard without \"allowed\" or \"soil\"",
          "the pressure a yard may get is told as \"allowed\", or its \"soil\" is one of "
              + SoilTable.all().stream()
                  .filter(s -> s.kpa().isPresent())
                  .map(Soil::name)
                  .collect(Collectors.joining(", ")),
          "add one of them");
    }
  }

  private static String words(Soil soil) {
    return "soil \"" + soil.name() + '"';
  }
}
