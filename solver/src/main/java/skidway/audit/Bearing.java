package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.floor.LineLoad;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** How the lowest bundle of a stack lies on its bearers, and how they share the stack's weight. */
record Bearing(Bundle bundle, BearerRow row) {
  /** A row may be written with rounded figures: all its gaps together to this. */
  private static final double TOLERANCE_M = 0.05;

  /** More bearers than this are a typing error. */
  private static final int MOST = 1000;

  private static final double LONGEST_M = 1000;

  /**
   * The bearers that the steps tell of. Where they tell of none that can be laid, two are taken to
   * lie at the bundle's very ends, each with half the weight.
   */
  static Bearing of(Standing flat) {
    Bundle bottom = flat.bundles().get(0);
    return flat.bearers()
        .map(row -> new Bearing(bottom, row))
        .filter(Bearing::canBeLaid)
        .orElseGet(
            () -> new Bearing(bottom, new BearerRow(2, bottom.lengthM(), 0, bottom.widthM())));
  }

  /**
   * Whether the bearers can lie beneath the bundle as told: they and the ends fill its length, and
   * they are as long as it is wide.
   */
  boolean canBeLaid() {
    return row.count() >= 2
        && row.count() <= MOST
        && row.spacingM() > 0
        && row.endM() >= 0
        && row.lengthM() > 0
        && row.lengthM() >= bundle.widthM() - TOLERANCE_M - 1e-9
        && row.lengthM() <= LONGEST_M
        && Math.abs(filledM() - bundle.lengthM()) <= TOLERANCE_M + 1e-9;
  }

  private double filledM() {
    return (row.count() - 1) * row.spacingM() + 2 * row.endM();
  }

  /** Each bearer has the part of the bundle that is nearer to it than to any other. */
  private double share(int bearer) {
    boolean atEnd = bearer == 0 || bearer == row.count() - 1;
    double partM = atEnd ? row.endM() + row.spacingM() / 2 : row.spacingM();
    return partM / bundle.lengthM();
  }

  /** Share of the weight on the bearer that has most. */
  double worstShare() {
    return row.count() > 2 ? Math.max(share(0), share(1)) : share(0);
  }

  /** How wide the bearers spread the load on a deck, where they count only so far. */
  double spreadM(double reachM) {
    return Math.min(Math.max(bundle.widthM(), row.lengthM()), bundle.widthM() + 2 * reachM);
  }

  /** What the bearers put on the floor beneath a place. */
  List<LineLoad> lines(String spotId, Footprint place, double newtons, double reachM) {
    Point along = place.along();
    Point half = along.turnedLeft().times(spreadM(reachM) / 2);
    List<LineLoad> lines = new ArrayList<>();
    for (int bearer = 0; bearer < row.count(); bearer++) {
      double fromMiddleM = (bearer - (row.count() - 1) / 2.0) * row.spacingM();
      Point middle = place.centre().plus(along.times(fromMiddleM));
      lines.add(
          new LineLoad(spotId, middle.minus(half), middle.plus(half), newtons * share(bearer)));
    }
    return lines;
  }
}
