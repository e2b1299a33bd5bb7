package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import skidway.site.Spot;

/** Puts every spot's code on the spot, or beside it where the spot is too small on paper. */
final class Codes {
  private static final double BESIDE_SIZE = 3.4;
  private static final int MOST_CHARACTERS = 16;

  private final Frame frame;
  private final Labels labels;
  private final List<Plate> plates = new ArrayList<>();
  private final List<Leader> leaders = new ArrayList<>();
  private final Set<String> onSpot = new TreeSet<>();
  private final List<String> untold = new ArrayList<>();

  Codes(Frame frame, Labels labels) {
    this.frame = frame;
    this.labels = labels;
  }

  void placeOn(Spot spot, boolean waiting) {
    Optional<Plate> fitting =
        Plate.on(spot, frame, waiting)
            .filter(p -> plates.stream().allMatch(o -> o.box().overlap(p.box()) == 0));
    fitting.ifPresent(
        plate -> {
          plates.add(plate);
          labels.block(plate.box());
          onSpot.add(spot.id());
        });
  }

  /** For a spot whose code is not on it. */
  void placeBeside(Spot spot, boolean waiting) {
    if (onSpot.contains(spot.id())) {
      return;
    }
    List<PagePoint> corners = frame.at(spot.footprint().outline());
    Box thing = Box.of(corners);
    String shown = Lettering.shortened(spot.id(), MOST_CHARACTERS);
    Plate rough = new Plate(shown, thing.centre(), BESIDE_SIZE, 0, waiting);
    Box size = rough.box();
    labels
        .place(Candidates.around(thing, size.width(), size.height()))
        .ifPresentOrElse(
            box -> {
              plates.add(new Plate(shown, box.centre(), BESIDE_SIZE, 0, waiting));
              PagePoint from = Rim.nearest(corners, box.centre());
              Leader leader = new Leader(from, box.nearest(from));
              leaders.add(leader);
              labels.block(leader.boxes());
            },
            () -> untold.add(shown));
  }

  /** Codes that found no room. */
  List<String> untold() {
    return untold;
  }

  void draw(Drawing drawing) {
    leaders.forEach(leader -> leader.draw(drawing));
    plates.forEach(plate -> plate.draw(drawing));
  }
}
