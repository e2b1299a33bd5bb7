package skidway.survey;

import java.util.regex.Pattern;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.units.Measure;
import skidway.units.UnitSystem;

/**
 * A quantity as somebody wrote it.
 *
 * @param text as written
 * @param si what that is
 */
record Measured(Place place, Measure measure, String text, double si) {
  private static final Pattern BARE = Pattern.compile("-?[\\d.]+");

  /** As it is written into a file: word for word, with the unit that goes without saying here. */
  LocatedNode node(UnitSystem units) {
    boolean bare = BARE.matcher(text).matches();
    return new LocatedNode.Text(place, bare ? text + unit(units) : text);
  }

  private String unit(UnitSystem units) {
    boolean us = units == UnitSystem.US;
    return switch (measure) {
      case LENGTH -> us ? " ft" : " m";
      case MASS -> us ? " lb" : " kg";
      case PRESSURE -> us ? " psf" : " kPa";
      case ANGLE, RATIO, COUNT -> "";
      case SPEED, DURATION, VOLTAGE, FORCE, MOMENT ->
          throw new IllegalStateException("A bare number is no " + measure.word());
    };
  }
}
