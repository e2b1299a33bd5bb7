package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.erection.Timbers.timber;
import static skidway.testkit.SiteBuilder.door;
import static skidway.testkit.SiteBuilder.wall;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.Point;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.timber.Piece;

class WallPlanTest {
  private static final double COURSE_M = 0.2;
  private static final Wall PLAIN = wall("W1", 0, 0, 10, 0, Starter.FULL);
  private static final Wall WITH_DOOR = wall("W1", 0, 0, 10, 0, Starter.FULL, door("D1", 4.0, 1.0));
  private static final WallOpening WINDOW = new WallOpening("N1", 7.0, 1.5, 0.8, 1.8, false);

  @ParameterizedTest
  @CsvSource({"FULL,1,0", "FULL,2,0.2", "FULL,5,0.8", "HALF,1,0", "HALF,2,0.1", "HALF,5,0.7"})
  void halfStartersLieHalfACourseLower(Starter starter, int course, double bottomM) {
    Wall wall = wall("W1", 0, 0, 10, 0, starter);
    Placement placed = only(wall, timber("W1", course, 1, 3));
    assertThat(placed.bottomM()).isCloseTo(bottomM, within(1e-9));
    assertThat(placed.topM()).isCloseTo(bottomM + 0.2, within(1e-9));
  }

  @Test
  void timbersOfACourseLieEndToEndByPosition() {
    assertThat(froms(PLAIN, timber("W1", 3, 3, 2), timber("W1", 3, 1, 4.9), timber("W1", 3, 2, 3)))
        .containsExactly(0.0, 4.9, 7.9);
  }

  @Test
  void eachCourseStartsAtTheWallsStart() {
    assertThat(froms(PLAIN, timber("W1", 1, 1, 4), timber("W1", 2, 1, 3)))
        .containsExactly(0.0, 0.0);
  }

  @Test
  void aTimberBeyondADoorStartsAtItsRightEdge() {
    assertThat(froms(WITH_DOOR, timber("W1", 1, 1, 4), timber("W1", 1, 2, 5)))
        .containsExactly(0.0, 5.0);
  }

  @Test
  void aTimberCutALittleShortOfADoorStillMeetsIt() {
    assertThat(froms(WITH_DOOR, timber("W1", 1, 1, 3.9), timber("W1", 1, 2, 5)))
        .containsExactly(0.0, 5.0);
  }

  @Test
  void aJointWellBeforeADoorIsNoOpening() {
    assertThat(
            froms(
                WITH_DOOR, timber("W1", 1, 1, 3.5), timber("W1", 1, 2, 0.5), timber("W1", 1, 3, 5)))
        .containsExactly(0.0, 3.5, 5.0);
  }

  /** The door is 2.1 m high: course 11 (2.0 to 2.2 m) is cut by it, course 12 runs over it. */
  @Test
  void coursesAboveADoorRunThrough() {
    assertThat(froms(WITH_DOOR, timber("W1", 11, 1, 4), timber("W1", 11, 2, 5)))
        .containsExactly(0.0, 5.0);
    assertThat(froms(WITH_DOOR, timber("W1", 12, 1, 4), timber("W1", 12, 2, 5)))
        .containsExactly(0.0, 4.0);
  }

  @Test
  void onlyCoursesBetweenSillAndHeadMeetAWindow() {
    Wall wall = wall("W1", 0, 0, 10, 0, Starter.FULL, WINDOW);
    for (int course = 1; course <= 12; course++) {
      boolean beside = course >= 5 && course <= 9;
      assertThat(froms(wall, timber("W1", course, 1, 7), timber("W1", course, 2, 1.5)))
          .as("course %d", course)
          .containsExactly(0.0, beside ? 8.5 : 7.0);
    }
  }

  @Test
  void timbersStepOverEveryOpeningListedInAnyOrder() {
    WallOpening next = new WallOpening("N2", 8.5, 0.5, 0, 2.1, false);
    WallOpening first = new WallOpening("N1", 7.0, 1.5, 0, 2.1, false);
    Wall wall = wall("W1", 0, 0, 10, 0, Starter.FULL, next, first);
    assertThat(froms(wall, timber("W1", 1, 1, 7), timber("W1", 1, 2, 1))).containsExactly(0.0, 9.0);
  }

  @Test
  void aDistanceInThePackingListWins() {
    Piece given = Timbers.timberFrom("W1", 1, 2, 2.0, 6.25);
    assertThat(froms(PLAIN, timber("W1", 1, 1, 4), given, timber("W1", 1, 3, 1)))
        .containsExactly(0.0, 6.25, 8.25);
  }

  @Test
  void theMiddleIsOnTheCentreLineSeenFromTheWallsStart() {
    Wall westward = wall("W3", 10, 8, 0, 8, Starter.FULL);
    List<Placement> placed =
        WallPlan.place(westward, COURSE_M, List.of(timber("W3", 1, 1, 4), timber("W3", 1, 2, 2)));
    assertThat(placed).extracting(Placement::middle).containsExactly(at(8, 8), at(5, 8));
    assertThat(placed.get(1).toM()).isCloseTo(6, within(1e-9));
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static Placement only(Wall wall, Piece piece) {
    return WallPlan.place(wall, COURSE_M, List.of(piece)).get(0);
  }

  private static List<Double> froms(Wall wall, Piece... pieces) {
    return WallPlan.place(wall, COURSE_M, List.of(pieces)).stream()
        .map(p -> Math.round(p.fromM() * 1e9) / 1e9)
        .toList();
  }
}
