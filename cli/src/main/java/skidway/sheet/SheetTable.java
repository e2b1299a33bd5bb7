package skidway.sheet;

import java.util.List;

/**
 * Writes a table whose head is repeated on every printed page and whose cells know their column's
 * name, so that a narrow screen can show each row as a card. Roles are written out because a row
 * that is laid out as a card would lose them.
 */
final class SheetTable {
  private final Markup page;
  private final List<String> heads;
  private int column;
  private boolean bodyOpen;

  private SheetTable(Markup page, List<String> heads) {
    this.page = page;
    this.heads = heads;
  }

  static SheetTable open(Markup page, RunningHead running, String kind, String... heads) {
    return open(page, running.words(), kind, heads);
  }

  /**
   * @param running what stands above the table's head on every printed page
   */
  static SheetTable open(Markup page, String running, String kind, String... heads) {
    SheetTable table = new SheetTable(page, List.of(heads));
    page.open("table", "class", kind, "role", "table");
    page.open("thead", "role", "rowgroup").open("tr", "class", "running", "role", "row");
    page.leaf("td", running, "colspan", table.span(), "role", "cell").close();
    page.open("tr", "role", "row");
    for (String head : heads) {
      page.leaf("th", head, "scope", "col", "role", "columnheader");
    }
    page.close().close().line();
    return table;
  }

  /** Starts a group of rows; the first group starts by itself. */
  SheetTable group() {
    if (bodyOpen) {
      page.close().line();
    }
    page.open("tbody", "role", "rowgroup").line();
    bodyOpen = true;
    return this;
  }

  /** Opens a row that is one heading for the group it starts. */
  Markup openHeading(String kind) {
    page.open("tr", "class", kind, "role", "row");
    return page.open("th", "colspan", span(), "scope", "rowgroup", "role", "rowheader");
  }

  SheetTable openRow(String kind) {
    if (!bodyOpen) {
      group();
    }
    page.open("tr", "class", kind, "role", "row");
    column = 0;
    return this;
  }

  /** Opens the cell that names the row; {@link #close} ends it. */
  Markup openName(String kind) {
    column++;
    return page.open("th", "scope", "row", "role", "rowheader", "class", kind);
  }

  /** Opens a cell; {@link #close} ends it. */
  Markup openCell(String kind) {
    String head = heads.get(column++);
    return page.open("td", "role", "cell", "class", kind, "data-head", head);
  }

  SheetTable cell(String kind, String text) {
    openCell(kind).text(text).close();
    return this;
  }

  /** A line as wide as the table, about the row before it, which is of the kind "noted". */
  void note(String words) {
    page.open("tr", "class", "note", "role", "row");
    page.leaf("td", words, "colspan", span(), "role", "cell").close();
  }

  /** Ends the heading, row or cell that is open. */
  SheetTable close() {
    page.close();
    return this;
  }

  void end() {
    if (bodyOpen) {
      page.close();
    }
    page.close().line();
  }

  private String span() {
    return Integer.toString(heads.size());
  }
}
