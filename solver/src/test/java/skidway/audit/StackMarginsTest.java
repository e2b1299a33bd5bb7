package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.timber.Bundle;

final class StackMarginsTest {
  private final Task task =
      task(
          aSite().build(),
          aBundle("B1").load("L1", 1).weighing(100).build(),
          aBundle("B2").load("L1", 2).size(3, 0.5, 0.4).weighing(300).build());

  private final List<Margin> margins =
      Audit.of(
              task,
              aPlan()
                  .stack(spot("Y2", "yard", 10, 8, 4.5, 0.9), "B1")
                  .stack(spot("Y1", "yard", 15.5, 8, 4.5, 0.9), "B2")
                  .build(task))
          .stackMargins();

  private List<Margin> of(String spotId) {
    return margins.stream().filter(m -> m.where().equals(spotId)).toList();
  }

  private Margin of(String spotId, Rule rule) {
    return of(spotId).stream().filter(m -> m.rule() == rule).findFirst().orElseThrow();
  }

  @Test
  void everyStackHasEachRuleOnceInTheRulesOrder() {
    assertThat(margins).extracting(Margin::where).startsWith("Y2").endsWith("Y1");
    for (String spotId : List.of("Y1", "Y2")) {
      assertThat(of(spotId)).extracting(Margin::rule).isSorted().doesNotHaveDuplicates();
      assertThat(of(spotId))
          .extracting(Margin::rule)
          .contains(Rule.INSIDE_ZONE, Rule.STACK_HEIGHT, Rule.GROUND_PRESSURE, Rule.BEARER_SPACING);
    }
  }

  @Test
  void theTightestOfAStackIsKeptThoughAnotherStackIsTighter() {
    assertThat(of("Y2", Rule.FITS_SPOT))
        .isEqualTo(new Margin(Rule.FITS_SPOT, "Y2", 0.6, 0.9, false));
    assertThat(of("Y1", Rule.FITS_SPOT))
        .isEqualTo(new Margin(Rule.FITS_SPOT, "Y1", 0.5, 0.9, false));
  }

  @Test
  void whatIsMeasuredBetweenTwoStacksOrInAStepIsKeptForTheStack() {
    assertThat(of("Y1", Rule.SPOTS_APART).value()).isEqualTo(of("Y2", Rule.SPOTS_APART).value());
    assertThat(of("Y2", Rule.MACHINE_CAPACITY).value()).isEqualTo(100);
    assertThat(of("Y1", Rule.MACHINE_CAPACITY).value()).isEqualTo(300);
  }

  @Test
  void whatABundlePressesWhileItWaitsComesAfterTheStacks() {
    Bundle upper = aBundle("B1").load("L1", 1).size(4, 0.8, 0.4).weighing(500).build();
    Bundle lower = aBundle("B2").load("L1", 2).size(4, 0.8, 0.4).weighing(100).build();
    Task two = task(aSite().build(), upper, lower);
    Spot stack = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    Spot waiting = spot("T1", "deck", 15, 19.5, 4.5, 0.9);
    List<Margin> all =
        Audit.of(
                two,
                aPlan()
                    .stack(stack, "B2", "B1")
                    .waiting(waiting)
                    .steps(
                        setDown(two, 1, upper, waiting),
                        place(two, 2, lower, stack, 1),
                        liftOn(two, 3, upper, waiting, stack, 2))
                    .build(two))
            .stackMargins();
    Margin last = all.get(all.size() - 1);
    assertThat(all).filteredOn(m -> m.where().equals("T1")).containsExactly(last);
    assertThat(last.rule()).isEqualTo(Rule.ZONE_LOAD);
    // 500 kg of standard gravity on 4 m by 0.8 m.
    assertThat(last.value()).isCloseTo(500 * 9.80665 / 3.2 / 1000, within(1e-9));
  }
}
