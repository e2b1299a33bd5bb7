package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.limits.LumberTable;
import skidway.plan.Task;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.testkit.SiteBuilder;

final class UnmeasuredTest {
  private static final Outline TRENCH = Outline.box(2, 20, 3, 22);

  private static List<String> remarks(SiteBuilder site, Spot spot) {
    Task task = task(site.build(), aBundle("B1").weighing(100).build());
    return Audit.of(task, aPlan().stack(spot, "B1").build(task)).remarks();
  }

  @Test
  void aDeckInUseNeedsItsJoistsAYardInUseItsSlope() {
    String joists = "Not checked: joists of deck; needs joists.";
    String slope = "Not checked: slope of yard; needs slope.";
    assertThat(remarks(aSite(), spot("D1", "deck", 15, 19.5, 4, 0.9)))
        .contains(joists)
        .doesNotContain(slope);
    assertThat(remarks(aSite(), spot("Y1", "yard", 10, 8, 4.5, 0.9)))
        .contains(slope)
        .doesNotContain(joists);
  }

  /** Of a table's strength the source is told, and how far it is to be trusted. */
  @Test
  void aTimberFromTheTableIsForTheDesignerToConfirm() {
    Spot spot = spot("D1", "deck", 15, 19.5, 4, 0.9);
    JoistDesign recalled =
        LumberTable.find("hem-fir", "No.2", "2x10", 0.4, LumberTable.USUAL_DEAD_KPA).orElseThrow();
    assertThat(remarks(aSite().joists(joists(recalled)), spot))
        .contains(
            "The joists of deck count as hem-fir No.2 2x10 (from memory, confirm; older editions of NDS"
                + " Table 4A), dry, under a floor of 0.5 kPa; the floor's designer confirms it.");
    assertThat(remarks(aSite().joists(joists(new JoistDesign.LiveLoad(2))), spot))
        .noneMatch(r -> r.startsWith("The joists of deck"));
  }

  private static Joists joists(JoistDesign design) {
    return new Joists(
        90, 0.4, new Point(10, 16), List.of(new Point(10, 16), new Point(10, 24)), design);
  }

  @Test
  void anExcavationNeedsItsDepth() {
    Spot spot = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    String depth = "Not checked: depth of excavation pit; needs depth.";
    assertThat(remarks(aSite().excavation("pit", TRENCH, 0, Double.NaN), spot)).contains(depth);
    assertThat(remarks(aSite().excavation("pit", TRENCH, 0, 1), spot)).doesNotContain(depth);
    assertThat(remarks(aSite().keepClear("pit", TRENCH, 0, false), spot)).doesNotContain(depth);
  }
}
