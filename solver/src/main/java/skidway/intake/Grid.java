package skidway.intake;

import java.util.List;

/**
 * A list as rows of cells, before anything is known of what they mean. Rows without text are left
 * out.
 *
 * @param fileName name of the file, for messages
 * @param origin how the file was read, as a clause such as {@code sheet "Packing list"}
 * @param sheet whether cells are addressed by letter and row
 */
record Grid(String fileName, String origin, boolean sheet, List<ListRow> rows) {
  int width() {
    return rows.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
  }
}
