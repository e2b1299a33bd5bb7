package skidway.audit.walk;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Spreads from cells to all eight neighbours that are open, and over steps. Keeps its queue, so
 * that one flood after another costs no memory.
 */
final class Flood {
  /** A cell closed by a stack. */
  static final byte STACK = 2;

  /** A cell that people start from. */
  static final byte START = 4;

  static final byte REACHED = 8;
  private static final byte SHUT = SiteObstacles.CLOSED | STACK | REACHED;

  private final List<StepLink> links;
  private final int[] neighbours;
  private final int[] queue;
  private int queued;
  private boolean startMet;

  Flood(WalkGrid grid, List<StepLink> links) {
    this.links = List.copyOf(links);
    int across = grid.columns();
    neighbours =
        new int[] {1, -1, across, -across, across + 1, across - 1, 1 - across, -1 - across};
    queue = new int[grid.size()];
  }

  /** Marks all that can be reached. */
  void spread(byte[] marks, Cells from) {
    run(marks, from, false);
  }

  /** Whether a start can be reached; stops at the first. */
  boolean meetsStart(byte[] marks, Cells from) {
    run(marks, from, true);
    return startMet;
  }

  private void run(byte[] marks, Cells from, boolean stopAtStart) {
    queued = 0;
    startMet = false;
    enter(marks, from);
    int next = 0;
    boolean more = true;
    while (more) {
      while (next < queued && !(stopAtStart && startMet)) {
        int cell = queue[next++];
        for (int offset : neighbours) {
          enter(marks, cell + offset);
        }
      }
      int before = queued;
      links.forEach(link -> crossSteps(marks, link));
      more = queued > before && !(stopAtStart && startMet);
    }
  }

  private void crossSteps(byte[] marks, StepLink link) {
    if (link.foot().any(marks, REACHED)) {
      enter(marks, link.top());
    }
    if (link.top().any(marks, REACHED)) {
      enter(marks, link.foot());
    }
  }

  private void enter(byte[] marks, Cells cells) {
    cells.stream().forEach(cell -> enter(marks, cell));
  }

  private void enter(byte[] marks, int cell) {
    if ((marks[cell] & SHUT) == 0) {
      startMet |= (marks[cell] & START) != 0;
      marks[cell] |= REACHED;
      queue[queued++] = cell;
    }
  }

  /** Whether one of some cells has a neighbour that is reached. */
  boolean touchesReached(byte[] marks, Cells cells) {
    return cells.stream()
        .flatMap(cell -> IntStream.of(neighbours).map(offset -> cell + offset))
        .anyMatch(cell -> cell >= 0 && cell < marks.length && (marks[cell] & REACHED) != 0);
  }
}
