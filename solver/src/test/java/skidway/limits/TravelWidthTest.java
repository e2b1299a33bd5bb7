package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.timber.Bundle;

class TravelWidthTest {
  private static final double FOOT = 0.3048;

  /** 3 ft beside the load, 4 ft at least: OSHA letter of 15 May 1972. */
  private static final TravelWidth LETTER = new TravelWidth(3 * FOOT, 4 * FOOT);

  private static final Bundle TWELVE_FOOTER = aBundle("B1").size(12 * FOOT, 0.6, 0.4).build();
  private static final Grip FORKS = new Grip.Forks(OptionalDouble.empty());
  private static final Grip SLINGS =
      new Grip.Slings(OptionalDouble.empty(), OptionalDouble.empty());

  private static Machine machine(Grip grip, OptionalDouble widthM) {
    return new Machine(
        "any",
        List.of(new MachineStand("M", new Point(0, 0))),
        List.of(new ChartRow(10, 1000)),
        grip,
        widthM,
        0,
        "");
  }

  /** The letter's own example: 12 ft lumber crosswise on forks asks for a 15 ft aisle. */
  @Test
  void lumberCrosswiseOnForksNeedsItsLengthAndThreeFeet() {
    assertThat(LETTER.neededM(machine(FORKS, OptionalDouble.empty()), TWELVE_FOOTER).orElseThrow())
        .isCloseTo(15 * FOOT, within(1e-9));
  }

  @Test
  void inSlingsItTravelsLengthwiseAndTheMachineMayBeTheWider() {
    assertThat(LETTER.neededM(machine(SLINGS, OptionalDouble.of(2.4)), TWELVE_FOOTER).orElseThrow())
        .isCloseTo(2.4 + 3 * FOOT, within(1e-9));
    assertThat(LETTER.neededM(machine(SLINGS, OptionalDouble.empty()), TWELVE_FOOTER).orElseThrow())
        .isCloseTo(0.6 + 3 * FOOT, within(1e-9));
  }

  @Test
  void noLaneIsBelowFourFeet() {
    Bundle narrow = aBundle("B2").size(4, 0.2, 0.4).build();
    assertThat(LETTER.neededM(machine(SLINGS, OptionalDouble.empty()), narrow).orElseThrow())
        .isCloseTo(4 * FOOT, within(1e-9));
  }

  @Test
  void nothingIsKnownOfAnUnstatedGrip() {
    assertThat(LETTER.neededM(machine(new Grip.Unstated(), OptionalDouble.of(2)), TWELVE_FOOTER))
        .isEmpty();
  }
}
