package skidway.sheet;

/**
 * How much smaller the drawing is than the site: 1 to {@code ratio}, always a round number, so that
 * anybody can check a distance with a ruler.
 */
record Scale(int ratio) {
  private static final int[] STEPS = {50, 75, 100, 125, 150, 200, 250, 300, 400};
  private static final double MM_PER_M = 1000;

  /** The largest drawing at a round scale of something this big within a space this big. */
  static Scale toFit(double widthM, double heightM, double spaceWidthMm, double spaceHeightMm) {
    double needed = MM_PER_M * Math.max(widthM / spaceWidthMm, heightM / spaceHeightMm);
    for (int tens = 1; tens <= 1_000_000; tens *= 10) {
      for (int step : STEPS) {
        if (step * tens >= needed - 1e-9) {
          return new Scale(step * tens);
        }
      }
    }
    throw new IllegalArgumentException(
        "No scale fits " + widthM + " by " + heightM + " m on the drawing.");
  }

  double mm(double metres) {
    return metres * MM_PER_M / ratio;
  }

  @Override
  public String toString() {
    return "1:" + ratio;
  }
}
