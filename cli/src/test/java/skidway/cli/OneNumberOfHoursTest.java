package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Effort;
import skidway.plan.PieceHours;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.shakeout.Waves;
import skidway.staging.Laying;

/** A plan and its waves count the same hours, kind by kind. */
class OneNumberOfHoursTest {
  static List<String> jobs() throws IOException {
    return DemoFolder.names();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void pullingEveryPieceStraightTakesWhatThePlanSays(String name) {
    Path folder = DemoFolder.ALL.resolve(name);
    Task task = JobReader.read(folder).task();
    Plan kept = PlanFiles.read(folder.resolve("expected/plan.json"), task);
    Plan plan = Laying.of(task, kept, List.of()).orElseThrow();
    Effort effort = plan.effort();
    PieceHours straight = Waves.straight(task, plan);
    double insideS = effort.insideS().orElseThrow();
    assertThat(insideS).isGreaterThan(600);
    assertThat(straight.carryS()).isCloseTo(effort.carryS(), within(1e-6));
    assertThat(straight.pickS()).isCloseTo(effort.pickS(), within(1e-6));
    assertThat(straight.layS() + straight.asideS())
        .isCloseTo(effort.rehandleS() + insideS, within(1e-6));
    assertThat(straight.totalS()).isCloseTo(effort.totalS(), within(1e-6));
  }
}
