package skidway.shakeout;

import java.util.List;
import java.util.stream.IntStream;
import skidway.rules.Setting;
import skidway.timber.Piece;

/** Prices the pieces that are laid from one refill point to the next, brought or straight. */
final class Pricing {
  private final Timbers timbers;
  private final Room room;
  private final double bearerM;
  private final double stickerM;
  private final double widthM;

  /** By piece and layer, as far as piles may be high. */
  private final long[][] pickMs;

  Pricing(Timbers timbers, Room room) {
    this.timbers = timbers;
    this.room = room;
    bearerM = timbers.task.settings().get(Setting.BEARER_HEIGHT);
    stickerM = timbers.task.settings().get(Setting.STICKER_HEIGHT);
    widthM = timbers.task.settings().get(Setting.PILE_WIDTH);
    double mostM = timbers.task.settings().get(Setting.HAND_PILE_HEIGHT);
    pickMs = new long[timbers.count()][];
    for (int i = 0; i < pickMs.length; i++) {
      int pull = i;
      pickMs[i] =
          IntStream.range(0, Math.max(0, layers(timbers.piece(i), mostM)))
              .mapToLong(layer -> pilePickMs(timbers.piece(pull), timbers.people[pull], layer))
              .toArray();
    }
  }

  /** How many timbers like this one lie side by side; 0 if it is too wide for any pile. */
  int perLayer(Piece like) {
    return (int) Math.floor(widthM / like.section().widthM() + 1e-9);
  }

  /** Height of a pile of so many timbers like this one, bearers included, metres. */
  double heightM(Piece like, int count) {
    int layers = (count + perLayer(like) - 1) / perLayer(like);
    return undersideM(like, layers - 1) + like.section().heightM();
  }

  /** How many layers of timbers like this one come to no more than a height. */
  int layers(Piece like, double mostM) {
    double layerM = like.section().heightM() + stickerM;
    return (int) Math.floor((mostM - bearerM + stickerM) / layerM + 1e-9);
  }

  private double undersideM(Piece like, int layer) {
    return bearerM + layer * (like.section().heightM() + stickerM);
  }

  private long pilePickMs(int pull, int layer) {
    return layer < pickMs[pull].length
        ? pickMs[pull][layer]
        : pilePickMs(timbers.piece(pull), timbers.people[pull], layer);
  }

  /** Picking a timber from a layer of a pile; 0 is the lowest. */
  long pilePickMs(Piece like, int people, int layer) {
    double heightM = undersideM(like, layer) + like.section().heightM() / 2;
    return timbers.time.pickMs(people, heightM);
  }

  /**
   * Setting up a pile and picking all its timbers.
   *
   * @param pulls the first so many of these, from the bottom up
   */
  long pileMs(int[] pulls, int size) {
    int perLayer = perLayer(timbers.piece(pulls[0]));
    long sum = timbers.time.pileMs();
    for (int n = 0; n < size; n++) {
      sum += pilePickMs(pulls[n], n / perLayer);
    }
    return sum;
  }

  /** From a pile's place to the wall. */
  long fromPileMs(int pull, int place) {
    return timbers.time.carryMs(
        timbers.people[pull], Math.min(room.toWallM[place][pull], Timbers.NO_WAY_M));
  }

  /** People carry a piece from its bundle to a pile. */
  long bringMs(int pull, double metres) {
    return timbers.time.carryMs(timbers.people[pull], metres);
  }

  /** Laying a piece by hand into its pile, or first onto the machine's load and then there. */
  long layMs(boolean byMachine) {
    return timbers.time.layMs(byMachine ? 2 : 1);
  }

  /** What all pieces of a wave cost. */
  Cost cost(int from, int to, List<PileDraft> piles) {
    Cost sum = AtBundles.cost(timbers, from, PileDraft.hold(piles, from, to));
    for (PileDraft pile : piles) {
      sum = sum.plus(cost(pile, room.bringM(from)));
    }
    return sum;
  }

  private Cost cost(PileDraft pile, double[][] bringM) {
    Cost sum = Cost.NONE;
    for (int n = 0; n < pile.pulls().size(); n++) {
      int i = pile.pulls().get(n);
      boolean byMachine = pile.byMachine(i);
      sum =
          sum.plus(
              new Cost(
                  byMachine ? 0 : bringMs(i, bringM[timbers.stack[i]][pile.place()]),
                  layMs(byMachine),
                  fromPileMs(i, pile.place()),
                  pilePickMs(i, n / perLayer(timbers.piece(i))),
                  0,
                  0));
    }
    long machineMs =
        pile.trips().stream().mapToLong(trip -> timbers.time.liftMs(trip.lift().driveM())).sum();
    return sum.plus(new Cost(0, timbers.time.pileMs(), 0, 0, 0, machineMs));
  }
}
