package skidway.sheet;

import java.util.List;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Draws the site to scale with its stacks, from far to near: a page with all of the site and every
 * stack's code, then a page for each deck and yard that has stacks, with what lies in each from the
 * side. Each page has the largest round scale that fits.
 */
public final class StackMap {
  private StackMap() {}

  /**
   * The pages for a printer, all of the site first. Each is a drawing that measures right when it
   * is printed at full size.
   *
   * @param fingerprint of the plan; its beginning is printed on the map
   */
  public static List<MapSheet> sheets(Task task, Plan plan, String fingerprint, PaperSize paper) {
    return new MapPages(task, plan, fingerprint).on(List.of(paper.lying(), paper.standing()));
  }

  /** The same for a phone: as wide as its screen, with everything else below. */
  static List<MapSheet> narrow(Task task, Plan plan, String fingerprint) {
    return new MapPages(task, plan, fingerprint).narrow();
  }

  /** The site without a plan, with the spots given by the people there. */
  public static MapSheet siteOnly(Task task, Paper paper) {
    MapDrawing drawing = MapDrawing.of(MapView.siteOnly(task), List.of(paper));
    String scale = drawing.layout().frame().scale() + " at full size";
    TitleBlock title = new TitleBlock("Site before any plan", task.jobName(), "", scale);
    return drawing.titled("Site before any plan", title);
  }

  /** All of the site, and each deck and yard that something stands on. */
  static List<MapView> views(Task task, Plan plan) {
    MapView overview = MapView.overview(task, plan);
    return Stream.concat(Stream.of(overview), overview.zones().stream()).toList();
  }
}
