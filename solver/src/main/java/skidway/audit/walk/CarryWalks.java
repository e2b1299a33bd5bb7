package skidway.audit.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Estimates how far people walk from an open strip to the places of pieces, on a grid with sixteen
 * moves from each cell. A person is a point who goes round keep-clears, floor openings and the
 * walls that stand too high to step over when the piece is pulled, and onto higher decks over steps
 * only; stacks are not in the way. Several threads may ask at once.
 */
public final class CarryWalks {
  /** The error that a comparison must allow: half from the moves, half from the cells. */
  public static final double ERROR_SHARE = 0.06;

  private static final double CELL_M = 0.10;

  /** On large sites cells grow so that there are never more. */
  private static final double MOST_CELLS = 400_000;

  private final Site site;
  private final double stepOverM;
  private final double climbFactor;
  private final List<Placement> pieces;

  /** The walls that stand when so many pieces are pulled. */
  private final List<Set<String>> risen;

  private final WalkGrid grid;
  private final Map<Set<String>, Stage> stages = new ConcurrentHashMap<>();

  /** How people walk while certain walls stand, and where they stand to lay each piece. */
  private record Stage(WalkField field, Ground ground, Map<Placement, List<LayingPoint>> laying) {}

  public CarryWalks(Task task, PullOrder order) {
    site = task.site();
    stepOverM = task.settings().get(Setting.STEP_OVER);
    climbFactor = task.settings().get(Setting.CLIMB_FACTOR);
    pieces = order.placements();
    risen = risenByPullIndex();
    double finestM = Math.sqrt(site.boundary().areaM2() / MOST_CELLS);
    grid = new WalkGrid(site.boundary(), Math.max(CELL_M, finestM));
  }

  private List<Set<String>> risenByPullIndex() {
    List<Set<String>> byIndex = new ArrayList<>();
    Set<String> standing = new TreeSet<>();
    for (Wall wall : site.walls()) {
      if (wall.builtM() > stepOverM) {
        standing.add(wall.id());
      }
    }
    for (Placement piece : pieces) {
      byIndex.add(standing);
      if (piece.topM() > stepOverM && !standing.contains(piece.wall().id())) {
        Set<String> more = new TreeSet<>(standing);
        more.add(piece.wall().id());
        standing = more;
      }
    }
    byIndex.add(standing);
    return byIndex;
  }

  /**
   * Metres of walk from a point to each of the pieces with these pull indices, one way, climbs
   * counted; infinite where nobody gets through.
   */
  public double[] metres(Point access, List<Integer> pullIndices) {
    Map<Set<String>, List<Integer>> placesByRisen = new LinkedHashMap<>();
    for (int i = 0; i < pullIndices.size(); i++) {
      placesByRisen.computeIfAbsent(risen.get(pullIndices.get(i)), r -> new ArrayList<>()).add(i);
    }
    double[] metres = new double[pullIndices.size()];
    placesByRisen.forEach(
        (standing, places) -> {
          Stage stage = stages.computeIfAbsent(standing, this::stage);
          double[] found =
              stage.field.metres(
                  access,
                  places.stream().map(i -> sides(stage, pieces.get(pullIndices.get(i)))).toList());
          for (int i = 0; i < found.length; i++) {
            metres[places.get(i)] = found[i];
          }
        });
    return metres;
  }

  /**
   * Metres of walk between two points when so many pieces are pulled, one way, climbs counted;
   * infinite where nobody gets through.
   */
  public double metres(Point from, Point to, int pulled) {
    Stage stage = stages.computeIfAbsent(risen.get(pulled), this::stage);
    return stage.field.metres(from, List.of(List.of(new LayingPoint(to, 0))))[0];
  }

  private Stage stage(Set<String> standing) {
    ClosedWalls walls = ClosedWalls.of(site, stepOverM, wall -> standing.contains(wall.id()));
    SiteObstacles obstacles = new SiteObstacles(site, Double.POSITIVE_INFINITY);
    byte[] closed = obstacles.draw(grid, 0, 1.01 * grid.cellM(), walls);
    Levels levels = new Levels(site, stepOverM);
    List<Stair> stairs = Stair.all(site, climbFactor);
    WalkField field = new WalkField(grid, levels, closed, walls, stairs);
    return new Stage(field, new Ground(site, walls), new ConcurrentHashMap<>());
  }

  private List<LayingPoint> sides(Stage stage, Placement piece) {
    return stage.laying.computeIfAbsent(
        piece, p -> LayingPoint.of(site, stage.ground, p, climbFactor));
  }
}
