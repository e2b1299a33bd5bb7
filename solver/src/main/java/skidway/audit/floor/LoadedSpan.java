package skidway.audit.floor;

import java.util.Set;
import skidway.site.Point;

/**
 * One joist from one support to the next with all that stacks put on it.
 *
 * @param middle where on the site it is
 * @param spotIds the spots whose stacks it bears a part of
 */
public record LoadedSpan(SimpleSpan span, Point middle, Set<String> spotIds) {
  public LoadedSpan {
    spotIds = Set.copyOf(spotIds);
  }
}
