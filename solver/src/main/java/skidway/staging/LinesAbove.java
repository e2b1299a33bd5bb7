package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.Stretch;
import skidway.layout.LineClearance;
import skidway.plan.Task;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.timber.Bundle;

/** Tells whether the way of a load stays clear of all overhead lines, seen from above. */
final class LinesAbove {
  private record Line(Stretch stretch, double clearanceM) {}

  private final List<Line> lines = new ArrayList<>();

  LinesAbove(Task task) {
    for (OverheadLine line : task.site().overheadLines()) {
      lines.add(
          new Line(
              new Stretch(line.from(), line.to()), LineClearance.metres(line, task.settings())));
    }
  }

  /**
   * Whether a bundle on the hook keeps clear, whichever way it turns.
   *
   * @param way of the hook, corner by corner
   */
  boolean clear(List<Point> way, Bundle bundle) {
    double reachM = lines.isEmpty() ? 0 : Math.hypot(bundle.lengthM(), bundle.widthM()) / 2;
    for (Line line : lines) {
      for (int i = 1; i < way.size(); i++) {
        double apartM = new Stretch(way.get(i - 1), way.get(i)).distanceTo(line.stretch());
        if (apartM - reachM < line.clearanceM() - 1e-9) {
          return false;
        }
      }
    }
    return true;
  }
}
