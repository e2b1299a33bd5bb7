package skidway.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A straight beam on two supports, with overhangs or without, by statics alone. Places count from
 * any origin, left to right. Shear is positive where the left part pushes up, moment where the beam
 * sags, deflection downward. Formulas agree with AWC Design Aid 6 where that has the case; what a
 * beam can bear is for its designer to say.
 *
 * @param leftM place of the left support
 * @param rightM place of the right support
 */
public record Beam(double startM, double endM, double leftM, double rightM, List<BeamLoad> loads) {

  /** A value with its sign and the place where it is reached. */
  public record Peak(double value, double atM) {
    /** The one greater in size; the first of two alike. */
    static Peak larger(Peak a, Peak b) {
      return Math.abs(b.value) > Math.abs(a.value) ? b : a;
    }
  }

  public Beam {
    loads = List.copyOf(loads);
    if (!(startM <= leftM && leftM < rightM && rightM <= endM)) {
      throw new IllegalArgumentException(
          "Supports at " + leftM + " and " + rightM + " do not carry " + startM + " to " + endM);
    }
    for (BeamLoad load : loads) {
      if (!(load.fromM() >= startM && load.toM() <= endM)) {
        throw new IllegalArgumentException("Off the beam from " + startM + " to " + endM + load);
      }
    }
  }

  /** A beam that rests on its ends. */
  public static Beam simple(double spanM, List<BeamLoad> loads) {
    return new Beam(0, spanM, 0, spanM, loads);
  }

  /** What the left support pushes up with, N; negative if it must hold the beam down. */
  public double reactionLeftN() {
    return (loadsIntegral(2) - loadsIntegral(1) * (endM - rightM)) / (rightM - leftM);
  }

  /** What the right support pushes up with, N. */
  public double reactionRightN() {
    return loadsIntegral(1) - reactionLeftN();
  }

  /** Shear just right of a place, N. */
  public double shearN(double xM) {
    return -integral(1, xM);
  }

  /** Bending moment just right of a place, N m. */
  public double momentNm(double xM) {
    return -integral(2, xM);
  }

  /** The bending moment greatest in size, N m. */
  public Peak greatestMoment() {
    return greatest(BeamStretch::greatestMoment);
  }

  /** The shear greatest in size, N. */
  public Peak greatestShear() {
    return greatest(BeamStretch::greatestShear);
  }

  /** Deflection times the beam's stiffness E I, N m³: over E I in N m² it is in metres. */
  public double deflectionTimesEi(double xM) {
    double atLeft = integral(4, leftM);
    double atRight = integral(4, rightM);
    double share = (xM - leftM) / (rightM - leftM);
    return integral(4, xM) - atLeft - share * (atRight - atLeft);
  }

  private Peak greatest(Function<BeamStretch, Peak> peak) {
    return stretches().stream().map(peak).reduce(Peak::larger).orElseThrow();
  }

  private List<BeamStretch> stretches() {
    DoubleStream ends = loads.stream().flatMapToDouble(l -> DoubleStream.of(l.fromM(), l.toM()));
    double[] cuts =
        DoubleStream.concat(DoubleStream.of(startM, leftM, rightM, endM), ends)
            .sorted()
            .distinct()
            .toArray();
    List<BeamStretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.length; i++) {
      double fromM = cuts[i];
      double lengthM = cuts[i + 1] - fromM;
      double start = integral(0, fromM);
      double middle = integral(0, fromM + lengthM / 2);
      stretches.add(
          new BeamStretch(
              fromM, lengthM, shearN(fromM), momentNm(fromM), start, 2 * middle - start));
    }
    return stretches;
  }

  private double loadsIntegral(int times) {
    return loads.stream().mapToDouble(load -> load.integral(times, endM)).sum();
  }

  /** Loads and what the supports push against them. */
  private double integral(int times, double xM) {
    return Stream.concat(
            loads.stream(),
            Stream.of(
                new BeamLoad.Force(-reactionLeftN(), leftM),
                new BeamLoad.Force(-reactionRightN(), rightM)))
        .mapToDouble(load -> load.integral(times, xM))
        .sum();
  }
}
