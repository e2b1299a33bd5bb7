package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.audit.plane.Polygon;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

/** A grid of ten by ten cells of 1 m with a closed rim: middles lie at 0.5, 1.5, … */
final class WalkGridTest {
  private static final byte MARK = 1;
  private final WalkGrid grid = new WalkGrid(Outline.box(0, 0, 10, 10), 1);
  private final byte[] marks = new byte[grid.size()];

  private int marked() {
    int count = 0;
    for (byte mark : marks) {
      count += mark;
    }
    return count;
  }

  @Test
  void marksTheInsideOfARectangleAlsoWithNoDistance() {
    grid.markNear(marks, MARK, new Footprint(new Point(5, 5), 0, 4, 2), 0);
    assertThat(marked()).isEqualTo(8);
  }

  @Test
  void doesNotMarkWhatIsExactlyAtTheDistance() {
    grid.markNear(marks, MARK, new Footprint(new Point(5, 5), 0, 4, 2), 0.5);
    assertThat(marked()).isEqualTo(8);
    grid.markNear(marks, MARK, new Footprint(new Point(5, 5), 0, 4, 2), 0.51);
    assertThat(marked()).isEqualTo(8 + 12);
  }

  @Test
  void marksTheInsideOfAPolygonWithANotch() {
    Outline ell =
        new Outline(
            List.of(
                new Point(1, 1),
                new Point(5, 1),
                new Point(5, 3),
                new Point(3, 3),
                new Point(3, 5),
                new Point(1, 5)));
    grid.markInside(marks, MARK, Polygon.of(ell));
    assertThat(marked()).isEqualTo(12);
    grid.clearInside(marks, MARK, Polygon.of(Outline.box(1, 1, 3, 3)));
    assertThat(marked()).isEqualTo(8);
  }

  @Test
  void neverMarksTheRimFromInside() {
    grid.markInside(marks, MARK, Polygon.of(Outline.box(-5, -5, 15, 15)));
    assertThat(marked()).isEqualTo(100);
  }

  @Test
  void findsTheCellsNearAPointThatAreWanted() {
    assertThat(grid.near(new Point(5, 5), 0.8, p -> true).stream()).hasSize(4);
    assertThat(grid.near(new Point(5, 5), 0.8, p -> p.x() > 5).stream()).hasSize(2);
    assertThat(grid.near(new Point(99, 99), 0.8, p -> true).stream()).isEmpty();
  }
}
