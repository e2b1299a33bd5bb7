package skidway.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How packing lists of one kind are read, kept in the job for the next truck's list.
 *
 * @param name what people call this kind of list
 * @param header the words of its header, column by column
 * @param columns what is taken for something
 * @param mark how piece marks are taken apart
 * @param bundleSize pieces of a bundle, when the list has none
 * @param constants what goes for every row, by field
 * @param calls what the job calls what the list calls otherwise
 */
public record SavedList(
    String name,
    List<String> header,
    List<Column> columns,
    Optional<String> mark,
    Optional<String> decimal,
    OptionalInt bundleSize,
    Map<String, String> constants,
    Map<String, String> calls) {

  /**
   * One column.
   *
   * @param number 1 is the first
   * @param meaning the field it is taken for
   * @param unit of its bare numbers, if it has one
   */
  public record Column(int number, String meaning, Optional<String> unit) {}
}
