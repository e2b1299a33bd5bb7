package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/** Proposes places for a label of a given size. */
final class Candidates {
  private static final double[] GAPS = {1.2, 2.5, 4, 6, 9, 12, 16, 21, 27, 34, 42, 52, 64, 80};
  private static final int PER_SIDE = 10;
  private static final int GRID = 16;

  private Candidates() {}

  /** Round about a box, the nearest ones cheapest. */
  static List<Candidate> around(Box thing, double width, double height) {
    List<Candidate> all = new ArrayList<>();
    for (double gap : GAPS) {
      for (int i = 0; i <= PER_SIDE; i++) {
        double share = (double) i / PER_SIDE;
        double cost = gap + Math.abs(share - 0.5);
        double x = thing.x0() - width + share * (thing.width() + width);
        double y = thing.y0() - height + share * (thing.height() + height);
        all.add(new Candidate(Box.at(x, thing.y0() - gap - height, width, height), cost));
        all.add(new Candidate(Box.at(x, thing.y1() + gap, width, height), cost));
        all.add(new Candidate(Box.at(thing.x0() - gap - width, y, width, height), cost));
        all.add(new Candidate(Box.at(thing.x1() + gap, y, width, height), cost));
      }
    }
    return all;
  }

  /** Within a polygon, the upper left corner cheapest. */
  static List<Candidate> within(List<PagePoint> polygon, double width, double height) {
    Box box = Box.of(polygon).grown(-0.8);
    List<Candidate> all = new ArrayList<>();
    for (int row = 0; row <= GRID; row++) {
      for (int column = 0; column <= GRID; column++) {
        double x = box.x0() + (box.width() - width) * column / GRID;
        double y = box.y0() + (box.height() - height) * row / GRID;
        Box here = Box.at(x, y, width, height);
        if (Inside.polygon(polygon, here)) {
          all.add(new Candidate(here, column * 0.22 + row * 0.28));
        }
      }
    }
    return all;
  }

  /** On the middle of a polygon first, then anywhere within it. */
  static List<Candidate> central(List<PagePoint> polygon, double width, double height) {
    PagePoint middle = Box.of(polygon).centre();
    List<Candidate> all = new ArrayList<>();
    Box here = Box.around(middle, width, height);
    if (Inside.polygon(polygon, here)) {
      all.add(new Candidate(here, 0));
    }
    for (Candidate other : within(polygon, width, height)) {
      all.add(new Candidate(other.box(), 0.5 + 0.2 * other.box().centre().distanceTo(middle)));
    }
    return all;
  }

  /** Centred on points along a line. */
  static List<Candidate> along(PagePoint from, PagePoint to, double width, double height) {
    List<Candidate> all = new ArrayList<>();
    for (int i = 1; i < 20; i++) {
      double share = i / 20.0;
      all.add(
          new Candidate(
              Box.around(from.towards(to, share), width, height), Math.abs(share - 0.5) * 8));
    }
    return all;
  }
}
