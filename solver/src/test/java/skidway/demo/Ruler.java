package skidway.demo;

import java.util.Locale;

/** Measures a house in whole ticks and writes them as people there do. */
enum Ruler {
  INCHES("us", 0.0254) {
    @Override
    String length(int ticks) {
      if (ticks < 12) {
        return ticks + " in";
      }
      return ticks % 12 == 0 ? ticks / 12 + " ft" : ticks / 12 + " ft " + ticks % 12 + " in";
    }

    @Override
    String coordinate(int ticks) {
      return shortest(ticks / 12.0);
    }
  },
  MILLIMETRES("metric", 0.001) {
    @Override
    String length(int ticks) {
      return String.format(Locale.ROOT, "%.2f m", ticks / 1000.0);
    }

    @Override
    String coordinate(int ticks) {
      return shortest(ticks / 1000.0);
    }
  };

  private final String units;
  private final double metresPerTick;

  Ruler(String units, double metresPerTick) {
    this.units = units;
    this.metresPerTick = metresPerTick;
  }

  /** The job's unit system, as {@code job.json} names it. */
  String units() {
    return units;
  }

  double metres(int ticks) {
    return ticks * metresPerTick;
  }

  /** A length with its unit. */
  abstract String length(int ticks);

  /** A bare number in feet or metres. */
  abstract String coordinate(int ticks);

  private static String shortest(double number) {
    String text = String.format(Locale.ROOT, "%.4f", number);
    return text.replaceAll("\\.?0+$", "");
  }
}
