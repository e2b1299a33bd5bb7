package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Zone;

/**
 * Fills a zone with places for spots of one size: every heading, every crossing of a row and a mark
 * along it, as far as it is legal.
 */
final class ZoneFill {
  /** Places of one heading and rank that are looked at; more are thinned beforehand. */
  private static final int MOST_TRIED = 600;

  private final Site site;
  private final List<Obstacle> obstacles;
  private final double stripM;
  private final double gapM;
  private final double edgeSetbackM;
  private final Predicate<Spot> allowed;
  private final Point near;

  /**
   * Prepares for one site.
   *
   * @param allowed whether a spot may be used at all
   * @param near where spots are most wanted
   */
  ZoneFill(Site site, Settings settings, Predicate<Spot> allowed, Point near) {
    this.site = site;
    this.allowed = allowed;
    this.near = near;
    obstacles = Obstacle.all(site, settings);
    stripM = settings.get(Setting.OPEN_STRIP);
    gapM = settings.get(Setting.STACK_GAP);
    edgeSetbackM = settings.get(Setting.DECK_EDGE_SETBACK);
  }

  /**
   * Legal places, in the order of rank, heading, row and mark. Goes on to the next rank only while
   * there are not enough.
   *
   * @param otherLengthsM lengths of spots that may stand in the same row
   */
  List<Ranked> fill(Zone zone, SpotSize size, List<Double> otherLengthsM, int enough) {
    List<Crossings> crossings =
        Headings.of(zone, site).stream()
            .map(heading -> crossings(zone, size, otherLengthsM, new Frame(heading)))
            .toList();
    List<Ranked> found = new ArrayList<>();
    for (int rank = 0; rank <= Mark.LAST_RANK && found.size() < enough; rank++) {
      for (Crossings crossing : crossings) {
        List<Spot> places = places(zone, size, crossing, rank);
        for (Spot spot : Thinning.thin(places, MOST_TRIED, near)) {
          if (allowed.test(spot)) {
            found.add(new Ranked(spot, rank));
          }
        }
      }
    }
    return found;
  }

  private record Crossings(Frame frame, List<Row> rows, List<Mark> marks) {}

  private Crossings crossings(Zone zone, SpotSize size, List<Double> otherLengthsM, Frame frame) {
    double setbackM = zone instanceof Deck ? edgeSetbackM : 0;
    Frame.Box room = frame.box(zone.outline().corners()).grown(-setbackM);
    List<Span> besideAlong = new ArrayList<>();
    List<Span> besideAcross = new ArrayList<>();
    for (Obstacle obstacle : obstacles) {
      Frame.Box covered = frame.box(obstacle.corners()).grown(obstacle.marginM());
      if (covered.meets(room)) {
        besideAlong.add(covered.along());
        besideAcross.add(covered.across());
      }
    }
    List<Double> edgesAlong = new ArrayList<>();
    List<Double> edgesAcross = new ArrayList<>();
    for (Point corner : zone.outline().corners()) {
      Point local = frame.toLocal(corner);
      edgesAlong.addAll(List.of(local.x() - setbackM, local.x() + setbackM));
      edgesAcross.addAll(List.of(local.y() - setbackM, local.y() + setbackM));
    }
    List<Mark> marks =
        MarksAlong.of(room.along(), edgesAlong, besideAlong, size, otherLengthsM, gapM);
    List<Row> rows = RowsAcross.of(room.across(), edgesAcross, besideAcross, size, stripM, gapM);
    return new Crossings(frame, rows, marks);
  }

  private List<Spot> places(Zone zone, SpotSize size, Crossings crossings, int rank) {
    List<Spot> spots = new ArrayList<>();
    for (Row row : crossings.rows) {
      for (Mark mark : crossings.marks) {
        if (Math.max(row.mark().rank(), mark.rank()) == rank) {
          double x = mark.atM() + size.lengthM() / 2;
          double y = row.mark().atM() + size.widthM() / 2;
          spots.add(spot(zone, size, crossings.frame, new Point(x, y), row.side()));
        }
      }
    }
    return spots;
  }

  private Spot spot(Zone zone, SpotSize size, Frame frame, Point local, OpenSide side) {
    Point centre = frame.toSite(local);
    Footprint footprint =
        new Footprint(
            new Point(toMillimetre(centre.x()), toMillimetre(centre.y())),
            frame.headingDeg(),
            size.lengthM(),
            size.widthM());
    return new Spot("", zone.id(), size.kind(), footprint, side, stripM, OptionalDouble.empty());
  }

  private static double toMillimetre(double metres) {
    return Math.round(metres * 1000) / 1000.0;
  }
}
