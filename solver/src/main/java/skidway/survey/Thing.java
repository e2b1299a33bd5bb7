package skidway.survey;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.units.UnitSystem;

/** One object of the site while it is put together. */
final class Thing {
  private final Place place;
  private final Map<String, LocatedNode> fields = new LinkedHashMap<>();

  Thing(Place place) {
    this.place = place;
  }

  Thing put(String name, LocatedNode value) {
    fields.put(name, value);
    return this;
  }

  Thing put(String name, Optional<? extends LocatedNode> value) {
    value.ifPresent(v -> fields.put(name, v));
    return this;
  }

  Thing put(String name, Optional<Measured> value, UnitSystem units) {
    value.ifPresent(v -> fields.put(name, v.node(units)));
    return this;
  }

  Place place() {
    return place;
  }

  Optional<LocatedNode> get(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  LocatedNode.Members done() {
    Map<String, Place> names = new LinkedHashMap<>();
    fields.forEach((name, value) -> names.put(name, value.place()));
    return new LocatedNode.Members(place, new LinkedHashMap<>(fields), names);
  }
}
