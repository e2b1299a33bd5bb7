package skidway.audit.floor;

import java.util.Optional;

/**
 * A force that presses down evenly along a stretch of a joist, or at a point where both ends are
 * the same.
 *
 * @param fromM distance of the stretch's start from where the joist is measured
 * @param toM the same of its end
 * @param newtons the whole force
 */
public record EvenLoad(double fromM, double toM, double newtons) {

  public static EvenLoad point(double atM, double newtons) {
    return new EvenLoad(atM, atM, newtons);
  }

  double middleM() {
    return (fromM + toM) / 2;
  }

  boolean isPoint() {
    return !(toM > fromM);
  }

  /** Force per metre; of a point load none. */
  double newtonsPerM() {
    return isPoint() ? 0 : newtons / (toM - fromM);
  }

  /** How much of it lies up to a point, a point load on that point included. */
  double upToN(double xM) {
    if (isPoint()) {
      return xM >= fromM ? newtons : 0;
    }
    return newtonsPerM() * Math.max(0, Math.min(xM, toM) - fromM);
  }

  /** Moment about a point of what lies up to it, N m. */
  double momentAboutNm(double xM) {
    return upToN(xM) * (xM - (fromM + Math.min(xM, toM)) / 2);
  }

  /** The part on a stretch, measured from the stretch's start. */
  Optional<EvenLoad> within(double startM, double endM) {
    double from = Math.max(fromM, startM);
    double to = Math.min(toM, endM);
    if (from > to || (from == to && !isPoint())) {
      return Optional.empty();
    }
    double part = isPoint() ? newtons : newtonsPerM() * (to - from);
    return Optional.of(new EvenLoad(from - startM, to - startM, part));
  }
}
