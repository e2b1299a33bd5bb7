package skidway.shakeout;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Random;
import skidway.audit.Audit;
import skidway.audit.walk.PathFlood;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.staging.SearchLimits;
import skidway.staging.Stager;
import skidway.staging.StopButton;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;

/**
 * A house of four walls, six courses of three timbers each, whose timbers come mixed in six bundles
 * on three stacks of two. Every timber takes two people.
 */
record MixedHouse(Task task, Plan plan) {
  private static final int COURSES = 6;
  private static final int BUNDLES = 6;

  static MixedHouse of(long seed, double trips) {
    return of(seed, trips, Settings.defaults().get(Setting.COURSES_AHEAD));
  }

  static MixedHouse of(long seed, double trips, double coursesAhead) {
    Machine machine =
        new Machine(
            "test machine",
            List.of(
                new MachineStand("M", new Point(24, 5)), new MachineStand("N", new Point(24, 20))),
            List.of(new ChartRow(30, 3000)));
    return of(seed, machine, trips, coursesAhead);
  }

  /** All that comes off the truck is carried by people. */
  static MixedHouse byHand(long seed) {
    return of(seed, Machine.NONE, 0, Settings.defaults().get(Setting.COURSES_AHEAD));
  }

  private static MixedHouse of(long seed, Machine machine, double trips, double coursesAhead) {
    List<Spot> spots = new ArrayList<>();
    for (int s = 0; s < BUNDLES / 2; s++) {
      spots.add(spot("Y" + (s + 1), "yard", 8 + 4 * s, 7.5, 3.2, 0.8));
    }
    Site site = aSite().machine(machine).spots(spots.toArray(Spot[]::new)).build();
    Task task =
        Tasks.task(site, settings(trips, coursesAhead), bundles(seed).toArray(Bundle[]::new));
    PlanBuilder plan = PlanBuilder.aPlan();
    for (int s = 0; s < spots.size(); s++) {
      plan.stack(spots.get(s), "B" + (2 * s + 1), "B" + (2 * s + 2));
    }
    Effort effort = Audit.of(task, plan.build(task)).effort();
    return new MixedHouse(task, plan.effort(effort).build(task));
  }

  /** The same house with the plan that is searched for it, as plan files hold it. */
  MixedHouse staged() {
    SearchLimits limits = new SearchLimits(1, 300);
    PathFlood flood = new PathFlood(task);
    return new MixedHouse(
        task, Stager.stage(task, limits, flood::shutBy, (p, d, s) -> {}, new StopButton()));
  }

  private static List<Bundle> bundles(long seed) {
    Random random = new Random(seed);
    List<BundleBuilder> builders = new ArrayList<>();
    for (int b = 0; b < BUNDLES; b++) {
      builders.add(aBundle("B" + (b + 1)).load("L1", b + 1).size(3.2, 0.8, 0.45));
    }
    int[] count = new int[BUNDLES];
    for (String wall : List.of("W1", "W2", "W3", "W4")) {
      for (int course = 1; course <= COURSES; course++) {
        for (int position = 1; position <= 3; position++) {
          int b = random.nextInt(BUNDLES);
          int layer = 1 + count[b]++ / 4;
          builders.get(b).piece(wall, course, position, 2.45 + 0.03 * position, layer);
        }
      }
    }
    return builders.stream().map(BundleBuilder::build).toList();
  }

  /** Piles cost little here, so that there is something to look at. */
  private static Settings settings(double trips, double coursesAhead) {
    EnumMap<Setting, Settings.Change> changes = new EnumMap<>(Setting.class);
    changes.put(Setting.PICK_TIME, new Settings.Change(10, "test"));
    changes.put(Setting.LAY_PIECE, new Settings.Change(4, "test"));
    changes.put(Setting.PILE_SET_UP, new Settings.Change(15, "test"));
    changes.put(Setting.MACHINE_LIFT, new Settings.Change(20, "test"));
    changes.put(Setting.MACHINE_TRIPS, new Settings.Change(trips, "test"));
    changes.put(Setting.COURSES_AHEAD, new Settings.Change(coursesAhead, "test"));
    return new Settings(changes);
  }
}
