package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.site.Point;

/** Reads what is on the ground: yards, lanes, what keeps clear, and where trucks stand. */
record GroundLines(Setup setup, Draft draft) {
  /** {@code yard north, 12' off W3, full length, wide 10', soil clay}. */
  void yard(LineScanner line) {
    LocatedNode.Text id = line.name("a yard");
    Grammar grammar =
        Region.grammar("a yard", Bounds.DISTANCE)
            .name("soil")
            .quantity("bears", Bounds.ALLOWED_LOAD)
            .quantity("slope", Bounds.SLOPE)
            .quantity("total", Bounds.ZONE_TOTAL);
    Region region = Region.read(line, grammar, setup);
    draft.covers(region.corners());
    Clauses said = region.said();
    draft.add(
        "yards",
        new Thing(id.place())
            .put("id", id)
            .put("outline", region.outline(setup))
            .put("soil", said.word("soil"))
            .put("allowed", said.quantity("bears"), setup.units())
            .put("slope", said.quantity("slope"), setup.units())
            .put("total", said.quantity("total"), setup.units()));
  }

  /** {@code lane L1, 3' off W3, full length, wide 5'}, or from point to point. */
  void lane(LineScanner line) {
    LocatedNode.Text id = line.name("a lane");
    Grammar grammar = Region.grammar("a lane", Bounds.LANE_WIDTH);
    List<Point> way;
    Clauses said;
    if (line.take("from")) {
      way = new Walked(line, setup).points();
      said = grammar.read(line);
    } else {
      said = grammar.read(line);
      Taped.Strip strip = new Taped(said, line, setup.house()).strip();
      double middleM = strip.nearM() + strip.deepM() / 2;
      way =
          List.of(
              strip.wall().at(strip.leftM(), middleM),
              strip.wall().at(strip.leftM() + strip.longM(), middleM));
    }
    draft.covers(way);
    draft.add(
        "lanes",
        new Thing(id.place())
            .put("id", id)
            .put("line", setup.nodes().points(said.start(), way))
            .put("width", said.needed("wide", "wide 5'").node(setup.units())));
  }

  /** {@code tree oak, 15' off W1, 6' from left, radius 3'}: eight corners round the circle. */
  void tree(LineScanner line) {
    LocatedNode.Text id = line.name("a tree");
    Clauses said =
        keeping(new Grammar("a tree").beside().length("radius", Bounds.MARGIN)).read(line);
    double radiusM = said.needed("radius", "radius 3'").si();
    Point middle = new Taped(said, line, setup.house()).point();
    List<Point> corners = new ArrayList<>();
    double cornerM = radiusM / Math.cos(Math.PI / 8); // sides touch the circle, none cuts it
    for (int i = 0; i < 8; i++) {
      corners.add(middle.plus(Point.unit(22.5 + 45 * i).times(cornerM)));
    }
    keepClear(id, said, corners, "tree");
  }

  /** {@code trench T, 12' off W4, full length, wide 4', deep 4'}. */
  void trench(LineScanner line) {
    LocatedNode.Text id = line.name("a trench");
    Grammar grammar = Region.grammar("a trench", Bounds.DISTANCE).length("deep", Bounds.DEPTH);
    Region region = Region.read(line, keeping(grammar), setup);
    Thing thing = keepClear(id, region.said(), region.corners(), "open trench");
    thing.put("excavation", new LocatedNode.Flag(id.place(), true));
    thing.put("depth", region.said().quantity("deep"), setup.units());
  }

  /** {@code keep well, 10' off W2, middle, long 3', wide 3', because "well"}. */
  void keep(LineScanner line) {
    LocatedNode.Text id = line.name("what is kept clear");
    Grammar grammar = keeping(Region.grammar("what is kept clear", Bounds.DISTANCE));
    Region region = Region.read(line, grammar.flag("walkable"), setup);
    region.said().neededWord("because", "because \"well with its cover\"");
    Thing thing = keepClear(id, region.said(), region.corners(), "");
    if (region.said().has("walkable")) {
      thing.put("walkable", new LocatedNode.Flag(id.place(), true));
    }
  }

  /** {@code truck T1, 12' off W2, middle, long 30', wide 9'}: along the wall, or square to it. */
  void truck(LineScanner line) {
    LocatedNode.Text id = line.name("a truck's stand");
    Clauses said =
        new Grammar("a truck's stand")
            .beside()
            .length("long", Bounds.TRUCK_LENGTH)
            .length("wide", Bounds.TRUCK_WIDTH)
            .flag("square")
            .read(line);
    Measured length = said.needed("long", "long 30'");
    Measured width = said.needed("wide", "wide 9'");
    boolean square = said.has("square");
    Taped taped = new Taped(said, line, setup.house());
    SurveyedWall wall = taped.wall();
    double alongM = square ? width.si() : length.si();
    double outM = square ? length.si() : width.si();
    Taped.Strip strip =
        new Taped.Strip(wall, taped.leftM(wall, alongM), taped.outM(wall), alongM, outM);
    draft.covers(strip.corners());
    double headingDeg = wall.headingDeg() + (square ? 90 : 0);
    draft.add(
        "truckStands",
        new Thing(id.place())
            .put("id", id)
            .put("centre", setup.nodes().point(said.start(), strip.centre()))
            .put("heading", Nodes.degrees(id.place(), headingDeg))
            .put("length", length.node(setup.units()))
            .put("width", width.node(setup.units())));
  }

  private static Grammar keeping(Grammar grammar) {
    return grammar.length("margin", Bounds.MARGIN).name("because");
  }

  private Thing keepClear(LocatedNode.Text id, Clauses said, List<Point> corners, String usual) {
    draft.covers(corners);
    Optional<LocatedNode.Text> because = said.word("because");
    Thing thing =
        new Thing(id.place())
            .put("id", id)
            .put("outline", setup.nodes().points(said.start(), corners))
            .put("margin", said.quantity("margin"), setup.units())
            .put(
                "reason",
                because.orElseGet(() -> Nodes.text(id.place(), usual.toLowerCase(Locale.ROOT))));
    draft.add("keepClears", thing);
    return thing;
  }
}
