package skidway;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * Sums up the time of people who unload by hand where neither walls nor trees are in the way: they
 * walk straight from the truck to the open side of each spot. For bundles 4 m long of three layers,
 * 0.15 m each, of timbers that one to four people carry, on spots 0.9 m wide with their middle at y
 * = 8.
 */
final class StraightWalks {
  /** Half the truck's width beside its middle, (18, 2). */
  private static final List<Point> SIDES = List.of(new Point(18, 3.3), new Point(18, 0.7));

  private final Plan plan;
  private final Map<String, Double> topM = new HashMap<>();
  private double unloadS;
  private double pickS;

  StraightWalks(Plan plan) {
    this.plan = plan;
  }

  /** Carrying off, laying, and walking back, person-seconds. */
  double unloadS() {
    return unloadS;
  }

  /** Lost at picking too low or too high, person-seconds. */
  double pickS() {
    return pickS;
  }

  /** A bundle that lies already; the lower ones of its stack come first. */
  void lies(Stack stack, Bundle bundle) {
    pick(stack.spot().id(), bundle);
  }

  void unload(Step step, Bundle bundle) {
    Spot spot =
        plan.stacks().stream()
            .map(Stack::spot)
            .filter(s -> s.id().equals(step.toId()))
            .findFirst()
            .orElseThrow();
    Point open = new Point(spot.footprint().centre().x(), 8 + 0.45 + 0.455);
    double wayM = SIDES.stream().mapToDouble(open::distanceTo).min().orElseThrow();
    unloadS += 60; // bearers
    for (Piece piece : bundle.pieces()) {
      unloadS += people(piece) * (wayM / 0.75 + wayM / 1.31) + 20;
    }
    pick(spot.id(), bundle);
  }

  private void pick(String spotId, Bundle bundle) {
    double undersideM = topM.getOrDefault(spotId, 0.0) + 0.089;
    List<PackedPiece> downwards =
        bundle.packed().stream()
            .sorted(Comparator.comparingInt(PackedPiece::layer).reversed())
            .toList();
    for (PackedPiece packed : downwards) {
      int laidBeneath = 3 - packed.layer();
      double heightCm = 100 * (undersideM + (laidBeneath + 0.5) * 0.15);
      pickS += people(packed.piece()) * 60 * (heightCm > 175 ? 1 : 0.003 * Math.abs(heightCm - 75));
    }
    topM.put(spotId, undersideM + 0.45);
  }

  /** 48, 33.6, 30 and 14.4 kg. */
  private static int people(Piece piece) {
    return piece.lengthM() == 4 ? 4 : piece.lengthM() == 2.8 ? 3 : piece.lengthM() == 2.5 ? 2 : 1;
  }
}
