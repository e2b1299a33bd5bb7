package skidway.intake;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A unit in which a list writes bare numbers. */
public enum ListUnit {
  MILLIMETRE("mm", 0.001, Set.of("mm", "millimeter", "millimetre", "millimetres", "мм")),
  CENTIMETRE("cm", 0.01, Set.of("cm", "centimeter", "centimetre", "см")),
  METRE("m", 1, Set.of("m", "meter", "metre", "metres", "meters", "м")),
  INCH("in", 0.0254, Set.of("in", "inch", "inches", "\"", "zoll", "ins")),
  FOOT("ft", 0.3048, Set.of("ft", "foot", "feet", "'")),
  /** Two or three numbers without marks: {@code 16 4 1/2}. A single one counts feet. */
  FEET_AND_INCHES(
      "ft-in",
      0.3048,
      Set.of("ft-in", "ft in", "feet-inches", "feet and inches", "ft & in", "ft+in")),
  KILOGRAM("kg", 1, Set.of("kg", "kgs", "kilogram", "кг")),
  POUND("lb", 0.45359237, Set.of("lb", "lbs", "pound", "pounds")),
  TONNE("t", 1000, Set.of("t", "tonne", "tonnes"));

  private final String word;
  private final double inSi;
  private final Set<String> spellings;

  ListUnit(String word, double inSi, Set<String> spellings) {
    this.word = word;
    this.inSi = inSi;
    this.spellings = spellings;
  }

  /** As written on the command line, and for numbers handed on. */
  String word() {
    return word;
  }

  /** Metres or kilograms of one. */
  double inSi() {
    return inSi;
  }

  boolean isMass() {
    return this == KILOGRAM || this == POUND || this == TONNE;
  }

  /** Finds a unit by one of its spellings. */
  static Optional<ListUnit> of(String text) {
    String lower = text.strip().toLowerCase(Locale.ROOT);
    String plain = lower.endsWith(".") ? lower.substring(0, lower.length() - 1) : lower;
    return Arrays.stream(values()).filter(u -> u.spellings.contains(plain)).findFirst();
  }
}
