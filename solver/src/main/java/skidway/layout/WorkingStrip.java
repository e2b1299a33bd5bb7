package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Wall;

/** Checks workingStrip: no stack stands where people and ladders work along a wall's faces. */
final class WorkingStrip implements PlacementCheck {
  private record Strip(String wall, Rectangle rectangle) {}

  private final List<Strip> strips;

  WorkingStrip(Site site, Settings settings) {
    strips =
        site.walls().stream()
            .map(wall -> new Strip("wall " + wall.id(), Rectangle.of(along(wall, settings))))
            .toList();
  }

  /** The ground on which people work along a wall, both faces and the wall itself. */
  static Footprint along(Wall wall, Settings settings) {
    double insideM = settings.get(Setting.WALL_STRIP_INSIDE);
    double outsideM = settings.get(Setting.WALL_STRIP_OUTSIDE);
    Footprint foot = wall.footprint();
    return new Footprint(
        foot.centre().plus(wall.inward().times((insideM - outsideM) / 2)),
        foot.headingDeg(),
        foot.lengthM(),
        foot.widthM() + insideM + outsideM);
  }

  @Override
  public List<Finding> findings(Spot spot) {
    Rectangle footprint = Rectangle.of(spot.footprint());
    List<Finding> found = new ArrayList<>();
    for (Strip strip : strips) {
      if (strip.rectangle.meets(footprint)) {
        found.add(
            new Finding(
                Rule.WORKING_STRIP, strip.wall, () -> -strip.rectangle.overlapM(footprint), 0));
      }
    }
    return found;
  }
}
