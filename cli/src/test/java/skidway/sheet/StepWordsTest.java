package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.timber.BearerRow;

class StepWordsTest {
  private static Step step(StepKind kind, String from, String to, int tier) {
    return new Step(1, kind, "B1", from, to, tier, "M", 5, 500, 900, BearerRow.NONE);
  }

  @Test
  void everyKindIsSaid() {
    assertThat(StepWords.of(step(StepKind.PLACE, "L1", "D3", 1), false))
        .isEqualTo("Put down at D3 as tier 1.");
    assertThat(StepWords.of(step(StepKind.PLACE, "L1", "D3", 2), false))
        .isEqualTo("Put on D3 as tier 2.");
    assertThat(StepWords.of(step(StepKind.PLACE, "L1", "R1", 0), true))
        .isEqualTo("Open, stand pieces on end in R1.");
    assertThat(StepWords.of(step(StepKind.SET_DOWN, "L1", "S1", 1), false))
        .isEqualTo("Set down for now at S1.");
    assertThat(StepWords.of(step(StepKind.LIFT_ON, "S1", "D3", 3), false))
        .isEqualTo("Lift from S1 onto D3 as tier 3.");
    assertThat(StepWords.of(step(StepKind.LIFT_ON, "S1", "R1", 0), true))
        .isEqualTo("Take from S1, stand on end in R1.");
  }

  @Test
  void ordinalsAreSaidAsPeopleSayThem() {
    assertThat(Ordinals.of(1)).isEqualTo("1st");
    assertThat(Ordinals.of(2)).isEqualTo("2nd");
    assertThat(Ordinals.of(3)).isEqualTo("3rd");
    assertThat(Ordinals.of(11)).isEqualTo("11th");
    assertThat(Ordinals.of(13)).isEqualTo("13th");
    assertThat(Ordinals.of(21)).isEqualTo("21st");
    assertThat(Ordinals.of(112)).isEqualTo("112th");
  }
}
