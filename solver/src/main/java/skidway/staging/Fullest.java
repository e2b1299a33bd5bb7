package skidway.staging;

import java.util.Arrays;

/**
 * How much of a room things can take at most that lie on or beside each other: less than all of it,
 * if no number of them fills it.
 */
final class Fullest {
  /** Rooms are looked at to a hundredth of a millimetre, or of a thousandth of a square metre. */
  private static final double STEP = 1e-5;

  /** Of larger rooms all counts as taken. */
  private static final double LARGEST = 10;

  private final int smallest;

  /** By room in steps, the most that can be taken of it. */
  private final int[] most;

  /**
   * @param sizes of the things there are, metres or square metres; each may be there any number of
   *     times
   */
  Fullest(double[] sizes) {
    int[] steps =
        Arrays.stream(sizes)
            .mapToInt(size -> Math.max(1, (int) (size / STEP)))
            .distinct()
            .sorted()
            .toArray();
    smallest = steps.length == 0 ? 1 : steps[0];
    most = new int[1 + steps(LARGEST)];
    for (int at = 1; at < most.length; at++) {
      boolean reached = false;
      for (int i = 0; i < steps.length && steps[i] <= at && !reached; i++) {
        reached = most[at - steps[i]] == at - steps[i];
      }
      most[at] = reached ? at : most[at - 1];
    }
  }

  private static int steps(double room) {
    return (int) ((room + 1e-9) / STEP);
  }

  /** What no set of things exceeds that fits into a room. */
  double of(double room) {
    if (room > LARGEST) {
      return room;
    }
    int steps = steps(room);
    int things = steps / smallest;
    return Math.min(room, (most[steps] + things) * STEP);
  }
}
