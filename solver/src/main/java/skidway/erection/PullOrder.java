package skidway.erection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.site.Site;
import skidway.site.Wall;
import skidway.timber.Piece;

/**
 * The order in which pieces are pulled from their stacks and laid: by the height of their lower
 * face, then by wall as listed, then from left to right. Starters of half a course make crossing
 * walls rise in turns, which is what interlocks the corners (common practice).
 */
public final class PullOrder {
  private final List<Placement> placements;
  private final Map<String, Integer> indexByMark = new HashMap<>();
  private final int[] turns;

  private PullOrder(List<Placement> placements, Set<String> held) {
    this.placements = List.copyOf(placements);
    turns = new int[placements.size()];
    for (int i = 0; i < turns.length; i++) {
      indexByMark.put(placements.get(i).piece().mark(), i);
      turns[i] = i > 0 && sameLevel(i - 1, i, held) ? turns[i - 1] : i;
    }
  }

  private boolean sameLevel(int one, int next, Set<String> held) {
    Placement a = placements.get(one);
    Placement b = placements.get(next);
    return a.levelMm() == b.levelMm()
        && held.contains(a.piece().mark()) == held.contains(b.piece().mark());
  }

  /** Pieces of unknown walls are left out; reading the job refuses them. */
  public static PullOrder of(Site site, List<Piece> pieces) {
    return of(site, pieces, Set.of());
  }

  /**
   * The same order twice: first of all pieces but those held, then of those.
   *
   * @param held marks of pieces that cannot be laid before something comes that is not there
   */
  public static PullOrder of(Site site, List<Piece> pieces, Set<String> held) {
    Map<String, List<Piece>> byWall = new HashMap<>();
    for (Piece piece : pieces) {
      byWall.computeIfAbsent(piece.wallId(), w -> new ArrayList<>()).add(piece);
    }
    List<Placement> all = new ArrayList<>();
    Map<String, Integer> wallTurn = new HashMap<>();
    for (Wall wall : site.walls()) {
      wallTurn.put(wall.id(), wallTurn.size());
      all.addAll(WallPlan.place(wall, site.courseM(), byWall.getOrDefault(wall.id(), List.of())));
    }
    all.sort(
        Comparator.comparing((Placement p) -> held.contains(p.piece().mark()))
            .thenComparingLong(Placement::levelMm)
            .thenComparing(p -> wallTurn.get(p.wall().id()))
            .thenComparing(p -> p.piece().position())
            .thenComparing(p -> p.piece().mark()));
    return new PullOrder(all, held);
  }

  /** All pieces at their places, first pulled first. */
  public List<Placement> placements() {
    return placements;
  }

  /**
   * The first pull index on the level of the piece with a pull index. Pieces of one level are laid
   * in any order, so they are taken out of a stack from the top down: only a piece of an earlier
   * turn beneath it has one moved aside.
   */
  public int turn(int index) {
    return turns[index];
  }

  /**
   * The pull index of a piece: 0 is pulled first.
   *
   * @throws IllegalArgumentException if the piece is not part of this building
   */
  public int indexOf(Piece piece) {
    return indexOf(piece.mark());
  }

  /** The same for the piece of a mark. */
  int indexOf(String mark) {
    Integer index = indexByMark.get(mark);
    if (index == null) {
      throw new IllegalArgumentException("The piece " + mark + " has no place on a wall.");
    }
    return index;
  }
}
