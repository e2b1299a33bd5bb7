package skidway.audit;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.Map;
import java.util.OptionalDouble;
import skidway.rules.Rule;
import skidway.site.Grip;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.testkit.SiteBuilder;

/** For each rule about how bundles are lifted and carried a plan that breaks it alone. */
final class BrokenLifts {
  private BrokenLifts() {}

  static Map<Rule, BrokenPlans.Case> all() {
    Grip flat = new Grip.Slings(OptionalDouble.of(25), OptionalDouble.empty());
    return Map.of(
        Rule.SLING_LOAD, lifting(aSite().machine(Machines.over(Machines.slings(45, 300)))),
        Rule.SLING_ANGLE, lifting(aSite().machine(Machines.over(flat))),
        Rule.TRAVEL_WIDTH, onNarrowLane(),
        Rule.LINE_LIFT, besideTheLine());
  }

  private static BrokenPlans.Case lifting(SiteBuilder site) {
    return new BrokenPlans.Case(
        task(site.build(), aBundle("B1").load("L1", 1).weighing(500).build()),
        aPlan().stack(spot("Y1", "yard", 10, 8, 4.5, 0.9), "B1"));
  }

  private static BrokenPlans.Case onNarrowLane() {
    return lifting(
        aSite()
            .lane("L", 1.5, new Point(1, 5), new Point(30, 5))
            .machine(Machines.onLane("L", Machines.slings(60, 600))));
  }

  /** 4 m from the stand, 12 m from the stack. */
  private static BrokenPlans.Case besideTheLine() {
    return lifting(
        aSite()
            .overheadLine(
                new OverheadLine(
                    "P1", new Point(24, 0), new Point(24, 28), 12_000, OptionalDouble.empty())));
  }
}
