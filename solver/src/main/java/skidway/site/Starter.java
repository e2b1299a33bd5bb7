package skidway.site;

/**
 * Height of a wall's first course. Walls alternate full and half starters around the building, so
 * that the courses of crossing walls lie half a course apart and interlock at the corners (common
 * practice).
 */
public enum Starter {
  FULL(1.0),
  HALF(0.5);

  private final double shareOfCourse;

  Starter(double shareOfCourse) {
    this.shareOfCourse = shareOfCourse;
  }

  public double shareOfCourse() {
    return shareOfCourse;
  }
}
