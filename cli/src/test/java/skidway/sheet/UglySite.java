package skidway.sheet;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Starter;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** A site 200 m long with spiteful names, seven loads, and as many stacks as one likes. */
final class UglySite {
  static final String SPITEFUL = "<script>alert('x')</script> & \"Söhne\" \u0001";

  /** Stands wherever a job has a name. */
  private final String name;

  private UglySite(String name) {
    this.name = name;
  }

  static Task task(int stacks) {
    return new UglySite(SPITEFUL).ask(stacks);
  }

  static Plan plan(int stacks) {
    return new UglySite(SPITEFUL).answer(stacks);
  }

  static Task task(String name, int stacks) {
    return new UglySite(name).ask(stacks);
  }

  static Plan plan(String name, int stacks) {
    return new UglySite(name).answer(stacks);
  }

  private Task ask(int stacks) {
    List<Bundle> bundles = new ArrayList<>();
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      loads.add(new Load("load " + i, LocalDateTime.of(2031, 5, 5 + i, 8, 0), "T"));
    }
    for (int i = 0; i < stacks; i++) {
      bundles.add(
          BundleBuilder.aBundle(bundleId(i))
              .load("load " + i % 7, i / 7 + 1)
              .size(4.8, 0.9, 0.4)
              .weighing(700)
              .build());
    }
    return new Task(
        name + " with a job name that goes on and on until nobody can remember its beginning",
        site(),
        new Delivery(loads, bundles),
        Settings.defaults(),
        new Figures(UnitSystem.METRIC));
  }

  private Plan answer(int stacks) {
    Task task = ask(stacks);
    List<Stack> all = new ArrayList<>();
    for (int i = 0; i < stacks; i++) {
      all.add(new Stack(spot(i), List.of(bundleId(i))));
    }
    return new Plan(
        task.jobName(),
        1,
        "",
        "",
        new Search(1, 1, false),
        all,
        List.of(),
        SampleSteps.of(task, all, spot(99)),
        List.of(),
        List.of(),
        Effort.NONE,
        List.of(),
        List.of());
  }

  private String bundleId(int i) {
    return i == 0 ? name : "BUNDLE-2031-NORTH-GABLE-" + i;
  }

  private Spot spot(int i) {
    String id = i == 1 ? name : i == 2 ? "the long spot by the gate" : "P" + i;
    Footprint area = new Footprint(new Point(20 + i % 8 * 7, 20 + i / 8 * 5), i * 11, 5, 1);
    return new Spot(id, name, SpotKind.STACK, area, OpenSide.LEFT, 0.9, OptionalDouble.empty());
  }

  private Site site() {
    return new Site(
        name,
        Outline.box(0, 0, 200, 110),
        -30,
        0.15,
        List.of(
            new Wall(
                "<b>W</b>", new Point(120, 40), new Point(132, 40), 0.2, Starter.FULL, List.of())),
        List.of(),
        List.of(new Yard(name, Outline.box(10, 10, 90, 70), 50)),
        List.of(),
        List.of(
            new KeepClear(
                "K", Outline.box(140, 60, 150, 70), 1, "old well & </svg> \"cover\"", false)),
        List.of(new TruckStand("T", new Footprint(new Point(60, 90), 15, 14, 2.6))),
        new Machine(
            "crane <1>",
            List.of(new MachineStand("M", new Point(100, 30))),
            List.of(new ChartRow(200, 900))),
        List.of());
  }
}
