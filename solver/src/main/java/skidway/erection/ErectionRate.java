package skidway.erection;

/**
 * How fast a crew lays timbers, for reckoning dates. It is what people expect of themselves, not
 * worked out from the pieces: a crew that knows its own figure puts it in the job.
 *
 * @param perDay how many pieces, or whole courses all round the building, a day of work; above 0
 */
public record ErectionRate(double perDay, Unit unit) {
  /** What is counted. */
  public enum Unit {
    PIECES,
    /** The pieces of a course, of all walls together, share its time evenly. */
    COURSES
  }

  public ErectionRate {
    if (!(perDay > 0) || Double.isInfinite(perDay)) {
      throw new IllegalArgumentException("The rate " + perDay + " a day must be above 0.");
    }
  }

  public static ErectionRate piecesADay(double count) {
    return new ErectionRate(count, Unit.PIECES);
  }

  public static ErectionRate coursesADay(double count) {
    return new ErectionRate(count, Unit.COURSES);
  }
}
