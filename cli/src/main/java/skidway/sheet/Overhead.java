package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.layout.LineClearance;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;

/** Draws overhead lines with the ground that stacks, machine and loads keep clear of. */
final class Overhead {
  private static final int BEND = 8;

  /** From one lightning mark on a line to the next, mm. */
  private static final double MARK = 22;

  /** How far beyond the site's boundary a line is shown, mm. */
  private static final double BEYOND = 3;

  private Overhead() {}

  /** The clear ground, under everything else. */
  static void drawBands(Drawing drawing, Task task, Frame frame) {
    drawing.open("overhead-bands");
    for (OverheadLine line : task.site().overheadLines()) {
      List<PagePoint> shown = Clip.polygon(frame.at(keptClear(line, task)), area(task, frame));
      if (!shown.isEmpty()) {
        drawing.polygon(
            shown,
            "fill",
            Palette.KEEP_CLEAR_MARGIN,
            "fill-opacity",
            "0.6",
            "stroke",
            Palette.KEEP_CLEAR,
            "stroke-width",
            "0.25",
            "stroke-dasharray",
            "2 1.2");
      }
    }
    drawing.close();
  }

  /** The lines themselves, over everything else on the ground. */
  static void drawLines(Drawing drawing, Task task, Frame frame) {
    drawing.open("overhead-lines");
    for (OverheadLine line : task.site().overheadLines()) {
      List<PagePoint> ends = ends(line, task, frame);
      if (!ends.isEmpty()) {
        drawing.open("overhead-line", "data-line", line.id()).hint(line.id());
        wire(drawing, ends.get(0), ends.get(1));
        drawing.close();
      }
    }
    drawing.close();
  }

  /** The corners of the ground that is kept clear for a line. */
  static List<Point> keptClear(OverheadLine line, Task task) {
    return band(line, LineClearance.metres(line, task.settings())).corners();
  }

  /** A wire with lightning marks, so that nobody takes it for an edge. */
  static void wire(Drawing drawing, PagePoint from, PagePoint to) {
    drawing.line(from, to, "stroke", Palette.PAPER, "stroke-width", "1.3");
    drawing.line(from, to, "stroke", Palette.KEEP_CLEAR, "stroke-width", "0.6");
    double lengthMm = from.distanceTo(to);
    int marks = (int) Math.max(1, Math.floor(lengthMm / MARK));
    for (int i = 0; i < marks; i++) {
      lightning(drawing, from.towards(to, (i + 0.5) / marks));
    }
  }

  private static void lightning(Drawing drawing, PagePoint at) {
    double[][] shape = {{0.5, -2}, {-0.9, 0.3}, {-0.1, 0.3}, {-0.5, 2}, {0.9, -0.3}, {0.1, -0.3}};
    List<PagePoint> corners = new ArrayList<>();
    for (double[] xy : shape) {
      corners.add(new PagePoint(at.x() + xy[0], at.y() + xy[1]));
    }
    drawing.polygon(
        corners,
        "fill",
        Palette.KEEP_CLEAR,
        "stroke",
        Palette.PAPER,
        "stroke-width",
        "0.5",
        "paint-order",
        "stroke");
  }

  /** The ends of what is shown of a line, or nothing. */
  static List<PagePoint> ends(OverheadLine line, Task task, Frame frame) {
    return Clip.line(frame.at(line.from()), frame.at(line.to()), area(task, frame));
  }

  /** A little more than the site: the line runs on. */
  private static Box area(Task task, Frame frame) {
    Box site = Box.of(frame.at(task.site().boundary())).grown(BEYOND);
    Box area = frame.area();
    return new Box(
        Math.max(site.x0(), area.x0()),
        Math.max(site.y0(), area.y0()),
        Math.min(site.x1(), area.x1()),
        Math.min(site.y1(), area.y1()));
  }

  /** Everything nearer to the line than its clearance, round about its ends too. */
  private static Outline band(OverheadLine line, double clearM) {
    Point way = line.to().minus(line.from());
    double headingDeg = Math.toDegrees(Math.atan2(way.y(), way.x()));
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i <= BEND; i++) {
      double turnDeg = headingDeg - 90 + 180.0 * i / BEND;
      corners.add(line.to().plus(Point.unit(turnDeg).times(clearM)));
    }
    for (int i = 0; i <= BEND; i++) {
      double turnDeg = headingDeg + 90 + 180.0 * i / BEND;
      corners.add(line.from().plus(Point.unit(turnDeg).times(clearM)));
    }
    return new Outline(corners);
  }
}
