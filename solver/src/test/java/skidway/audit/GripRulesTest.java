package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

final class GripRulesTest {
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot T1 = spot("T1", "yard", 16, 8, 4.5, 0.9);

  private static List<String> broken(Rule rule, Machine machine, double laneM, double kg) {
    Bundle bundle = aBundle("B1").weighing(kg).build();
    Task task =
        task(
            aSite().lane("L", laneM, new Point(1, 5), new Point(30, 5)).machine(machine).build(),
            bundle);
    return Audited.sentences(rule, task, aPlan().stack(Y1, "B1"));
  }

  private static List<String> slingLoad(Grip grip, double kg) {
    return broken(Rule.SLING_LOAD, Machines.over(grip), 4, kg);
  }

  private static List<String> travelWidth(Machine machine, double laneM) {
    return broken(Rule.TRAVEL_WIDTH, machine, laneM, 500);
  }

  /** At 30 degrees each of two slings holds as much as the whole load weighs. */
  @Test
  void slingLoadIsHalfTheLoadOverTheSineOfTheAngle() {
    assertThat(slingLoad(Machines.slings(30, 500), 500)).isEmpty();
    assertThat(slingLoad(Machines.slings(30, 500), 510))
        .containsExactly("Step 1 (B1 to Y1) pulls each sling with 510 kg, limit 500 kg.");
    assertThat(slingLoad(Machines.slings(90, 500), 1000)).isEmpty();
  }

  @Test
  void slingLoadNeedsSlingsThatSomebodyRated() {
    Grip unrated = new Grip.Slings(OptionalDouble.of(30), OptionalDouble.empty());
    assertThat(slingLoad(unrated, 2000)).isEmpty();
    assertThat(slingLoad(Machines.forks(0.6), 2000)).isEmpty();
  }

  @Test
  void slingAngleIsSaidOnceForAllLifts() {
    assertThat(slingAngle(30)).isEmpty();
    assertThat(slingAngle(29))
        .containsExactly("The slings of crane hang at 29.0° from the horizontal, limit 30.0°.");
  }

  private static List<String> slingAngle(double angleDeg) {
    Bundle one = aBundle("B1").load("L1", 1).weighing(100).build();
    Bundle two = aBundle("B2").load("L1", 2).weighing(100).build();
    Machine machine = Machines.over(Machines.slings(angleDeg, 5000));
    Task task = task(aSite().machine(machine).build(), one, two);
    return Audited.sentences(Rule.SLING_ANGLE, task, aPlan().stack(Y1, "B1", "B2"));
  }

  @Test
  void aPlanWithoutLiftsHasNoSlingsTooFlat() {
    Task task =
        task(
            aSite().machine(Machines.over(Machines.slings(20, 5000))).build(),
            aBundle("B1").weighing(100).build());
    assertThat(Audited.sentences(Rule.SLING_ANGLE, task, aPlan().unplaced("B1"))).isEmpty();
  }

  /** Crosswise on forks 4 m and 3 ft; lengthwise in slings the machine's 1 m and 3 ft. */
  @Test
  void travelWidthIsThatOfMachineOrLoadAndThreeFeet() {
    Machine forks = Machines.onLane("L", Machines.forks(0.6));
    assertThat(travelWidth(forks, 4.9144)).isEmpty();
    assertThat(travelWidth(forks, 4.9))
        .containsExactly("Step 1 (B1 to Y1) needs lane L to be 4.91 m wide, limit 4.90 m.");
    Machine slings = Machines.onLane("L", Machines.slings(60, 5000));
    assertThat(travelWidth(slings, 1.9144)).isEmpty();
    assertThat(travelWidth(slings, 1.9)).hasSize(1);
  }

  @Test
  void travelWidthIsOfLanesThatAStandNamesAndOfGripsThatSomebodyTold() {
    assertThat(travelWidth(Machines.onLane("", Machines.forks(0.6)), 1)).isEmpty();
    assertThat(travelWidth(Machines.onLane("L9", Machines.forks(0.6)), 1)).isEmpty();
    assertThat(travelWidth(Machines.onLane("L", new Grip.Unstated()), 1)).isEmpty();
  }

  @Test
  void travelWidthIsNotAskedForWhereTheMachineStaysWhereItIs() {
    Bundle upper = aBundle("B1").load("L1", 1).weighing(100).build();
    Bundle lower = aBundle("B2").load("L1", 2).weighing(100).build();
    Task task =
        task(
            aSite()
                .lane("L", 1, new Point(1, 5), new Point(30, 5))
                .machine(Machines.onLane("L", Machines.forks(0.6)))
                .build(),
            upper,
            lower);
    assertThat(
            Audited.sentences(
                Rule.TRAVEL_WIDTH,
                task,
                aPlan()
                    .stack(Y1, "B2", "B1")
                    .waiting(T1)
                    .steps(
                        setDown(task, 1, upper, T1),
                        place(task, 2, lower, Y1, 1),
                        liftOn(task, 3, upper, T1, Y1, 2))))
        .hasSize(2)
        .noneMatch(sentence -> sentence.startsWith("Step 3"));
  }
}
