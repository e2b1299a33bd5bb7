package skidway.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import skidway.intake.TickedSheet;
import skidway.plan.Task;
import skidway.sheet.TickSheet;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/**
 * Writes the tick sheet of a load as comma-separated values (RFC 4180), to be filled in and read
 * again: the columns that are read, then what helps people.
 */
final class TickCsv {
  private static final String LINE_END = "\r\n";
  private static final int FREE_ROWS = 3;

  private TickCsv() {}

  static String text(Task task, Load load, boolean pieces) {
    List<String> head = new ArrayList<>(TickedSheet.COLUMNS);
    Collections.addAll(head, "pieces", "length", "width", "height", "weighs_at_most");
    List<String> rows = new ArrayList<>(List.of(Csv.row(head.toArray(String[]::new))));
    for (Bundle bundle : TickSheet.bundles(task, load)) {
      rows.add(bundle(task, bundle));
      if (pieces) {
        bundle.pieces().forEach(piece -> rows.add(piece(task, bundle, piece)));
      }
    }
    for (int i = 0; i < FREE_ROWS; i++) {
      rows.add(Csv.row(load.id(), "", "", "extra", "", "", "", "", "", ""));
    }
    return String.join(LINE_END, rows) + LINE_END;
  }

  private static String bundle(Task task, Bundle bundle) {
    return Csv.row(
        bundle.loadId(),
        bundle.id(),
        "",
        "",
        "",
        Integer.toString(bundle.packed().size()),
        task.figures().length(bundle.lengthM()),
        task.figures().length(bundle.widthM()),
        task.figures().length(bundle.heightM()),
        task.figures().mass(bundle.mass().highKg()));
  }

  private static String piece(Task task, Bundle bundle, Piece piece) {
    return Csv.row(
        bundle.loadId(),
        bundle.id(),
        piece.mark(),
        "",
        "",
        "1",
        task.figures().length(piece.lengthM()),
        task.figures().length(piece.section().widthM()),
        task.figures().length(piece.section().heightM()),
        task.figures().mass(piece.mass().highKg()));
  }
}
