package skidway.units;

import java.util.Map;
import java.util.OptionalDouble;

/** Knows the units that a quantity may be written in, and how much of the SI unit each one is. */
final class UnitNames {
  /** Weight of one kilogram per square metre in kilopascals, standard gravity. */
  private static final double KPA_PER_KG_PER_M2 = 0.00980665;

  private static final Map<String, Double> LENGTHS =
      Map.ofEntries(
          Map.entry("'", Customary.METRES_PER_FOOT),
          Map.entry("ft", Customary.METRES_PER_FOOT),
          Map.entry("foot", Customary.METRES_PER_FOOT),
          Map.entry("feet", Customary.METRES_PER_FOOT),
          Map.entry("\"", Customary.METRES_PER_INCH),
          Map.entry("in", Customary.METRES_PER_INCH),
          Map.entry("inch", Customary.METRES_PER_INCH),
          Map.entry("inches", Customary.METRES_PER_INCH),
          Map.entry("m", 1.0),
          Map.entry("cm", 0.01),
          Map.entry("mm", 0.001));

  private static final Map<String, Double> MASSES =
      Map.of("lb", Customary.KG_PER_POUND, "lbs", Customary.KG_PER_POUND, "kg", 1.0, "t", 1000.0);

  private static final Map<String, Double> PRESSURES =
      Map.of(
          "psf",
          Customary.KPA_PER_PSF,
          "lb/ft2",
          Customary.KPA_PER_PSF,
          "kpa",
          1.0,
          "kn/m2",
          1.0,
          "kg/m2",
          KPA_PER_KG_PER_M2);

  private static final Map<String, Double> SPEEDS =
      Map.of(
          "ft/s",
          Customary.METRES_PER_FOOT,
          "m/s",
          1.0,
          "mph",
          Customary.METRES_PER_MILE / 3600,
          "km/h",
          1000.0 / 3600);

  private static final Map<String, Double> DURATIONS =
      Map.of("s", 1.0, "sec", 1.0, "min", 60.0, "h", 3600.0);

  private static final Map<String, Double> ANGLES = Map.of("\u00b0", 1.0, "deg", 1.0);

  private static final Map<String, Double> VOLTAGES = Map.of("v", 1.0, "kv", 1000.0);

  private static final Map<String, Double> FORCES =
      Map.of("lb", Customary.NEWTONS_PER_POUND, "n", 1.0, "kn", 1000.0);

  private static final Map<String, Double> RATIOS = Map.of("%", 0.01);

  private UnitNames() {}

  /** How much of the SI unit one of the named unit is; empty if the kind has no such unit. */
  static OptionalDouble inSi(Measure measure, String unit, UnitSystem job) {
    if (unit.isEmpty() && measure == Measure.VOLTAGE) {
      return OptionalDouble.empty(); // 345 is volts to one reader and kilovolts to another.
    }
    if (unit.isEmpty()) {
      return OptionalDouble.of(bareInSi(measure, job));
    }
    Double factor =
        switch (measure) {
          case LENGTH -> LENGTHS.get(unit);
          case MASS -> MASSES.get(unit);
          case PRESSURE -> PRESSURES.get(unit);
          case SPEED -> SPEEDS.get(unit);
          case DURATION -> DURATIONS.get(unit);
          case ANGLE -> ANGLES.get(unit);
          case VOLTAGE -> VOLTAGES.get(unit);
          case FORCE -> FORCES.get(unit);
          case RATIO -> RATIOS.get(unit);
          case MOMENT, COUNT -> null;
        };
    return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor);
  }

  /** What a number without a unit counts in, on a job that thinks in these units. */
  static double bareInSi(Measure measure, UnitSystem job) {
    if (job == UnitSystem.METRIC) {
      return 1;
    }
    return switch (measure) {
      case LENGTH, SPEED -> Customary.METRES_PER_FOOT;
      case MASS -> Customary.KG_PER_POUND;
      case PRESSURE -> Customary.KPA_PER_PSF;
      case FORCE -> Customary.NEWTONS_PER_POUND;
      case MOMENT -> Customary.NEWTONS_PER_POUND * Customary.METRES_PER_FOOT;
      case DURATION, ANGLE, VOLTAGE, RATIO, COUNT -> 1;
    };
  }
}
