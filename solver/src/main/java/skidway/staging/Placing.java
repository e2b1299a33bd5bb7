package skidway.staging;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** The one decision per bundle: the number of its spot, or none. */
@PlanningEntity
class Placing {
  @PlanningId private Integer bundle = Occupancy.NOWHERE;

  @PlanningVariable(nullable = true, valueRangeProviderRefs = "spots")
  private @Nullable Integer spot;

  /** For the engine. */
  Placing() {}

  Placing(int bundle, int spot) {
    this.bundle = bundle;
    setSpot(spot);
  }

  int bundle() {
    return bundle;
  }

  int spot() {
    return spot == null ? Occupancy.NOWHERE : spot;
  }

  final void setSpot(int number) {
    spot = number == Occupancy.NOWHERE ? null : Integer.valueOf(number);
  }
}
