package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.Grip;

/** Reads how the machine holds a bundle. */
final class GripReader {
  private static final List<String> KINDS = List.of("forks", "slings");

  private GripReader() {}

  /** Unstated when the field is left out, and after a problem. */
  static Grip grip(Fields machine) {
    if (!machine.has("grip")) {
      return new Grip.Unstated();
    }
    return machine.object("grip", "grip").flatMap(GripReader::read).orElse(new Grip.Unstated());
  }

  private static Optional<Grip> read(Fields f) {
    boolean forks = f.choice("kind", KINDS) == 0;
    if (!f.sound()) {
      return Optional.empty();
    }
    if (forks) {
      OptionalDouble loadCentreM = f.optional("loadCentre", Bounds.LOAD_CENTRE);
      return f.finish(() -> new Grip.Forks(loadCentreM));
    }
    OptionalDouble angleDeg = f.optional("angle", Bounds.SLING_ANGLE);
    OptionalDouble legKg = f.optional("leg", Bounds.SLING_LEG);
    return f.finish(() -> new Grip.Slings(angleDeg, legKg));
  }
}
