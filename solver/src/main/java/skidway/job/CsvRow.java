package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * One row of a table, its cells read by column and type. What is wrong becomes a problem at its
 * cell and a harmless stand-in value; {@link #finish} builds the thing only if nothing was wrong.
 */
final class CsvRow {
  private final CsvHeader header;
  private final List<CsvCells.Cell> cells;
  private final Values values;
  private final int problemsBefore;

  CsvRow(CsvHeader header, List<CsvCells.Cell> cells, Values values) {
    this.header = header;
    this.cells = cells;
    this.values = values;
    this.problemsBefore = values.problems().count();
  }

  Place at(String column) {
    return cell(column).place();
  }

  String text(String column) {
    return cell(column).text();
  }

  /** The id of the row's own thing, which is registered. */
  String id(String column, Ids ids) {
    String id = reference(column);
    ids.register(id, at(column));
    return id;
  }

  /** The id of another thing. */
  String reference(String column) {
    String id = text(column);
    if (Names.isId(id)) {
      return id;
    }
    report(column, Quote.found(id) + " as " + column, Names.ALLOWED, "correct it");
    return "";
  }

  double quantity(String column, Bounds bounds) {
    return quantity(column, bounds.range());
  }

  /** A quantity in SI; not a number after a problem. */
  double quantity(String column, Bounds.Range range) {
    return values.read(at(column), range, text(column));
  }

  /** A quantity that may be left out, as a column or as a cell. */
  OptionalDouble optional(String column, Bounds bounds) {
    if (!header.indexes().containsKey(column) || text(column).isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(quantity(column, bounds));
  }

  /** A whole number; 0 after a problem. */
  int whole(String column, Bounds bounds) {
    return (int) quantity(column, bounds);
  }

  void report(String column, String found, String allowed, String wayOut) {
    values.problems().add(at(column), found, allowed, wayOut);
  }

  void remark(String column, String found, String allowed, String wayOut) {
    values.problems().remark(at(column), found, allowed, wayOut);
  }

  /** A length as the job's people write it. */
  String length(double metres) {
    return values.figures().length(metres);
  }

  <T> Optional<T> finish(Supplier<T> thing) {
    return values.problems().count() == problemsBefore
        ? Optional.of(thing.get())
        : Optional.empty();
  }

  private CsvCells.Cell cell(String column) {
    return cells.get(header.indexes().get(column));
  }
}
