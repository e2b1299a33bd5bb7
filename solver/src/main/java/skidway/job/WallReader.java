package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.WallOpening;

/** Reads a wall with its doors and windows. */
final class WallReader {
  private final Problems problems;
  private final Ids walls;

  WallReader(Problems problems, Ids walls) {
    this.problems = problems;
    this.walls = walls;
  }

  Optional<Wall> wall(Fields f) {
    String id = f.id(walls);
    var start = Points.point(f, "from");
    var end = Points.point(f, "to");
    double thicknessM = f.quantity("thickness", Bounds.WALL_THICKNESS);
    Starter starter = f.choice("starter", Starter.FULL);
    double builtM = f.optional("built", Bounds.WALL_BUILT).orElse(0);
    Ids ids = new Ids("opening of wall " + id, problems);
    List<Read<WallOpening>> openings = f.optionalObjects("openings", ids, o -> opening(o, ids));
    Optional<Wall> wall =
        f.finish(
            () -> new Wall(id, start, end, thicknessM, starter, Read.values(openings), builtM));
    wall.ifPresent(w -> new WallChecks(f, w).openingsFit(openings));
    return f.sound() ? wall : Optional.empty();
  }

  private static Optional<WallOpening> opening(Fields f, Ids ids) {
    String id = f.id(ids);
    boolean door = f.choice("kind", List.of("door", "window")) == 0;
    double fromM = f.quantity("from", Bounds.OPENING_FROM);
    double widthM = f.quantity("width", Bounds.OPENING_WIDTH);
    double sillM = f.quantity("sill", Bounds.OPENING_HEIGHT);
    double headM = f.quantity("head", Bounds.OPENING_HEIGHT);
    return f.finish(() -> new WallOpening(id, fromM, widthM, sillM, headM, door));
  }
}
