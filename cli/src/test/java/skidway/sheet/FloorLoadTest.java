package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.testkit.SiteBuilder;

class FloorLoadTest {
  private static final Tier LOWEST =
      new Tier("B1", Optional.of(aBundle("B1").size(4, 0.5, 0.4).weighing(600).build()), 1);
  private static final Tier UPPER =
      new Tier("B2", Optional.of(aBundle("B2").size(3, 0.5, 0.4).weighing(400).build()), 1);
  private static final Spot SPOT = SiteBuilder.spot("A1", "yard", 10, 8, 5, 1);

  @Test
  void wholeStackOverItsLowestBundle() {
    // 1000 kg * 9.80665 N/kg over 4 m * 0.5 m.
    StackView stack = new StackView(SPOT, List.of(LOWEST, UPPER));
    assertThat(FloorLoad.kpa(stack, Settings.defaults()).orElseThrow())
        .isCloseTo(4.903325, within(1e-9));
  }

  @Test
  void bearersThatReachFurtherSpreadTheLoad() {
    StackView stack = new StackView(SPOT, List.of(LOWEST, UPPER));
    Settings reaching = Settings.defaults().with(Setting.BEARER_REACH, 0.25, "long bearers");
    assertThat(FloorLoad.kpa(stack, reaching).orElseThrow()).isCloseTo(2.4516625, within(1e-9));
  }

  @Test
  void rackSpreadsOverItsFootprint() {
    StackView rack =
        new StackView(SiteBuilder.rack("R1", "yard", 10, 8, 5, 1), List.of(LOWEST, UPPER));
    assertThat(FloorLoad.kpa(rack, Settings.defaults()).orElseThrow())
        .isCloseTo(1.96133, within(1e-9));
  }

  @Test
  void unknownLowestBundleMeansUnknownLoad() {
    StackView stack = new StackView(SPOT, List.of(new Tier("ghost", Optional.empty(), 0)));
    assertThat(FloorLoad.kpa(stack, Settings.defaults())).isEmpty();
  }
}
