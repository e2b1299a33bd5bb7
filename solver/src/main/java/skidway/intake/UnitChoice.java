package skidway.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.units.UnitSystem;

/**
 * Gives every column of quantities the unit of its bare numbers: what a person says, what the
 * header says, a unit said for all, and only then what the numbers allow. Says how it came to it.
 */
final class UnitChoice {
  private static final Set<Meaning.Kind> WITH_UNIT = Set.of(Meaning.Kind.LENGTH, Meaning.Kind.MASS);

  private final ListTable table;
  private final List<ListRow> rows;
  private final Map<String, ListUnit> told;
  private final Optional<UnitSystem> job;
  private final List<String> notes;
  private final Trouble trouble;

  UnitChoice(
      ListTable table,
      List<ListRow> rows,
      Map<String, ListUnit> told,
      Optional<UnitSystem> job,
      List<String> notes,
      Trouble trouble) {
    this.table = table;
    this.rows = rows;
    this.told = told;
    this.job = job;
    this.notes = notes;
    this.trouble = trouble;
  }

  /** The columns with their units. */
  List<Column> of(List<Column> columns) {
    return columns.stream().map(this::of).toList();
  }

  private Column of(Column column) {
    Optional<Meaning> meaning = column.meaning();
    if (meaning.isEmpty() || !WITH_UNIT.contains(meaning.get().kind())) {
      return column.in(Optional.empty());
    }
    ListUnit own = told.get(meaning.get().word());
    if (own != null) {
      return column.in(Optional.of(own));
    }
    boolean mass = meaning.get().kind() == Meaning.Kind.MASS;
    if (column.unit().filter(u -> u.isMass() == mass).isPresent()) {
      return column;
    }
    ListUnit all = told.get("");
    if (all != null && all.isMass() == mass) {
      return column.in(Optional.of(all));
    }
    return guessed(column, meaning.get(), mass);
  }

  private Column guessed(Column column, Meaning meaning, boolean mass) {
    List<Double> numbers = bareNumbers(meaning);
    if (numbers.isEmpty()) {
      return column.in(Optional.empty());
    }
    Optional<ListUnit> unit =
        mass
            ? job.map(j -> j == UnitSystem.METRIC ? ListUnit.KILOGRAM : ListUnit.POUND)
            : job.flatMap(j -> UnitGuess.of(meaning, numbers, j));
    String name = "column " + column.letter() + " (" + meaning.word() + ")";
    if (unit.isEmpty()) {
      trouble.add(
          "bare numbers such as " + numbers.get(0) + " in " + name,
          "their unit is nowhere said"
              + (job.isEmpty() ? ", and job.json says no units" : ", and they do not show it"),
          "add --unit " + meaning.word() + "=mm, or cm, m, in, ft or ft-in");
      return column;
    }
    notes.add(
        "Bare numbers of "
            + name
            + " count as "
            + unit.get().word()
            + (mass || unit.get() == ListUnit.METRE || unit.get() == ListUnit.FOOT
                ? ", the job's unit."
                : ": nothing else makes sense of them."));
    return column.in(unit);
  }

  /** The numbers without a unit, of a section both of its sides. */
  private List<Double> bareNumbers(Meaning meaning) {
    Set<String> different = new LinkedHashSet<>(); // of thousands of timbers a few dozen
    rows.forEach(row -> different.add(table.plain(row, meaning).orElse("")));
    List<Double> numbers = new ArrayList<>();
    for (String plain : different) {
      for (String part :
          meaning == Meaning.SECTION ? plain.split("[xX\u00d7*/\u0445]") : new String[] {plain}) {
        if (LengthText.isBare(part)) {
          numbers.add(Double.parseDouble(part.strip()));
        }
      }
    }
    return numbers;
  }
}
