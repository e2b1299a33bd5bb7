package skidway.sheet;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.units.UnitSystem;

/**
 * How much smaller the drawing is than the site: 1 to {@code ratio}, on paper always one that
 * rulers are made for, so that anybody can check a distance. Which these are is common practice:
 * metric rulers carry 1:50 to 1:500; in feet, an architect's ruler has parts of an inch for a foot,
 * an engineer's 20 to 60 feet for an inch.
 *
 * @param words as it is written on a drawing
 */
record Scale(int ratio, String words) {
  private static final double MM_PER_M = 1000;
  private static final List<Integer> METRIC = List.of(50, 75, 100, 150, 200, 250, 300, 400);
  private static final List<Integer> FEET_AN_INCH = List.of(20, 30, 40, 50, 60, 100);
  private static final List<Scale> PARTS_OF_AN_INCH =
      List.of(
          part("1/4", 48), part("3/16", 64), part("1/8", 96), part("3/32", 128), part("1/16", 192));

  /** The largest drawing at a round scale of something this big within a space this big. */
  static Scale toFit(
      UnitSystem units, double widthM, double heightM, double spaceWidthMm, double spaceHeightMm) {
    double needed = needed(widthM, heightM, spaceWidthMm, spaceHeightMm);
    return round(units)
        .filter(scale -> scale.ratio >= needed - 1e-9)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "No scale fits " + widthM + " by " + heightM + " m on the drawing."));
  }

  /** For a screen, which has no size in millimetres: as large as it gets, round or not. */
  static Scale filling(double widthM, double heightM, double spaceWidthMm, double spaceHeightMm) {
    double needed = needed(widthM, heightM, spaceWidthMm, spaceHeightMm);
    return new Scale((int) Math.max(1, Math.ceil(needed - 1e-9)), "use the bar");
  }

  private static double needed(double widthM, double heightM, double widthMm, double heightMm) {
    return MM_PER_M * Math.max(widthM / widthMm, heightM / heightMm);
  }

  /** From the largest drawing to the smallest. */
  private static Stream<Scale> round(UnitSystem units) {
    return units == UnitSystem.US
        ? Stream.concat(
            PARTS_OF_AN_INCH.stream(), tensOf(FEET_AN_INCH).map(feet -> feetAnInch(feet)))
        : tensOf(METRIC).map(ratio -> new Scale(ratio, "1:" + ratio));
  }

  /** The steps, then ten times each of them, and so on. */
  private static Stream<Integer> tensOf(List<Integer> steps) {
    return IntStream.of(1, 10, 100, 1000, 10_000)
        .boxed()
        .flatMap(tens -> steps.stream().map(step -> step * tens))
        .distinct()
        .sorted();
  }

  private static Scale part(String inches, int ratio) {
    return new Scale(ratio, inches + "\" = 1'");
  }

  private static Scale feetAnInch(int feet) {
    return new Scale(12 * feet, "1\" = " + feet + "'");
  }

  double mm(double metres) {
    return metres * MM_PER_M / ratio;
  }

  @Override
  public String toString() {
    return words;
  }
}
