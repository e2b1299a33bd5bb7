package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.site.OpenSide;

/**
 * Finds the rows across a zone. Two rows share one open strip, the next pair stands back to back
 * with it, the gap between:
 *
 * <pre>
 *   ======  open down
 *   ------  strip of both
 *   ======  open up
 *   (gap)
 *   ======  open down
 *   ------  ...
 * </pre>
 *
 * The pattern starts with a row open to the inside or, where strips may lie outside, with one open
 * to the outside; from below and from above.
 */
final class RowsAcross {
  private static final double SLACK_M = MarksAlong.SLACK_M;
  private static final int MOST_FILL = 24;

  private final Span zone;
  private final double widthM;
  private final double stripM;
  private final double gapM;
  private final List<Row> rows = new ArrayList<>();

  private RowsAcross(Span zone, double widthM, double stripM, double gapM) {
    this.zone = zone;
    this.widthM = widthM;
    this.stripM = stripM + SLACK_M;
    this.gapM = gapM + SLACK_M;
  }

  /** Rows of all ranks, none twice; parameters as in {@link MarksAlong}. */
  static List<Row> of(
      Span zone,
      List<Double> edgesM,
      List<Span> obstacles,
      SpotSize size,
      double stripM,
      double gapM) {
    RowsAcross across = new RowsAcross(zone, size.widthM(), stripM, gapM);
    across.up(zone.lowM(), OpenSide.LEFT, Mark.PATTERN);
    across.up(zone.lowM(), OpenSide.RIGHT, Mark.SHIFTED);
    across.down(zone.highM(), OpenSide.RIGHT, Mark.SHIFTED);
    across.down(zone.highM(), OpenSide.LEFT, Mark.SHIFTED);
    for (double edge : edgesM) {
      across.up(edge, OpenSide.LEFT, Mark.SHIFTED);
      across.down(edge, OpenSide.RIGHT, Mark.SHIFTED);
    }
    for (Span obstacle : obstacles) {
      across.addBoth(obstacle.highM() + SLACK_M, Mark.SNUG);
      across.addBoth(obstacle.lowM() - SLACK_M - size.widthM(), Mark.SNUG);
    }
    List.copyOf(across.rows).forEach(row -> across.addBoth(row.mark().atM(), Mark.SNUG));
    across.fill();
    return across.rows;
  }

  /** Rows upwards, the first one open to a side: left is up. */
  private void up(double fromM, OpenSide first, int rank) {
    double at = fromM + SLACK_M;
    for (OpenSide side = first; at + widthM <= zone.highM(); side = other(side)) {
      add(at, side, rank);
      at += widthM + (side == OpenSide.LEFT ? stripM : gapM);
    }
  }

  private void down(double fromM, OpenSide first, int rank) {
    double at = fromM - SLACK_M - widthM;
    for (OpenSide side = first; at >= zone.lowM(); side = other(side)) {
      add(at, side, rank);
      at -= widthM + (side == OpenSide.RIGHT ? stripM : gapM);
    }
  }

  private void fill() {
    double roomM = zone.highM() - widthM - zone.lowM();
    double stepM = Math.max(roomM / MOST_FILL, widthM / 2);
    for (double at = zone.lowM() + stepM / 2; at <= zone.highM() - widthM; at += stepM) {
      addBoth(at, Mark.FILL);
    }
  }

  private void addBoth(double atM, int rank) {
    add(atM, OpenSide.LEFT, rank);
    add(atM, OpenSide.RIGHT, rank);
  }

  private void add(double atM, OpenSide side, int rank) {
    boolean fits = atM >= zone.lowM() && atM + widthM <= zone.highM();
    boolean known =
        rows.stream()
            .anyMatch(
                r -> r.side() == side && Math.abs(r.mark().atM() - atM) < 2 * MarksAlong.SLACK_M);
    if (fits && !known) {
      rows.add(new Row(new Mark(atM, rank), side));
    }
  }

  private static OpenSide other(OpenSide side) {
    return side == OpenSide.LEFT ? OpenSide.RIGHT : OpenSide.LEFT;
  }
}
