package skidway.intake;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A list whose columns are known: asks a row for a field, wherever it comes from, a column or what
 * goes for every row.
 *
 * @param calls what the list says to what the job says, of walls and species
 */
record ListTable(
    Map<Meaning, Column> columns,
    Map<Meaning, String> constants,
    Map<String, String> calls,
    Decimals decimals) {

  static ListTable of(
      List<Column> columns,
      Map<Meaning, String> constants,
      Map<String, String> calls,
      Decimals decimals) {
    Map<Meaning, Column> byMeaning = new EnumMap<>(Meaning.class);
    for (Column column : columns) {
      column.meaning().ifPresent(m -> byMeaning.put(m, column));
    }
    return new ListTable(byMeaning, constants, calls, decimals);
  }

  /** Whether rows have the field. */
  boolean has(Meaning meaning) {
    return columns.containsKey(meaning) || constants.containsKey(meaning);
  }

  /** The cell of a field, or the row's first if the field has no column. */
  Cell cell(ListRow row, Meaning meaning) {
    Column column = columns.get(meaning);
    return row.cell(column == null ? 0 : column.index());
  }

  /** The text of a field; empty if the row has none. */
  String text(ListRow row, Meaning meaning) {
    Column column = columns.get(meaning);
    if (column == null) {
      return constants.getOrDefault(meaning, "");
    }
    String text = row.text(column.index());
    boolean named = meaning == Meaning.WALL || meaning == Meaning.SPECIES;
    return named ? calls.getOrDefault(text, text) : text;
  }

  /** The text of a field of numbers, with points as decimal marks; empty if it may be either. */
  Optional<String> plain(ListRow row, Meaning meaning) {
    String text = text(row, meaning);
    return columns.containsKey(meaning) && cell(row, meaning).number()
        ? Optional.of(text)
        : decimals.plain(text);
  }

  Optional<ListUnit> unit(Meaning meaning) {
    return Optional.ofNullable(columns.get(meaning)).flatMap(Column::unit);
  }

  /** How a cell is named in messages, for example {@code E7 ("Length")}. */
  String place(ListRow row, Meaning meaning) {
    Column column = columns.get(meaning);
    if (column == null) {
      return "what goes for every row";
    }
    String head = column.header().isEmpty() ? "" : " (" + Trouble.quote(column.header()) + ")";
    return "column " + column.letter() + head + ", row " + row.number();
  }
}
