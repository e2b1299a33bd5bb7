package skidway.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the rows of a list into timbers: takes marks apart, gives a row of several equal timbers a
 * mark and a position each, and counts the positions that the list does not have.
 */
final class PieceRows {
  private final ListTable table;
  private final Optional<MarkPattern> pattern;
  private final String load;
  private final RowReader reader;
  private final Places places;
  private final Trouble trouble;
  private final List<NewPiece> pieces = new ArrayList<>();

  /** A row with what is the same for all of its timbers. */
  private record Alike(
      ListRow row,
      String wall,
      int firstCourse,
      int lastCourse,
      Optional<Integer> position,
      int count,
      String load,
      String offOrder,
      Map<String, String> fields,
      double lengthM,
      double widthM,
      double heightM) {}

  /**
   * @param load of all rows; empty if each row has its own
   */
  PieceRows(
      ListTable table,
      Optional<MarkPattern> pattern,
      String load,
      RowReader reader,
      Places places,
      Trouble trouble) {
    this.table = table;
    this.pattern = pattern;
    this.load = load;
    this.reader = reader;
    this.places = places;
    this.trouble = trouble;
  }

  /** The timbers in the list's order; those of spoiled rows are missing. */
  List<NewPiece> read(List<ListRow> rows) {
    List<Alike> alike = new ArrayList<>();
    rows.forEach(row -> read(row).ifPresent(alike::add));
    // Positions that were read are taken before others are counted round them.
    for (Alike a : alike) {
      a.position().ifPresent(p -> takeAll(a, p));
    }
    for (Alike a : alike) {
      expand(a);
      if (pieces.size() > ListLimits.MOST_ROWS) {
        trouble.add(
            "more than " + ListLimits.MOST_ROWS + " timbers",
            "a job has fewer",
            "look whether the counts are right");
        return pieces;
      }
    }
    return pieces;
  }

  private Optional<Alike> read(ListRow row) {
    Optional<MarkPattern.Parts> parts = parts(row);
    if (pattern.isPresent() && parts.isEmpty()) {
      reader.wrong(
          row,
          Meaning.MARK,
          "marks look like " + pattern.get().text(),
          "correct the mark, or say how marks look with --mark");
      return Optional.empty();
    }
    String wall = part(parts, Meaning.WALL, reader.text(row, Meaning.WALL));
    if (wall.isEmpty()) {
      reader.wrong(row, Meaning.WALL, "every timber is in a wall", "fill it in");
      return Optional.empty();
    }
    String coursesText = part(parts, Meaning.COURSE, table.plain(row, Meaning.COURSE).orElse(""));
    Optional<int[]> courses = reader.courses(row, coursesText);
    Optional<Integer> count =
        table.has(Meaning.COUNT)
            ? reader.whole(row, Meaning.COUNT, ListLimits.MOST_PER_ROW)
            : Optional.of(1);
    Optional<LengthText> length = reader.length(row, Meaning.LENGTH);
    Optional<SectionText> section = section(row);
    if (courses.isEmpty() || count.isEmpty() || length.isEmpty() || section.isEmpty()) {
      return Optional.empty();
    }
    int layers = courses.get()[1] - courses.get()[0] + 1;
    if (count.get() % layers != 0) {
      reader.wrong(
          row,
          Meaning.COUNT,
          "the " + layers + " courses of the row have the same number of timbers each",
          "write a row a course");
      return Optional.empty();
    }
    Map<String, String> fields = fields(row, length.get(), section.get());
    Optional<Integer> position = position(row, parts);
    return Optional.of(
        new Alike(
            row,
            wall,
            courses.get()[0],
            courses.get()[1],
            position,
            count.get(),
            load.isEmpty() ? reader.text(row, Meaning.LOAD) : load,
            table.text(row, Meaning.OFF_ORDER),
            fields,
            length.get().metres(),
            section.get().width().metres(),
            section.get().height().metres()));
  }

  private Optional<MarkPattern.Parts> parts(ListRow row) {
    return pattern.flatMap(p -> p.apart(table.text(row, Meaning.MARK)));
  }

  /** A part of the mark, unless the row has a column for it. */
  private String part(Optional<MarkPattern.Parts> parts, Meaning meaning, String own) {
    if (table.has(meaning)) {
      return own;
    }
    String part = parts.map(p -> p.values().getOrDefault(meaning, "")).orElse("");
    return meaning == Meaning.WALL ? table.calls().getOrDefault(part, part) : part;
  }

  private Optional<Integer> position(ListRow row, Optional<MarkPattern.Parts> parts) {
    if (table.has(Meaning.POSITION)) {
      return table.text(row, Meaning.POSITION).isEmpty()
          ? Optional.empty()
          : reader.whole(row, Meaning.POSITION, 10_000);
    }
    String part = part(parts, Meaning.POSITION, "");
    return part.isEmpty() || part.equals("0")
        ? Optional.empty()
        : Optional.of(Integer.parseInt(part));
  }

  private Optional<SectionText> section(ListRow row) {
    if (table.has(Meaning.SECTION)) {
      return reader.section(row);
    }
    Optional<LengthText> width = reader.length(row, Meaning.WIDTH);
    Optional<LengthText> height = reader.length(row, Meaning.HEIGHT);
    return width.isPresent() && height.isPresent()
        ? Optional.of(new SectionText(width.get(), height.get()))
        : Optional.empty();
  }

  private Map<String, String> fields(ListRow row, LengthText length, SectionText section) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("length", length.text());
    fields.put("width", section.width().text());
    fields.put("height", section.height().text());
    fields.put("species", reader.text(row, Meaning.SPECIES));
    fields.put("moisture", reader.moisture(row));
    fields.put("bundle", reader.text(row, Meaning.BUNDLE));
    fields.put("layer", table.has(Meaning.LAYER) ? layer(row) : "");
    if (!table.text(row, Meaning.FROM_LEFT).isEmpty()) {
      reader.length(row, Meaning.FROM_LEFT).ifPresent(l -> fields.put("from_left", l.text()));
    }
    return fields;
  }

  private String layer(ListRow row) {
    return reader.whole(row, Meaning.LAYER, 1000).map(String::valueOf).orElse("");
  }

  private void takeAll(Alike a, int position) {
    int perCourse = a.count() / (a.lastCourse() - a.firstCourse() + 1);
    for (int course = a.firstCourse(); course <= a.lastCourse(); course++) {
      for (int i = 0; i < perCourse; i++) {
        places.take(a.wall(), course, position + i);
      }
    }
  }

  private void expand(Alike a) {
    int perCourse = a.count() / (a.lastCourse() - a.firstCourse() + 1);
    String mark = table.text(a.row(), Meaning.MARK);
    int number = 0;
    for (int course = a.firstCourse(); course <= a.lastCourse(); course++) {
      for (int i = 0; i < perCourse; i++) {
        number++;
        int position =
            a.position().isPresent() ? a.position().get() + i : places.next(a.wall(), course);
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("mark", mark(mark, number, a, course, position));
        fields.put("wall", a.wall());
        fields.put("course", Integer.toString(course));
        fields.put("position", Integer.toString(position));
        fields.putAll(a.fields());
        pieces.add(
            new NewPiece(
                a.row(), a.load(), a.offOrder(), fields, a.lengthM(), a.widthM(), a.heightM()));
      }
    }
  }

  /** The mark of one of several equal timbers; of a list without marks, its place. */
  private static String mark(String mark, int number, Alike a, int course, int position) {
    if (mark.isEmpty()) {
      return String.format(Locale.ROOT, "%s-%02d-%d", a.wall(), course, position);
    }
    return a.count() == 1 ? mark : mark + "/" + number;
  }
}
