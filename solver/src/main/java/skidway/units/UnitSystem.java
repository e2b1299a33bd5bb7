package skidway.units;

/**
 * The units a job's people think in; decides how bare numbers are read and how figures are shown.
 */
public enum UnitSystem {
  /** Feet and inches, pounds, pounds per square foot. */
  US,
  /** Metres, kilograms, kilopascals. */
  METRIC
}
