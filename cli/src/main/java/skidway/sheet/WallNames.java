package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.site.Point;
import skidway.site.Wall;

/** Places the walls' numbers: white tabs on the outside face, where people stand to build. */
final class WallNames {
  private static final Type TYPE = Type.bold(3.4).centred();
  private static final double[] SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9};
  private static final int MOST_CHARACTERS = 14;

  private record Tab(String text, Box box) {}

  private final List<Tab> tabs = new ArrayList<>();
  private final List<String> untold = new ArrayList<>();

  static WallNames place(List<Wall> walls, Frame frame, Labels labels) {
    WallNames names = new WallNames();
    for (Wall wall : walls) {
      String text = Lettering.shortened(wall.id(), MOST_CHARACTERS);
      double width = TYPE.widthMm(text) + 2;
      double height = TYPE.sizeMm() * 1.35;
      Optional<Box> box = labels.place(candidates(wall, frame, width, height));
      box.ifPresentOrElse(
          b -> names.tabs.add(new Tab(text, b)), () -> names.untold.add("wall " + text));
    }
    return names;
  }

  /** What found no room. */
  List<String> untold() {
    return untold;
  }

  private static List<Candidate> candidates(Wall wall, Frame frame, double width, double height) {
    List<Candidate> all = new ArrayList<>();
    Point out = wall.inward().times(-1);
    double half = Math.abs(out.x()) * width / 2 + Math.abs(out.y()) * height / 2;
    for (int side = 0; side < 2; side++) {
      for (double gap = 0.8; gap < 12; gap += 2) {
        for (int i = 0; i < SHARES.length; i++) {
          double away = frame.mm(wall.thicknessM() / 2) + half + gap;
          double turn = side == 0 ? 1 : -1;
          PagePoint on = frame.at(wall.at(wall.lengthM() * SHARES[i]));
          PagePoint at =
              new PagePoint(on.x() + out.x() * turn * away, on.y() - out.y() * turn * away);
          all.add(new Candidate(Box.around(at, width, height), i * 0.4 + side * 6 + gap));
        }
      }
    }
    return all;
  }

  void draw(Drawing drawing) {
    drawing.open("wall-names");
    for (Tab tab : tabs) {
      drawing.rect(
          tab.box(),
          "rx",
          tab.box().height() / 2,
          "fill",
          Palette.PAPER,
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.4");
      drawing.text(tab.text(), tab.box().centre(), TYPE);
    }
    drawing.close();
  }
}
