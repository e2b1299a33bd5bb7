package skidway.units;

/** A kind of quantity, with the SI unit that Skidway holds it in. */
public enum Measure {
  LENGTH("length", "m"),
  MASS("mass", "kg"),
  PRESSURE("area load", "kPa"),
  SPEED("speed", "m/s"),
  DURATION("duration", "s"),
  ANGLE("angle", "degrees"),
  VOLTAGE("voltage", "V"),
  FORCE("force", "N"),
  MOMENT("bending moment", "N m"),
  /** Share of one; written as a number or with a percent sign. */
  RATIO("share", ""),
  COUNT("count", "");

  private final String word;
  private final String siUnit;

  Measure(String word, String siUnit) {
    this.word = word;
    this.siUnit = siUnit;
  }

  /** What it is called in messages. */
  public String word() {
    return word;
  }

  public String siUnit() {
    return siUnit;
  }
}
