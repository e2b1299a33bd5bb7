package skidway.progress;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/** Everything that an event can name, by its id. */
final class Roll {
  final Map<String, Load> loads = new LinkedHashMap<>();
  final Map<String, Bundle> bundles = new LinkedHashMap<>();
  final Map<String, Piece> pieces = new LinkedHashMap<>();
  final Map<String, String> bundleOfMark = new LinkedHashMap<>();
  final Map<String, Spot> spots = new LinkedHashMap<>();

  /**
   * @param earlier spots of plans before, where something may still lie
   */
  Roll(Task task, Plan plan, List<Spot> earlier) {
    task.delivery().loads().forEach(load -> loads.put(load.id(), load));
    for (Bundle bundle : task.delivery().bundles()) {
      bundles.put(bundle.id(), bundle);
      for (Piece piece : bundle.pieces()) {
        pieces.put(piece.mark(), piece);
        bundleOfMark.put(piece.mark(), bundle.id());
      }
    }
    // Of two spots with one code the plan's counts: it is the one on the map and on the tags.
    plan.spots().forEach(this::add);
    task.site().spots().forEach(this::add);
    earlier.forEach(this::add);
  }

  private void add(Spot spot) {
    spots.putIfAbsent(spot.id(), spot);
  }

  /** A known bundle. */
  Bundle bundle(String id) {
    return known(bundles, id);
  }

  /** The bundle of a known piece. */
  String bundleOf(String mark) {
    return known(bundleOfMark, mark);
  }

  /**
   * What a map holds for an id that was looked for before.
   *
   * @throws IllegalArgumentException if it holds nothing
   */
  static <T> T known(Map<String, T> map, String id) {
    T thing = map.get(id);
    if (thing == null) {
      throw new IllegalArgumentException("Nothing is known of " + id + '.');
    }
    return thing;
  }

  /** What can be missing, damaged or found. */
  Collection<String> things() {
    Set<String> things = new LinkedHashSet<>(bundles.keySet());
    things.addAll(pieces.keySet());
    return things;
  }
}
