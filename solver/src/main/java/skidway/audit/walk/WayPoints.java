package skidway.audit.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import skidway.audit.plane.Polygon;
import skidway.audit.plane.Rectangle;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Steps;
import skidway.site.Wall;
import skidway.site.WallOpening;

/**
 * Finds the cells people start from and the cells they have to get to, on one grid.
 *
 * @param widthM how wide their way has to be
 */
record WayPoints(Site site, WalkGrid grid, double widthM) {
  /** Steps and doors are met at any open cell this near (assumption: one stride). */
  private static final double NEAR_M = 0.6;

  /** Beside the first truck stand, on any side of it. */
  Cells starts() {
    return beside(site.truckStands().get(0).area());
  }

  private Cells beside(Footprint truck) {
    Rectangle area = Rectangle.of(truck);
    double besideM = widthM / 2 + grid.cellM();
    double reachM = Math.hypot(truck.lengthM(), truck.widthM()) / 2 + besideM;
    return grid.near(truck.centre(), reachM, p -> area.distanceTo(p) <= besideM);
  }

  /** Foot and top of all steps but those that run through a wall. */
  List<StepLink> links(ClosedWalls walls) {
    return steps()
        .filter(s -> !walls.cut(s.steps().foot(), s.steps().top()))
        .map(s -> new StepLink(foot(s), top(s)))
        .toList();
  }

  /**
   * Both sides of each door, foot and top of all steps; where no machine unloads, also every other
   * truck, because timbers are carried from it.
   */
  List<Target> siteTargets() {
    List<Target> targets = new ArrayList<>();
    if (site.byHand()) {
      site.truckStands().stream()
          .skip(1)
          .map(t -> new Target(t.id(), "truck stand " + t.id(), beside(t.area())))
          .forEach(targets::add);
    }
    for (Wall wall : site.walls()) {
      for (WallOpening opening : wall.openings()) {
        if (opening.door()) {
          String door = "door " + opening.id() + " in wall " + wall.id();
          targets.add(new Target(opening.id(), door + " from inside", side(wall, opening, 1)));
          targets.add(new Target(opening.id(), door + " from outside", side(wall, opening, -1)));
        }
      }
    }
    steps()
        .forEach(
            s -> {
              String id = s.steps().id();
              targets.add(new Target(id, "the foot of steps " + id, foot(s)));
              targets.add(new Target(id, "the top of steps " + id, top(s)));
            });
    return targets;
  }

  /** The middle of a spot's open strip, where people stand to draw pieces. */
  Target openSide(Spot spot) {
    return new Target(
        spot.id(),
        "the open side of " + spot.id(),
        grid.near(spot.access(), widthM / 4, p -> true));
  }

  private record DeckSteps(Deck deck, Steps steps) {}

  private Stream<DeckSteps> steps() {
    return site.decks().stream()
        .flatMap(deck -> deck.steps().stream().map(steps -> new DeckSteps(deck, steps)));
  }

  private Cells foot(DeckSteps s) {
    Polygon deck = Polygon.of(s.deck().outline());
    return grid.near(s.steps().foot(), NEAR_M, p -> !deck.contains(p));
  }

  private Cells top(DeckSteps s) {
    return grid.near(s.steps().top(), NEAR_M, Polygon.of(s.deck().outline())::contains);
  }

  private Cells side(Wall wall, WallOpening door, int towards) {
    Point out = wall.inward().times(towards);
    Point middle = wall.at(door.fromM() + door.widthM() / 2);
    double faceM = wall.thicknessM() / 2;
    return grid.near(
        middle.plus(out.times(faceM + widthM / 2)),
        NEAR_M,
        p -> {
          Point from = p.minus(middle);
          return from.x() * out.x() + from.y() * out.y() > faceM;
        });
  }
}
