package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.layout.LineClearance;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.units.Measure;

/**
 * Reads overhead power lines, whose owner may ask for more room than the table but not for less.
 */
final class OverheadLineReader {
  private static final double TABLE_ENDS_VOLTS = 1_000_000;
  private static final double SHORTEST_LINE_M = 0.1;
  private static final double TOLERANCE_M = 0.001;

  private final Ids ids;
  private final Settings settings;

  OverheadLineReader(Problems problems, Settings settings) {
    this.ids = new Ids("overhead line", problems);
    this.settings = settings;
  }

  List<Read<OverheadLine>> lines(Fields site) {
    return site.optionalObjects("overheadLines", ids, this::line);
  }

  private Optional<OverheadLine> line(Fields f) {
    String id = f.id(ids);
    Point from = Points.point(f, "from");
    Point to = Points.point(f, "to");
    double volts = f.quantity("voltage", Bounds.VOLTAGE);
    OptionalDouble clearanceM = f.optional("clearance", Bounds.LINE_CLEARANCE);
    Optional<OverheadLine> line = f.finish(() -> new OverheadLine(id, from, to, volts, clearanceM));
    line.filter(l -> f.unitsKnown()).ifPresent(l -> check(l, f));
    return f.sound() ? line : Optional.empty();
  }

  private void check(OverheadLine line, Fields f) {
    String what = "overhead line \"" + line.id() + '"';
    if (line.from().distanceTo(line.to()) < SHORTEST_LINE_M) {
      f.report(
          f.at("to"),
          what + " ending where it starts",
          "a line is at least " + f.length(SHORTEST_LINE_M) + " long, seen from above",
          "correct \"from\" or \"to\"");
    }
    Optional<Setting> row = LineClearance.setting(line.volts());
    if (row.isPresent()) {
      atLeast(line, row.get(), what, f);
    } else if (line.clearanceM().isEmpty()) {
      f.report(
          f.at("clearance"),
          what + " of " + f.figure(Measure.VOLTAGE, line.volts()) + " without \"clearance\"",
          "the table of 29 CFR 1926.1408 ends at "
              + f.figure(Measure.VOLTAGE, TABLE_ENDS_VOLTS)
              + "; above it the line's owner says",
          "ask the owner and add \"clearance\"");
    }
  }

  private void atLeast(OverheadLine line, Setting row, String what, Fields f) {
    double leastM = settings.get(row);
    if (line.clearanceM().orElse(leastM) < leastM - TOLERANCE_M) {
      f.report(
          f.at("clearance"),
          what + " with a clearance of " + f.length(line.clearanceM().getAsDouble()),
          "\"" + row.key() + "\" is " + f.length(leastM) + "; an owner asks for more, not for less",
          "remove \"clearance\", or correct it or \"voltage\"");
    }
  }
}
