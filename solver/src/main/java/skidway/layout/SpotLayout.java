package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import skidway.rules.Settings;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;
import skidway.site.Zone;
import skidway.timber.Delivery;

/**
 * Lays out the spots a plan may use.
 *
 * <p>Many more than will be used, most of them excluding each other: rows from every edge of every
 * zone, in the directions of its edges and of the walls, in a few lengths, open to either side,
 * snug against obstacles and in between. Their number is kept to {@link #SPOTS_PER_BUNDLE} for each
 * bundle: zones and sizes share it evenly, the plain row pattern goes first, and what does not fit
 * is thinned half by nearness to the building and half evenly ({@link Thinning}). Before that, a
 * job that gets less than half as many has its ground covered once ({@link ZoneFill#cover}).
 */
public final class SpotLayout {
  /** Gives a house of 30 bundles 600 candidates; more slow a search down without helping it. */
  static final int SPOTS_PER_BUNDLE = 20;

  static final int LEAST_SPOTS = 300;
  static final int MOST_SPOTS = 4000;

  /** One candidate in this many may be a standing rack. */
  private static final int SPOTS_PER_RACK = 10;

  private final Site site;
  private final ZoneFill fill;
  private final Point building;

  private SpotLayout(Site site, Settings settings, Predicate<Spot> allowed) {
    this.site = site;
    building = building(site);
    fill = new ZoneFill(site, settings, allowed, building);
  }

  /**
   * The spots given with the site, as they are, or else those laid out here, all of them legal. Ids
   * are the zone's with a number, the same for the same input; none when nothing has room.
   */
  public static List<Spot> candidates(Site site, Delivery delivery, Settings settings) {
    if (!site.spots().isEmpty()) {
      return site.spots();
    }
    Predicate<Spot> legal = new Candidacy(site, settings)::allows;
    InReach reach = new InReach(site, delivery);
    List<Spot> spots = all(site, delivery, settings, legal.and(reach::allows));
    // Where the machine reaches nothing, spots out of reach let a plan say that this is why.
    return spots.isEmpty() ? all(site, delivery, settings, legal) : spots;
  }

  private static List<Spot> all(
      Site site, Delivery delivery, Settings settings, Predicate<Spot> allowed) {
    SpotLayout layout = new SpotLayout(site, settings, allowed);
    int bundles = delivery.bundles().size();
    int most = Math.min(MOST_SPOTS, Math.max(LEAST_SPOTS, SPOTS_PER_BUNDLE * bundles));
    List<Spot> spots = new ArrayList<>();
    SpotSizes.rack(delivery, settings)
        .ifPresent(size -> spots.addAll(layout.racks(size, most / SPOTS_PER_RACK)));
    List<SpotSize> sizes = SpotSizes.stacks(delivery);
    if (most < bundles * SPOTS_PER_BUNDLE / 2) {
      spots.addAll(layout.cover(new GroundDemand(sizes, delivery)));
    }
    spots.addAll(layout.stacks(sizes, Math.max(0, most - spots.size())));
    return Numbering.number(site, spots);
  }

  private List<Spot> stacks(List<SpotSize> sizes, int most) {
    List<List<Ranked>> groups = new ArrayList<>();
    int enough = enough(most, site.zones().size() * sizes.size());
    for (Zone zone : site.zones()) {
      for (SpotSize size : sizes) {
        List<Double> others =
            sizes.stream().filter(s -> !s.equals(size)).map(SpotSize::lengthM).toList();
        groups.add(fill.fill(zone, size, others, enough));
      }
    }
    return share(groups, most);
  }

  /** Where bundles are too many for a choice each, none may lack ground that is there. */
  private List<Spot> cover(GroundDemand demand) {
    return site.zones().stream().flatMap(zone -> fill.cover(zone, demand).stream()).toList();
  }

  /** Racks stand on the decks, near the walls they serve; in the yards only if no deck has room. */
  private List<Spot> racks(SpotSize size, int most) {
    List<Spot> onDecks = racks(site.decks(), size, most);
    return onDecks.isEmpty() ? racks(site.yards(), size, most) : onDecks;
  }

  private List<Spot> racks(List<? extends Zone> zones, SpotSize size, int most) {
    int enough = enough(most, zones.size());
    return share(
        zones.stream().map(zone -> fill.fill(zone, size, List.of(), enough)).toList(), most);
  }

  /** What a group can use: thrice its even share, because small groups leave theirs to others. */
  private static int enough(int most, int groups) {
    return groups == 0 ? most : Math.min(most, 3 * (most / groups + 1));
  }

  private List<Spot> share(List<List<Ranked>> groups, int most) {
    int[] shares = Quotas.divide(groups.stream().mapToInt(List::size).toArray(), most);
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      spots.addAll(Thinning.pick(groups.get(i), shares[i], building));
    }
    return spots;
  }

  /** The middle of the walls' middles, or of the site while it has no walls. */
  private static Point building(Site site) {
    List<Point> points =
        site.walls().isEmpty()
            ? site.boundary().corners()
            : site.walls().stream().map((Wall wall) -> wall.at(wall.lengthM() / 2)).toList();
    return points.stream()
        .reduce(Point::plus)
        .map(sum -> sum.times(1.0 / points.size()))
        .orElse(new Point(0, 0));
  }
}
