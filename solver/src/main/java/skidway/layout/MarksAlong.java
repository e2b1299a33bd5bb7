package skidway.layout;

import java.util.ArrayList;
import java.util.List;

/** Finds the marks along rows: spots end to end with the gap between, from every edge. */
final class MarksAlong {
  /** Laid out wider than required by this, so that rounded coordinates still keep the rules. */
  static final double SLACK_M = 0.002;

  private static final int MOST_FILL = 16;

  private final Span zone;
  private final double lengthM;
  private final double pitchM;
  private final List<Mark> marks = new ArrayList<>();

  private MarksAlong(Span zone, double lengthM, double gapM) {
    this.zone = zone;
    this.lengthM = lengthM;
    pitchM = lengthM + gapM + SLACK_M;
  }

  /**
   * Marks of all ranks, none twice.
   *
   * @param zone where spots may lie
   * @param edgesM inner edges of the zone
   * @param obstacles what obstacles and their margins cover
   * @param others lengths of spots that may stand in the same row
   */
  static List<Mark> of(
      Span zone,
      List<Double> edgesM,
      List<Span> obstacles,
      SpotSize size,
      List<Double> others,
      double gapM) {
    MarksAlong along = new MarksAlong(zone, size.lengthM(), gapM);
    along.rowUp(zone.lowM(), Mark.PATTERN);
    along.rowDown(zone.highM(), Mark.SHIFTED);
    for (double edge : edgesM) {
      along.rowUp(edge, Mark.SHIFTED);
      along.rowDown(edge, Mark.SHIFTED);
    }
    for (double other : others) {
      along.rowUp(zone.lowM() + other + gapM + SLACK_M, Mark.SNUG);
      along.rowDown(zone.highM() - other - gapM - SLACK_M, Mark.SNUG);
    }
    for (Span obstacle : obstacles) {
      along.pairUp(obstacle.highM());
      along.pairDown(obstacle.lowM());
    }
    along.fill();
    return along.marks;
  }

  private void rowUp(double fromM, int rank) {
    for (double at = fromM + SLACK_M; at + lengthM <= zone.highM(); at += pitchM) {
      add(at, rank);
    }
  }

  private void rowDown(double fromM, int rank) {
    for (double at = fromM - SLACK_M - lengthM; at >= zone.lowM(); at -= pitchM) {
      add(at, rank);
    }
  }

  private void pairUp(double fromM) {
    add(fromM + SLACK_M, Mark.SNUG);
    add(fromM + SLACK_M + pitchM, Mark.SNUG);
  }

  private void pairDown(double fromM) {
    add(fromM - SLACK_M - lengthM, Mark.SNUG);
    add(fromM - SLACK_M - lengthM - pitchM, Mark.SNUG);
  }

  private void fill() {
    double roomM = zone.highM() - lengthM - zone.lowM();
    double stepM = Math.max(roomM / MOST_FILL, lengthM / 4);
    for (double at = zone.lowM() + stepM / 2; at <= zone.highM() - lengthM; at += stepM) {
      add(at, Mark.FILL);
    }
  }

  private void add(double atM, int rank) {
    boolean fits = atM >= zone.lowM() && atM + lengthM <= zone.highM();
    if (fits && marks.stream().noneMatch(m -> Math.abs(m.atM() - atM) < 2 * SLACK_M)) {
      marks.add(new Mark(atM, rank));
    }
  }
}
