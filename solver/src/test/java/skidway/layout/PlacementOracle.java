package skidway.layout;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;
import skidway.site.Zone;

/**
 * Judges spots by the placement rules with the shapes of the JDK, sharing no code with what it
 * judges. Each rule must be kept with room to spare or may be missed by some slack.
 */
final class PlacementOracle {
  private final Site site;
  private final Settings settings;
  private final double slackM;

  PlacementOracle(Site site, Settings settings, double slackM) {
    this.site = site;
    this.settings = settings;
    this.slackM = slackM;
  }

  boolean allows(Spot spot) {
    Zone zone = site.zone(spot.zoneId()).orElseThrow();
    Outline stack = spot.footprint().outline();
    Outline strip = spot.strip().outline();
    boolean zoneKept =
        zone instanceof Deck
            ? isIn(strip, zone.outline())
                && edgeGap(stack, zone.outline())
                    >= settings.get(Setting.DECK_EDGE_SETBACK) - slackM
            : isIn(strip, site.boundary()) && stripIsFree(strip);
    boolean offOtherDecks =
        site.decks().stream()
            .allMatch(d -> d.id().equals(zone.id()) || common(stack, d.outline()) == 0);
    return zoneKept && offOtherDecks && isIn(stack, zone.outline()) && keepsOff(stack, strip);
  }

  private boolean stripIsFree(Outline strip) {
    return site.decks().stream().allMatch(d -> common(strip, d.outline()) == 0)
        && site.truckStands().stream().allMatch(t -> common(strip, t.area().outline()) == 0)
        && site.keepClears().stream()
            .allMatch(k -> k.walkable() || common(strip, k.outline()) == 0);
  }

  private boolean keepsOff(Outline stack, Outline strip) {
    double setback = settings.get(Setting.OPENING_SETBACK);
    return site.decks().stream()
            .flatMap(d -> d.openings().stream())
            .allMatch(
                o -> gap(stack, o.outline()) >= setback - slackM && common(strip, o.outline()) == 0)
        && site.walls().stream().allMatch(w -> common(stack, strip(w)) == 0)
        && site.lanes().stream()
            .allMatch(l -> lineGap(stack, l.centreLine()) >= l.widthM() / 2 - slackM)
        && site.truckStands().stream().allMatch(t -> common(stack, t.area().outline()) == 0)
        && site.machine().stands().stream()
            .allMatch(
                m ->
                    lineGap(stack, List.of(m.at(), m.at()))
                        >= settings.get(Setting.MACHINE_STAND_ROOM) - slackM)
        && site.keepClears().stream()
            .allMatch(
                k ->
                    gap(stack, k.outline()) >= k.marginM() - slackM
                        && common(stack, k.outline()) == 0);
  }

  private Outline strip(Wall wall) {
    Point in = wall.inward().times(wall.thicknessM() / 2 + settings.get(Setting.WALL_STRIP_INSIDE));
    Point out =
        wall.inward().times(-wall.thicknessM() / 2 - settings.get(Setting.WALL_STRIP_OUTSIDE));
    return new Outline(
        List.of(
            wall.start().plus(out),
            wall.end().plus(out),
            wall.end().plus(in),
            wall.start().plus(in)));
  }

  private boolean isIn(Outline inner, Outline outer) {
    Area left = area(inner);
    left.subtract(area(outer));
    return depth(left) <= slackM;
  }

  /** Least side of the box round what two outlines share; less than the slack is nothing. */
  private double common(Outline a, Outline b) {
    Area shared = area(a);
    shared.intersect(area(b));
    double depth = depth(shared);
    return depth <= slackM ? 0 : depth;
  }

  private static double depth(Area area) {
    return area.isEmpty()
        ? 0
        : Math.min(area.getBounds2D().getWidth(), area.getBounds2D().getHeight());
  }

  private static double gap(Outline a, Outline b) {
    Area shared = area(a);
    shared.intersect(area(b));
    return shared.isEmpty() ? edgeGap(a, b) : 0;
  }

  private static double edgeGap(Outline a, Outline b) {
    List<Point> closed = new ArrayList<>(b.corners());
    closed.add(b.corners().get(0));
    return lineGap(a, closed);
  }

  private static double lineGap(Outline a, List<Point> line) {
    double least = Double.POSITIVE_INFINITY;
    int size = a.corners().size();
    for (int i = 0; i < size; i++) {
      Line2D side = segment(a.corners().get(i), a.corners().get((i + 1) % size));
      for (int j = 0; j + 1 < line.size(); j++) {
        Line2D edge = segment(line.get(j), line.get(j + 1));
        double ends =
            Math.min(
                Math.min(side.ptSegDist(edge.getP1()), side.ptSegDist(edge.getP2())),
                Math.min(edge.ptSegDist(side.getP1()), edge.ptSegDist(side.getP2())));
        least = Math.min(least, side.intersectsLine(edge) ? 0 : ends);
      }
    }
    return area(a).contains(line.get(0).x(), line.get(0).y()) ? 0 : least;
  }

  private static Line2D segment(Point a, Point b) {
    return new Line2D.Double(a.x(), a.y(), b.x(), b.y());
  }

  private static Area area(Outline outline) {
    Path2D path = new Path2D.Double();
    path.moveTo(outline.corners().get(0).x(), outline.corners().get(0).y());
    outline.corners().stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
    path.closePath();
    return new Area(path);
  }
}
