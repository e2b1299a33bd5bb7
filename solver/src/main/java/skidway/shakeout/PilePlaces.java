package skidway.shakeout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import skidway.geometry.Area;
import skidway.layout.LegalSpots;
import skidway.layout.SpotLayout;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Wall;
import skidway.site.Zone;
import skidway.timber.Piece;

/**
 * Lays out places for piles: rows parallel to each wall, on both its sides, open towards it. The
 * strip where people, ladders and scaffold work along the wall stays free between the two. Some
 * become legal only once the walls beside them stand higher than a pile. Then come places where
 * stacks could stand, so that a bundle may be sorted into piles beside it.
 */
final class PilePlaces {
  /** Lengths of places; more make a search slower without finding more room. */
  private static final int LENGTH_CLASSES = 3;

  /** Places along one wall, for each row and length. */
  private static final int PLACES_ALONG = 14;

  private static final double SHORTEST_STEP_M = 0.3;

  /** More places by the walls, or beside the stacks, make a search slower. */
  private static final int MOST_OF_A_KIND = 240;

  private static final String CODELESS = "pile";
  private static final double HIGHER_THAN_ANY_PILE_M = 100;
  private static final double STEPS_PER_M = 20;

  private final Site site;
  private final Settings settings;
  private final LegalSpots legal;
  private final double widthM;

  private PilePlaces(Task task) {
    site = task.site();
    settings = task.settings();
    widthM = settings.get(Setting.PILE_WIDTH);
    List<Wall> high = site.walls().stream().map(w -> w.standing(HIGHER_THAN_ANY_PILE_M)).toList();
    legal = LegalSpots.of(site.withWalls(high), settings);
  }

  /** Places that are legal once all walls are high, without codes. */
  static List<Spot> of(Task task) {
    PilePlaces places = new PilePlaces(task);
    Set<Spot> all = new LinkedHashSet<>(thinned(places.byWalls(task.delivery().pieces())));
    all.addAll(thinned(places.besideStacks(task)));
    return List.copyOf(all);
  }

  private static List<Spot> thinned(List<Spot> spots) {
    int every = Math.max(1, (spots.size() + MOST_OF_A_KIND - 1) / MOST_OF_A_KIND);
    List<Spot> kept = new ArrayList<>();
    for (int i = 0; i < spots.size(); i += every) {
      kept.add(spots.get(i));
    }
    return kept;
  }

  /** Those that are wide enough; what is narrower is somebody's own measure. */
  private List<Spot> besideStacks(Task task) {
    return SpotLayout.candidates(site, task.delivery(), settings).stream()
        .filter(spot -> spot.kind() == SpotKind.STACK)
        .filter(spot -> spot.footprint().widthM() >= widthM - 1e-9)
        .map(
            spot ->
                new Spot(
                    CODELESS,
                    spot.zoneId(),
                    spot.kind(),
                    spot.footprint().resized(spot.footprint().lengthM(), widthM),
                    spot.openSide(),
                    spot.stripM(),
                    spot.massLimitKg()))
        .filter(legal::isLegal)
        .toList();
  }

  private List<Spot> byWalls(List<Piece> pieces) {
    Set<Spot> found = new LinkedHashSet<>();
    for (double lengthM : lengthsM(pieces)) {
      for (Wall wall : site.walls()) {
        for (Point out : List.of(wall.inward(), wall.inward().times(-1))) {
          for (double offM : offsM(out.equals(wall.inward()))) {
            row(wall, out, offM, lengthM, found);
          }
        }
      }
    }
    return List.copyOf(found);
  }

  /** The longest of each third of the pieces, rounded up. */
  private static List<Double> lengthsM(List<Piece> pieces) {
    double[] sorted = pieces.stream().mapToDouble(Piece::lengthM).sorted().toArray();
    Set<Double> lengths = new LinkedHashSet<>();
    for (int part = LENGTH_CLASSES; part > 0 && sorted.length > 0; part--) {
      double longestM = sorted[Math.max(0, sorted.length * part / LENGTH_CLASSES - 1)];
      lengths.add(Math.ceil(longestM * STEPS_PER_M - 1e-6) / STEPS_PER_M);
    }
    return List.copyOf(lengths);
  }

  /**
   * How far off a wall's face rows begin: behind its working strip, and back from a deck's edge.
   */
  private List<Double> offsM(boolean inside) {
    double stripM = settings.get(inside ? Setting.WALL_STRIP_INSIDE : Setting.WALL_STRIP_OUTSIDE);
    double besideM = Math.max(stripM, settings.get(Setting.OPEN_STRIP)) + 0.01;
    double secondM = besideM + widthM + settings.get(Setting.OPEN_STRIP) + 0.01;
    double backM = settings.get(Setting.DECK_EDGE_SETBACK) + 0.01;
    return backM > besideM ? List.of(besideM, secondM, backM) : List.of(besideM, secondM);
  }

  private void row(Wall wall, Point out, double offM, double lengthM, Set<Spot> found) {
    double roomM = wall.lengthM();
    double stepM = Math.max(SHORTEST_STEP_M, roomM / PLACES_ALONG);
    double headingDeg = wall.footprint().headingDeg();
    boolean inside = out.equals(wall.inward());
    for (double atM = lengthM / 2; atM <= roomM - lengthM / 2 + 1e-9; atM += stepM) {
      Point centre = wall.at(atM).plus(out.times(wall.thicknessM() / 2 + offM + widthM / 2));
      Footprint footprint =
          new Footprint(
              new Point(toMillimetre(centre.x()), toMillimetre(centre.y())),
              headingDeg,
              lengthM,
              widthM);
      // Inside lies on the left of the way along the wall, so the wall is on the right.
      OpenSide side = inside ? OpenSide.RIGHT : OpenSide.LEFT;
      for (Zone zone : site.zones()) {
        if (Area.of(zone.outline()).contains(footprint)) {
          Spot spot =
              new Spot(
                  CODELESS,
                  zone.id(),
                  SpotKind.STACK,
                  footprint,
                  side,
                  settings.get(Setting.OPEN_STRIP),
                  OptionalDouble.empty());
          if (legal.isLegal(spot)) {
            found.add(spot);
          }
        }
      }
    }
  }

  private static double toMillimetre(double metres) {
    return Math.round(metres * 1000) / 1000.0;
  }
}
