package skidway.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A subfloor that stacks may stand on. People get onto it over its {@link Steps} only.
 *
 * @param totalKg most that may lie on it altogether, when its designer said so
 */
public record Deck(
    String id,
    Outline outline,
    double heightM,
    double allowedKpa,
    List<FloorOpening> openings,
    List<Steps> steps,
    Optional<Joists> joists,
    OptionalDouble totalKg)
    implements Zone {
  public Deck {
    openings = List.copyOf(openings);
    steps = List.copyOf(steps);
  }

  /** A deck of which only the posted allowance is known. */
  public Deck(
      String id,
      Outline outline,
      double heightM,
      double allowedKpa,
      List<FloorOpening> openings,
      List<Steps> steps) {
    this(
        id,
        outline,
        heightM,
        allowedKpa,
        openings,
        steps,
        Optional.empty(),
        OptionalDouble.empty());
  }
}
