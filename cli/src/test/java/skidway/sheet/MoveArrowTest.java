package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.move;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setAside;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** Arrows for what is lifted of what lies: here B1 to B3 go from Y1 to Y2, B3 by way of T1. */
class MoveArrowTest {
  private static final Bundle B1 = aBundle("B1").load("L1", 1).weighing(300).build();
  private static final Bundle B2 = aBundle("B2").load("L1", 2).weighing(300).build();
  private static final Bundle B3 = aBundle("B3").load("L1", 3).weighing(300).build();
  private static final Bundle B4 = aBundle("B4").load("L2", 1).weighing(300).build();
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private static final Spot WAIT = spot("T1", "yard", 23.5, 8, 4.5, 0.9);

  private static final Task TASK =
      task(aSite().build(), B1, B2, B3, B4)
          .startingFrom(
              new Start(
                  List.of(new Stack(Y1, List.of("B1", "B2", "B3"))),
                  Map.of(),
                  List.of(Y1),
                  Set.of(),
                  Set.of()));

  private static final Plan PLAN =
      aPlan()
          .stack(Y2, "B2", "B1", "B3", "B4")
          .waiting(WAIT)
          .steps(
              setAside(TASK, 1, B3, Y1, WAIT),
              move(TASK, 2, B2, Y1, Y2, 1),
              move(TASK, 3, B1, Y1, Y2, 2),
              liftOn(TASK, 4, B3, WAIT, Y2, 3),
              place(TASK, 5, B4, Y2, 4))
          .build(TASK);

  @Test
  void liftsBetweenTheSamePlacesShareAnArrowAndTrucksHaveNone() {
    assertThat(MoveArrow.of(TASK, PLAN))
        .extracting(MoveArrow::numbers)
        .containsExactly(List.of(1), List.of(2, 3), List.of(4));
    assertThat(MoveArrow.of(TASK, PLAN))
        .extracting(MoveArrow::aside)
        .containsExactly(true, false, false);
  }

  @Test
  void theMapShowsEachArrowAndTheSpotLeftEmpty() {
    String svg = ChangeMap.sheet(TASK, PLAN, 1, PaperSize.A4).svg();
    assertThat(svg.split("class=\"move\"", -1)).hasSize(4);
    assertThat(svg.split("stroke-dasharray=\"2.4 1.4\"", -1)).hasSize(2);
    assertThat(svg.split("stroke-dasharray=\"0.8 1.2\"", -1)).hasSize(2);
    assertThat(svg).contains(">2, 3</text>").contains("instead of revision 1");
  }
}
