package skidway.layout;

import java.util.List;
import skidway.site.Spot;

/** One placement rule, prepared for one site. */
@FunctionalInterface
interface PlacementCheck {
  /** How the spot breaks the rule; none when it keeps it. */
  List<Finding> findings(Spot spot);
}
