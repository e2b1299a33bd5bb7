package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Finds room for labels, one after the other, so that none covers another. Solid things are never
 * covered; soft ones (a wall, a lane) only when that costs less than going further away.
 */
final class Labels {
  private record Soft(Box box, double costPerMm2) {}

  private static final double GAP = 0.35;

  private final Box area;
  private final List<Box> solid = new ArrayList<>();
  private final List<Soft> soft = new ArrayList<>();

  Labels(Box area) {
    this.area = area;
  }

  Box area() {
    return area;
  }

  /** Nothing may cover this from now on. */
  void block(Box box) {
    solid.add(box);
  }

  void block(List<Box> boxes) {
    solid.addAll(boxes);
  }

  /** Takes back what was blocked. */
  void release(List<Box> boxes) {
    solid.removeAll(boxes);
  }

  /** Better not to cover this. */
  void avoid(List<Box> boxes, double costPerMm2) {
    boxes.forEach(box -> soft.add(new Soft(box, costPerMm2)));
  }

  /** Takes the cheapest candidate that covers nothing solid, if there is one. */
  Optional<Box> place(List<Candidate> candidates) {
    Optional<Box> best = best(candidates, box -> 0).map(Candidate::box);
    best.ifPresent(this::block);
    return best;
  }

  /**
   * The cheapest candidate that covers nothing solid, with the cost of what it does cover.
   *
   * @param more what a place costs besides; infinite where it is out of the question
   */
  Optional<Candidate> best(List<Candidate> candidates, ToDoubleFunction<Box> more) {
    List<Candidate> cheapestFirst =
        candidates.stream().sorted(Comparator.comparingDouble(Candidate::cost)).toList();
    Optional<Candidate> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Candidate candidate : cheapestFirst) {
      if (candidate.cost() >= least) {
        break;
      }
      Box box = candidate.box();
      double cost = free(box) ? candidate.cost() + softCost(box) : Double.POSITIVE_INFINITY;
      if (cost < least) {
        cost += more.applyAsDouble(box);
      }
      if (cost < least) {
        least = cost;
        best = Optional.of(new Candidate(box, cost));
      }
    }
    return best;
  }

  boolean free(Box box) {
    if (!area.contains(box)) {
      return false;
    }
    Box wide = box.grown(GAP);
    for (Box other : solid) {
      if (other.overlap(wide) > 0) {
        return false;
      }
    }
    return true;
  }

  /** How many of the small boxes along a line run over something solid. */
  int covered(List<Box> line) {
    if (line.isEmpty()) {
      return 0;
    }
    Box all = Box.of(line.stream().map(Box::centre).toList()).grown(1);
    List<Box> near = solid.stream().filter(s -> s.overlap(all) > 0).toList();
    return (int) line.stream().filter(b -> near.stream().anyMatch(s -> s.overlap(b) > 0)).count();
  }

  /** What it costs to cover the soft things under a box. */
  double softCost(Box box) {
    double cost = 0;
    for (Soft thing : soft) {
      cost += thing.box().overlap(box) * thing.costPerMm2();
    }
    return cost;
  }
}
