package skidway.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import skidway.erection.Corners;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.erection.Precedence;
import skidway.erection.PullOrder;
import skidway.job.JobReader;
import skidway.plan.Task;

/**
 * How far the L-shaped house goes without its second load, found with the packing list in hand: all
 * half starters are on that load, so W2, W4 and W6 do not begin, and no corner of W1, W3 and W5
 * goes beyond its first course.
 */
class DemoHoldPointTest {
  private static final Task TASK = JobReader.read(Path.of("..", "demo-data", "l-house")).task();
  private static final PullOrder ORDER = PullOrder.of(TASK.site(), TASK.delivery().pieces());

  private static HoldPoint withoutSecondLoad(Corners corners) {
    Set<String> first =
        TASK.delivery().bundles().stream()
            .filter(b -> b.loadId().equals("L1"))
            .flatMap(b -> b.pieces().stream())
            .map(p -> p.mark())
            .collect(Collectors.toSet());
    return HoldPoint.of(Precedence.of(TASK.site(), ORDER, corners), Set.of(), first);
  }

  private static List<String> marks(List<Placement> pieces) {
    return pieces.stream().map(p -> p.piece().mark()).toList();
  }

  @Test
  void asPlannedTheCrewStopsAtTheFirstHalfStarter() {
    HoldPoint hold = withoutSecondLoad(Corners.INTERLOCKED);
    assertThat(hold.firstMissing()).map(p -> p.piece().mark()).contains("W2-01-1");
    assertThat(marks(hold.asPlanned())).containsExactly("W1-01-1", "W1-01-2", "W1-01-3", "W1-01-4");
  }

  /** The last seven stand on each other as a pier between window N2 and the front door. */
  @Test
  void inAnotherOrderWhatIsClearOfTheCornersIsLaid() {
    HoldPoint hold = withoutSecondLoad(Corners.INTERLOCKED);
    assertThat(marks(hold.resequenced()))
        .containsExactly(
            "W1-01-1", "W1-01-2", "W1-01-3", "W1-01-4", "W3-01-2", "W1-02-2", "W1-02-3", "W1-03-2",
            "W1-04-3", "W1-05-3", "W1-06-3", "W1-07-3", "W1-08-3", "W1-09-3", "W1-10-3");
    assertThat(hold.wallsResequenced())
        .extracting(w -> w.wall().id() + " " + w.course() + " of " + w.topCourse())
        .containsExactly(
            "W1 1 of 16", "W2 0 of 17", "W3 0 of 16", "W4 0 of 17", "W5 0 of 16", "W6 0 of 17");
  }

  @Test
  void wallsThatDoNotInterlockWouldGoFurther() {
    assertThat(withoutSecondLoad(Corners.APART).resequenced()).hasSize(75);
  }

  @Test
  void everyPieceIsLaidOrWaitsForAMissingOneThatIsNamed() {
    HoldPoint hold = withoutSecondLoad(Corners.INTERLOCKED);
    assertThat(hold.resequenced().size() + hold.waiting().size() + hold.missing().size())
        .isEqualTo(ORDER.placements().size());
    assertThat(hold.waiting()).allSatisfy(p -> assertThat(hold.waitsFor(p)).isNotEmpty());
  }
}
