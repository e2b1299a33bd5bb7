package skidway.shakeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.audit.Finding;
import skidway.audit.WaveAudit;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Rule;

class WavesTest {
  private static WavePlan waves(MixedHouse house) {
    WaveAudit audit = new WaveAudit(house.task(), house.plan());
    return Waves.of(house.task(), house.plan(), audit::faulty);
  }

  /** A stopwatch that follows every piece comes to the same hours. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 0", "3, 4"})
  void theHoursAreThoseOfASiteLivedThrough(long seed, double trips) {
    MixedHouse house = MixedHouse.of(seed, trips);
    WavePlan waves = waves(house);
    assertThat(waves.waves()).isNotEmpty();
    assertThat(waves.hours().totalS())
        .isCloseTo(FromTruckToWall.seconds(house.task(), house.plan(), waves.waves()), within(1.0));
    assertThat(waves.straight().totalS())
        .isCloseTo(FromTruckToWall.seconds(house.task(), house.plan(), List.of()), within(1.0));
  }

  /** Layers lie upside down then, and people carry what a machine would lift. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void soAreThoseOfASiteWithoutAMachine(long seed) {
    MixedHouse house = MixedHouse.byHand(seed).staged();
    assertThat(house.plan().unplaced()).isEmpty();
    WavePlan waves = waves(house);
    assertThat(waves.waves()).isNotEmpty();
    double straightS = FromTruckToWall.seconds(house.task(), house.plan(), List.of());
    assertThat(house.plan().effort().totalS()).isCloseTo(straightS, within(1.0));
    assertThat(waves.straight().totalS()).isCloseTo(straightS, within(1.0));
    assertThat(waves.hours().totalS())
        .isCloseTo(FromTruckToWall.seconds(house.task(), house.plan(), waves.waves()), within(1.0));
    assertThat(waves.hours().totalS()).isLessThan(straightS - 60);
    WaveAudit audit = new WaveAudit(house.task(), house.plan());
    assertThat(audit.findings(waves)).isEmpty();
    assertThat(audit.findings(withoutCarryingOff(waves)))
        .extracting(Finding::rule)
        .containsOnly(Rule.HAND_UNLOAD);
  }

  private static WavePlan withoutCarryingOff(WavePlan waves) {
    PieceHours told = waves.hours();
    PieceHours less =
        new PieceHours(
            told.bringS(),
            told.layS(),
            told.carryS(),
            told.pickS(),
            told.asideS(),
            told.machineS() / 2);
    return new WavePlan(
        waves.jobName(), waves.revision(), waves.plan(), waves.waves(), waves.straight(), less);
  }

  /** With a plan that was searched for, its own hours and those of its waves are one number. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 4", "3, 4"})
  void soAreThoseOfAPlanThatWasSearchedFor(long seed, double trips) {
    MixedHouse house = MixedHouse.of(seed, trips).staged();
    assertThat(house.plan().unplaced()).isEmpty();
    WavePlan waves = waves(house);
    double straightS = FromTruckToWall.seconds(house.task(), house.plan(), List.of());
    assertThat(house.plan().effort().totalS()).isCloseTo(straightS, within(1.0));
    assertThat(waves.straight().totalS()).isCloseTo(straightS, within(1.0));
    assertThat(waves.hours().totalS())
        .isCloseTo(FromTruckToWall.seconds(house.task(), house.plan(), waves.waves()), within(1.0));
    assertThat(new WaveAudit(house.task(), house.plan()).findings(waves)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1, 0", "3, 4"})
  void theAuditFindsNothingAndTheHoursAreFewer(long seed, double trips) {
    MixedHouse house = MixedHouse.of(seed, trips);
    WavePlan waves = waves(house);
    assertThat(new WaveAudit(house.task(), house.plan()).findings(waves)).isEmpty();
    assertThat(waves.hours().totalS()).isLessThan(waves.straight().totalS() - 60);
  }

  /** What lies about anyway may as well lie on its pile. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void beyondTheCoursesAheadOnlyWhatIsDugOutIsBrought(long seed) {
    MixedHouse house = MixedHouse.of(seed, 0, 1);
    Timbers timbers = new Timbers(house.task(), house.plan());
    int farther = 0;
    for (Wave wave : waves(house).waves()) {
      for (Brought brought : wave.brought()) {
        int i = pull(timbers, brought.mark());
        if (timbers.piece(i).course() > wave.fromCourse()) {
          farther++;
          int lowest =
              IntStream.of(timbers.beneath[i])
                  .map(j -> timbers.piece(j).course())
                  .min()
                  .orElseThrow();
          assertThat(lowest).as(brought.mark()).isLessThanOrEqualTo(wave.fromCourse());
        }
      }
    }
    assertThat(farther).isPositive();
  }

  private static int pull(Timbers timbers, String mark) {
    return IntStream.range(0, timbers.count())
        .filter(i -> timbers.piece(i).mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theMachineBringsWhatItBringsCheaper() {
    assertThat(waves(MixedHouse.of(3, 4)).waves()).anyMatch(wave -> !wave.trips().isEmpty());
    assertThat(waves(MixedHouse.of(3, 0)).waves()).allMatch(wave -> wave.trips().isEmpty());
  }

  @Test
  void aPileThatMustNotStandIsNotPlanned() {
    MixedHouse house = MixedHouse.of(1, 0);
    WavePlan none =
        Waves.of(
            house.task(),
            house.plan(),
            wave -> wave.piles().stream().map(pile -> pile.id()).toList());
    assertThat(none.waves()).isEmpty();
    assertThat(none.hours()).isEqualTo(none.straight());
  }

  @Test
  void theSameAgain() {
    List<Wave> first = waves(MixedHouse.of(2, 4)).waves();
    assertThat(waves(MixedHouse.of(2, 4)).waves()).isEqualTo(first);
  }
}
