package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import skidway.site.Point;
import skidway.site.Wall;

class PrecedencePropertyTest {
  private static final int MOST_PIECES = 26;

  @Property(seed = "20310505", tries = 300)
  void whatAPieceNeedsIsPulledBeforeIt(@ForAll long seed) {
    Precedence precedence = SmallHouses.house(new Random(seed), MOST_PIECES).precedence();
    PullOrder order = precedence.order();
    for (Placement piece : order.placements()) {
      for (Placement need : precedence.needs(piece)) {
        assertThat(order.indexOf(need.piece())).isLessThan(order.indexOf(piece.piece()));
        assertThat(need.bottomM()).isLessThan(piece.bottomM());
      }
    }
  }

  /** The rule again, pair by pair and column by column of the drawing. */
  @Property(seed = "20310505", tries = 300)
  void aPieceNeedsWhatAColumnThroughItMeetsNext(@ForAll long seed) {
    Precedence precedence = SmallHouses.house(new Random(seed), MOST_PIECES).precedence();
    List<Placement> all = precedence.order().placements();
    for (Placement upper : all) {
      assertThat(precedence.needs(upper))
          .as(upper.piece().mark())
          .containsExactlyElementsOf(
              all.stream().filter(lower -> liesUnder(lower, upper, all)).toList());
    }
  }

  private static boolean liesUnder(Placement lower, Placement upper, List<Placement> all) {
    if (lower.wall().equals(upper.wall())) {
      for (int cell = 0; cell < 8; cell++) {
        double at = (cell + 0.5) * DrawnHouse.CELL_M;
        if (covers(lower, at) && covers(upper, at) && isNext(lower, upper, all, at, 0)) {
          return true;
        }
      }
      return false;
    }
    for (Point corner : List.of(upper.wall().start(), upper.wall().end())) {
      boolean meets = ends(lower.wall(), corner);
      double lowerAt = lower.wall().start().distanceTo(corner);
      double upperAt = upper.wall().start().distanceTo(corner);
      if (meets
          && reaches(lower, lowerAt)
          && reaches(upper, upperAt)
          && upper.bottomM() - lower.topM() < DrawnHouse.COURSE_M * 0.6
          && isNext(lower, upper, all, lowerAt, 0.1)) {
        return true;
      }
    }
    return false;
  }

  private static boolean ends(Wall wall, Point corner) {
    return wall.start().equals(corner) || wall.end().equals(corner);
  }

  private static boolean isNext(
      Placement lower, Placement upper, List<Placement> all, double lowerAt, double shortM) {
    return lower.bottomM() < upper.bottomM() - 0.01
        && all.stream()
            .filter(p -> p.wall().equals(lower.wall()))
            .filter(p -> p.fromM() - shortM <= lowerAt && p.toM() + shortM >= lowerAt)
            .noneMatch(
                p -> p.bottomM() > lower.bottomM() + 0.01 && p.bottomM() < upper.bottomM() - 0.01);
  }

  private static boolean covers(Placement p, double at) {
    return p.fromM() < at && p.toM() > at;
  }

  private static boolean reaches(Placement p, double at) {
    return p.fromM() - 0.1 <= at && p.toM() + 0.1 >= at;
  }
}
