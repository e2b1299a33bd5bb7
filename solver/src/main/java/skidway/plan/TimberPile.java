package skidway.plan;

import java.util.List;
import skidway.site.Spot;
import skidway.timber.BearerRow;

/**
 * Loose timbers side by side on bearers, layer on layer with stickers between them, by the wall
 * where they go; what is needed first lies on top.
 *
 * @param spot its place; its code is the pile's
 * @param layers marks of its pieces, the lowest layer first
 * @param heightM of its top above the deck or ground, bearers included
 * @param massKg what it weighs at most
 * @param bearers under its lowest layer
 */
public record TimberPile(
    Spot spot, List<List<String>> layers, double heightM, double massKg, BearerRow bearers) {
  public TimberPile {
    layers = layers.stream().map(List::copyOf).toList();
  }

  public String id() {
    return spot.id();
  }

  /** Its pieces, from the bottom up. */
  public List<String> marks() {
    return layers.stream().flatMap(List::stream).toList();
  }
}
