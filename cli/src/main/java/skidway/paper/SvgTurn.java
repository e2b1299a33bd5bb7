package skidway.paper;

import java.awt.geom.AffineTransform;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how a part of a drawing is moved and turned. */
final class SvgTurn {
  private static final Pattern STEP = Pattern.compile("(\\w+)\\(([^)]*)\\)");

  private SvgTurn() {}

  static AffineTransform of(String text) {
    AffineTransform all = new AffineTransform();
    Matcher step = STEP.matcher(text);
    while (step.find()) {
      double[] by =
          Arrays.stream(step.group(2).trim().split("[\\s,]+", -1))
              .mapToDouble(Double::parseDouble)
              .toArray();
      switch (step.group(1)) {
        case "translate" -> all.translate(by[0], by.length > 1 ? by[1] : 0);
        case "scale" -> all.scale(by[0], by.length > 1 ? by[1] : by[0]);
        case "rotate" ->
            all.rotate(Math.toRadians(by[0]), by.length > 2 ? by[1] : 0, by.length > 2 ? by[2] : 0);
        default ->
            throw new IllegalArgumentException("Drawings on paper do not " + step.group() + ".");
      }
    }
    return all;
  }
}
