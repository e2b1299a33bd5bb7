package skidway.audit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.Footprint;
import skidway.site.Spot;

/** The spots that the people on site gave; when there are any, a plan may use no others. */
record GivenSpots(List<Spot> given) {
  /**
   * Plan files give masses to this; a limit given in pounds is hardly ever a whole number of it.
   */
  private static final double MASS_TOLERANCE_KG = 0.01;

  /** What is wrong with a spot of the plan, if anything. */
  Optional<String> fault(Spot planned) {
    if (given.isEmpty() || given.stream().anyMatch(spot -> isSame(spot, planned))) {
      return Optional.empty();
    }
    boolean sameId = given.stream().anyMatch(spot -> spot.id().equals(planned.id()));
    return Optional.of(
        "Spot "
            + planned.id()
            + (sameId ? " differs from the one given on the site." : " is not given on the site."));
  }

  private static boolean isSame(Spot a, Spot b) {
    return a.id().equals(b.id()) && same(a, b);
  }

  /** Whether two spots are the same place, to a millimetre, with the same limits. */
  static boolean same(Spot a, Spot b) {
    return a.zoneId().equals(b.zoneId())
        && a.kind() == b.kind()
        && a.openSide() == b.openSide()
        && near(a.stripM(), b.stripM())
        && same(a.footprint(), b.footprint())
        && same(a.massLimitKg(), b.massLimitKg());
  }

  private static boolean same(Footprint a, Footprint b) {
    return near(a.centre().x(), b.centre().x())
        && near(a.centre().y(), b.centre().y())
        && near(a.headingDeg(), b.headingDeg())
        && near(a.lengthM(), b.lengthM())
        && near(a.widthM(), b.widthM());
  }

  private static boolean same(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() == b.isPresent() && near(a.orElse(0), b.orElse(0), MASS_TOLERANCE_KG);
  }

  private static boolean near(double a, double b) {
    return near(a, b, Ledger.LENGTH_TOLERANCE_M);
  }

  /** Equal numbers are near, also when they are endless or no number at all. */
  private static boolean near(double a, double b, double tolerance) {
    return Double.compare(a, b) == 0 || Math.abs(a - b) <= tolerance;
  }
}
