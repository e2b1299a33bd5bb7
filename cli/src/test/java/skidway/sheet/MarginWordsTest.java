package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.units.Figures;
import skidway.units.UnitSystem;

class MarginWordsTest {
  private static MarginWords of(Rule rule, double value, double limit, boolean atLeast) {
    return new MarginWords(
        new Margin(rule, "D1", value, limit, atLeast), new Figures(UnitSystem.METRIC));
  }

  @Test
  void noLimitSeemsFartherOffThanItIs() {
    MarginWords words = of(Rule.ZONE_LOAD, 2.0171, 2.4, false);
    assertThat(words.free()).isEqualTo("15 %");
    assertThat(words.taken()).isEqualTo("85 %");
    assertThat(of(Rule.ZONE_LOAD, 2.4, 2.4, false).free()).isEqualTo("0 %");
    assertThat(of(Rule.ZONE_LOAD, 2.4, 2.4, false).taken()).isEqualTo("100 %");
  }

  @Test
  void brokenIsWhatLiesBeyondTheLimit() {
    assertThat(of(Rule.ZONE_LOAD, 2.41, 2.4, false).broken()).isTrue();
    assertThat(of(Rule.ZONE_LOAD, 2.4, 2.4, false).broken()).isFalse();
    assertThat(of(Rule.KEEP_CLEAR, 0.5, 0.6, true).broken()).isTrue();
    assertThat(of(Rule.KEEP_CLEAR, 0.6, 0.6, true).broken()).isFalse();
  }

  @Test
  void aLimitOfNothingHasNoShare() {
    assertThat(of(Rule.TRUCK_CLEAR, 3, 0, true).free()).isEqualTo("-");
  }
}
