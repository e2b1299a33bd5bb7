package skidway.job;

import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;

/** Reads a spot that the people there have given. */
final class SpotReader {
  private final Ids spots;
  private final Ids zones;

  SpotReader(Ids zones, Problems problems) {
    this.zones = zones;
    this.spots = new Ids("spot", problems);
  }

  Ids ids() {
    return spots;
  }

  Optional<Spot> spot(Fields f) {
    String id = f.id(spots);
    String zone = f.reference("zone");
    zones.require(zone, f.at("zone"), "name one of the decks or yards");
    SpotKind kind = f.choice("kind", SpotKind.STACK);
    Point centre = Points.point(f, "centre");
    double headingDeg = f.optional("heading", Bounds.DIRECTION).orElse(0);
    double lengthM = f.quantity("length", Bounds.SPOT_LENGTH);
    double widthM = f.quantity("width", Bounds.SPOT_WIDTH);
    OpenSide openSide = f.choice("openSide", OpenSide.LEFT);
    double stripM = f.quantity("strip", Bounds.STRIP);
    OptionalDouble massLimitKg = f.optional("massLimit", Bounds.MASS_LIMIT);
    return f.finish(
        () ->
            new Spot(
                id,
                zone,
                kind,
                new Footprint(centre, headingDeg, lengthM, widthM),
                openSide,
                stripM,
                massLimitKg));
  }
}
