package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.erection.DrawnHouse.aHouse;

import org.junit.jupiter.api.Test;
import skidway.site.Starter;

/** Common practice, rule by rule; every expected answer was found by looking at the drawing. */
class PrecedenceTest {
  private static DrawnHouse oneWall(String drawing) {
    return aHouse().wall("W1", 0, 0, 5, 0, Starter.FULL, drawing);
  }

  @Test
  void aPieceNeedsThoseItLiesOn() {
    DrawnHouse house =
        oneWall(
            """
            AAAAABBBBB
            CCCDDDDDEE
            """);
    assertThat(house.needs("A")).isEqualTo("CD");
    assertThat(house.needs("B")).isEqualTo("DE");
    assertThat(house.needs("D")).isEmpty();
  }

  @Test
  void piecesThatOnlyMeetAtAJointNeedNothingOfEachOther() {
    DrawnHouse house =
        oneWall(
            """
            AAAAABBBBB
            CCCCCDDDDD
            """);
    assertThat(house.needs("A")).isEqualTo("C");
    assertThat(house.needs("B")).isEqualTo("D");
  }

  @Test
  void onlyTheCourseRightBelowIsNamed() {
    assertThat(oneWall("AAAA\nBBBB\nCCCC").needs("A")).isEqualTo("B");
  }

  @Test
  void aHeaderLiesOnWhatIsBesideTheOpeningAndDoesNotWaitForTheSill() {
    DrawnHouse house =
        oneWall(
            """
            HHHHHHHHHH
            AAA####BBB
            CCC####DDD
            SSSSSSSSSS
            """);
    assertThat(house.needs("H")).isEqualTo("AB");
    assertThat(house.needs("A")).isEqualTo("C");
    assertThat(house.needs("C")).isEqualTo("S");
  }

  @Test
  void aHeaderOverADoorLiesOnBothSides() {
    DrawnHouse house =
        oneWall(
            """
            HHHHHHHHII
            AAA####BBB
            CCC####DDD
            """);
    assertThat(house.needs("H")).isEqualTo("AB");
    assertThat(house.needs("I")).isEqualTo("B");
  }

  @Test
  void whatHangsOverAnOpeningAloneWaitsForTheSill() {
    DrawnHouse house =
        oneWall(
            """
            AAAHHHHBBB
            CCC####DDD
            SSSSSSSSSS
            """);
    assertThat(house.needs("H")).isEqualTo("S");
  }

  @Test
  void aCourseWellOverTheOpeningNeedsTheHeader() {
    DrawnHouse house =
        oneWall(
            """
            GGGGGGGGGG
            HHHHHHHHHH
            AAA####BBB
            SSSSSSSSSS
            """);
    assertThat(house.needs("G")).isEqualTo("H");
  }

  @Test
  void aGapThatIsNoOpeningIsLookedThrough() {
    DrawnHouse house =
        oneWall(
            """
            HHHHHHHHHH
            AAA....BBB
            SSSTTTUUUU
            """);
    assertThat(house.needs("H")).isEqualTo("TUAB");
  }

  /** The opening begins at 1.5 m; the timber beside it ends 0.1 m before. */
  @Test
  void aTimberCutALittleShortOfAnOpeningStillMeetsIt() {
    DrawnHouse house = oneWall("HHHHHHHHHH\n...####BBB\nSSSSSSSSSS");
    house.piece("A", "W1", 2, 1, 0, 1.4, 0.15);
    assertThat(house.needs("H")).isEqualTo("AB");
  }

  /** 10 mm are a joint, 30 mm are a gap in which the course below shows. */
  @Test
  void aSliverIsAJoint() {
    DrawnHouse house = oneWall("HHHHHHHHHH\n....BBBBBB\nSSSSSSSSSS");
    assertThat(house.piece("A", "W1", 2, 1, 0, 1.99, 0.15).needs("H")).isEqualTo("AB");
    DrawnHouse apart = oneWall("HHHHHHHHHH\n....BBBBBB\nSSSSSSSSSS");
    assertThat(apart.piece("A", "W1", 2, 1, 0, 1.97, 0.15).needs("H")).isEqualTo("SAB");
  }

  /** Scribed timbers are higher than their course; one that bears by its edge alone does not. */
  @Test
  void aTimberHigherThanItsCourseStillLiesOnTheNextOnly() {
    DrawnHouse house = oneWall("HHHHHHHHHH\nMMMMMMMMMM\n..........");
    assertThat(house.piece("L", "W1", 1, 1, 0, 5, 0.33).needs("H")).isEqualTo("M");
    assertThat(house.needs("M")).isEqualTo("L");
  }
}
