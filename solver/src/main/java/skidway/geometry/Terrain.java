package skidway.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Site;

/**
 * Cuts the site into connected walkable areas, level by level, for any set of risen walls. Areas
 * that come out the same for another set of walls are the same object, with all that was computed
 * on them.
 */
final class Terrain {
  private static final double ON_DECK_TOLERANCE = Grid.PER_M / 1000;

  private final Site site;
  private final Walker walker;
  private final List<Level> levels = new ArrayList<>();
  private final Geometry fixed;
  private final Geometry decksGrown;
  private final Map<Polygon, FreeArea> areas = new HashMap<>();

  Terrain(Site site, Walker walker) {
    this.site = site;
    this.walker = walker;
    Geometry boundary = Grid.polygon(site.boundary());
    fixed = Grid.union(fixedObstacles(site));
    Map<Long, List<Geometry>> decksByHeight = new TreeMap<>();
    for (Deck deck : site.decks()) {
      if (deck.heightM() > walker.stepOverM()) {
        decksByHeight
            .computeIfAbsent(Grid.of(deck.heightM()), h -> new ArrayList<>())
            .add(Grid.scaled(Shapes.polygon(deck.outline())));
      }
    }
    List<Geometry> decks = new ArrayList<>();
    decksByHeight.forEach(
        (height, shapes) -> {
          Geometry surface = Grid.common(boundary, Grid.union(shapes));
          levels.add(Level.decks(height / Grid.PER_M, surface));
          decks.add(surface);
        });
    Geometry allDecks = Grid.union(decks);
    decksGrown = allDecks.buffer(ON_DECK_TOLERANCE);
    levels.add(Level.ground(Grid.cut(boundary, allDecks)));
  }

  private static List<Geometry> fixedObstacles(Site site) {
    List<Geometry> shapes = new ArrayList<>();
    for (KeepClear keepClear : site.keepClears()) {
      if (!keepClear.walkable()) {
        shapes.add(Grid.scaled(Shapes.polygon(keepClear.outline())));
      }
    }
    for (Deck deck : site.decks()) {
      for (FloorOpening opening : deck.openings()) {
        shapes.add(Grid.scaled(Shapes.polygon(opening.outline())));
      }
    }
    return shapes;
  }

  Site site() {
    return site;
  }

  Walker walker() {
    return walker;
  }

  /** Decks by growing height, the ground last: who stands on a deck's edge stands on the deck. */
  List<Level> levels() {
    return levels;
  }

  /** The closed pieces of the risen walls. */
  List<Geometry> walls(Set<String> risenWalls) {
    List<Geometry> pieces = new ArrayList<>();
    site.walls().stream()
        .filter(wall -> risenWalls.contains(wall.id()))
        .flatMap(wall -> RisenWall.closedPieces(wall, walker).stream())
        .forEach((Footprint piece) -> pieces.add(Grid.scaled(Shapes.polygon(piece))));
    return pieces;
  }

  /** What is left of a level, as connected areas. */
  List<FreeArea> free(Level level, List<Geometry> walls) {
    List<Geometry> obstacles = new ArrayList<>(List.of(fixed));
    // A wall that stands on a deck is no obstacle on the ground beside it.
    walls.stream()
        .filter(wall -> !(level.isGround() && decksGrown.covers(wall)))
        .forEach(obstacles::add);
    Geometry free = Grid.cut(level.surface(), Grid.union(obstacles));
    List<Geometry> plugs = Pinches.of(free).stream().map(Grid::plug).toList();
    if (!plugs.isEmpty()) {
      free = Grid.cut(free, Grid.union(plugs));
    }
    List<FreeArea> parts = new ArrayList<>();
    for (int i = 0; i < free.getNumGeometries(); i++) {
      if (free.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
        part.normalize();
        parts.add(areas.computeIfAbsent(part, FreeArea::new));
      }
    }
    return parts;
  }
}
