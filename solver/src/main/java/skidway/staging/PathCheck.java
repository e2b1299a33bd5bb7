package skidway.staging;

import java.util.List;
import skidway.site.Spot;

/**
 * Says which used spots shut a walking path. The search leaves this to somebody else's eyes: it
 * only learns which spots must not be used together.
 */
public interface PathCheck {
  /** Smallest sets of spot ids that together shut a path; empty when everything is within reach. */
  List<List<String>> shutBy(List<Spot> used);
}
