package skidway;

/**
 * How late a load may be.
 *
 * @param leastDays after its planned arrival, 0 or more
 * @param mostDays no less than that
 */
public record Lateness(String loadId, int leastDays, int mostDays) {
  public Lateness {
    if (leastDays < 0 || mostDays < leastDays) {
      throw new IllegalArgumentException(leastDays + " to " + mostDays + " days late");
    }
  }

  int cases() {
    return mostDays - leastDays + 1;
  }
}
