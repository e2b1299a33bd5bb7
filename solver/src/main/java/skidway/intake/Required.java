package skidway.intake;

import java.util.List;
import java.util.Optional;

/** Says which fields a list lacks, one problem each. */
final class Required {
  private Required() {}

  static void check(Reading reading, Optional<MarkPattern> pattern, Trouble trouble) {
    ListTable table = reading.table();
    if (!reading.header().found() && !table.has(Meaning.LENGTH)) {
      trouble.add(
          "no header in " + reading.grid().origin() + ", and no column that shows by itself",
          "a list has a row of words such as Mark, Wall, Course, Length above its columns",
          "look whether this is the right file or --sheet; else name that row with --header, or"
              + " columns with --column length=E");
      return;
    }
    if (reading.rows().isEmpty()) {
      trouble.add(
          "no timbers below the header",
          "a list has a row or more",
          reading.grid().sheet()
              ? "look at the sheet, or name another with --sheet"
              : "look at the file, or ask for it again");
      return;
    }
    lacks(table, Meaning.LENGTH, "length", "name its column, such as --column length=E", trouble);
    if (!table.has(Meaning.SECTION)) {
      for (Meaning side : List.of(Meaning.WIDTH, Meaning.HEIGHT)) {
        String way =
            "name its column with --column "
                + side.word()
                + "=..., or of both with --column section=..., or say --set section=\"150x200 mm\"";
        lacks(table, side, side.word(), way, trouble);
      }
    }
    lacks(
        table,
        Meaning.SPECIES,
        "species",
        "name its column, or say --set species=\"eastern white pine\"",
        trouble);
    lacks(
        table,
        Meaning.MOISTURE,
        "moisture; wet timber can weigh twice as much as dry",
        "say --set moisture=19 as measured, --set moisture=15-25, or --set moisture=green",
        trouble);
    for (Meaning place : List.of(Meaning.WALL, Meaning.COURSE)) {
      boolean inMark = pattern.filter(p -> p.has(place)).isPresent();
      if (!inMark && (!table.has(Meaning.MARK) || reading.wishes().mark().isPresent())) {
        lacks(table, place, place.word(), "name its column, or say --mark", trouble);
      }
    }
    if (reading.wishes().bundleSize().isEmpty()) {
      lacks(
          table,
          Meaning.BUNDLE,
          "bundle",
          "name its column, or say --bundle-size 20 if each 20 timbers of the list are a bundle",
          trouble);
    }
  }

  private static void lacks(
      ListTable table, Meaning meaning, String what, String wayOut, Trouble trouble) {
    if (!table.has(meaning)) {
      trouble.add("no column for " + what, "every timber of a job has one", wayOut);
    }
  }
}
