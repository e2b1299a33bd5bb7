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
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;

/** A bundle that waits is held to the rules of a stack of one, each time it is set down. */
final class WaitingPlacesTest {
  private static final Spot ROOMY = spot("Y1", "yard", 10, 8, 6, 1.2);
  private static final Spot IN_YARD = spot("T1", "yard", 17, 8, 4.5, 0.9);
  private static final Spot ON_DECK = spot("T1", "deck", 15, 19.5, 4, 0.9);

  /** What is said when B1 waits for B2, which belongs under it. */
  private static List<String> broken(Rule rule, Spot waiting, BundleBuilder b1) {
    Bundle upper = b1.load("L1", 1).build();
    Bundle lower = aBundle("B2").load("L1", 2).size(6, 1.2, 0.4).weighing(100).build();
    Task task = task(aSite().build(), upper, lower);
    return Audited.sentences(
        rule,
        task,
        aPlan()
            .stack(ROOMY, "B2", "B1")
            .waiting(waiting)
            .steps(
                setDown(task, 1, upper, waiting),
                place(task, 2, lower, ROOMY, 1),
                liftOn(task, 3, upper, waiting, ROOMY, 2)));
  }

  private static BundleBuilder sized(double lengthM, double widthM) {
    return aBundle("B1").size(lengthM, widthM, 0.4).weighing(100);
  }

  @Test
  void fitsSpot() {
    assertThat(broken(Rule.FITS_SPOT, IN_YARD, sized(4.5, 0.9))).isEmpty();
    assertThat(broken(Rule.FITS_SPOT, IN_YARD, sized(4.6, 1.0)))
        .containsExactly(
            "B1 is 1.00 m wide, too wide for spot T1, limit 0.90 m.",
            "B1 is 4.60 m long, too long for spot T1, limit 4.50 m.");
  }

  @Test
  void spotMass() {
    assertThat(broken(Rule.SPOT_MASS, carrying(500), sized(4, 0.6).weighing(500))).isEmpty();
    assertThat(broken(Rule.SPOT_MASS, carrying(499), sized(4, 0.6).weighing(500)))
        .containsExactly("B1 at waiting place T1 weighs 500 kg, limit 499 kg.");
  }

  @Test
  void zoneLoad() {
    // 2.4 kPa on 4 by 0.6 m carry 2.4 * 2.4 / 9.80665 = 0.58735 t.
    assertThat(broken(Rule.ZONE_LOAD, ON_DECK, sized(4, 0.6).weighing(587.3))).isEmpty();
    assertThat(broken(Rule.ZONE_LOAD, ON_DECK, sized(4, 0.6).weighing(620)))
        .containsExactly("B1 at waiting place T1 puts 2.5 kPa on deck, limit 2.4 kPa.");
    assertThat(broken(Rule.ZONE_LOAD, IN_YARD, sized(4, 0.6).weighing(620))).isEmpty();
  }

  @Test
  void stackHeight() {
    assertThat(broken(Rule.STACK_HEIGHT, IN_YARD, sized(4, 0.6))).isEmpty();
    // The stack is too high with it too; what waits is told by itself.
    assertThat(broken(Rule.STACK_HEIGHT, IN_YARD, aBundle("B1").size(4, 0.6, 2).weighing(100)))
        .hasSize(2)
        .anyMatch(s -> s.startsWith("B1 at waiting place T1 is 2."));
  }

  private static Spot carrying(double kg) {
    return new Spot(
        IN_YARD.id(),
        IN_YARD.zoneId(),
        IN_YARD.kind(),
        IN_YARD.footprint(),
        IN_YARD.openSide(),
        IN_YARD.stripM(),
        OptionalDouble.of(kg));
  }
}
