package skidway.limits;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * A stretch of a beam on which no load begins or ends: the line load is a straight line there, the
 * shear a parabola, the moment a cubic.
 *
 * @param shearN just right of its start
 * @param momentNm just right of its start
 * @param startNPerM line load at its start
 * @param endNPerM line load at its end
 */
record BeamStretch(
    double fromM,
    double lengthM,
    double shearN,
    double momentNm,
    double startNPerM,
    double endNPerM) {

  /** The moment that is greatest in size: at an end or where the shear is nil. */
  Beam.Peak greatestMoment() {
    return greatest(this::momentNmAt, shearZeros());
  }

  /** The shear that is greatest in size: at an end or where the line load changes its sign. */
  Beam.Peak greatestShear() {
    return greatest(this::shearNAt, DoubleStream.of(-startNPerM / growth()));
  }

  private Beam.Peak greatest(DoubleUnaryOperator value, DoubleStream turns) {
    return DoubleStream.concat(DoubleStream.of(0, lengthM), turns.filter(s -> s > 0 && s < lengthM))
        .mapToObj(s -> new Beam.Peak(value.applyAsDouble(s), fromM + s))
        .reduce(Beam.Peak::larger)
        .orElseThrow();
  }

  private double shearNAt(double s) {
    return shearN - s * (startNPerM + s * growth() / 2);
  }

  private double momentNmAt(double s) {
    return momentNm + s * (shearN - s * (startNPerM / 2 + s * growth() / 6));
  }

  /** How the line load grows, N/m per metre. */
  private double growth() {
    return (endNPerM - startNPerM) / lengthM;
  }

  /** Both roots of the parabola, by the formula that loses no digits; some may be no numbers. */
  private DoubleStream shearZeros() {
    double square = -growth() / 2;
    double root = Math.sqrt(startNPerM * startNPerM - 4 * square * shearN);
    double half = (startNPerM + Math.copySign(root, startNPerM)) / 2;
    return DoubleStream.of(half / square, shearN / half);
  }
}
