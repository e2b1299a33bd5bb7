package skidway.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;
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
  private final double wallStripM;
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
    wallStripM = settings.get(Setting.WALL_STRIP_INSIDE);
  }

  /**
   * Legal places, in the order of rank, heading, row and mark. Goes on to the next rank only while
   * there are not enough.
   *
   * @param otherLengthsM lengths of spots that may stand in the same row
   */
  List<Ranked> fill(Zone zone, SpotSize size, List<Double> otherLengthsM, int enough) {
    List<Crossings> crossings = new ArrayList<>();
    for (double heading : Headings.of(zone, site)) {
      for (double setbackM : setbacksM(zone)) {
        crossings.add(crossings(zone, size, otherLengthsM, new Frame(heading), setbackM));
      }
    }
    Set<Spot> known = new HashSet<>();
    List<Ranked> found = new ArrayList<>();
    for (int rank = 0; rank <= Mark.LAST_RANK && found.size() < enough; rank++) {
      for (Crossings crossing : crossings) {
        List<Spot> places = places(zone, size, crossing, rank);
        for (Spot spot : Thinning.thin(places, MOST_TRIED, near)) {
          if (allowed.test(spot) && known.add(spot)) {
            found.add(new Ranked(spot, rank));
          }
        }
      }
    }
    return found;
  }

  /**
   * Legal places that cover the zone's ground once: the plain pattern in the heading of its longest
   * edges, each row of the size that is most wanting.
   */
  List<Spot> cover(Zone zone, GroundDemand demand) {
    Frame frame = new Frame(Headings.of(zone, site).get(0));
    double setbackM = setbacksM(zone).get(0);
    List<Crossings> bySize =
        demand.sizes().stream()
            .map(size -> crossings(zone, size, List.of(), frame, setbackM))
            .toList();
    List<Spot> cover = new ArrayList<>();
    for (Row row : plain(bySize.get(0).rows, Row::mark)) {
      int size = demand.mostWanting();
      List<Spot> spots =
          plain(bySize.get(size).marks, mark -> mark).stream()
              .map(mark -> spot(zone, demand.sizes().get(size), frame, mark, row))
              .filter(allowed)
              .toList();
      demand.served(size, spots.size());
      cover.addAll(spots);
    }
    return cover;
  }

  private static <T> List<T> plain(List<T> all, Function<T, Mark> mark) {
    return all.stream().filter(t -> mark.apply(t).rank() == Mark.PATTERN).toList();
  }

  /**
   * How far from a zone's edge rows begin: back from the edge of a deck, and also behind the
   * working strip of a wall on it, if one stands there already.
   */
  private List<Double> setbacksM(Zone zone) {
    if (!(zone instanceof Deck)) {
      return List.of(0.0);
    }
    double behindWallM =
        wallStripM + site.walls().stream().mapToDouble(Wall::thicknessM).max().orElse(0);
    boolean walled =
        EdgeStretch.of(zone.outline(), site.walls()).stream().anyMatch(s -> s.wallM() > 0);
    return walled && behindWallM < edgeSetbackM
        ? List.of(edgeSetbackM, behindWallM)
        : List.of(edgeSetbackM);
  }

  private record Crossings(Frame frame, List<Row> rows, List<Mark> marks) {}

  private Crossings crossings(
      Zone zone, SpotSize size, List<Double> otherLengthsM, Frame frame, double setbackM) {
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
          spots.add(spot(zone, size, crossings.frame, mark, row));
        }
      }
    }
    return spots;
  }

  private Spot spot(Zone zone, SpotSize size, Frame frame, Mark mark, Row row) {
    Point centre =
        frame.toSite(
            new Point(mark.atM() + size.lengthM() / 2, row.mark().atM() + size.widthM() / 2));
    Footprint footprint =
        new Footprint(
            new Point(toMillimetre(centre.x()), toMillimetre(centre.y())),
            frame.headingDeg(),
            size.lengthM(),
            size.widthM());
    return new Spot(
        "", zone.id(), size.kind(), footprint, row.side(), stripM, OptionalDouble.empty());
  }

  private static double toMillimetre(double metres) {
    return Math.round(metres * 1000) / 1000.0;
  }
}
