package skidway.survey;

import java.util.List;
import skidway.job.Bounds;
import skidway.job.LocatedNode;

/**
 * Reads painted spots: {@code spot A1 in yard, kind stack, 12' off W3, 6' from left, long 17', wide
 * 3', open wall, strip 3'}.
 */
record SpotLines(Setup setup, Draft draft) {
  void spot(LineScanner line) {
    LocatedNode.Text id = line.name("a spot");
    line.expect("in", "spot A1 in yard kind stack ...");
    LocatedNode.Text zone = line.name("a deck or yard");
    Clauses said =
        new Grammar("a spot")
            .beside()
            .length("long", Bounds.SPOT_LENGTH)
            .length("wide", Bounds.SPOT_WIDTH)
            .choice("kind", List.of("stack", "rack"))
            .choice("open", List.of("wall", "away"))
            .length("strip", Bounds.STRIP)
            .quantity("most", Bounds.MASS_LIMIT)
            .read(line);
    Taped.Strip strip = new Taped(said, line, setup.house()).strip();
    LocatedNode.Text open = said.neededWord("open", "open wall, or open away");
    boolean outside = strip.deepM() > 0;
    // Seen along the wall, what is outside has it on the left, what is inside on the right.
    boolean left = open.value().equals("wall") == outside;
    Thing thing =
        new Thing(id.place())
            .put("id", id)
            .put("zone", zone)
            .put("kind", said.neededWord("kind", "kind stack, or kind rack"))
            .put("centre", setup.nodes().point(said.start(), strip.centre()))
            .put("heading", Nodes.degrees(id.place(), strip.wall().headingDeg()))
            .put("length", setup.nodes().length(said.start(), strip.longM()))
            .put("width", said.needed("wide", "wide 3'").node(setup.units()))
            .put("openSide", Nodes.text(open.place(), left ? "left" : "right"))
            .put("strip", said.needed("strip", "strip 3'").node(setup.units()))
            .put("massLimit", said.quantity("most"), setup.units());
    draft.covers(strip.corners());
    draft.add("spots", thing);
  }
}
