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
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

/**
 * Truck at (18, 2), machine at (20, 5), stack at (10, 8); the bundle is 4 m long. East of x = 20
 * nothing comes nearer to a line along y than x = 20 and 2 m.
 */
final class LineLiftRulesTest {
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);

  /** How far a bundle of 4 m by 0.6 m reaches out when it turns on the hook. */
  private static final double REACH_M = Math.hypot(4, 0.6) / 2;

  private static OverheadLine lineAt(double x, double volts, OptionalDouble clearanceM) {
    return new OverheadLine("P1", new Point(x, 0), new Point(x, 28), volts, clearanceM);
  }

  private static AuditReport report(OverheadLine line) {
    Task task = task(aSite().overheadLine(line).build(), aBundle("B1").weighing(500).build());
    return Audited.report(task, aPlan().stack(Y1, "B1"));
  }

  private static List<String> broken(OverheadLine line) {
    return Audited.sentences(Rule.LINE_LIFT, report(line));
  }

  @Test
  void halfTheBundleReachesBeyondTheHooksWay() {
    assertThat(broken(lineAt(20 + 3.048 + REACH_M, 12_000, OptionalDouble.empty()))).isEmpty();
    assertThat(broken(lineAt(24.5, 12_000, OptionalDouble.empty())))
        .containsExactly("Step 1 (B1 to Y1) may come to 2.48 m of overhead line P1, limit 3.05 m.");
  }

  @Test
  void aLineAcrossTheWayIsBrokenHoweverLow() {
    assertThat(broken(lineAt(15, 12_000, OptionalDouble.empty())))
        .containsExactly("Step 1 (B1 to Y1) may swing under overhead line P1, limit 3.05 m.");
  }

  /** 29 CFR 1926.1408 Table A; upper bounds belong to their band. */
  @ParameterizedTest
  @CsvSource({
    "50000, 10", "50001, 15", "200000, 15", "200001, 20", "345000, 20", "350000, 20",
    "350001, 25", "500000, 25", "500001, 35", "750000, 35", "750001, 45", "1000000, 45"
  })
  void clearanceFollowsTheVoltage(double volts, double feet) {
    AuditReport report = report(lineAt(38, volts, OptionalDouble.empty()));
    assertThat(report.margins())
        .filteredOn(margin -> margin.rule() == Rule.LINE_LIFT)
        .singleElement()
        .satisfies(
            margin -> {
              assertThat(margin.limit()).isCloseTo(feet * 0.3048, within(1e-9));
              assertThat(margin.value()).isCloseTo(18 - REACH_M, within(1e-9));
            });
  }

  @Test
  void theOwnerMayAskForMoreButNotForLess() {
    assertThat(broken(lineAt(25.5, 12_000, OptionalDouble.of(6)))).hasSize(1);
    assertThat(broken(lineAt(24.5, 12_000, OptionalDouble.of(1)))).hasSize(1);
  }

  @Test
  void aboveOneThousandKilovoltsOnlyTheOwnerKnows() {
    assertThat(broken(lineAt(38, 1_100_000, OptionalDouble.of(18 - REACH_M)))).isEmpty();
    assertThat(broken(lineAt(38, 1_100_000, OptionalDouble.of(16.1)))).hasSize(1);
    AuditReport report = report(lineAt(21, 1_100_000, OptionalDouble.empty()));
    assertThat(Audited.sentences(Rule.LINE_LIFT, report)).isEmpty();
  }

  @Test
  void liftingOnStartsFromTheWaitingPlace() {
    Bundle upper = aBundle("B1").load("L1", 1).weighing(100).build();
    Bundle lower = aBundle("B2").load("L1", 2).weighing(100).build();
    Spot waiting = spot("T1", "yard", 26, 8, 4.5, 0.9);
    Task task =
        task(
            aSite().overheadLine(lineAt(31, 12_000, OptionalDouble.empty())).build(), upper, lower);
    assertThat(
            Audited.sentences(
                Rule.LINE_LIFT,
                task,
                aPlan()
                    .stack(Y1, "B2", "B1")
                    .waiting(waiting)
                    .steps(
                        setDown(task, 1, upper, waiting),
                        place(task, 2, lower, Y1, 1),
                        liftOn(task, 3, upper, waiting, Y1, 2))))
        .containsExactly(
            "Step 1 (B1 to T1) may come to 2.98 m of overhead line P1, limit 3.05 m.",
            "Step 3 (B1 to Y1) may come to 2.98 m of overhead line P1, limit 3.05 m.");
  }
}
