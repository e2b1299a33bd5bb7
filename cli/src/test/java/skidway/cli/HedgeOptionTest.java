package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.Lateness;
import skidway.job.JobReader;
import skidway.plan.Task;

class HedgeOptionTest {
  private final Task task = JobReader.read(DemoFolder.ALL.resolve("cabin")).task();

  @Test
  void saysHowLateALoadMayBe() {
    assertThat(HedgeOption.read(task, List.of("L1=2", "L2=0..5days")))
        .containsExactly(new Lateness("L1", 2, 2), new Lateness("L2", 0, 5));
    assertThat(HedgeOption.read(task, List.of("L2=1..3 d"))).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "L9=0..5days, there is no load L9",
    "L2, a load and how many days",
    "L2=5..1, from fewer to more",
    "L2=0..-1, a load and how many days",
    "L2=0..999, allowed are 200"
  })
  void whatSaysNothingIsRefused(String option, String why) {
    assertThatThrownBy(() -> HedgeOption.read(task, List.of(option)))
        .isInstanceOf(BadUsage.class)
        .hasMessageContaining(why);
  }

  @Test
  void aLoadIsNamedOnce() {
    assertThatThrownBy(() -> HedgeOption.read(task, List.of("L2=1", "L2=2")))
        .isInstanceOf(BadUsage.class)
        .hasMessageContaining("named twice");
  }
}
