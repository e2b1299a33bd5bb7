package skidway.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import skidway.plan.Task;
import skidway.site.MachineStand;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Steps;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.site.WallOpening;
import skidway.timber.Bundle;
import skidway.timber.Load;

/**
 * Names the spots that a plan uses: the first letter of the zone and a number, counted from the
 * left and the top of the map; racks get an R in between, waiting places an X. Spots given by the
 * people on site keep their names.
 */
final class SpotCodes {
  private final Site site;
  private final Map<String, String> prefixes = new HashMap<>();
  private final Set<String> taken = new HashSet<>();
  private final Set<String> kept = new HashSet<>();

  SpotCodes(Task task) {
    this.site = task.site();
    Set<String> stems = new HashSet<>();
    otherNames(task)
        .map(name -> name.toUpperCase(Locale.ROOT))
        .forEach(
            name -> {
              taken.add(name);
              stems.add(name.replaceAll("\\d+$", ""));
            });
    task.start().marked().forEach(spot -> keep(spot.id()));
    task.start().stacks().forEach(stack -> keep(stack.spot().id()));
    site.zones().forEach(zone -> prefixes.put(zone.id(), prefix(zone.id(), stems)));
  }

  /** A code that is painted on the ground stays with its spot. */
  private void keep(String code) {
    taken.add(code);
    kept.add(code);
  }

  /** Everything else on the sheet that has a name; a spot must not be mistaken for any of it. */
  private static Stream<String> otherNames(Task task) {
    Site site = task.site();
    return Stream.of(
            site.walls().stream().flatMap(w -> w.openings().stream()).map(WallOpening::id),
            site.walls().stream().map(Wall::id),
            site.decks().stream().flatMap(d -> d.steps().stream()).map(Steps::id),
            site.machine().stands().stream().map(MachineStand::id),
            site.truckStands().stream().map(TruckStand::id),
            task.delivery().loads().stream().map(Load::id),
            task.delivery().bundles().stream().map(Bundle::id))
        .flatMap(names -> names);
  }

  /** The used spots by number, under their codes. */
  Map<Integer, Spot> name(Board board, List<Integer> stacks, List<Integer> waiting) {
    Map<Integer, Spot> named = new LinkedHashMap<>();
    Map<String, Integer> counters = new HashMap<>();
    List<Integer> all = new ArrayList<>(inReadingOrder(board, stacks));
    all.addAll(inReadingOrder(board, waiting));
    for (int s : all) {
      Spot spot = board.spots.get(s);
      if (site.spots().isEmpty() && !kept.contains(spot.id())) {
        String kind = spot.kind() == SpotKind.RACK ? "R" : waiting.contains(s) ? "X" : "";
        String stem = prefixes.get(spot.zoneId()) + kind;
        spot = spot.called(next(stem, counters));
      }
      named.put(s, spot);
    }
    return named;
  }

  private static List<Integer> inReadingOrder(Board board, List<Integer> spots) {
    return spots.stream()
        .sorted(
            Comparator.comparing((Integer s) -> board.spots.get(s).zoneId())
                .thenComparing(s -> -Math.round(board.centre(s).y()))
                .thenComparing(s -> board.centre(s).x())
                .thenComparing(s -> s))
        .toList();
  }

  private String next(String stem, Map<String, Integer> counters) {
    String code = stem + counters.merge(stem, 1, Integer::sum);
    return taken.add(code) ? code : next(stem, counters);
  }

  /**
   * Letters only, so that the number behind it can be told apart; as few as make it the zone's own.
   */
  private static String prefix(String zoneId, Set<String> stems) {
    String letters = zoneId.toUpperCase(Locale.ROOT).replaceAll("\\P{L}", "");
    String base = letters.isEmpty() ? "Z" : letters;
    for (int length = 1; length <= base.length(); length++) {
      String candidate = base.substring(0, length);
      if (stems.add(candidate)) {
        return candidate;
      }
    }
    String longer = base;
    for (char last = 'A'; !stems.add(longer); last = last == 'Z' ? 'A' : (char) (last + 1)) {
      longer = last == 'A' ? longer + last : longer.substring(0, longer.length() - 1) + last;
    }
    return longer;
  }
}
