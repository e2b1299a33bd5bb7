package skidway.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Zone;

/**
 * Gives spots their ids: the zone's with a running number. Zones as listed, stacks before racks,
 * then from the lower edge of the site upwards and from left to right.
 */
final class Numbering {
  private static final Comparator<Spot> ORDER =
      Comparator.comparing(Spot::kind)
          .thenComparingDouble(s -> s.footprint().centre().y())
          .thenComparingDouble(s -> s.footprint().centre().x())
          .thenComparingDouble(s -> s.footprint().lengthM())
          .thenComparingDouble(s -> s.footprint().headingDeg())
          .thenComparing(Spot::openSide);

  private Numbering() {}

  static List<Spot> number(Site site, List<Spot> spots) {
    List<Spot> sorted = new LinkedHashSet<>(spots).stream().sorted(ORDER).toList();
    List<Spot> numbered = new ArrayList<>();
    for (Zone zone : site.zones()) {
      int number = 0;
      for (Spot spot : sorted) {
        if (spot.zoneId().equals(zone.id())) {
          number++;
          numbered.add(spot.called(zone.id() + "-" + number));
        }
      }
    }
    return numbered;
  }
}
