package skidway.site;

import java.util.OptionalDouble;

/**
 * A piece of ground that stacks may stand on.
 *
 * @param allowedKpa pressure that the ground may get under bearers
 * @param soil what it is made of, as the table of presumptive values names it, or an empty text
 * @param slope fall over distance, when somebody measured it
 * @param totalKg most that may lie on it altogether, when somebody said so
 */
public record Yard(
    String id,
    Outline outline,
    double allowedKpa,
    String soil,
    OptionalDouble slope,
    OptionalDouble totalKg)
    implements Zone {
  /** A yard of which only the allowed pressure is known. */
  public Yard(String id, Outline outline, double allowedKpa) {
    this(id, outline, allowedKpa, "", OptionalDouble.empty(), OptionalDouble.empty());
  }

  @Override
  public double heightM() {
    return 0;
  }
}
