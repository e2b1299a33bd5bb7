package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Zone;

/**
 * What one page of the map shows: all of the site, or a deck or yard with the edges of what lies
 * beside it.
 *
 * @param zone the deck or yard; empty for all of the site
 * @param task with a site that holds only what shows
 * @param corners that spots are set out from
 * @param extent what must be on the page
 * @param window the upright rectangle of site that shows
 * @param besides what belongs to other decks and yards and shows by its edge alone
 */
record MapView(
    Optional<String> zone,
    Task task,
    List<StackView> stacks,
    List<Spot> waiting,
    List<Reference> corners,
    Extent extent,
    Extent window,
    List<Outline> besides) {
  /** How much of the surroundings is shown round a deck or yard, and at least, metres. */
  private static final double AROUND = 0.06;

  private static final double LEAST_AROUND_M = 1;

  /** A large yard is shown no farther from its stacks than this share of their extent. */
  private static final double AROUND_STACKS = 0.3;

  private static final double LEAST_AROUND_STACKS_M = 5;

  /** All of the site with all stacks. */
  static MapView overview(Task task, Plan plan) {
    return all(
        task, StackView.of(task, plan), plan.waitingPlaces(), SetOut.of(task, plan).references());
  }

  /** The site without a plan, with the spots given by the people there. */
  static MapView siteOnly(Task task) {
    List<StackView> spots =
        task.site().spots().stream().map(s -> new StackView(s, List.of())).toList();
    return all(task, spots, List.of(), List.of());
  }

  private static MapView all(
      Task task, List<StackView> stacks, List<Spot> waiting, List<Reference> corners) {
    Extent extent = Extent.of(task.site(), spots(stacks, waiting));
    Extent bounds = Extent.of(List.of(task.site().boundary()), List.of());
    return new MapView(Optional.empty(), task, stacks, waiting, corners, extent, bounds, List.of());
  }

  /** One for each deck and yard with stacks or waiting places: decks first, in the job's order. */
  List<MapView> zones() {
    List<String> known = task.site().zones().stream().map(Zone::id).toList();
    Stream<String> used = spots(stacks, waiting).stream().map(Spot::zoneId);
    List<String> ids = Stream.concat(known.stream(), used).distinct().toList();
    return ids.stream().map(this::only).filter(v -> !v.spots().isEmpty()).toList();
  }

  private MapView only(String id) {
    List<StackView> its = stacks.stream().filter(s -> s.spot().zoneId().equals(id)).toList();
    List<Spot> waits = waiting.stream().filter(s -> s.zoneId().equals(id)).toList();
    List<Outline> outline = task.site().zone(id).map(Zone::outline).stream().toList();
    List<Outline> others = new ArrayList<>();
    task.site().zones().stream()
        .filter(z -> !z.id().equals(id))
        .forEach(z -> others.add(z.outline()));
    spots(stacks, waiting).stream()
        .filter(s -> !s.zoneId().equals(id))
        .forEach(s -> others.add(s.footprint().outline()));
    List<Spot> spots = spots(its, waits);
    Extent grown = spots.isEmpty() ? extent : near(outline, spots);
    return new MapView(Optional.of(id), task, its, waits, corners, grown, grown, others);
  }

  /** The deck or yard and a little round it, but of a large one only the part with the stacks. */
  private static Extent near(List<Outline> outline, List<Spot> spots) {
    Extent stacks = Extent.of(List.of(), spots);
    Extent zone = Extent.of(outline, spots);
    double stacksM = Math.max(LEAST_AROUND_STACKS_M, AROUND_STACKS * stacks.longerM());
    Extent part = zone.common(stacks.grown(stacksM));
    return part.grown(Math.max(LEAST_AROUND_M, AROUND * part.longerM()));
  }

  /** The same without what lies beyond a window on a deck or yard. */
  MapView within(Extent seen) {
    return zone.map(
            id ->
                new MapView(
                    zone,
                    Crop.of(task, id, seen),
                    stacks,
                    waiting,
                    corners.stream().filter(c -> seen.touches(List.of(c.at()))).toList(),
                    extent,
                    seen,
                    besides.stream().filter(o -> seen.touches(o.corners())).toList()))
        .orElse(this);
  }

  /** Where the machine sets up, as far as it shows. */
  List<MachineStand> machineStands() {
    return task.site().machine().stands().stream()
        .filter(stand -> zone.isEmpty() || window.touches(List.of(stand.at())))
        .toList();
  }

  /** Whether an overhead line itself shows, and not only ground beside it. */
  boolean shows(OverheadLine line) {
    Box box = new Box(window.x0(), window.y0(), window.x1(), window.y1());
    return !Clip.line(unscaled(line.from()), unscaled(line.to()), box).isEmpty();
  }

  private static PagePoint unscaled(Point point) {
    return new PagePoint(point.x(), point.y());
  }

  List<Spot> spots() {
    return spots(stacks, waiting);
  }

  private static List<Spot> spots(List<StackView> stacks, List<Spot> waiting) {
    return Stream.concat(stacks.stream().map(StackView::spot), waiting.stream()).toList();
  }
}
