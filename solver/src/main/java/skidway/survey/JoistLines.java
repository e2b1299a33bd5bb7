package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;

/**
 * Reads joists: {@code joists of D square to W1, supports 0 8' 16', first 0, spacing 16", live 40
 * psf}. Supports count from the wall's outside face inwards, the first joist from its left end.
 */
record JoistLines(Setup setup, Draft draft) {
  private static final String EXAMPLE =
      "joists of D square to W1 supports 0 12' 24' first 0 spacing 16\" live 40 psf";

  void joists(LineScanner line) {
    Place place = line.here();
    line.expect("of", EXAMPLE);
    Thing deck = draft.deck(line.name("a deck"), line).thing();
    line.expect("square", EXAMPLE);
    line.expect("to", EXAMPLE);
    SurveyedWall wall = setup.house().wall(line.name("a wall"), line);
    line.expect("supports", EXAMPLE);
    Place at = line.here();
    List<skidway.site.Point> supports = new ArrayList<>();
    while (line.atNumber()) {
      supports.add(wall.at(wall.lengthM() / 2, -line.quantity(Bounds.DISTANCE).si()));
    }
    Clauses said = grammar().read(line);
    double firstM = said.needed("first", "first 0, from the wall's left end").si();
    Thing joists =
        new Thing(place)
            .put("direction", Nodes.degrees(place, wall.headingDeg() + 90))
            .put("spacing", said.needed("spacing", "spacing 16\"").node(setup.units()))
            .put("first", setup.nodes().point(said.start(), wall.at(firstM, 0)))
            .put("supports", setup.nodes().points(at, supports))
            .put("live", said.quantity("live"), setup.units())
            .put("species", said.word("species"))
            .put("grade", said.word("grade"))
            .put("size", said.word("size"))
            .put("dead", said.quantity("dead"), setup.units());
    LocatedNode.Members done = joists.done();
    deck.put("joists", done);
  }

  private static Grammar grammar() {
    return new Grammar("joists")
        .length("spacing", Bounds.JOIST_SPACING)
        .length("first", Bounds.DISTANCE)
        .quantity("live", Bounds.LIVE_LOAD)
        .name("species")
        .name("grade")
        .name("size")
        .quantity("dead", Bounds.DEAD_LOAD);
  }
}
