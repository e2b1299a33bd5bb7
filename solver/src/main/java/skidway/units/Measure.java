package skidway.units;

/** A kind of quantity, with the SI unit that Skidway holds it in. */
public enum Measure {
  LENGTH("m"),
  MASS("kg"),
  /** Area load. */
  PRESSURE("kPa"),
  SPEED("m/s"),
  DURATION("s"),
  ANGLE("degrees"),
  /** Share of one; written as a number or with a percent sign. */
  RATIO(""),
  COUNT("");

  private final String siUnit;

  Measure(String siUnit) {
    this.siUnit = siUnit;
  }

  public String siUnit() {
    return siUnit;
  }
}
