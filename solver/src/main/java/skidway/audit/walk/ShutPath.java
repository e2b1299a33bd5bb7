package skidway.audit.walk;

import java.util.List;

/**
 * A place that people no longer get to with all stacks in place.
 *
 * @param id the spot, wall or steps it belongs to
 * @param name the place in the yard's words
 * @param spotIds stacks that together shut it: take any one of them away and it is open
 */
public record ShutPath(String id, String name, List<String> spotIds) {
  public ShutPath {
    spotIds = List.copyOf(spotIds);
  }
}
