package skidway.cli;

import java.time.LocalDateTime;
import java.util.List;
import skidway.progress.Progress;
import skidway.timber.Load;

/**
 * How one load stands.
 *
 * @param at when it came, or when it is expected by the newest word
 * @param down bundles that were put down, whether or not they are used up
 * @param missing bundles missing
 */
record LoadState(Load load, boolean here, LocalDateTime at, int down, int missing, int bundles) {

  static List<LoadState> all(Standing standing) {
    return standing.task().delivery().loads().stream().map(load -> of(load, standing)).toList();
  }

  private static LoadState of(Load load, Standing standing) {
    Progress progress = standing.progress();
    List<String> ids =
        standing.task().delivery().bundles().stream()
            .filter(b -> b.loadId().equals(load.id()))
            .map(b -> b.id())
            .toList();
    int missing = (int) ids.stream().filter(progress.missing()::contains).count();
    int waiting = (int) ids.stream().filter(progress.onTruck()::contains).count();
    LocalDateTime came = progress.arrived().get(load.id());
    return new LoadState(
        load,
        came != null,
        came != null ? came : progress.expected(load.id()),
        ids.size() - missing - waiting,
        missing,
        ids.size());
  }

  /** {@code arrived}, {@code expected}, or {@code late} when that is after the planned arrival. */
  String state() {
    return here ? "arrived" : at.isAfter(load.arrival()) ? "late" : "expected";
  }
}
