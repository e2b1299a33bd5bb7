package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.KeepClear;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;
import skidway.site.Yard;
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
            ? isIn(strip, zone.outline()) && capM(spot) > 0
            : isIn(strip, site.boundary())
                && stripIsFree(strip)
                && ((Yard) zone).slope().orElse(0) <= settings.get(Setting.YARD_SLOPE);
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
                    gap(stack, k.outline()) >= marginM(k) - slackM
                        && common(stack, k.outline()) == 0)
        && site.overheadLines().stream()
            .allMatch(l -> lineGap(stack, List.of(l.from(), l.to())) >= clearanceM(l) - slackM);
  }

  private double marginM(KeepClear place) {
    return place.excavation()
        ? DoubleStream.of(
                place.marginM(),
                settings.get(Setting.EXCAVATION_SETBACK),
                settings.get(Setting.EXCAVATION_DEPTH_SHARE) * place.depthM().orElse(0))
            .max()
            .orElseThrow()
        : place.marginM();
  }

  private double clearanceM(OverheadLine line) {
    assertThat(line.volts()).as("the oracle knows the lowest two bands only").isLessThan(200_000);
    Setting band = line.volts() <= 50_000 ? Setting.LINE_TO_50_KV : Setting.LINE_TO_200_KV;
    return Math.max(settings.get(band), line.clearanceM().orElse(0));
  }

  /** Height of the lowest wall, or of none, on the edge parts within the setback of a stack. */
  double capM(Spot spot) {
    double nearM = settings.get(Setting.DECK_EDGE_SETBACK) - slackM;
    List<Point> corners = site.zone(spot.zoneId()).orElseThrow().outline().corners();
    double cap = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point way = corners.get((i + 1) % corners.size()).minus(a);
      List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
      site.walls()
          .forEach(w -> cuts.addAll(List.of(share(left(w), a, way), share(right(w), a, way))));
      Collections.sort(cuts);
      for (int j = 0; j + 1 < cuts.size(); j++) {
        List<Point> part =
            List.of(a.plus(way.times(cuts.get(j))), a.plus(way.times(cuts.get(j + 1))));
        boolean real = part.get(0).distanceTo(part.get(1)) > 1e-6;
        if (real && lineGap(spot.footprint().outline(), part) < nearM) {
          cap = Math.min(cap, wallM(part.get(0).plus(part.get(1)).times(0.5), a, way));
        }
      }
    }
    return cap;
  }

  /** How high the walls along an edge stand at one of its points. */
  private double wallM(Point point, Point edge, Point way) {
    double turn = Math.atan2(way.y(), way.x());
    double along = share(point, edge, way);
    double highest = 0;
    for (Wall wall : site.walls()) {
      double off = Math.atan2(wall.along().y(), wall.along().x()) - turn;
      double s0 = share(left(wall), edge, way);
      double s1 = share(right(wall), edge, way);
      Line2D line = segment(edge, edge.plus(way));
      boolean beside =
          Math.abs(Math.sin(off)) < Math.sin(Math.toRadians(5))
              && line.ptLineDist(wall.start().x(), wall.start().y()) < 0.6
              && line.ptLineDist(wall.end().x(), wall.end().y()) < 0.6;
      if (beside && along > Math.min(s0, s1) && along < Math.max(s0, s1)) {
        highest = Math.max(highest, wall.builtM());
      }
    }
    return highest;
  }

  /** Where a wall begins to cover an edge: as much before its start as it is thick. */
  private static Point left(Wall wall) {
    return wall.start().minus(wall.along().times(wall.thicknessM()));
  }

  private static Point right(Wall wall) {
    return wall.end().plus(wall.along().times(wall.thicknessM()));
  }

  /** Where a point lies beside an edge: 0 at its start and before, 1 at its end and beyond. */
  private static double share(Point point, Point edge, Point way) {
    Point off = point.minus(edge);
    double share = (off.x() * way.x() + off.y() * way.y()) / (way.length() * way.length());
    return Math.max(0, Math.min(1, share));
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
