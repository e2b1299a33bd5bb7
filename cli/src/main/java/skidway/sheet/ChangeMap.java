package skidway.sheet;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.site.Spot;

/**
 * Draws what a revision moves: the map of the whole site as it is in the end, an arrow for each
 * move, and a dotted edge round each spot that is left empty.
 */
public final class ChangeMap {
  private static final String MOVES = "Moves";
  private static final String KEY =
      "arrows: moves before the next truck, in the order of their numbers; dashed: set aside;"
          + " dotted: left empty";
  private static final String AFTERWARDS = "As it will lie";
  private static final String NO_MOVES = "nothing that lies already is lifted";

  private final Task task;
  private final Plan plan;
  private final boolean lifts;

  private ChangeMap(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    lifts = !MoveArrow.lifts(task, plan).isEmpty();
  }

  /**
   * For a printer, on whichever of its sides makes the map largest.
   *
   * @param task what was left to do when the revision was made
   */
  public static MapSheet sheet(Task task, Plan plan, int since, PaperSize paper) {
    ChangeMap map = new ChangeMap(task, plan);
    MapDrawing drawing =
        MapDrawing.of(MapView.overview(task, plan), List.of(paper.lying(), paper.standing()));
    TitleBlock title =
        new TitleBlock(
            map.name(),
            task.jobName(),
            "Revision " + plan.revision(),
            "instead of revision " + since + " · " + map.key());
    return drawing.titled(map.name(), title, map::draw);
  }

  private String name() {
    return lifts ? MOVES : AFTERWARDS;
  }

  private String key() {
    return lifts ? KEY : NO_MOVES;
  }

  /** For a phone, as wide as its screen. */
  static MapSheet narrow(Task task, Plan plan) {
    ChangeMap map = new ChangeMap(task, plan);
    return MapDrawing.narrow(MapView.overview(task, plan)).untitled(map.name(), map::draw);
  }

  private void draw(Drawing drawing, Frame frame) {
    Set<String> used = plan.spots().stream().map(Spot::id).collect(Collectors.toSet());
    task.start().stacks().stream()
        .map(Stack::spot)
        .filter(spot -> !used.contains(spot.id()))
        .forEach(spot -> MoveArrow.drawLeft(drawing, spot.footprint(), frame));
    MoveArrow.of(task, plan).forEach(arrow -> arrow.draw(drawing, frame));
  }
}
