package skidway.survey;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.site.Outline;
import skidway.site.Point;

/** Reads what goes round or over everything else: the boundary and overhead lines. */
record EdgeLines(Setup setup, Draft draft) {
  /** A line that is told from a wall goes on this far beyond the site. */
  private static final double BEYOND_M = 10;

  /** {@code boundary around 30'}, or {@code boundary outline from ...}. */
  LocatedNode boundary(LineScanner line) {
    Place place = line.here();
    if (line.take("outline")) {
      List<Point> corners = new Walked(line, setup).outline();
      line.end("a boundary is its outline alone");
      draft.covers(corners);
      return setup.nodes().points(place, corners);
    }
    Clauses said = new Grammar("a boundary").length("around", Bounds.DISTANCE).read(line);
    double byM = said.needed("around", "boundary around 30', or boundary outline from ...").si();
    DoubleSummaryStatistics x = draft.covered().stream().mapToDouble(Point::x).summaryStatistics();
    DoubleSummaryStatistics y = draft.covered().stream().mapToDouble(Point::y).summaryStatistics();
    if (x.getCount() == 0) {
      throw new Misread(); // nothing could be read that it would go round; that was told
    }
    List<Point> corners =
        Outline.box(x.getMin() - byM, y.getMin() - byM, x.getMax() + byM, y.getMax() + byM)
            .corners();
    draft.covers(corners);
    return setup.nodes().points(place, corners);
  }

  /**
   * {@code wire street, 40' off W1, voltage 7.2 kV}: along the wall and on over the whole site, or
   * from point to point.
   */
  void wire(LineScanner line) {
    LocatedNode.Text id = line.name("an overhead line");
    Grammar grammar =
        new Grammar("an overhead line")
            .length("off", Bounds.DISTANCE)
            .quantity("voltage", Bounds.VOLTAGE)
            .length("clearance", Bounds.LINE_CLEARANCE);
    List<Point> ends;
    Clauses said;
    if (line.take("from")) {
      ends = new Walked(line, setup).points();
      said = grammar.read(line);
    } else {
      said = grammar.read(line);
      double offM = said.needed("off", "40' off W1").si();
      ends = across(setup.house().wall(said.neededWord("off", "40' off W1"), line), offM);
    }
    draft.add(
        "overheadLines",
        new Thing(id.place())
            .put("id", id)
            .put("from", setup.nodes().point(said.start(), ends.get(0)))
            .put("to", setup.nodes().point(said.start(), ends.get(ends.size() - 1)))
            .put("voltage", said.needed("voltage", "voltage 7.2 kV").node(setup.units()))
            .put("clearance", said.quantity("clearance"), setup.units()));
  }

  private List<Point> across(SurveyedWall wall, double offM) {
    List<Point> all = new ArrayList<>(draft.covered());
    all.add(wall.left());
    all.add(wall.right());
    DoubleSummaryStatistics along =
        all.stream().mapToDouble(p -> p.minus(wall.left()).dot(wall.along())).summaryStatistics();
    return List.of(
        wall.at(along.getMin() - BEYOND_M, offM), wall.at(along.getMax() + BEYOND_M, offM));
  }
}
