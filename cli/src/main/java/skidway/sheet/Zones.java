package skidway.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.site.Zone;

/**
 * Tells which deck or yard a margin is about: by the code of its stack or waiting place, or by the
 * zone's own name.
 */
record Zones(List<String> ids, Map<String, String> zoneBySpot) {
  static Zones of(Task task, Plan plan) {
    return new Zones(
        task.site().zones().stream().map(Zone::id).toList(),
        plan.spots().stream().collect(Collectors.toMap(Spot::id, Spot::zoneId, (a, b) -> a)));
  }

  List<Margin> about(String zoneId, List<Margin> margins) {
    return margins.stream().filter(m -> zone(m.where()).equals(Optional.of(zoneId))).toList();
  }

  private Optional<String> zone(String where) {
    return Optional.ofNullable(zoneBySpot.get(where))
        .or(
            () ->
                ids.stream()
                    .filter(id -> names(where, id))
                    .max(Comparator.comparingInt(String::length)));
  }

  /** Whether it begins with the zone's name: "deck" or "deck, joist 7". */
  private static boolean names(String where, String id) {
    return where.startsWith(id)
        && (where.length() == id.length()
            || !Character.isLetterOrDigit(where.codePointAt(id.length())));
  }
}
