package skidway.audit.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;

final class JoistStrengthTest {
  private static final double M_PER_FT = 0.3048;
  private static final double PA_PER_PSI = 6894.757;
  private static final double KPA_PER_PSF = 0.04788026;
  private static final double IN = 0.0254;

  private static JoistStrength of(JoistDesign design, double spacingM, double spanM) {
    List<Point> supports = List.of(new Point(0, 0), new Point(spanM, 0));
    return JoistStrength.of(new Joists(0, spacingM, new Point(0, 0), supports, design), spanM);
  }

  /**
   * HUD Residential Structural Design Guide, 2nd ed., Example 5.1: a 2x8 at 16 in under 10 psf of
   * its own and 30 psf of use may span 14.865 ft by bending.
   */
  @Test
  void timberOfTheGuidesExampleBearsItsLiveLoadAtTheLongestSpan() {
    JoistDesign lumber =
        new JoistDesign.Lumber(
            "2x8 hem-fir No. 1",
            1345 * PA_PER_PSI,
            150 * PA_PER_PSI,
            13.14 * IN * IN * IN,
            10.875 * IN * IN,
            10 * KPA_PER_PSF,
            "example");
    double spanM = 14.865 * M_PER_FT;
    double moment = of(lumber, 16 * IN, spanM).momentNm();
    double live = of(new JoistDesign.LiveLoad(30 * KPA_PER_PSF), 16 * IN, spanM).momentNm();
    assertThat(moment).isCloseTo(live, within(live * 0.001));
  }

  @Test
  void aLiveLoadMakesWLSquaredOverEightAndWLOverTwo() {
    JoistStrength strength = of(new JoistDesign.LiveLoad(2), 0.5, 4);
    assertThat(strength.momentNm()).isCloseTo(2000 * 0.5 * 16 / 8, within(1e-9));
    assertThat(strength.shearN()).isCloseTo(2000 * 0.5 * 4 / 2, within(1e-9));
  }

  @Test
  void timberBearsItsFloorFirstAndNeverLessThanNothing() {
    JoistDesign lumber = new JoistDesign.Lumber("", 7e6, 1e6, 2e-4, 3e-3, 0.5, "");
    // 7e6 * 2e-4 = 1400 less 500 * 0.5 * 16 / 8 = 500; 1e6 * 3e-3 / 1.5 = 2000 less 500.
    assertThat(of(lumber, 0.5, 4).momentNm()).isCloseTo(900, within(1e-9));
    assertThat(of(lumber, 0.5, 4).shearN()).isCloseTo(1500, within(1e-9));
    assertThat(of(lumber, 0.5, 40)).isEqualTo(new JoistStrength(0, 0));
  }
}
