package skidway.cli;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import skidway.plan.Task;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/**
 * What the supplier of a load has to answer for, by what is recorded now, in whatever way it was
 * recorded.
 *
 * @param arrived when the load came
 */
record Claim(Task task, Load load, LocalDateTime arrived, List<Line> lines) {
  enum Kind {
    MISSING("Missing"),
    DAMAGED("Damaged"),
    EXTRA("Came, but on no list");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * One thing.
   *
   * @param bundle that it is or lies in; of an extra none
   * @param piece of a whole bundle none
   */
  record Line(
      Kind kind,
      String id,
      Optional<Bundle> bundle,
      Optional<Piece> piece,
      String note,
      LocalDateTime at,
      String by) {

    /** The timbers meant: one, or all of a bundle; of an extra none that are known. */
    List<Piece> pieces() {
      return piece.map(List::of).or(() -> bundle.map(Bundle::pieces)).orElse(List.of());
    }
  }

  Claim {
    lines = List.copyOf(lines);
  }

  /** The claim for a load; empty when it has not arrived. */
  static Optional<Claim> of(Task task, Load load, Progress progress) {
    LocalDateTime arrived = progress.arrived().get(load.id());
    if (arrived == null) {
      return Optional.empty();
    }
    List<Line> lines = new ArrayList<>();
    lines.addAll(known(task, load, progress, Kind.MISSING, progress.missing()));
    lines.addAll(known(task, load, progress, Kind.DAMAGED, progress.damaged()));
    for (Event.Extra extra : progress.extras()) {
      boolean listed =
          task.delivery().bundle(extra.id()).isPresent()
              || task.delivery().pieces().stream().anyMatch(p -> p.mark().equals(extra.id()));
      if (extra.loadId().equals(load.id()) && !listed) {
        lines.add(
            new Line(
                Kind.EXTRA,
                extra.id(),
                Optional.empty(),
                Optional.empty(),
                extra.note(),
                extra.at(),
                extra.by()));
      }
    }
    return Optional.of(new Claim(task, load, arrived, lines));
  }

  private static List<Line> known(
      Task task, Load load, Progress progress, Kind kind, Collection<String> ids) {
    List<Line> lines = new ArrayList<>();
    for (String id : ids) {
      Optional<Bundle> whole = task.delivery().bundle(id);
      Optional<Bundle> bundle = whole.or(() -> holding(task, id));
      if (bundle.filter(b -> b.loadId().equals(load.id())).isPresent()) {
        Optional<Piece> piece =
            whole.isPresent()
                ? Optional.empty()
                : bundle.get().pieces().stream().filter(p -> p.mark().equals(id)).findFirst();
        Event said = progress.said(id).orElseThrow();
        lines.add(new Line(kind, id, bundle, piece, note(said), said.at(), said.by()));
      }
    }
    return lines;
  }

  private static Optional<Bundle> holding(Task task, String mark) {
    return task.delivery().bundles().stream()
        .filter(b -> b.pieces().stream().anyMatch(p -> p.mark().equals(mark)))
        .findFirst();
  }

  private static String note(Event said) {
    if (said instanceof Event.Missing missing) {
      return missing.note();
    }
    return said instanceof Event.Damaged damaged ? damaged.note() : "";
  }

  List<Line> of(Kind kind) {
    return lines.stream().filter(l -> l.kind() == kind).toList();
  }

  /** Its files are called by the load, in signs that every file system takes. */
  static String fileName(Task task, Load load, String stem, String ending) {
    String plain = load.id().replaceAll("[^\\p{Alnum}_-]", "_");
    // Two loads may differ only in what a file's name cannot hold.
    String number =
        plain.equals(load.id()) ? "" : "-" + (task.delivery().loads().indexOf(load) + 1);
    return stem + "-" + plain + number + ending;
  }
}
