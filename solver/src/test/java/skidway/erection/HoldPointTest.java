package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static skidway.erection.DrawnHouse.aHouse;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import skidway.site.Starter;

class HoldPointTest {
  /** Pull order: A B, a b c, C D, d e, E F; worked out by hand from the heights. */
  private static final DrawnHouse CORNER =
      aHouse()
          .wall("W1", 0, 0, 5, 0, Starter.FULL, "EEEEEFFFFF\nCCCCCCCDDD\nAAAAABBBBB")
          .wall("W2", 5, 0, 5, 4, Starter.HALF, "ddddeeee\nbbbbbccc\naaaaaaaa");

  private static final String ALL = "ABabcCDdeEF";

  private static HoldPoint without(String missing) {
    return hold("", ALL.replaceAll("[" + missing + "]", ""));
  }

  private static HoldPoint hold(String laid, String present) {
    return HoldPoint.of(CORNER.precedence(), letters(laid), letters(present));
  }

  private static Set<String> letters(String marks) {
    return marks.chars().mapToObj(Character::toString).collect(Collectors.toSet());
  }

  private static String marks(List<Placement> some) {
    return DrawnHouse.marks(some);
  }

  private static List<String> reach(List<WallReach> walls) {
    return walls.stream()
        .map(w -> w.wall().id() + " " + w.course() + begun(w) + " of " + w.topCourse())
        .toList();
  }

  private static String begun(WallReach wall) {
    return wall.begunCourse() > wall.course() ? " (" + wall.begunCourse() + ")" : "";
  }

  @Test
  void thePullOrderIsAsWorkedOut() {
    assertThat(marks(CORNER.order().placements())).isEqualTo(ALL);
  }

  @Test
  void withEverythingThereNothingHolds() {
    HoldPoint hold = hold("", ALL);
    assertThat(hold.isFree()).isTrue();
    assertThat(hold.firstMissing()).isEmpty();
    assertThat(marks(hold.asPlanned())).isEqualTo(ALL);
    assertThat(marks(hold.resequenced())).isEqualTo(ALL);
    assertThat(hold.waiting()).isEmpty();
    assertThat(reach(hold.wallsAsPlanned())).containsExactly("W1 3 of 3", "W2 3 of 3");
  }

  @Test
  void withNothingThereNothingCanBeLaid() {
    HoldPoint hold = hold("", "");
    assertThat(marks(hold.missing())).isEqualTo(ALL);
    assertThat(hold.resequenced()).isEmpty();
    assertThat(reach(hold.wallsResequenced())).containsExactly("W1 0 of 3", "W2 0 of 3");
  }

  /** Without C the west end of W1 waits; the corner goes on, for D lies on A, B and b. */
  @Test
  void whatDoesNotLieOnTheMissingPieceGoesOn() {
    HoldPoint hold = without("C");
    assertThat(hold.firstMissing()).map(p -> p.piece().mark()).contains("C");
    assertThat(marks(hold.asPlanned())).isEqualTo("ABabc");
    assertThat(marks(hold.resequenced())).isEqualTo("ABabcDde");
    assertThat(marks(hold.waiting())).isEqualTo("EF");
    assertThat(reach(hold.wallsAsPlanned())).containsExactly("W1 1 of 3", "W2 2 of 3");
    assertThat(reach(hold.wallsResequenced())).containsExactly("W1 1 (2) of 3", "W2 3 of 3");
  }

  /** Without b the corner stops: D lies on it, d on b, c does not. */
  @Test
  void aMissingCornerTimberStopsTheCrossingWall() {
    HoldPoint hold = without("b");
    assertThat(marks(hold.resequenced())).isEqualTo("ABacC" + "E");
    assertThat(marks(hold.waiting())).isEqualTo("DdeF");
    Precedence apart = CORNER.precedence(Corners.APART);
    HoldPoint free = HoldPoint.of(apart, Set.of(), letters(ALL.replace("b", "")));
    assertThat(marks(free.resequenced())).isEqualTo("ABacCDEF");
  }

  @Test
  void saysWhichMissingPieceEachWaitsForAndWhatEachBlocks() {
    HoldPoint hold = without("Cb");
    Placement c = hold.missing().get(1);
    assertThat(marks(hold.missing())).isEqualTo("bC");
    assertThat(marks(hold.blockedBy(c))).isEqualTo("EF");
    assertThat(marks(hold.blockedBy(hold.missing().get(0)))).isEqualTo("DdeF");
    Placement f = hold.waiting().get(hold.waiting().size() - 1);
    assertThat(marks(hold.waitsFor(f))).isEqualTo("bC");
    assertThat(marks(hold.waitsFor(c))).isEqualTo("C");
  }

  @Test
  void whatIsLaidIsNeitherMissingNorLaidAgain() {
    HoldPoint hold = hold("ABa", "cCDd");
    assertThat(marks(hold.missing())).isEqualTo("beEF");
    assertThat(marks(hold.asPlanned())).isEmpty();
    assertThat(marks(hold.resequenced())).isEqualTo("cC");
    assertThat(hold("ABa", "ABacCDd").resequenced()).isEqualTo(hold.resequenced());
  }

  /** The crew laid D, whatever b has to say to it: what lies on D does not wait for b. */
  @Test
  void whatWasLaidOutOfTurnCountsAsLaid() {
    HoldPoint hold = hold("ABaCD", "EF");
    assertThat(marks(hold.missing())).isEqualTo("bcde");
    assertThat(marks(hold.resequenced())).isEqualTo("E");
    assertThat(marks(hold.waitsFor(hold.waiting().get(0)))).isEqualTo("bd");
    assertThat(marks(hold("ABaCDd", "EF").resequenced())).isEqualTo("EF");
  }

  @Test
  void refusesAMarkThatIsNoPieceOfTheHouse() {
    assertThatThrownBy(() -> hold("Z", ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Z");
    assertThatThrownBy(() -> hold("", "Z")).isInstanceOf(IllegalArgumentException.class);
  }
}
