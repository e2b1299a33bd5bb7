package skidway.survey;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import skidway.job.Place;
import skidway.units.UnitSystem;

/** Reads the lines about the tape itself: its units, and how well walls must close. */
final class UnitLine {
  private static final Pattern RATIO = Pattern.compile("1:(\\d{1,6})(?![\\d.])");
  private static final int LOOSEST = 20;

  private UnitLine() {}

  static UnitSystem read(LineScanner line, Optional<UnitSystem> job) {
    Place place = line.here();
    boolean us = line.oneOf("units", List.of("us", "metric")) == 0;
    UnitSystem units = us ? UnitSystem.US : UnitSystem.METRIC;
    if (job.isPresent() && job.get() != units) {
      throw line.refuse(
          place,
          "units " + (us ? "us" : "metric"),
          "job.json says " + (us ? "metric" : "us") + ", and bare numbers of a job count alike",
          "correct one of them, and write units beside figures of the other kind");
    }
    return units;
  }

  /** The n of {@code closing 1:n}. */
  static double closing(LineScanner line) {
    Place place = line.here();
    Optional<MatchResult> ratio = line.match(RATIO);
    double n = ratio.map(r -> Double.parseDouble(r.group(1))).orElse(0.0);
    if (n < LOOSEST) {
      throw line.refuse(
          place,
          ratio.map(r -> '"' + r.group() + '"').orElseGet(line::foundHere),
          "how well walls must close is 1:" + LOOSEST + " or better, as in closing 1:500",
          "correct it; a house that closes worse has a wall that is taped wrong");
    }
    return n;
  }
}
