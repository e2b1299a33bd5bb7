package skidway.shakeout;

import java.util.List;

/**
 * Makes the piles of a wave better piece by piece: carries one more to a pile, alone or with all
 * that lies over it, takes it to another pile or leaves it, as long as the wave gets cheaper.
 */
final class PieceByPiece {
  /** Rounds before it is good enough; each makes the wave cheaper. */
  private static final int MOST_ROUNDS = 20;

  private final Trial trial;
  private final List<Integer> mayCome;

  /**
   * @param mayCome pieces that the wave may bring
   */
  PieceByPiece(Trial trial, List<Integer> mayCome) {
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
        better |= trial.leaveAll(pile);
      }
    }
    return trial.piles();
  }

  private boolean moved(int pull) {
    boolean better = !trial.isInBundle(pull) && trial.leave(pull);
    for (int pile = 0; pile < trial.pileCount(); pile++) {
      if (!trial.isOn(pull, pile)) {
        better |= trial.carry(pull, pile);
      }
    }
    return better;
  }
}
