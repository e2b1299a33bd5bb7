package skidway.audit;

import java.util.Optional;
import skidway.site.ChartRow;
import skidway.site.Machine;

/** Looks a reach up in the machine's chart. */
final class ChartRows {
  private ChartRows() {}

  /** The row for a reach, or for the next farther one; none beyond the chart. */
  static Optional<ChartRow> at(Machine machine, double reachM) {
    return machine.chart().stream()
        .filter(row -> row.reachM() >= reachM - Ledger.LENGTH_TOLERANCE_M)
        .findFirst();
  }
}
