package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TeamLiftTest {
  private static final double SHORT_M = 2;
  private static final TeamLift CREW = team(23);

  private static TeamLift team(double perPersonKg) {
    return new TeamLift(perPersonKg, 2.0 / 3, 0.5, 4, 2.44);
  }

  /**
   * Printed beside the factors of guidance L23 (Network Rail, "Lifting and handling in teams";
   * First Safety Training Services): 20 kg each are 26.6 for two; 50 kg each are 66 for two, 75 for
   * three. Printed figures are cut off, not rounded.
   */
  @Test
  void agreesWithThePrintedFigures() {
    assertThat(team(20).capabilityKg(2)).isBetween(26.6, 26.7);
    assertThat(team(50).capabilityKg(2)).isBetween(66.0, 67.0);
    assertThat(team(50).capabilityKg(3)).isCloseTo(75, within(1e-9));
  }

  /** A plain share per person would let two carry 46 kg; the factors say four do. */
  @Test
  void aTeamLiftsLessThanTheSum() {
    assertThat(CREW.people(23, SHORT_M)).isEqualTo(1);
    assertThat(CREW.people(23.1, SHORT_M)).isEqualTo(2);
    assertThat(CREW.people(30.7, SHORT_M)).isEqualTo(3);
    assertThat(CREW.people(34.6, SHORT_M)).isEqualTo(4);
    assertThat(CREW.people(46, SHORT_M)).isEqualTo(4);
    assertThat(CREW.mostKg()).isEqualTo(46);
  }

  @Test
  void whatIsTooHeavyForAllTakesTheLargestTeamWithADevice() {
    assertThat(CREW.people(300, SHORT_M)).isEqualTo(4);
  }

  @Test
  void aLongPieceTakesTwoHoweverLight() {
    assertThat(CREW.people(1, 2.44)).isEqualTo(1);
    assertThat(CREW.people(1, 2.45)).isEqualTo(2);
    assertThat(CREW.people(40, 2.45)).isEqualTo(4);
  }

  @Test
  void aPieceOfExactlyATeamsShareIsNotTooHeavyByRounding() {
    TeamLift crew = new TeamLift(0.1, 1, 1, 4, 2.44);
    assertThat(0.1 + 0.2).isNotEqualTo(crew.capabilityKg(4));
    assertThat(crew.people(0.1 + 0.2, SHORT_M)).isEqualTo(3);
  }

  @Property(seed = "20310505")
  void moreMassNeverTakesFewerPeopleAndMorePeopleNeverLiftLess(
      @ForAll @DoubleRange(min = 1, max = 60) double perPersonKg,
      @ForAll @DoubleRange(min = 0.3, max = 1) double two,
      @ForAll @DoubleRange(min = 0.2, max = 1) double three,
      @ForAll @DoubleRange(min = 0, max = 200) double massKg,
      @ForAll @DoubleRange(min = 0, max = 50) double moreKg) {
    TeamLift crew = new TeamLift(perPersonKg, two, three, 6, 2.44);
    int people = crew.people(massKg, SHORT_M);
    assertThat(crew.people(massKg + moreKg, SHORT_M)).isGreaterThanOrEqualTo(people);
    assertThat(crew.capabilityKg(people + 1)).isGreaterThanOrEqualTo(crew.capabilityKg(people));
    assertThat(people == 6 || crew.capabilityKg(people) >= massKg - 1e-6).isTrue();
    assertThat(people == 1 || crew.capabilityKg(people - 1) < massKg).isTrue();
  }
}
