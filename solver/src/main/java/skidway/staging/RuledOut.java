package skidway.staging;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.layout.Breach;
import skidway.layout.LegalSpots;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Zone;
import skidway.timber.Bundle;

/**
 * Finds the rule that keeps a bundle off all decks and yards where no spot could be laid out: tries
 * it in a grid of places and counts which rule alone speaks against most of them.
 */
final class RuledOut {
  private static final int PLACES_A_SIDE = 24;

  private final Task task;
  private final LegalSpots legal;

  RuledOut(Task task) {
    this.task = task;
    this.legal = LegalSpots.of(task.site(), task.settings());
  }

  /** The rule, or none when the zones are simply too small. */
  Optional<Rule> rule(Bundle bundle) {
    Map<Rule, Integer> alone = new EnumMap<>(Rule.class);
    for (Zone zone : task.site().zones()) {
      for (int turnDeg = 0; turnDeg < 180; turnDeg += 90) {
        tryPlaces(zone, bundle, turnDeg, alone);
      }
    }
    return alone.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
  }

  private void tryPlaces(Zone zone, Bundle bundle, int turnDeg, Map<Rule, Integer> alone) {
    List<Point> corners = zone.outline().corners();
    double x0 = corners.stream().mapToDouble(Point::x).min().orElseThrow();
    double x1 = corners.stream().mapToDouble(Point::x).max().orElseThrow();
    double y0 = corners.stream().mapToDouble(Point::y).min().orElseThrow();
    double y1 = corners.stream().mapToDouble(Point::y).max().orElseThrow();
    for (int row = 0; row < PLACES_A_SIDE; row++) {
      for (int column = 0; column < PLACES_A_SIDE; column++) {
        double x = x0 + (x1 - x0) * (column + 0.5) / PLACES_A_SIDE;
        double y = y0 + (y1 - y0) * (row + 0.5) / PLACES_A_SIDE;
        tryPlace(spot(zone, bundle, new Point(x, y), turnDeg), alone);
      }
    }
  }

  private void tryPlace(Spot spot, Map<Rule, Integer> alone) {
    List<Rule> rules = legal.breaches(spot).stream().map(Breach::rule).distinct().toList();
    if (rules.size() == 1 && rules.get(0) != Rule.INSIDE_ZONE) {
      alone.merge(rules.get(0), 1, Integer::sum);
    }
  }

  private Spot spot(Zone zone, Bundle bundle, Point centre, double turnDeg) {
    return new Spot(
        "tried",
        zone.id(),
        SpotKind.STACK,
        new Footprint(centre, turnDeg, bundle.lengthM(), bundle.widthM()),
        OpenSide.LEFT,
        task.settings().get(Setting.OPEN_STRIP),
        OptionalDouble.empty());
  }
}
