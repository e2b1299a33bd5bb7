package skidway.sheet;

import java.util.Optional;

/**
 * A label with the place that was found for it, and a leader when that is not next to its thing.
 */
record PlacedLabel(Label label, Box box, Optional<Leader> leader) {
  private static final double CLOSE = 1.3;

  static PlacedLabel on(Label label, Box box) {
    return new PlacedLabel(label, box, Optional.empty());
  }

  static PlacedLabel beside(Label label, Box box, Box thing) {
    PagePoint from = thing.nearest(box.centre());
    Leader leader = new Leader(from, box.nearest(from));
    return new PlacedLabel(
        label, box, leader.lengthMm() > CLOSE ? Optional.of(leader) : Optional.empty());
  }

  void draw(Drawing drawing) {
    drawing.open("label");
    leader.ifPresent(l -> l.draw(drawing));
    label.draw(drawing, box);
    drawing.close();
  }
}
