package skidway.survey;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.site.Point;
import skidway.units.Quantities;
import skidway.units.UnitSystem;

/** Writes what was worked out, in the units of the job and with the unit beside each figure. */
record Nodes(UnitSystem units) {
  /** A ten-thousandth of a foot or metre: far below what any tape tells. */
  private static final int PLACES = 4;

  static LocatedNode.Text text(Place place, String text) {
    return new LocatedNode.Text(place, text);
  }

  static LocatedNode.Figure number(Place place, double number, int places) {
    BigDecimal rounded = rounded(number, places);
    return new LocatedNode.Figure(place, rounded.toPlainString(), rounded.doubleValue());
  }

  static LocatedNode degrees(Place place, double degrees) {
    double turned = degrees > 180 ? degrees - 360 : degrees <= -180 ? degrees + 360 : degrees;
    return number(place, turned, PLACES);
  }

  LocatedNode length(Place place, double metres) {
    double perUnit = new Quantities(units).bare(skidway.units.Measure.LENGTH, 1);
    String unit = units == UnitSystem.US ? " ft" : " m";
    return text(place, rounded(metres / perUnit, PLACES).toPlainString() + unit);
  }

  LocatedNode point(Place place, Point p) {
    return new LocatedNode.Items(place, List.of(length(place, p.x()), length(place, p.y())));
  }

  LocatedNode points(Place place, List<Point> points) {
    return new LocatedNode.Items(place, points.stream().map(p -> point(place, p)).toList());
  }

  private static BigDecimal rounded(double number, int places) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_EVEN);
    return new BigDecimal(rounded.stripTrailingZeros().toPlainString());
  }
}
