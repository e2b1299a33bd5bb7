package skidway.plan;

import java.util.List;

/**
 * What is brought onto piles by the walls at one refill point, and laid before the next one comes.
 *
 * @param number 1 is first
 * @param laidBefore how many pieces of the pull order are laid when it is brought in
 * @param laidAfter how many are laid when its last pile is used up
 * @param fromCourse the lowest course of its pieces
 * @param toCourse the highest
 * @param brought in the order of the pull order turned round: what lies lowest comes first
 * @param hours of bringing it in and laying it
 */
public record Wave(
    int number,
    int laidBefore,
    int laidAfter,
    int fromCourse,
    int toCourse,
    List<TimberPile> piles,
    List<Brought> brought,
    List<PileTrip> trips,
    PieceHours hours) {
  public Wave {
    piles = List.copyOf(piles);
    brought = List.copyOf(brought);
    trips = List.copyOf(trips);
  }
}
