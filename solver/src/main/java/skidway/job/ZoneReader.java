package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Steps;
import skidway.site.Yard;

/** Reads decks, with their openings and steps, and yards. */
final class ZoneReader {
  private final Ids zones;
  private final Ids floorOpenings;
  private final Ids steps;

  ZoneReader(Ids zones, Problems problems) {
    this.zones = zones;
    this.floorOpenings = new Ids("floor opening", problems);
    this.steps = new Ids("flight of steps", problems);
  }

  Optional<Deck> deck(Fields f) {
    String id = f.id(zones);
    Outline outline = OutlineCheck.simple(f, "outline");
    double heightM = f.quantity("height", Bounds.DECK_HEIGHT);
    double allowedKpa = f.quantity("allowed", Bounds.ALLOWED_LOAD);
    OptionalDouble totalKg = f.optional("total", Bounds.ZONE_TOTAL);
    List<Read<FloorOpening>> openings =
        f.optionalObjects("openings", floorOpenings, this::floorOpening);
    List<Read<Steps>> ways = f.optionalObjects("steps", steps, this::steps);
    Optional<Read<Joists>> joists = JoistReader.joists(f);
    Optional<Deck> deck =
        f.finish(
            () ->
                new Deck(
                    id,
                    outline,
                    heightM,
                    allowedKpa,
                    Read.values(openings),
                    Read.values(ways),
                    joists.map(Read::value),
                    totalKg));
    deck.ifPresent(
        d -> {
          holds(d, openings);
          DeckChecks checks = new DeckChecks(d);
          ways.forEach(checks::steps);
          joists.filter(j -> f.unitsKnown()).ifPresent(j -> JoistChecks.carry(j, d));
        });
    return f.sound() ? deck : Optional.empty();
  }

  Optional<Yard> yard(Fields f) {
    String id = f.id(zones);
    Outline outline = OutlineCheck.simple(f, "outline");
    GroundStrength ground = GroundStrength.read(f);
    OptionalDouble slope = f.optional("slope", Bounds.SLOPE);
    OptionalDouble totalKg = f.optional("total", Bounds.ZONE_TOTAL);
    return f.finish(
        () -> new Yard(id, outline, ground.allowedKpa(), ground.soil(), slope, totalKg));
  }

  private static void holds(Deck deck, List<Read<FloorOpening>> openings) {
    for (Read<FloorOpening> opening : openings) {
      Inside.of(deck.outline())
          .check(
              opening.at().at("outline"),
              "floor opening \"" + opening.value().id() + '"',
              opening.value().outline(),
              "deck \"" + deck.id() + '"',
              opening.at());
    }
  }

  private Optional<FloorOpening> floorOpening(Fields f) {
    String id = f.id(floorOpenings);
    Outline outline = OutlineCheck.simple(f, "outline");
    return f.finish(() -> new FloorOpening(id, outline));
  }

  private Optional<Steps> steps(Fields f) {
    String id = f.id(steps);
    Point foot = Points.point(f, "foot");
    Point top = Points.point(f, "top");
    double widthM = f.quantity("width", Bounds.STEPS_WIDTH);
    return f.finish(() -> new Steps(id, foot, top, widthM));
  }
}
