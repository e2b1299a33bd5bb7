package skidway.site;

import java.util.List;

/** A subfloor that stacks may stand on. People get onto it over its {@link Steps} only. */
public record Deck(
    String id,
    Outline outline,
    double heightM,
    double allowedKpa,
    List<FloorOpening> openings,
    List<Steps> steps)
    implements Zone {
  public Deck {
    openings = List.copyOf(openings);
    steps = List.copyOf(steps);
  }
}
