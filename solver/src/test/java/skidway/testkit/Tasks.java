package skidway.testkit;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import skidway.plan.Task;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/** Puts a site and bundles together to a task; every load a bundle names arrives, a day apart. */
public final class Tasks {
  private Tasks() {}

  public static Task task(Site site, Bundle... bundles) {
    return task(site, Settings.defaults(), bundles);
  }

  public static Task task(Site site, Settings settings, Bundle... bundles) {
    LocalDateTime first = LocalDateTime.of(2031, 5, 5, 8, 0);
    List<String> loadIds = Stream.of(bundles).map(Bundle::loadId).distinct().sorted().toList();
    List<Load> loads =
        loadIds.stream()
            .map(id -> new Load(id, first.plusDays(loadIds.indexOf(id)), "truck"))
            .toList();
    return new Task(
        "test job",
        site,
        new Delivery(loads, List.of(bundles)),
        settings,
        new Figures(UnitSystem.METRIC));
  }
}
