package skidway.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import skidway.job.Bounds;
import skidway.job.LocatedNode;

/** Reads doors and windows: {@code window N1 in W2, 6' from left, wide 4', sill 3', head 6'8"}. */
final class OpeningLines {
  private final Setup setup;
  private final Map<String, List<Thing>> byWall = new LinkedHashMap<>();

  OpeningLines(Setup setup) {
    this.setup = setup;
  }

  /** A door's sill is the wall's foot unless it is said. */
  void opening(LineScanner line, String kind) {
    LocatedNode.Text id = line.name("a " + kind);
    line.expect("in", kind + " D1 in W1 10' from left wide 3' head 6'8\"");
    LocatedNode.Text wallName = line.name("a wall");
    SurveyedWall wall = setup.house().wall(wallName, line);
    Clauses said =
        new Grammar("a " + kind)
            .along()
            .length("wide", Bounds.OPENING_WIDTH)
            .length("sill", Bounds.OPENING_HEIGHT)
            .length("head", Bounds.OPENING_HEIGHT)
            .read(line);
    Measured wide = said.needed("wide", "wide 3'");
    Measured head = said.needed("head", "head 6'8\", from the wall's foot");
    double fromM = new Taped(said, line, setup.house()).leftM(wall, wide.si()) - wall.startsAtM();
    Thing thing =
        new Thing(id.place())
            .put("id", id)
            .put("kind", Nodes.text(id.place(), kind))
            .put("from", setup.nodes().length(said.start(), fromM))
            .put("width", wide.node(setup.units()));
    if (kind.equals("door") && !said.has("sill")) {
      thing.put("sill", setup.nodes().length(said.start(), 0));
    } else {
      thing.put("sill", said.needed("sill", "sill 3', from the wall's foot").node(setup.units()));
    }
    thing.put("head", head.node(setup.units()));
    byWall.computeIfAbsent(wallName.value(), w -> new ArrayList<>()).add(thing);
  }

  List<Thing> of(String wall) {
    return byWall.getOrDefault(wall, List.of());
  }
}
