package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.units.Figures;

/** Finds the best place for one card near its stack, with a leader that crosses little. */
final class CardPlaces {
  /** A leader longer than this explains less than the panel does, mm. */
  private static final double LONGEST_LEADER = 60;

  private static final double CROSSING_COST = 25;
  private static final double SOFT_CROSSING_COST = 2;
  private static final int RIM_POINTS = 7;

  private final Frame frame;
  private final Labels labels;
  private final Figures figures;

  CardPlaces(Frame frame, Labels labels, Figures figures) {
    this.frame = frame;
    this.labels = labels;
    this.figures = figures;
  }

  /** The best place with all else as it is; nothing is blocked yet. */
  Optional<PlacedCard> find(StackView stack) {
    return Stream.of(true, false)
        .filter(slim -> !slim || !stack.rack())
        .map(slim -> new TierCard(stack, figures, slim))
        .flatMap(card -> find(card).stream())
        .min(Comparator.comparingDouble(PlacedCard::cost));
  }

  void block(PlacedCard placed) {
    labels.block(placed.box());
    labels.block(placed.leader().boxes());
  }

  void release(PlacedCard placed) {
    labels.release(List.of(placed.box()));
    labels.release(placed.leader().boxes());
  }

  private Optional<PlacedCard> find(TierCard card) {
    Footprint area = card.stack().spot().footprint();
    List<PagePoint> rim = rim(area);
    Box thing = Box.of(frame.at(area.outline()));
    List<Candidate> candidates = Candidates.around(thing, card.width(), card.height());
    return labels
        .best(candidates, box -> leaderCost(leader(rim, box)))
        .map(c -> new PlacedCard(card, c.box(), leader(rim, c.box()), c.cost()));
  }

  private double leaderCost(Leader leader) {
    if (leader.lengthMm() > LONGEST_LEADER) {
      return Double.POSITIVE_INFINITY;
    }
    List<Box> boxes = leader.boxes();
    double soft = boxes.stream().mapToDouble(labels::softCost).sum();
    return CROSSING_COST * labels.covered(boxes) + SOFT_CROSSING_COST * soft;
  }

  /** Points on the long sides of the stack, its corners left out. */
  private List<PagePoint> rim(Footprint area) {
    List<PagePoint> all = new ArrayList<>();
    Point across = area.along().turnedLeft().times(area.widthM() / 2);
    for (int i = 0; i < RIM_POINTS; i++) {
      double share = 0.9 * ((double) i / (RIM_POINTS - 1) - 0.5);
      Point middle = area.centre().plus(area.along().times(area.lengthM() * share));
      all.add(frame.at(middle.plus(across)));
      all.add(frame.at(middle.minus(across)));
    }
    return all;
  }

  private static Leader leader(List<PagePoint> rim, Box card) {
    return rim.stream()
        .map(from -> new Leader(from, card.nearest(from)))
        .min(Comparator.comparingDouble(Leader::lengthMm))
        .orElseThrow();
  }
}
