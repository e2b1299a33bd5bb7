package skidway.audit.walk;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.audit.plane.Rectangle;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Finds out whether people still get everywhere on foot once all stacks stand and all walls have
 * risen, by flooding a grid from beside the first truck stand. What cannot be reached on the empty
 * site is the site's own matter and told apart.
 *
 * <p>Cells are a twelfth of the walking width W wide. Obstacles are grown by half of W less half a
 * cell, and people step to all eight neighbours. So a straight way exactly W wide is open whatever
 * its direction, because a band as wide as a cell always holds a chain of cells; and a way narrower
 * than W by a tenth is shut, because it holds none and is too long to step across. On very large
 * sites cells grow so that there are never more than {@link #MOST_CELLS}.
 *
 * <p>The site is drawn once; each question costs one flood and, for each place that is shut, one
 * more for each stack beside it. Not for use by several threads at once.
 */
public final class PathFlood {
  static final double MOST_CELLS = 4_000_000;
  private static final double CELLS_PER_WIDTH = 12;

  private final double widthM;
  private final WalkGrid grid;
  private final double grownM;
  private final byte[] empty;
  private final byte[] reachedWhenEmpty;
  private final Cells starts;
  private final List<StepLink> links;
  private final List<Target> siteTargets;
  private final WayPoints wayPoints;
  private final Flood flood;

  public PathFlood(Task task) {
    this(task, task.settings().get(Setting.WALK_WIDTH));
  }

  /** Asks for ways of another width than the job's. */
  public PathFlood(Task task, double widthM) {
    Site site = task.site();
    this.widthM = widthM;
    grid = new WalkGrid(site.boundary(), cellM(site, widthM));
    grownM = Math.max(grid.cellM(), widthM - grid.cellM()) / 2;
    wayPoints = new WayPoints(site, grid, widthM);
    double stepOverM = task.settings().get(Setting.STEP_OVER);
    ClosedWalls walls = ClosedWalls.of(site, stepOverM, wall -> true);
    links = wayPoints.links(walls);
    siteTargets = wayPoints.siteTargets();
    flood = new Flood(grid, links);
    empty = new SiteObstacles(site, stepOverM).draw(grid, grownM, 0, walls);
    starts = site.truckStands().isEmpty() ? Cells.NONE : wayPoints.starts();
    starts.addMark(empty, Flood.START);
    reachedWhenEmpty = empty.clone();
    flood.spread(reachedWhenEmpty, starts);
  }

  /** Whether the site is so large that narrower ways may pass than the class comment says. */
  public boolean isCoarse() {
    return CELLS_PER_WIDTH * grid.cellM() > widthM * 1.001;
  }

  /** Whether anybody can stand beside the first truck at all. */
  public boolean hasStart() {
    return starts.any(reachedWhenEmpty, Flood.REACHED);
  }

  private static double cellM(Site site, double widthM) {
    double finestM = Math.sqrt(boxAreaM2(site) / MOST_CELLS);
    return Math.max(widthM / CELLS_PER_WIDTH, finestM);
  }

  private static double boxAreaM2(Site site) {
    DoubleSummaryStatistics xs =
        site.boundary().corners().stream().mapToDouble(Point::x).summaryStatistics();
    DoubleSummaryStatistics ys =
        site.boundary().corners().stream().mapToDouble(Point::y).summaryStatistics();
    return (xs.getMax() - xs.getMin()) * (ys.getMax() - ys.getMin());
  }

  /** The places, named, that cannot be reached even while no stack stands on the site. */
  public List<String> shutOnEmptySite(List<Spot> used) {
    return targets(used)
        .filter(target -> !target.reached(reachedWhenEmpty))
        .map(Target::name)
        .toList();
  }

  /** Every place that these stacks shut, and which of them do. */
  public List<ShutPath> shut(List<Spot> used) {
    byte[] marks = withStacks(used);
    flood.spread(marks, starts);
    return targets(used)
        .filter(target -> target.reached(reachedWhenEmpty) && !target.reached(marks))
        .map(target -> new ShutPath(target.id(), target.name(), smallestShutting(target, used)))
        .toList();
  }

  /** The id of the first place that these stacks shut, without asking which of them do. */
  public Optional<String> firstShut(List<Spot> used) {
    byte[] marks = withStacks(used);
    flood.spread(marks, starts);
    return targets(used)
        .filter(target -> target.reached(reachedWhenEmpty) && !target.reached(marks))
        .map(Target::id)
        .findFirst();
  }

  /** For each place that these stacks shut, the ids of spots that together do; each set once. */
  public List<List<String>> shutBy(List<Spot> used) {
    return shut(used).stream().map(ShutPath::spotIds).distinct().toList();
  }

  private Stream<Target> targets(List<Spot> used) {
    return Stream.concat(used.stream().map(wayPoints::openSide), siteTargets.stream());
  }

  private List<String> smallestShutting(Target target, List<Spot> used) {
    List<Spot> shutting = beside(target, used);
    for (Spot spot : List.copyOf(shutting)) {
      List<Spot> without = new ArrayList<>(shutting);
      without.remove(spot);
      if (!flood.meetsStart(withStacks(without), target.cells())) {
        shutting = without;
      }
    }
    return shutting.stream().map(Spot::id).toList();
  }

  /**
   * The stacks beside what is still connected to a target. They alone keep it shut: everything next
   * to the connected cells is closed by them or by the site.
   */
  private List<Spot> beside(Target target, List<Spot> used) {
    byte[] pocket = withStacks(used);
    flood.spread(pocket, target.cells());
    return used.stream().filter(spot -> isBeside(spot, pocket, target)).toList();
  }

  private boolean isBeside(Spot spot, byte[] pocket, Target target) {
    byte[] alone = new byte[grid.size()];
    grid.markNear(alone, Flood.STACK, spot.footprint(), grownM);
    return flood.touchesReached(pocket, standingCells(spot))
        || target.cells().any(alone, Flood.STACK)
        || links.stream().anyMatch(link -> cuts(alone, pocket, link));
  }

  private Cells standingCells(Spot spot) {
    Rectangle area = Rectangle.of(spot.footprint());
    double acrossM = Math.hypot(spot.footprint().lengthM(), spot.footprint().widthM());
    return grid.near(
        spot.footprint().centre(), acrossM / 2 + grownM, p -> area.distanceTo(p) <= grownM);
  }

  /** Whether a stack stands at one end of steps whose other end is connected. */
  private static boolean cuts(byte[] alone, byte[] pocket, StepLink link) {
    return (link.foot().any(pocket, Flood.REACHED) && link.top().any(alone, Flood.STACK))
        || (link.top().any(pocket, Flood.REACHED) && link.foot().any(alone, Flood.STACK));
  }

  private byte[] withStacks(List<Spot> stacks) {
    byte[] marks = empty.clone();
    for (Spot spot : stacks) {
      grid.markNear(marks, Flood.STACK, spot.footprint(), grownM);
    }
    return marks;
  }
}
