package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.site.JoistDesign;

class JoistStrengthTest {
  private static final double FOOT = 0.3048;
  private static final double INCH = FOOT / 12;
  private static final double PA_PER_PSI = 6894.757;
  private static final double KPA_PER_PSF = 0.04788026;

  /**
   * HUD, Residential Structural Design Guide, 2nd ed., example 5.1, as xcfem/xc restates it: 2x8
   * joists at 16 in, F'b 1345 psi, S 13.14 in³, F'v 75 psi times a horizontal shear factor of 2, 10
   * psf dead and 30 psf live.
   */
  private static final JoistDesign.Lumber TWO_BY_EIGHT =
      new JoistDesign.Lumber(
          "hem-fir No. 1, 2x8",
          1345 * PA_PER_PSI,
          150 * PA_PER_PSI,
          13.14 * INCH * INCH * INCH,
          1.5 * 7.25 * INCH * INCH,
          10 * KPA_PER_PSF,
          "HUD example 5.1");

  private static final JoistDesign.LiveLoad LIVE = new JoistDesign.LiveLoad(30 * KPA_PER_PSF);

  @Test
  void timberBearsJustTheLiveLoadOnThePublishedSpanForBending() {
    double spanM = 14.865 * FOOT;
    double timberNm = JoistStrength.of(TWO_BY_EIGHT, 16 * INCH, spanM).momentNm();
    double liveNm = JoistStrength.of(LIVE, 16 * INCH, spanM).momentNm();

    assertThat(timberNm).isCloseTo(liveNm, within(0.001 * liveNm));
  }

  @Test
  void timberBearsJustTheLiveLoadOnThePublishedSpanForShear() {
    double spanM = 40.8 * FOOT;
    double timberN = JoistStrength.of(TWO_BY_EIGHT, 16 * INCH, spanM).shearN();
    double liveN = JoistStrength.of(LIVE, 16 * INCH, spanM).shearN();

    assertThat(timberN).isCloseTo(liveN, within(0.001 * liveN));
  }

  @Test
  void aFloorTooHeavyForItsOwnJoistsTakesNothingMore() {
    JoistStrength strength = JoistStrength.of(TWO_BY_EIGHT, 16 * INCH, 200 * FOOT);

    assertThat(strength).isEqualTo(new JoistStrength(0, 0));
  }

  /** 2 kPa on joists 0.5 m apart: 1000 N/m, on 4 m 2000 N m and 2000 N. */
  @Test
  void aLiveLoadIsTakenOverTheWholeSpan() {
    JoistStrength strength = JoistStrength.of(new JoistDesign.LiveLoad(2), 0.5, 4);

    assertThat(strength.momentNm()).isCloseTo(2000, within(1e-9));
    assertThat(strength.shearN()).isCloseTo(2000, within(1e-9));
  }

  @Test
  void anEvenLoadAsHeavyAsTheDesignUsesUpTheStrength() {
    Beam beam = Beam.simple(4, List.of(BeamLoad.Spread.even(1000, 0, 4)));
    JoistStrength strength = JoistStrength.of(new JoistDesign.LiveLoad(2), 0.5, 4);

    assertThat(beam.greatestMoment().value()).isCloseTo(strength.momentNm(), within(1e-9));
    assertThat(beam.greatestShear().value()).isCloseTo(strength.shearN(), within(1e-9));
  }
}
