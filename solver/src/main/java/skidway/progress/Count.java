package skidway.progress;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What somebody counted on one load, in the order in which it was said.
 *
 * @param there bundles and pieces that were said to be there
 * @param missing ids of bundles or marks of pieces, each with a note or an empty text
 * @param damaged the same, of what must not be built in
 * @param extras what came beside the list, each with what it is
 */
public record Count(
    String loadId,
    Set<String> there,
    Map<String, String> missing,
    Map<String, String> damaged,
    Map<String, String> extras) {
  public Count {
    there = Collections.unmodifiableSet(new LinkedHashSet<>(there));
    missing = Collections.unmodifiableMap(new LinkedHashMap<>(missing));
    damaged = Collections.unmodifiableMap(new LinkedHashMap<>(damaged));
    extras = Collections.unmodifiableMap(new LinkedHashMap<>(extras));
  }

  /** Whether all that was expected came, and nothing else. */
  public boolean complete() {
    return missing.isEmpty() && damaged.isEmpty() && extras.isEmpty();
  }
}
