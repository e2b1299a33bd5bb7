package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.testkit.BundleBuilder;
import skidway.testkit.Tasks;

/** The audit's grid and the exact walks that plans are made with check each other here. */
final class CarryAgainstExactWalksTest {
  private static final double CELLS_M = 0.2;

  @Property(tries = 10)
  void bothFindTheSameWalksWithinTheStatedError(
      @ForAll @DoubleRange(min = 1, max = 39) double x,
      @ForAll @DoubleRange(min = 4, max = 11) double y,
      @ForAll @DoubleRange(min = 3, max = 25) double trenchX,
      @ForAll @DoubleRange(min = 0.4, max = 1.2) double deckHeightM) {
    Task task =
        Tasks.task(
            aSite()
                .deckHeight(deckHeightM)
                .keepClear("trench", Outline.box(trenchX, 12.5, trenchX + 12, 13.1), 0.6, false)
                .floorOpening("stair", Outline.box(13, 19, 14.5, 22))
                .build(),
            everyWall().build());
    PullOrder order = PullOrder.of(task.site(), task.delivery().pieces());
    Walker walker = new Walker(Setting.STEP_OVER.defaultSi(), Setting.CLIMB_FACTOR.defaultSi());
    Point access = new Point(x, y);
    double[] exact = WalkingDistances.between(task.site(), walker, List.of(access), order)[0];
    List<Integer> all = order.placements().stream().map(p -> order.indexOf(p.piece())).toList();
    double[] found = new CarryWalks(task, order).metres(access, all);
    for (int i = 0; i < exact.length; i++) {
      assertThat(found[i]).isCloseTo(exact[i], within(CarryWalks.ERROR_SHARE * exact[i] + CELLS_M));
    }
  }

  private static BundleBuilder everyWall() {
    BundleBuilder bundle = aBundle("B1");
    for (int course = 1; course <= 5; course++) {
      bundle.piece("W1", course, 1, 4).piece("W1", course, 2, 5);
      bundle.piece("W2", course, 1, 4).piece("W2", course, 2, 4);
      bundle.piece("W3", course, 1, 5).piece("W3", course, 2, 5);
      bundle.piece("W4", course, 1, 4).piece("W4", course, 2, 4);
    }
    return bundle;
  }
}
