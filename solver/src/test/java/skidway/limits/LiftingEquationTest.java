package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Cells and worked examples of NIOSH 94-110, rev. 9/2021; each file says where it was read. */
class LiftingEquationTest {

  @ParameterizedTest
  @CsvFileSource(resources = "niosh-frequency-multipliers.csv", numLinesToSkip = 3)
  void frequencyAgreesWithEveryCellOfTable5(ArgumentsAccessor row) {
    double perMin = row.getDouble(0);
    int column = 1;
    for (LiftDuration duration :
        List.of(LiftDuration.SHORT, LiftDuration.MODERATE, LiftDuration.LONG)) {
      assertThat(LiftFrequency.multiplier(perMin, duration, true))
          .as("%s a minute, %s, low", perMin, duration)
          .isEqualTo(row.getDouble(column));
      assertThat(LiftFrequency.multiplier(perMin, duration, false))
          .as("%s a minute, %s, high", perMin, duration)
          .isEqualTo(row.getDouble(column + 1));
      column += 2;
    }
  }

  /**
   * Table 5, notes: 0.2 stands for anything rarer; straight between rows; nothing past the last.
   */
  @Test
  void frequencyBetweenAndBeyondTheRows() {
    assertThat(LiftFrequency.multiplier(0.01, LiftDuration.LONG, true)).isEqualTo(0.85);
    assertThat(LiftFrequency.multiplier(1.5, LiftDuration.LONG, true))
        .isCloseTo((0.75 + 0.65) / 2, within(1e-12));
    assertThat(LiftFrequency.multiplier(8.01, LiftDuration.LONG, true)).isZero();
    assertThat(LiftFrequency.multiplier(8.5, LiftDuration.LONG, false))
        .isCloseTo((0.18 + 0.15) / 2, within(1e-12));
    assertThat(LiftFrequency.multiplier(99, LiftDuration.SHORT, false)).isZero();
  }

  /** P. 16: 10 a minute for 8 of 15 minutes is 5.33; 50 in 15 minutes is 3.33, printed as 3.4. */
  @Test
  void liftsNowAndThenCountOverAQuarterOfAnHour() {
    assertThat(LiftFrequency.perMin(10 * 8)).isCloseTo(5.33, within(0.005));
    assertThat(LiftFrequency.perMin(50)).isCloseTo(3.33, within(0.005));
  }

  /** Table 7, p. 18. */
  @ParameterizedTest
  @CsvSource({"GOOD, 1.00, 1.00", "FAIR, 0.95, 1.00", "POOR, 0.90, 0.90"})
  void couplingAgreesWithTable7(Coupling coupling, double low, double high) {
    assertThat(coupling.multiplier(true)).isEqualTo(low);
    assertThat(coupling.multiplier(false)).isEqualTo(high);
  }

  /**
   * Worked examples 1 to 4, pp. 33-46. The manual multiplies rounded multipliers, so half a pound
   * and half a hundredth is as near as it can be met, its slip of .44 for .4348 included.
   */
  @ParameterizedTest
  @CsvFileSource(
      resources = "niosh-worked-examples.csv",
      numLinesToSkip = 2,
      useHeadersInDisplayName = true)
  void agreesWithTheWorkedExamples(ArgumentsAccessor row) {
    HandLift lift = example(row);
    LiftingEquation us = LiftingEquation.US;
    assertThat(us.horizontal(lift.reach())).isCloseTo(row.getDouble(11), within(0.0055));
    assertThat(us.vertical(lift.height())).isCloseTo(row.getDouble(12), within(0.0051));
    assertThat(us.distance(lift.travel())).isCloseTo(row.getDouble(13), within(0.0051));
    assertThat(us.asymmetry(lift.twistDeg())).isCloseTo(row.getDouble(14), within(0.0051));
    assertThat(LiftFrequency.multiplier(lift.liftsPerMin(), lift.duration(), true))
        .isEqualTo(row.getDouble(15));
    assertThat(lift.coupling().multiplier(lift.height() < 30)).isEqualTo(row.getDouble(16));
    assertThat(us.recommended(lift)).isCloseTo(row.getDouble(17), within(0.5));
    assertThat(us.recommended(lift)).isCloseTo(row.getDouble(18), within(0.0051));
    assertThat(us.index(row.getDouble(2), lift)).isCloseTo(row.getDouble(19), within(0.15));
  }

  private static HandLift example(ArgumentsAccessor row) {
    assertThat(row.getString(9)).isEqualTo("le1h");
    return new HandLift(
        row.getDouble(4),
        row.getDouble(5),
        row.getDouble(20),
        row.getDouble(6),
        row.getDouble(7),
        row.getDouble(8),
        LiftDuration.SHORT,
        Coupling.valueOf(row.getString(10).toUpperCase(Locale.ROOT)));
  }

  /** Pp. 7-12: nothing is taken off at the best place, nothing is lifted beyond the cut-offs. */
  @ParameterizedTest
  @CsvSource({"METRIC, 23, 25, 63, 75, 175", "US, 51, 10, 25, 30, 70"})
  void cutsOffWhereTheManualDoes(
      LiftingEquation form, double load, double near, double far, double knuckle, double high) {
    HandLift best =
        new HandLift(near, knuckle, knuckle, 0, 0, 0.2, LiftDuration.SHORT, Coupling.GOOD);
    assertThat(form.recommended(best)).isCloseTo(load, within(1e-9));
    assertThat(form.horizontal(near / 2)).isEqualTo(1);
    assertThat(form.horizontal(far)).isCloseTo(near / far, within(1e-12));
    assertThat(form.horizontal(far + 0.01)).isZero();
    assertThat(form.vertical(high)).isCloseTo(0.7, within(1e-9));
    assertThat(form.vertical(high + 0.01)).isZero();
    assertThat(form.vertical(-0.01)).isZero();
    assertThat(form.distance(0)).isCloseTo(1, within(1e-9));
    assertThat(form.distance(near)).isCloseTo(1, within(1e-9));
    assertThat(form.distance(high)).isBetween(0.82, 0.85);
    assertThat(form.distance(high + 0.01)).isZero();
    assertThat(form.asymmetry(135)).isCloseTo(0.568, within(1e-9));
    assertThat(form.asymmetry(135.01)).isZero();
  }

  /** P. 8: the hands are 20 cm (8 in) and half the load's depth away, low down 25 cm (10 in). */
  @Test
  void reachIsEstimatedFromTheDepthOfTheLoad() {
    assertThat(LiftingEquation.METRIC.estimatedReach(25, 20)).isEqualTo(30);
    assertThat(LiftingEquation.METRIC.estimatedReach(24.9, 20)).isEqualTo(35);
    assertThat(LiftingEquation.US.estimatedReach(10, 8)).isEqualTo(12);
    assertThat(LiftingEquation.US.estimatedReach(9.9, 8)).isEqualTo(14);
  }

  /** P. 14: 30 min and 45 min with 10 min between are 75 min; 2 h need 36 min of rest. */
  @ParameterizedTest
  @CsvSource({
    "30, 30, SHORT",
    "30, 10, MODERATE",
    "75, 75, MODERATE",
    "120, 36, MODERATE",
    "120, 35, LONG",
    "480, 0, LONG"
  })
  void durationIsToldByWorkAndRest(double workMin, double restMin, LiftDuration duration) {
    assertThat(LiftDuration.of(workMin, restMin)).isEqualTo(duration);
  }

  @Test
  void noLimitsAreKnownBeyondEightHours() {
    assertThatThrownBy(() -> LiftDuration.of(481, 0)).hasMessageContaining("481.0 min");
  }

  @Property(seed = "20310505")
  void neverRecommendsMoreThanTheLoadConstant(
      @ForAll @DoubleRange(min = 0, max = 80) double reach,
      @ForAll @DoubleRange(min = -10, max = 200) double height,
      @ForAll @DoubleRange(min = 0, max = 200) double travel,
      @ForAll @DoubleRange(min = 0, max = 180) double twistDeg,
      @ForAll @DoubleRange(min = 0, max = 20) double perMin) {
    for (Coupling coupling : Coupling.values()) {
      HandLift lift =
          new HandLift(
              reach, height, height, travel, twistDeg, perMin, LiftDuration.LONG, coupling);
      assertThat(LiftingEquation.METRIC.recommended(lift)).isBetween(0.0, 23.0);
    }
  }

  /** P. 7: the two forms are no exact conversions, but tell nearly the same. */
  @ParameterizedTest
  @EnumSource(Coupling.class)
  void bothFormsAgreeWithinThreePercent(Coupling coupling) {
    HandLift cm = new HandLift(40, 50, 50, 60, 30, 1, LiftDuration.LONG, coupling);
    HandLift in =
        new HandLift(
            40 / 2.54, 50 / 2.54, 50 / 2.54, 60 / 2.54, 30, 1, LiftDuration.LONG, coupling);
    double metricKg = LiftingEquation.METRIC.recommended(cm);
    double usKg = LiftingEquation.US.recommended(in) * 0.45359237;
    assertThat(usKg / metricKg).isCloseTo(1, within(0.03)).isNotEqualTo(1);
  }
}
