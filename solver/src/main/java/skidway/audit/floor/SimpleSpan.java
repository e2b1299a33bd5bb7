package skidway.audit.floor;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A joist from one support to the next under loads that all press down, by statics alone. Spans
 * that run on over a support bend less between supports, so this is on the safe side there.
 *
 * @param loads measured from the left support
 */
public record SimpleSpan(double lengthM, List<EvenLoad> loads) {
  public SimpleSpan {
    loads = List.copyOf(loads);
  }

  /** The greater of the two reactions, which is the greatest shear, N. */
  public double shearN() {
    return Math.max(leftN(), rightN());
  }

  /**
   * The greatest bending moment, N m. It is where the shear turns from up to down: at a point load,
   * at an end of a load or within one.
   */
  public double momentNm() {
    double[] marks = loads.stream().flatMapToDouble(SimpleSpan::ends).sorted().distinct().toArray();
    double worst = 0;
    for (int i = 0; i < marks.length; i++) {
      worst = Math.max(worst, momentAtNm(marks[i]));
      if (i + 1 < marks.length) {
        double zeroM = marks[i] + shearAfterN(marks[i]) / newtonsPerM(marks[i], marks[i + 1]);
        if (zeroM > marks[i] && zeroM < marks[i + 1]) {
          worst = Math.max(worst, momentAtNm(zeroM));
        }
      }
    }
    return worst;
  }

  double leftN() {
    return loads.stream().mapToDouble(p -> p.newtons() * (lengthM - p.middleM()) / lengthM).sum();
  }

  double rightN() {
    return loads.stream().mapToDouble(p -> p.newtons() * p.middleM() / lengthM).sum();
  }

  double momentAtNm(double xM) {
    return leftN() * xM - loads.stream().mapToDouble(p -> p.momentAboutNm(xM)).sum();
  }

  private double shearAfterN(double xM) {
    return leftN() - loads.stream().mapToDouble(p -> p.upToN(xM)).sum();
  }

  /** Of the loads that cover a whole stretch; 0 on a bare stretch, where no zero is sought. */
  private double newtonsPerM(double fromM, double toM) {
    return loads.stream()
        .filter(p -> p.fromM() <= fromM && p.toM() >= toM)
        .mapToDouble(EvenLoad::newtonsPerM)
        .sum();
  }

  private static DoubleStream ends(EvenLoad load) {
    return DoubleStream.of(load.fromM(), load.toM());
  }
}
