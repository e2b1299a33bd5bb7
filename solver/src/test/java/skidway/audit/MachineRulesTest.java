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
import org.junit.jupiter.api.Test;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** The stand is at (20, 5); its chart holds 3000 kg to 10 m, 2000 kg to 20 m, 1000 kg to 30 m. */
final class MachineRulesTest {
  private static final Spot TEN_METRES_OFF = spot("Y1", "yard", 10, 5, 4.5, 0.9);

  private static Task lifting(double kg, Machine... machine) {
    Bundle bundle = aBundle("B1").weighing(kg).build();
    return machine.length == 0
        ? task(aSite().build(), bundle)
        : task(aSite().machine(machine[0]).build(), bundle);
  }

  private static List<String> broken(Rule rule, Task task, Spot spot) {
    return Audited.sentences(rule, task, aPlan().stack(spot, "B1"));
  }

  @Test
  void machineReachEndsWithTheLastRow() {
    Machine ten = oneRow(10);
    assertThat(broken(Rule.MACHINE_REACH, lifting(500, ten), TEN_METRES_OFF)).isEmpty();
    Spot farther = spot("Y1", "yard", 9.9, 5, 4.5, 0.9);
    assertThat(broken(Rule.MACHINE_REACH, lifting(500, ten), farther))
        .containsExactly("Step 1 (B1 to Y1) reaches out 10.10 m, limit 10.00 m.");
  }

  @Test
  void machineCapacityTakesTheNextLargerRow() {
    assertThat(broken(Rule.MACHINE_CAPACITY, lifting(3000), TEN_METRES_OFF)).isEmpty();
    Spot farther = spot("Y1", "yard", 9.9, 5, 4.5, 0.9);
    assertThat(broken(Rule.MACHINE_CAPACITY, lifting(2000), farther)).isEmpty();
    assertThat(broken(Rule.MACHINE_CAPACITY, lifting(2010), farther))
        .containsExactly(
            "Step 1 (B1 to Y1) weighs 2\u00a0010 kg at a reach of 10.10 m, chart row 20.00 m, limit"
                + " 2\u00a0000 kg.");
  }

  /** The bundle is 0.6 m wide: its middle is 0.3 m out on the forks. */
  @Test
  void machineCapacityShrinksWithADeepBundleOnForks() {
    Machine deep = Machines.over(Machines.forks(0.2));
    assertThat(capacityBroken(2000, deep, 2000)).isEmpty();
    assertThat(capacityBroken(2010, deep, 2000))
        .containsExactly(
            "Step 1 (B1 to Y1) weighs 2\u00a0010 kg at a reach of 10.00 m, chart row 10.00 m, limit"
                + " 2\u00a0000 kg.");
    assertThat(capacityBroken(3000, Machines.over(Machines.forks(0.3)), 3000)).isEmpty();
    assertThat(capacityBroken(3000, Machines.over(Machines.slings(60, 9000)), 3000)).isEmpty();
  }

  @Test
  void machineCapacityCountsRiggingAsLoad() {
    Machine rigged = Machines.rigged(Machines.over(Machines.slings(60, 9000)), 100);
    assertThat(capacityBroken(2900, rigged, 2900)).isEmpty();
    assertThat(capacityBroken(2910, rigged, 2900)).hasSize(1);
    assertThat(capacityBroken(2900, rigged, 3000))
        .containsExactly(
            "Step 1 (B1 to Y1) is told to have a capacity of 3\u00a0000 kg, the audit finds 2\u00a0900 kg.");
  }

  private static List<String> capacityBroken(double kg, Machine machine, double toldKg) {
    Task task = lifting(kg, machine);
    Step step = place(task, 1, bundle(task), TEN_METRES_OFF, 1);
    return told(task, figures(step, 10, kg, toldKg));
  }

  @Test
  void liftingOnReachesTheFartherOfBothPlaces() {
    Task task = lifting(500, oneRow(10.5));
    Spot waiting = spot("T1", "yard", 9, 5, 4.5, 0.9);
    List<String> sentences =
        Audited.sentences(
            Rule.MACHINE_REACH,
            task,
            aPlan()
                .stack(spot("Y1", "yard", 20, 8, 4.5, 0.9), "B1")
                .waiting(waiting)
                .steps(
                    setDown(task, 1, bundle(task), waiting),
                    liftOn(
                        task, 2, bundle(task), waiting, spot("Y1", "yard", 20, 8, 4.5, 0.9), 1)));
    assertThat(sentences)
        .containsExactly(
            "Step 1 (B1 to T1) reaches out 11.00 m, limit 10.50 m.",
            "Step 2 (B1 to Y1) reaches out 11.00 m, limit 10.50 m.");
  }

  @Test
  void theCrewIsToldTheTrueReachMassAndCapacity() {
    Task task = lifting(500);
    Step honest = place(task, 1, bundle(task), TEN_METRES_OFF, 1);
    assertThat(told(task, honest)).isEmpty();
    assertThat(told(task, figures(honest, 9, 500, 3000)))
        .containsExactly("Step 1 (B1 to Y1) is told to reach 9.00 m, the audit finds 10.00 m.");
    assertThat(told(task, figures(honest, 10, 350, 3000)))
        .containsExactly("Step 1 (B1 to Y1) is told to weigh 350 kg, the audit finds 500 kg.");
    assertThat(told(task, figures(honest, 10, 500, 4000)))
        .containsExactly(
            "Step 1 (B1 to Y1) is told to have a capacity of 4\u00a0000 kg, the audit finds 3\u00a0000 kg.");
    assertThat(told(task, figures(honest, 10, Double.NaN, 3000))).hasSize(1);
  }

  private static List<String> told(Task task, Step step) {
    AuditReport report =
        Audit.of(task, aPlan().stack(TEN_METRES_OFF, "B1").steps(step).build(task));
    return List.of(Rule.MACHINE_REACH, Rule.MACHINE_CAPACITY).stream()
        .flatMap(rule -> Audited.sentences(rule, report).stream())
        .toList();
  }

  private static Bundle bundle(Task task) {
    return task.delivery().bundles().get(0);
  }

  private static Machine oneRow(double reachM) {
    return new Machine(
        "one row",
        List.of(new MachineStand("M", new Point(20, 5))),
        List.of(new ChartRow(reachM, 3000)));
  }

  private static Step figures(Step s, double reachM, double massKg, double capacityKg) {
    return new Step(
        s.number(),
        s.kind(),
        s.bundleId(),
        s.fromId(),
        s.toId(),
        s.tier(),
        s.standId(),
        reachM,
        massKg,
        capacityKg,
        s.bearers());
  }
}
