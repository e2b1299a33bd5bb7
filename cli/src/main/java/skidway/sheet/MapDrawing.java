package skidway.sheet;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** A map with everything in its place, ready to be drawn. */
record MapDrawing(MapLayout layout, Scene scene) {
  static MapDrawing of(MapView view, List<Paper> papers) {
    return settled(untold -> MapLayout.choose(papers, view, untold));
  }

  static MapDrawing narrow(MapView view) {
    return settled(untold -> MapLayout.narrow(view, untold));
  }

  /** Whatever finds no room on the map is told in the panel, which may leave less room. */
  private static MapDrawing settled(Function<Set<String>, MapLayout> layouts) {
    Set<String> untold = new TreeSet<>();
    while (true) {
      MapLayout layout = layouts.apply(untold);
      Scene scene = new Scene(layout.view(), layout.frame());
      if (!untold.addAll(scene.untold())) {
        return new MapDrawing(layout, scene);
      }
    }
  }

  /** For paper: with a title that says what it is when it lies about alone. */
  MapSheet titled(String name, TitleBlock title) {
    Drawing drawing = begun(name);
    title.draw(drawing, layout.paper());
    return ended(name, drawing);
  }

  /** The same with something drawn over all else on the map. */
  MapSheet titled(String name, TitleBlock title, BiConsumer<Drawing, Frame> over) {
    Drawing drawing = begun(name);
    title.draw(drawing, layout.paper());
    scene.draw(drawing);
    drawing.openWindow("over", layout.frame().area());
    over.accept(drawing, layout.frame());
    drawing.close();
    return withPanel(name, drawing);
  }

  /** For a page that says what it is, with something drawn over all else on the map. */
  MapSheet untitled(String name, BiConsumer<Drawing, Frame> over) {
    Drawing drawing = begun(name);
    scene.draw(drawing);
    drawing.openWindow("over", layout.frame().area());
    over.accept(drawing, layout.frame());
    drawing.close();
    return withPanel(name, drawing);
  }

  /** For a page that says what it is. */
  MapSheet untitled(String name) {
    return ended(name, begun(name));
  }

  /** Without what stands beside the map, for a page that says it otherwise. */
  String alone(String name) {
    Box area = layout.frame().area();
    Drawing drawing = new Drawing(area.x1(), area.y1(), name);
    scene.draw(drawing);
    return drawing.done();
  }

  private Drawing begun(String name) {
    Paper paper = layout.paper();
    Drawing drawing = new Drawing(paper, name);
    drawing.rect(Box.at(0, 0, paper.widthMm(), paper.heightMm()), "fill", Palette.PAPER);
    return drawing;
  }

  private MapSheet ended(String name, Drawing drawing) {
    scene.draw(drawing);
    return withPanel(name, drawing);
  }

  private MapSheet withPanel(String name, Drawing drawing) {
    layout.panel().draw(drawing, layout.panelBox());
    return new MapSheet(name, layout.paper(), drawing.done());
  }

  /** A page with cards alone. */
  MapSheet more(String name, Panel cards, TitleBlock title) {
    Drawing drawing = begun(name);
    title.draw(drawing, layout.paper());
    cards.draw(drawing, layout.wholePage());
    return new MapSheet(name, layout.paper(), drawing.done());
  }
}
