package skidway.erection;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * How far the crew can build with the pieces that are there, and what stops it.
 *
 * <p>A piece can be laid when it is there and everything it needs is laid or can be laid. What
 * needs what never goes in circles, so one pass from the bottom finds all of them. No order of work
 * lays more: the first piece that such an order would lay beyond them would lack itself or a need.
 *
 * <p>It knows pieces and what lies on what, nothing else: whether a half-built wall has to be
 * braced before the crew goes on elsewhere is the site lead's to judge.
 */
public final class HoldPoint {
  private final Precedence precedence;
  private final BitSet laid = new BitSet();
  private final BitSet missing = new BitSet();
  private final BitSet layable = new BitSet();

  private HoldPoint(Precedence precedence) {
    this.precedence = precedence;
  }

  /**
   * The hold point of a building.
   *
   * @param laidMarks what is in the walls already, whether or not what it needs is said to be
   * @param presentMarks what is on site; pieces that are laid may be among them or not
   * @throws IllegalArgumentException if a mark is no piece of the building
   */
  public static HoldPoint of(
      Precedence precedence, Set<String> laidMarks, Set<String> presentMarks) {
    HoldPoint hold = new HoldPoint(precedence);
    laidMarks.forEach(mark -> hold.laid.set(precedence.order().indexOf(mark)));
    hold.missing.set(0, hold.all().size());
    presentMarks.forEach(mark -> hold.missing.clear(precedence.order().indexOf(mark)));
    hold.missing.andNot(hold.laid);
    for (int i = 0; i < hold.all().size(); i++) {
      boolean can = !hold.laid.get(i) && !hold.missing.get(i);
      hold.layable.set(i, can && precedence.needs(i).stream().allMatch(hold::isLaidThen));
    }
    return hold;
  }

  private boolean isLaidThen(int index) {
    return laid.get(index) || layable.get(index);
  }

  /** Whether the whole building can be finished with what is there. */
  public boolean isFree() {
    return missing.isEmpty();
  }

  /** What is neither laid nor there, first needed first. */
  public List<Placement> missing() {
    return pieces(missing);
  }

  /** Where the crew stops that keeps the pull order: the first missing piece. */
  public Optional<Placement> firstMissing() {
    return missing.isEmpty() ? Optional.empty() : Optional.of(all().get(missing.nextSetBit(0)));
  }

  /** What the crew lays before it stops when it keeps the pull order. */
  public List<Placement> asPlanned() {
    BitSet before = (BitSet) layable.clone();
    if (!missing.isEmpty()) {
      before.clear(missing.nextSetBit(0), all().size());
    }
    return pieces(before);
  }

  /**
   * All that can be laid with what is there, in an order that keeps what lies on what: the pull
   * order, with the pieces left out that have to wait. That is the order got by taking, again and
   * again, the first piece of the pull order that is ready.
   */
  public List<Placement> resequenced() {
    return pieces(layable);
  }

  /** What is there and has to wait for a missing piece, in pull order. */
  public List<Placement> waiting() {
    return pieces(i -> !laid.get(i) && !missing.get(i) && !layable.get(i));
  }

  /** The missing pieces that one has to wait for, itself among them if it is missing. */
  public List<Placement> waitsFor(Placement piece) {
    BitSet below = new BitSet();
    below.set(precedence.order().indexOf(piece.piece()));
    for (int i = below.length() - 1; i >= 0; i--) {
      if (below.get(i) && !laid.get(i)) {
        precedence.needs(i).forEach(below::set);
      }
    }
    below.and(missing);
    return pieces(below);
  }

  /** All that is not laid and cannot be before one piece is, in pull order, without itself. */
  public List<Placement> blockedBy(Placement piece) {
    int first = precedence.order().indexOf(piece.piece());
    BitSet above = new BitSet();
    above.set(first);
    for (int i = first + 1; i < all().size(); i++) {
      above.set(i, !laid.get(i) && precedence.needs(i).stream().anyMatch(above::get));
    }
    above.clear(first);
    return pieces(above);
  }

  /** How high each wall goes when the crew keeps the pull order. */
  public List<WallReach> wallsAsPlanned() {
    int stop = missing.isEmpty() ? all().size() : missing.nextSetBit(0);
    return WallReach.of(all(), i -> laid.get(i) || (layable.get(i) && i < stop));
  }

  /** How high each wall goes when everything is laid that can be. */
  public List<WallReach> wallsResequenced() {
    return WallReach.of(all(), this::isLaidThen);
  }

  private List<Placement> all() {
    return precedence.order().placements();
  }

  private List<Placement> pieces(BitSet indexes) {
    return indexes.stream().mapToObj(all()::get).toList();
  }

  private List<Placement> pieces(IntPredicate those) {
    return IntStream.range(0, all().size()).filter(those).mapToObj(all()::get).toList();
  }
}
