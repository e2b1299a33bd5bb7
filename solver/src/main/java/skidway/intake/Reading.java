package skidway.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import skidway.job.JobDraft;
import skidway.job.SavedList;

/**
 * A packing list whose columns are proposed, and nothing of it taken yet. What is wrong with units
 * waits until the person has seen the columns.
 *
 * @param columns with what each is taken for
 * @param notes how it came to units and decimal marks
 * @param leftOut rows that are no timbers
 */
record Reading(
    JobDraft job,
    Grid grid,
    Header header,
    List<Column> columns,
    ListTable table,
    List<ListRow> rows,
    Optional<SavedList> saved,
    Wishes wishes,
    List<String> notes,
    List<String> leftOut,
    Trouble trouble) {

  /** Opens a list and proposes its columns. */
  static Reading open(JobDraft job, Path file, Wishes wishes) {
    Grid grid = ListFile.read(file, wishes.sheet(), wishes.encoding());
    Trouble trouble = new Trouble(grid.fileName());
    refuseUnknownWords(wishes, grid.fileName());
    Header header = Header.find(grid, wishes.header());
    Optional<SavedList> saved =
        job.lists().stream()
            .filter(l -> header.found() && l.header().equals(header.texts()))
            .findFirst();
    Wishes all = saved.map(s -> merged(wishes, s)).orElse(wishes);
    Set<String> walls = new HashSet<>(job.walls());
    all.calls().forEach((from, to) -> walls.add(from));
    List<Column> proposed =
        Columns.propose(
            grid, header, wishes, saved, walls, w -> job.knowsWood(all.calls().getOrDefault(w, w)));
    Map<Meaning, String> constants = new LinkedHashMap<>();
    all.constants().forEach((w, text) -> Meaning.of(w).ifPresent(m -> constants.put(m, text)));
    List<Column> columns =
        proposed.stream()
            .map(
                c ->
                    c.meaning().filter(constants::containsKey).isPresent()
                        ? c.as(Optional.empty(), "you said what goes for every row")
                        : c)
            .toList();
    Decimals decimals = decimals(all, grid, header, columns);
    ListTable first = ListTable.of(columns, constants, all.calls(), decimals);
    Body body = Body.of(grid, header, first);
    List<String> notes = new ArrayList<>();
    saved.ifPresent(
        s -> notes.add("Read like \"" + s.name() + "\" before, which had the same header."));
    if (decimals == Decimals.COMMA) {
      notes.add("Commas are decimal marks, points stand between thousands.");
    }
    List<Column> sized =
        new UnitChoice(first, body.rows(), units(all, grid.fileName()), job.units(), notes, trouble)
            .of(columns);
    ListTable table = ListTable.of(sized, constants, all.calls(), decimals);
    return new Reading(
        job, grid, header, sized, table, body.rows(), saved, all, notes, body.leftOut(), trouble);
  }

  private static void refuseUnknownWords(Wishes wishes, String fileName) {
    Trouble trouble = new Trouble(fileName);
    for (String word : new LinkedHashSet<>(wishes.meaningWords())) {
      if (Meaning.of(word).isEmpty()) {
        trouble.add(
            "an unknown field " + Trouble.quote(word),
            "fields are " + Meaning.words(),
            "name one of them");
      }
    }
    trouble.throwIfAny();
  }

  private static Map<String, ListUnit> units(Wishes wishes, String fileName) {
    Map<String, ListUnit> units = new LinkedHashMap<>();
    wishes
        .units()
        .forEach(
            (word, text) ->
                units.put(
                    Meaning.of(word).map(Meaning::word).orElse(""),
                    ListUnit.of(text)
                        .orElseThrow(
                            () ->
                                Trouble.of(
                                    fileName,
                                    "an unknown unit " + Trouble.quote(text),
                                    "units are mm, cm, m, in, ft, ft-in, kg, lb and t",
                                    "correct --unit"))));
    return units;
  }

  private static Decimals decimals(Wishes wishes, Grid grid, Header header, List<Column> columns) {
    if (wishes.decimal().isPresent()) {
      String word = wishes.decimal().get();
      if (!word.equals("comma") && !word.equals("point")) {
        throw Trouble.of(
            grid.fileName(),
            Trouble.quote(word) + " as decimal mark",
            "it is comma or point",
            "correct --decimal");
      }
      return word.equals("comma") ? Decimals.COMMA : Decimals.POINT;
    }
    List<Integer> numbers =
        columns.stream()
            .filter(
                c ->
                    c.meaning()
                        .filter(m -> m.kind() != Meaning.Kind.TEXT || m == Meaning.MOISTURE)
                        .isPresent())
            .map(Column::index)
            .toList();
    return Decimals.of(
        Columns.body(grid, header).stream()
            .flatMap(r -> numbers.stream().map(r::cell))
            .filter(c -> !c.number())
            .map(Cell::text));
  }

  /** What the person says now, and for the rest what was said of an earlier list of the kind. */
  private static Wishes merged(Wishes now, SavedList saved) {
    Map<String, String> constants = new LinkedHashMap<>(saved.constants());
    constants.putAll(now.constants());
    Map<String, String> calls = new LinkedHashMap<>(saved.calls());
    calls.putAll(now.calls());
    return new Wishes(
        now.sheet(),
        now.header(),
        now.encoding(),
        now.columns(),
        now.units(),
        now.mark().or(saved::mark),
        now.decimal().or(saved::decimal),
        now.bundleSize().isPresent() ? now.bundleSize() : saved.bundleSize(),
        constants,
        calls,
        now.load(),
        now.arrival(),
        now.stand(),
        now.replace());
  }

  /** How this list was read, for the next one with the same header. */
  List<SavedList> remembered(Optional<MarkPattern> pattern) {
    List<SavedList> lists = new ArrayList<>(job.lists());
    if (!header.found()) {
      return lists;
    }
    List<SavedList.Column> taken =
        columns.stream()
            .filter(c -> c.meaning().isPresent())
            .map(
                c ->
                    new SavedList.Column(
                        c.index() + 1, c.meaning().get().word(), c.unit().map(ListUnit::word)))
            .toList();
    // A pattern that only confirms what columns say need not fit the next list.
    boolean placed = table.has(Meaning.WALL) && table.has(Meaning.COURSE);
    SavedList list =
        new SavedList(
            saved.map(SavedList::name).orElse("list " + (lists.size() + 1)),
            header.texts(),
            taken,
            wishes.mark().or(() -> pattern.filter(p -> !placed).map(MarkPattern::text)),
            wishes.decimal(),
            wishes.bundleSize().isPresent() ? wishes.bundleSize() : OptionalInt.empty(),
            wishes.constants(),
            wishes.calls());
    int at = saved.map(lists::indexOf).orElse(-1);
    if (at < 0) {
      lists.add(list);
    } else {
      lists.set(at, list);
    }
    return lists;
  }
}
