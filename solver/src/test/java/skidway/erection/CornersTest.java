package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.erection.DrawnHouse.aHouse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.Starter;

/** What walls need of each other where they meet; the expected answers are common practice. */
class CornersTest {
  /** A corner at (5, 0): W1 comes from the west, W2 goes on to the north. */
  private static DrawnHouse corner(Starter second) {
    return aHouse()
        .wall("W1", 0, 0, 5, 0, Starter.FULL, "CCCCCCCCCC\nBBBBBBBBBB\nAAAAAAAAAA")
        .wall("W2", 5, 0, 5, 4, second, "dddddddd\ncccccccc\nbbbbbbbb\naaaaaaaa");
  }

  /** From the bottom: A and a, then b at half a course, B at one, c at one and a half ... */
  @Test
  void timbersOfHalfStartersLieBetweenThoseOfTheCrossingWall() {
    DrawnHouse house = corner(Starter.HALF);
    assertThat(house.needs("a")).isEmpty();
    assertThat(house.needs("A")).isEmpty();
    assertThat(house.needs("b")).isEqualTo("Aa");
    assertThat(house.needs("B")).isEqualTo("Ab");
    assertThat(house.needs("c")).isEqualTo("bB");
    assertThat(house.needs("C")).isEqualTo("Bc");
    assertThat(house.needs("d")).isEqualTo("cC");
  }

  @Test
  void timbersOfOneHeightNeedTheCourseBelowOfBothWalls() {
    DrawnHouse house = corner(Starter.FULL);
    assertThat(house.needs("b")).isEqualTo("Aa");
    assertThat(house.needs("B")).isEqualTo("Aa");
    assertThat(house.needs("c")).isEqualTo("Bb");
  }

  @Test
  void aWallThatRunsHigherNeedsNothingOfOneFarBelow() {
    assertThat(corner(Starter.FULL).needs("d")).isEqualTo("Cc");
    DrawnHouse gable =
        aHouse()
            .wall("W1", 0, 0, 5, 0, Starter.FULL, "AAAAAAAAAA")
            .wall("W2", 5, 0, 5, 4, Starter.FULL, "cccccccc\nbbbbbbbb\naaaaaaaa");
    assertThat(gable.needs("b")).isEqualTo("Aa");
    assertThat(gable.needs("c")).isEqualTo("b");
  }

  @Test
  void wallsThatAreJoinedLaterGoUpApart() {
    DrawnHouse house = corner(Starter.HALF);
    assertThat(house.needs("B", Corners.APART)).isEqualTo("A");
    assertThat(house.needs("c", Corners.APART)).isEqualTo("b");
  }

  @Test
  void onlyTimbersThatReachTheCornerCount() {
    DrawnHouse house =
        aHouse()
            .wall("W1", 0, 0, 5, 0, Starter.FULL, "CCCCCDDDDD\nAAAAAAABBB")
            .wall("W2", 5, 0, 5, 4, Starter.HALF, "ccccdddd\nbbbbbbbb\naaaaaaaa");
    assertThat(house.needs("b")).isEqualTo("Ba");
    assertThat(house.needs("C")).isEqualTo("A");
    assertThat(house.needs("D")).isEqualTo("ABb");
    assertThat(house.needs("c")).isEqualTo("bD");
    assertThat(house.needs("d")).isEqualTo("b");
  }

  /**
   * A partition from the south wall at x = 2 to the north, from its centre line, its face or a
   * little short of it.
   */
  @ParameterizedTest
  @CsvSource({"0", "0.1", "0.15"})
  void aPartitionInterlocksWhereItMeetsAWallInTheMiddle(double fromY) {
    DrawnHouse house =
        aHouse()
            .wall("W1", 0, 0, 5, 0, Starter.FULL, "BBBBBBCCCC\nAAAAAAAAAA")
            .wall("P", 2, fromY, 2, 4, Starter.HALF, "cccccccc\nbbbbbbbb\naaaaaaaa");
    assertThat(house.needs("b")).isEqualTo("Aa");
    assertThat(house.needs("B")).isEqualTo("Ab");
    assertThat(house.needs("C")).isEqualTo("A");
    assertThat(house.needs("c")).isEqualTo("bB");
  }

  @Test
  void aJointAtACrossingPutsBothTimbersUnderTheCrossingOne() {
    DrawnHouse house =
        aHouse()
            .wall("W1", 0, 0, 5, 0, Starter.FULL, "AAAABBBBBB")
            .wall("P", 2.1, -2, 2.1, 2, Starter.HALF, "bbbbbbbb\naaaaaaaa");
    assertThat(house.needs("b")).isEqualTo("ABa");
  }

  @Test
  void wallsThatDoNotMeetNeedNothingOfEachOther() {
    DrawnHouse house =
        aHouse()
            .wall("W1", 0, 0, 5, 0, Starter.FULL, "BBBBBBBBBB\nAAAAAAAAAA")
            .wall("P", 2, 0.4, 2, 4, Starter.HALF, "bbbbbbb\naaaaaaa")
            .wall("Q", 5, 0, 9, 0.2, Starter.HALF, "dddddddd\ncccccccc");
    assertThat(house.needs("B")).isEqualTo("A");
    assertThat(house.needs("b")).isEqualTo("a");
    assertThat(house.needs("d")).isEqualTo("c");
  }
}
