package skidway.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.job.BadInput;
import skidway.job.Names;
import skidway.progress.Count;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Piece;
import skidway.units.Nearest;

/**
 * Reads a tick sheet that was filled in, as separated values or a spreadsheet, whatever program
 * wrote it. Every bundle of the load is ticked by itself or by each of its pieces; nothing counts
 * as there because nobody looked.
 */
public final class TickedSheet {
  /** The columns that are read; all others are for people. */
  public static final List<String> COLUMNS = List.of("load", "bundle", "piece", "there", "note");

  private static final String A_TICK = "\"there\" is one of " + Tick.words();

  private final Delivery delivery;
  private final String loadId;
  private final Trouble trouble;
  private final Map<String, Integer> columns = new HashMap<>();

  /** What was ticked, and where, by bundle or mark in the order of the sheet. */
  private final Map<String, Ticked> ticked = new LinkedHashMap<>();

  private final Map<String, String> extras = new LinkedHashMap<>();
  private final Set<String> pieces = new HashSet<>();

  private record Ticked(Optional<Tick> tick, String note, Cell cell) {}

  private TickedSheet(Delivery delivery, String loadId, Trouble trouble) {
    this.delivery = delivery;
    this.loadId = loadId;
    this.trouble = trouble;
    ours().forEach(b -> b.pieces().forEach(p -> pieces.add(p.mark())));
  }

  /**
   * Reads a sheet.
   *
   * @throws BadInput with everything that is wrong in it
   */
  public static Count read(Path file, Delivery delivery, String loadId) {
    Grid grid = ListFile.read(file, Optional.empty(), Optional.empty());
    Trouble trouble = new Trouble(grid.fileName());
    TickedSheet sheet = new TickedSheet(delivery, loadId, trouble);
    int first = sheet.header(grid);
    grid.rows().stream().skip(first).forEach(sheet::row);
    Count count = sheet.count();
    trouble.throwIfAny();
    return count;
  }

  private List<Bundle> ours() {
    return delivery.bundles().stream().filter(b -> b.loadId().equals(loadId)).toList();
  }

  private int header(Grid grid) {
    for (int i = 0; i < grid.rows().size(); i++) {
      columns.clear();
      List<Cell> cells = grid.rows().get(i).cells();
      for (int k = 0; k < cells.size(); k++) {
        columns.putIfAbsent(Headline.plain(cells.get(k).text()), k);
      }
      if (columns.keySet().containsAll(COLUMNS)) {
        return i + 1;
      }
    }
    throw Trouble.of(
        grid.fileName(),
        "no row with the columns " + String.join(", ", COLUMNS),
        "a ticked sheet is the table that receive writes, filled in",
        "fill in that one, and leave its header as it is");
  }

  private Cell cell(ListRow row, String column) {
    return row.cell(columns.getOrDefault(column, 0));
  }

  /**
   * A text of the sheet as the job has it: a guard against formulas in front of it is taken off.
   */
  private String text(ListRow row, String column, Set<String> known) {
    String text = cell(row, column).text();
    boolean guarded = text.startsWith("'") && !known.contains(text);
    return guarded ? text.substring(1) : text;
  }

  private void row(ListRow row) {
    Set<String> bundles = new LinkedHashSet<>();
    ours().forEach(b -> bundles.add(b.id()));
    String bundle = text(row, "bundle", bundles);
    String piece = text(row, "piece", pieces);
    String note = text(row, "note", Set.of());
    Cell there = cell(row, "there");
    Optional<Tick> tick = Tick.of(there.text());
    if (tick.isEmpty() && !there.empty()) {
      trouble.add(there, Trouble.quote(there.text()) + " as there", A_TICK, "correct it");
    }
    if (!Names.isLine(note)) {
      trouble.add(
          cell(row, "note"),
          "a note of more than a line",
          "a note has at most 200 printable characters",
          "shorten it");
      return;
    }
    if (tick.equals(Optional.of(Tick.YES)) && !note.isEmpty()) {
      trouble.add(
          cell(row, "note"),
          "a note " + Trouble.quote(note) + " beside " + Trouble.quote(there.text()),
          "notes are kept of what is missing, damaged or extra",
          "tick it damaged if it must not be built in; else take the note out");
    }
    boolean extra = tick.equals(Optional.of(Tick.EXTRA));
    if (extra ? bundle.isEmpty() && piece.isEmpty() && note.isEmpty() : row.filled() == 0) {
      return; // a line that was left free
    }
    String load = cell(row, "load").text();
    if (!load.equals(loadId) && !(extra && load.isEmpty())) {
      trouble.add(
          cell(row, "load"),
          "a row of load " + Trouble.quote(load),
          "this sheet is read for load " + loadId,
          "name the load of the sheet, or fill in the sheet of load " + loadId);
    } else if (extra) {
      extra(row, bundle.isEmpty() ? piece : bundle, note);
    } else if (piece.isEmpty()) {
      tick(row, "bundle", bundle, bundles, new Ticked(tick, note, there));
    } else {
      tick(row, "piece", piece, pieces, new Ticked(tick, note, there));
    }
  }

  private void extra(ListRow row, String id, String note) {
    if (!Names.isId(id)) {
      trouble.add(
          cell(row, "bundle"),
          "an extra called " + Trouble.quote(id),
          Names.ALLOWED,
          "write in the column bundle what stands on it, or what you call it");
    } else if (pieces.contains(id) || ours().stream().anyMatch(b -> b.id().equals(id))) {
      trouble.add(
          cell(row, "bundle"),
          "an extra " + Trouble.quote(id),
          "it is on the list of load " + loadId + ", so it is nothing extra",
          "tick it yes, no or damaged");
    } else if (note.isEmpty()) {
      trouble.add(
          cell(row, "note"),
          "an extra " + Trouble.quote(id) + " without a note",
          "the note says what it is",
          "write it there, such as 3 timbers 150x200, no marks");
    } else if (extras.putIfAbsent(id, note) != null) {
      trouble.add(
          cell(row, "bundle"),
          "a second extra " + Trouble.quote(id),
          "every extra has its own name",
          "put them into one row, or call one of them otherwise");
    }
  }

  private void tick(ListRow row, String kind, String id, Set<String> known, Ticked tick) {
    if (!known.contains(id)) {
      trouble.add(
          cell(row, kind),
          "no " + kind + " " + Trouble.quote(id) + " on load " + loadId + Nearest.hint(id, known),
          "a sheet has the bundles and pieces of its load",
          "put the name back; of what is in no list, write extra in the column there");
    } else if (ticked.putIfAbsent(id, tick) != null) {
      trouble.add(
          cell(row, kind),
          "a second row of " + kind + " " + Trouble.quote(id),
          "each is ticked once",
          "remove one of the rows");
    }
  }

  private Count count() {
    Map<Tick, Map<String, String>> counted = new HashMap<>();
    for (Tick tick : Tick.values()) {
      counted.put(tick, new LinkedHashMap<>());
    }
    List<String> unseen = new ArrayList<>();
    for (Bundle bundle : ours()) {
      Optional<Ticked> own = Optional.ofNullable(ticked.get(bundle.id()));
      Optional<Tick> whole = own.flatMap(Ticked::tick);
      whole.ifPresent(t -> map(counted, t).put(bundle.id(), own.orElseThrow().note()));
      boolean each = true;
      for (Piece piece : bundle.pieces()) {
        Optional<Ticked> ticks = Optional.ofNullable(ticked.get(piece.mark()));
        Optional<Tick> tick = ticks.flatMap(Ticked::tick);
        each &= tick.isPresent();
        boolean same = tick.equals(whole) || piece.mark().equals(bundle.id());
        if (tick.isPresent() && !same) {
          contradiction(bundle.id(), whole, piece.mark(), ticks.orElseThrow());
          map(counted, tick.get()).put(piece.mark(), ticks.orElseThrow().note());
        }
      }
      if (whole.isEmpty() && !each) {
        unseen.add(bundle.id());
      }
    }
    if (!unseen.isEmpty() && !trouble.any()) {
      Cell cell =
          Optional.ofNullable(ticked.get(unseen.get(0)))
              .map(Ticked::cell)
              .orElse(new Cell("", false, 0, 0));
      trouble.add(
          cell,
          "nothing ticked for bundle " + some(unseen),
          A_TICK + ", for each bundle or for all pieces in it",
          "look whether it is there, and tick it");
    }
    return new Count(
        loadId,
        map(counted, Tick.YES).keySet(),
        map(counted, Tick.NO),
        map(counted, Tick.DAMAGED),
        extras);
  }

  private static Map<String, String> map(Map<Tick, Map<String, String>> counted, Tick tick) {
    return counted.computeIfAbsent(tick, t -> new LinkedHashMap<>());
  }

  /** Of a bundle that is not there, no piece is; of one that is damaged, none is told apart. */
  private void contradiction(String bundleId, Optional<Tick> whole, String mark, Ticked piece) {
    if (whole.isPresent() && whole.get() != Tick.YES) {
      trouble.add(
          piece.cell(),
          Trouble.quote(piece.cell().text()) + " for piece " + Trouble.quote(mark),
          "its bundle " + bundleId + " is ticked " + whole.get().word() + " as a whole",
          "tick the bundle yes and its pieces one by one, or leave the pieces free");
    }
  }

  private static String some(List<String> ids) {
    return String.join(", ", ids.stream().limit(12).toList())
        + (ids.size() > 12 ? " and " + (ids.size() - 12) + " more" : "");
  }
}
