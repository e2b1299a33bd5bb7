package skidway.timber;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The whole package: its loads in the order they arrive, and its bundles in the order they come
 * off. Two loads with the same arrival keep the order of their ids.
 */
public record Delivery(List<Load> loads, List<Bundle> bundles) {
  public Delivery {
    loads =
        loads.stream().sorted(Comparator.comparing(Load::arrival).thenComparing(Load::id)).toList();
    Map<String, Integer> turn = new HashMap<>();
    for (Load load : loads) {
      turn.put(load.id(), turn.size());
    }
    bundles =
        bundles.stream()
            .sorted(
                Comparator.comparing((Bundle b) -> turn.getOrDefault(b.loadId(), turn.size()))
                    .thenComparing(Bundle::offOrder)
                    .thenComparing(Bundle::id))
            .toList();
  }

  public List<Piece> pieces() {
    return bundles.stream().flatMap(b -> b.pieces().stream()).toList();
  }

  public Optional<Load> load(String id) {
    return loads.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  /** The bundle of an id; a plain loop, because every step of a plan asks again and again. */
  public Optional<Bundle> bundle(String id) {
    for (Bundle bundle : bundles) {
      if (bundle.id().equals(id)) {
        return Optional.of(bundle);
      }
    }
    return Optional.empty();
  }
}
