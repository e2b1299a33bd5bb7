package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Marks the points that spots are set out from: a ring on the corner, its letter beside it. */
final class CornerLetters {
  static final double RING = 0.85;

  private static final Type TYPE = Type.bold(3).centred();

  private record Tab(String text, Box box, PagePoint corner) {}

  private final List<PagePoint> corners = new ArrayList<>();
  private final List<Tab> tabs = new ArrayList<>();
  private final List<String> untold = new ArrayList<>();

  static CornerLetters place(List<Reference> references, Frame frame, Labels labels) {
    CornerLetters letters = new CornerLetters();
    for (Reference reference : references) {
      PagePoint at = frame.at(reference.at());
      letters.corners.add(at);
      Box ring = Box.around(at, 2 * RING, 2 * RING);
      double width = TYPE.widthMm(reference.name()) + 1.4;
      Optional<Box> box = labels.place(Candidates.around(ring, width, TYPE.sizeMm() * 1.25));
      box.ifPresentOrElse(
          b -> letters.tabs.add(new Tab(reference.name(), b, at)),
          () -> letters.untold.add("corner " + reference.name()));
      labels.block(ring);
    }
    return letters;
  }

  /** What found no room. */
  List<String> untold() {
    return untold;
  }

  void draw(Drawing drawing) {
    drawing.open("tape-corners");
    for (Tab tab : tabs) {
      Leader leader = new Leader(tab.corner(), tab.box().nearest(tab.corner()));
      leader.draw(drawing);
    }
    corners.forEach(at -> ring(drawing, at));
    for (Tab tab : tabs) {
      drawing.rect(tab.box(), "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.35");
      drawing.text(tab.text(), tab.box().centre(), TYPE);
    }
    drawing.close();
  }

  static void ring(Drawing drawing, PagePoint at) {
    drawing.circle(at, RING, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.45");
  }
}
