package skidway.geometry;

import java.util.List;
import skidway.site.ChartRow;
import skidway.site.Deck;
import skidway.site.KeepClear;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/** Builds bare sites for walking: a boundary with only what a test puts in. */
final class Places {
  private Places() {}

  static Site site(Outline boundary, List<Wall> walls, List<Deck> decks, List<Outline> obstacles) {
    List<KeepClear> keepClears =
        obstacles.stream()
            .map(o -> new KeepClear("K" + obstacles.indexOf(o), o, 0, "test", false))
            .toList();
    Machine machine =
        new Machine(
            "test machine",
            List.of(new MachineStand("M", new Point(0, 0))),
            List.of(new ChartRow(50, 3000)));
    return new Site(
        "test site",
        boundary,
        90,
        0.15,
        walls,
        decks,
        List.of(),
        List.of(),
        keepClears,
        List.of(),
        machine,
        List.of());
  }
}
