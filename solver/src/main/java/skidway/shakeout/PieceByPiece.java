package skidway.shakeout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes the piles of a wave better piece by piece: carries one more to a pile, alone or with all
 * that lies over it, takes it to another pile or leaves it, as long as the wave gets cheaper.
 */
final class PieceByPiece {
  /** Rounds before it is good enough; each makes the wave cheaper. */
  private static final int MOST_ROUNDS = 20;

  private final Timbers timbers;
  private final Trial trial;
  private final List<Integer> mayCome;

  /**
   * @param mayCome pieces that the wave may bring
   */
  PieceByPiece(Timbers timbers, Trial trial, List<Integer> mayCome) {
    this.timbers = timbers;
    this.trial = trial;
    this.mayCome = List.copyOf(mayCome);
  }

  List<PileDraft> improved() {
    boolean better = true;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
      better = false;
      for (int pull : mayCome) {
        if (!trial.byMachine(pull)) {
          better |= moved(pull);
        }
      }
      for (int pile = 0; pile < trial.pileCount(); pile++) {
        List<Integer> carried = trial.carried(pile);
        better |= !carried.isEmpty() && trial.leave(carried);
      }
    }
    return trial.piles();
  }

  private boolean moved(int pull) {
    boolean better = !trial.isInBundle(pull) && trial.leave(List.of(pull));
    for (int pile = 0; pile < trial.pileCount(); pile++) {
      if (!trial.isOn(pull, pile)) {
        better |= trial.carry(List.of(pull), pile) || trial.carry(withAbove(pull), pile);
      }
    }
    return better;
  }

  private List<Integer> withAbove(int pull) {
    List<Integer> all = new ArrayList<>(List.of(pull));
    IntStream.of(timbers.above[pull])
        .filter(upper -> mayCome.contains(upper) && trial.isInBundle(upper))
        .forEach(all::add);
    return all;
  }
}
