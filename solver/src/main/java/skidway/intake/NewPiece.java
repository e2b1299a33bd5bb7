package skidway.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One timber of a list on its way into the job.
 *
 * @param row where it stands in the list
 * @param load what it comes on
 * @param offOrder place of its bundle in the order off the truck; empty if the list does not say
 * @param fields by column of the job's table, as text the job reads
 * @param lengthM its size, to pack bundles by; not a number if it could not be read
 */
record NewPiece(
    ListRow row,
    String load,
    String offOrder,
    Map<String, String> fields,
    double lengthM,
    double widthM,
    double heightM) {

  String field(String column) {
    return fields.getOrDefault(column, "");
  }

  NewPiece with(String column, String value) {
    if (value.equals(fields.get(column))) {
      return this;
    }
    Map<String, String> changed = new LinkedHashMap<>(fields);
    changed.put(column, value);
    return new NewPiece(row, load, offOrder, changed, lengthM, widthM, heightM);
  }

  boolean sized() {
    return lengthM > 0 && widthM > 0 && heightM > 0;
  }
}
