package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
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

/** The stack's west end is at x = 7.75; lines run north west of it, the truck is at x = 12. */
final class LineRulesTest {
  private static OverheadLine line(double apartM, double volts, OptionalDouble ownersM) {
    double x = 7.75 - apartM;
    return new OverheadLine("L", new Point(x, -99), new Point(x, 99), volts, ownersM);
  }

  private static AuditReport report(OverheadLine line) {
    Task task = task(aSite().overheadLine(line).build(), aBundle("B1").build());
    return Audit.of(task, aPlan().stack(spot("Y1", "yard", 10, 8, 4.5, 0.9), "B1").build(task));
  }

  private static List<String> broken(double apartM, double volts, OptionalDouble ownersM) {
    return Audited.sentences(Rule.OVERHEAD_LINE, report(line(apartM, volts, ownersM)));
  }

  private static List<String> near(double apartM, double volts) {
    return report(line(apartM, volts, OptionalDouble.empty())).remarks().stream()
        .filter(remark -> remark.startsWith("Within"))
        .toList();
  }

  /** 29 CFR 1926.1408 Table A; the upper end of each band belongs to it. */
  @ParameterizedTest
  @CsvSource({
    "400, 10",
    "50000, 10",
    "50001, 15",
    "200000, 15",
    "200001, 20",
    "350000, 20",
    "350001, 25",
    "500000, 25",
    "500001, 35",
    "750000, 35",
    "750001, 45",
    "1000000, 45"
  })
  void clearanceGrowsWithTheVoltage(double volts, double feet) {
    double clearanceM = feet * 0.3048;
    assertThat(broken(clearanceM, volts, OptionalDouble.empty())).isEmpty();
    assertThat(broken(clearanceM - 0.01, volts, OptionalDouble.empty())).hasSize(1);
  }

  @Test
  void overheadLineTellsTheDistanceAndTheVoltage() {
    assertThat(broken(2.5, 7200, OptionalDouble.empty()))
        .containsExactly("Stack Y1 stands 2.50 m from overhead line L (7.2 kV), limit 3.05 m.");
    assertThat(broken(-2, 7200, OptionalDouble.empty()))
        .containsExactly("Stack Y1 stands 0.00 m from overhead line L (7.2 kV), limit 3.05 m.");
  }

  @Test
  void theOwnerMayAskForMoreButNotForLess() {
    assertThat(broken(4, 7200, OptionalDouble.of(4))).isEmpty();
    assertThat(broken(3.9, 7200, OptionalDouble.of(4))).hasSize(1);
    assertThat(broken(3, 7200, OptionalDouble.of(1))).hasSize(1);
  }

  @Test
  void aboveTheTableOnlyTheOwnerKnows() {
    assertThat(broken(20, 1_100_000, OptionalDouble.of(20))).isEmpty();
    assertThat(broken(19, 1_100_000, OptionalDouble.of(20))).hasSize(1);
    assertThat(report(line(1, 1_100_000, OptionalDouble.empty())).remarks())
        .contains("Not checked: clearance of overhead line L; needs clearance.");
  }

  @Test
  void workNearALineNeedsMeasuresFirst() {
    assertThat(near(6.2, 7200)).isEmpty();
    assertThat(near(6, 7200))
        .containsExactly(
            "Within 6.10 m of overhead line L (7.2 kV): stack Y1. 29 CFR 1926.1408 asks for"
                + " measures before work begins there (the distance: 29 CFR 1926.1409, from a"
                + " secondary text, confirm).");
    assertThat(near(15, 400_000)).singleElement().asString().contains("stack Y1. 29");
    assertThat(near(1, 7200)).singleElement().asString().contains("stack Y1, truck stand truck.");
  }
}
