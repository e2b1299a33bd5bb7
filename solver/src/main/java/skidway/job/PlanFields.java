package skidway.job;

import java.util.OptionalDouble;
import java.util.function.Supplier;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;

/** Fields that plans and their waves have alike; to be supplied if they are sound. */
final class PlanFields {
  private PlanFields() {}

  static Supplier<BearerRow> bearers(Fields f) {
    int count = Plain.whole(f, "count", 1);
    double spacingM = Plain.number(f, "spacingM");
    double endM = Plain.number(f, "endM");
    double lengthM = Plain.number(f, "lengthM");
    return () -> new BearerRow(count, spacingM, endM, lengthM);
  }

  /** What a spot has beside its id and kind. */
  static Supplier<Spot> spot(Fields f, String id, SpotKind kind) {
    String zone = f.reference("zone");
    Point centre = Points.point(f, "centreM");
    double headingDeg = f.quantity("headingDeg", Bounds.DIRECTION);
    double lengthM = f.quantity("lengthM", Bounds.SPOT_LENGTH);
    double widthM = f.quantity("widthM", Bounds.SPOT_WIDTH);
    OpenSide openSide = f.choice("openSide", OpenSide.LEFT);
    double stripM = f.quantity("stripM", Bounds.STRIP);
    OptionalDouble massLimitKg = f.optional("massLimitKg", Bounds.MASS_LIMIT);
    return () ->
        new Spot(
            id,
            zone,
            kind,
            new Footprint(centre, headingDeg, lengthM, widthM),
            openSide,
            stripM,
            massLimitKg);
  }
}
