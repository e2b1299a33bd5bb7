package skidway.limits;

/**
 * A load on a beam, downward forces positive.
 *
 * <p>Every load is told by one formula: how much of it lies left of a point, integrated over and
 * over (Macaulay's brackets). Shear, moment and deflection are sums of these.
 */
public sealed interface BeamLoad {
  /** Left end of the load, from the same origin as the beam's ends. */
  double fromM();

  /** Right end of the load; its place, if it is no longer than a point. */
  double toM();

  /**
   * The load per metre, integrated from the left as often as told: 0 gives N/m, 1 the force left of
   * a point in N, 2 its moment about the point in N m, 4 what it adds to deflection times E I.
   */
  double integral(int times, double xM);

  /** A force at a point. */
  record Force(double forceN, double atM) implements BeamLoad {
    @Override
    public double fromM() {
      return atM;
    }

    @Override
    public double toM() {
      return atM;
    }

    @Override
    public double integral(int times, double xM) {
      return forceN * bracket(xM - atM, times - 1);
    }
  }

  /** A line load that grows or shrinks evenly from one end to the other. */
  record Spread(double startNPerM, double endNPerM, double fromM, double toM) implements BeamLoad {
    public Spread {
      if (!(fromM < toM)) {
        throw new IllegalArgumentException("A line load needs a length: " + fromM + " to " + toM);
      }
    }

    /** The same all along. */
    public static Spread even(double newtonsPerM, double fromM, double toM) {
      return new Spread(newtonsPerM, newtonsPerM, fromM, toM);
    }

    @Override
    public double integral(int times, double xM) {
      double growth = (endNPerM - startNPerM) / (toM - fromM);
      return startNPerM * bracket(xM - fromM, times)
          + growth * bracket(xM - fromM, times + 1)
          - endNPerM * bracket(xM - toM, times)
          - growth * bracket(xM - toM, times + 1);
    }
  }

  /** A turning moment at a point, counter-clockwise positive with the beam drawn left to right. */
  record Couple(double momentNm, double atM) implements BeamLoad {
    @Override
    public double fromM() {
      return atM;
    }

    @Override
    public double toM() {
      return atM;
    }

    @Override
    public double integral(int times, double xM) {
      return momentNm * bracket(xM - atM, times - 2);
    }
  }

  /** Macaulay's bracket over the factorial: nothing to the left of the load, a power beyond. */
  private static double bracket(double beyondM, int power) {
    if (power < 0 || beyondM < 0) {
      return 0;
    }
    double product = 1;
    for (int i = 1; i <= power; i++) {
      product *= beyondM / i;
    }
    return product;
  }
}
