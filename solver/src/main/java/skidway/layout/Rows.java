package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Zone;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

/** Fills each zone's bounding box with rows of spots along the x axis. */
final class Rows {
  private final Site site;
  private final Settings settings;

  Rows(Site site, Settings settings) {
    this.site = site;
    this.settings = settings;
  }

  List<Spot> all(Delivery delivery) {
    double lengthM = delivery.bundles().stream().mapToDouble(Bundle::lengthM).max().orElse(4);
    double widthM = delivery.bundles().stream().mapToDouble(Bundle::widthM).max().orElse(1);
    double stripM = settings.get(Setting.OPEN_STRIP);
    LegalSpots legal = LegalSpots.of(site, settings);
    List<Spot> spots = new ArrayList<>();
    for (Zone zone : site.zones()) {
      int number = 0;
      List<Point> corners = zone.outline().corners();
      double right = corners.stream().mapToDouble(Point::x).max().orElse(0);
      double top = corners.stream().mapToDouble(Point::y).max().orElse(0);
      double left = corners.stream().mapToDouble(Point::x).min().orElse(0);
      double bottom = corners.stream().mapToDouble(Point::y).min().orElse(0);
      for (double y = bottom + widthM / 2; y < top; y += widthM / 2) {
        for (double x = left + lengthM / 2; x < right; x += lengthM / 4) {
          for (OpenSide side : OpenSide.values()) {
            Spot spot =
                new Spot(
                    String.format(Locale.ROOT, "%s-%d", zone.id(), number + 1),
                    zone.id(),
                    SpotKind.STACK,
                    new Footprint(new Point(x, y), 0, lengthM, widthM),
                    side,
                    stripM,
                    OptionalDouble.empty());
            if (legal.isLegal(spot)) {
              spots.add(spot);
              number++;
            }
          }
        }
      }
    }
    return spots;
  }
}
