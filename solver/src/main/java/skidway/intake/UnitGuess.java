package skidway.intake;

import java.util.List;
import java.util.Optional;
import skidway.units.UnitSystem;

/**
 * Finds the unit of bare numbers by what is believable of timbers: the job's own unit if all
 * numbers make sense in it, else the only unit of the job's system in which they do. What may be
 * centimetres may as well be inches: 6 by 8 is taken for neither.
 */
final class UnitGuess {
  /** The longest timber of a list is no shorter and no longer than this, metres (assumption). */
  private static final double LEAST_LONGEST_M = 1;

  private static final double MOST_LONGEST_M = 25;

  /** Sides of the timbers of a wall, metres (assumption). */
  private static final double LEAST_SIDE_M = 0.03;

  private static final double MOST_SIDE_M = 0.6;

  private UnitGuess() {}

  /** The unit, or empty if several make sense or none. */
  static Optional<ListUnit> of(Meaning meaning, List<Double> numbers, UnitSystem job) {
    List<ListUnit> units =
        job == UnitSystem.METRIC
            ? List.of(ListUnit.METRE, ListUnit.CENTIMETRE, ListUnit.MILLIMETRE, ListUnit.INCH)
            : List.of(ListUnit.FOOT, ListUnit.INCH);
    List<ListUnit> sensible =
        units.stream().filter(u -> makesSense(meaning, numbers, u.inSi())).toList();
    boolean own = !sensible.isEmpty() && sensible.get(0) == units.get(0);
    return own || sensible.size() == 1 ? Optional.of(sensible.get(0)) : Optional.empty();
  }

  private static boolean makesSense(Meaning meaning, List<Double> numbers, double inSi) {
    double most = numbers.stream().mapToDouble(n -> n * inSi).max().orElse(Double.NaN);
    if (meaning == Meaning.LENGTH) {
      return most >= LEAST_LONGEST_M && most <= MOST_LONGEST_M;
    }
    if (meaning == Meaning.FROM_LEFT) {
      return most >= LEAST_LONGEST_M && most <= 4 * MOST_LONGEST_M;
    }
    double least = numbers.stream().mapToDouble(n -> n * inSi).min().orElse(Double.NaN);
    return least >= LEAST_SIDE_M && most <= MOST_SIDE_M;
  }
}
