package skidway.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.site.Point;

/** Reads decks, and the holes in them and the steps onto them. */
record DeckLines(Setup setup, Draft draft) {
  /**
   * Where people step off onto the deck, inwards from the wall's inside face: as far from it as a
   * piece is laid from (0.3 m, assumption).
   */
  private static final double STEPPED_IN_M = 0.3;

  /** {@code deck D under house overhang 3" high 2' floor 50 psf}, or a strip beside a wall. */
  void deck(LineScanner line) {
    LocatedNode.Text id = line.name("a deck");
    Grammar grammar =
        Region.grammar("a deck", Bounds.DISTANCE)
            .length("overhang", Bounds.MARGIN)
            .length("high", Bounds.DECK_HEIGHT)
            .quantity("floor", Bounds.ALLOWED_LOAD)
            .quantity("total", Bounds.ZONE_TOTAL);
    Place place = line.here();
    boolean under = line.take("under");
    if (under) {
      line.expect("house", "deck D under house high 2' floor 50 psf");
    }
    Region region =
        under ? underHouse(grammar.read(line), line) : Region.read(line, grammar, setup);
    Clauses said = region.said();
    Thing thing =
        new Thing(id.place())
            .put("id", id)
            .put("outline", setup.nodes().points(place, region.corners()))
            .put("height", said.needed("high", "high 2', from the ground").node(setup.units()))
            .put(
                "allowed",
                said.needed("floor", "floor 50 psf, as its designer says").node(setup.units()))
            .put("total", said.quantity("total"), setup.units());
    double overhangM = under ? said.quantity("overhang").map(Measured::si).orElse(0.0) : 0;
    draft.covers(region.corners());
    draft.deck(id.value(), new Draft.Deck(thing, overhangM));
  }

  private Region underHouse(Clauses said, LineScanner line) {
    double overhangM = said.quantity("overhang").map(Measured::si).orElse(0.0);
    Optional<Ring> outside = setup.house().outside();
    if (outside.isEmpty()) {
      return new Region(
          said,
          new Taped.Strip(setup.house().wall(Nodes.text(said.start(), ""), line), 0, 0, 1, -1)
              .corners());
    }
    Ring ring = outside.get();
    return new Region(
        said, ring.inside(Collections.nCopies(ring.corners().size(), -overhangM)).corners());
  }

  /** {@code hole stair in D, 12' inside W1, 4' from left, long 10' wide 3'}. */
  void hole(LineScanner line) {
    LocatedNode.Text id = line.name("a hole");
    line.expect("in", "hole stair in D 12' inside W1 4' from left long 10' wide 3'");
    Draft.Deck deck = draft.deck(line.name("a deck"), line);
    Region region = Region.read(line, Region.grammar("a hole", Bounds.DISTANCE), setup);
    new Nested(deck.thing())
        .add("openings", new Thing(id.place()).put("id", id).put("outline", region.outline(setup)));
  }

  /** {@code steps S onto D at W1, 20' from left, run 3', wide 3'}. */
  void steps(LineScanner line) {
    LocatedNode.Text id = line.name("steps");
    line.expect("onto", "steps S onto D at W1 20' from left run 3' wide 3'");
    Draft.Deck deck = draft.deck(line.name("a deck"), line);
    Grammar grammar = new Grammar("steps").length("wide", Bounds.STEPS_WIDTH);
    if (line.take("from")) {
      List<Point> ends = new Walked(line, setup).points();
      put(id, deck, grammar.read(line), ends.get(0), ends.get(ends.size() - 1));
      return;
    }
    line.expect("at", "steps S onto D at W1 20' from left run 3' wide 3'");
    SurveyedWall wall = setup.house().wall(line.name("a wall"), line);
    Clauses said = grammar.along().length("run", Bounds.DISTANCE).read(line);
    double wideM = said.needed("wide", "wide 3'").si();
    double alongM = new Taped(said, line, setup.house()).leftM(wall, wideM) + wideM / 2;
    double runM = said.needed("run", "run 3', out from the deck's edge").si();
    put(
        id,
        deck,
        said,
        wall.at(alongM, deck.overhangM() + runM),
        wall.at(alongM, -wall.thicknessM() - STEPPED_IN_M));
  }

  private void put(LocatedNode.Text id, Draft.Deck deck, Clauses said, Point foot, Point top) {
    draft.covers(List.of(foot));
    new Nested(deck.thing())
        .add(
            "steps",
            new Thing(id.place())
                .put("id", id)
                .put("foot", setup.nodes().point(said.start(), foot))
                .put("top", setup.nodes().point(said.start(), top))
                .put("width", said.needed("wide", "wide 3'").node(setup.units())));
  }

  /** A list within a thing, which grows line by line. */
  private record Nested(Thing owner) {
    void add(String name, Thing thing) {
      List<LocatedNode> nodes = new ArrayList<>();
      owner.get(name).ifPresent(list -> nodes.addAll(((LocatedNode.Items) list).nodes()));
      LocatedNode.Members done = thing.done();
      nodes.add(done);
      owner.put(name, new LocatedNode.Items(done.place(), nodes));
    }
  }
}
