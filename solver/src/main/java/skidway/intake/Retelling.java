package skidway.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.job.CsvText;
import skidway.job.JobTable;
import skidway.job.Problem;

/**
 * Tells what the job's reader finds wrong with rows that come from the list at their place in the
 * list. What it finds elsewhere is told apart: the list is not to blame for it.
 */
final class Retelling {
  private static final Pattern LINE = Pattern.compile("in line (\\d+)");

  private final ListTable table;
  private final Map<String, JobTable> tables;
  private final Map<String, Map<Integer, ListRow>> sources;
  private final List<Problem> elsewhere = new ArrayList<>();

  /**
   * @param tables the job's tables by file name, as they would be
   * @param sources for each of them the rows of the list by line
   */
  Retelling(
      ListTable table, Map<String, JobTable> tables, Map<String, Map<Integer, ListRow>> sources) {
    this.table = table;
    this.tables = tables;
    this.sources = sources;
  }

  /** Adds the problems of the list to others of it. */
  void tell(List<Problem> problems, Trouble trouble) {
    Set<String> told = new HashSet<>();
    for (Problem problem : problems) {
      ListRow row = sources.getOrDefault(problem.file(), Map.of()).get(problem.line());
      if (row == null) {
        elsewhere.add(problem);
        continue;
      }
      String column = column(problem);
      Meaning meaning = meaning(column);
      String where =
          table.columns().containsKey(meaning)
              ? table.place(row, meaning)
              : column + " of row " + row.number();
      boolean again = !told.add(where) && problem.file().equals("bundles.csv");
      if (again) {
        continue; // a bundle's size comes from its timbers, and theirs is told
      }
      trouble.add(
          table.cell(row, meaning),
          problem.found() + " (" + where + ")",
          inList(problem, problem.allowed()),
          problem.wayOut());
    }
  }

  /** What is wrong with the job and not with the list. */
  List<Problem> elsewhere() {
    return elsewhere;
  }

  private String column(Problem problem) {
    JobTable of = tables.get(problem.file());
    int index = problem.line() - 2;
    if (of == null || index < 0 || index >= of.rows().size()) {
      return "";
    }
    List<String> cells = of.rows().get(index);
    int at = 1;
    for (int i = 0; i < cells.size(); i++) {
      at += CsvText.row(List.of(cells.get(i)), of.separator()).length() + 1;
      if (problem.column() < at) {
        return of.columns().get(i);
      }
    }
    return "";
  }

  private Meaning meaning(String column) {
    Meaning meaning = Meaning.of(column).orElse(Meaning.MARK);
    boolean side = meaning == Meaning.WIDTH || meaning == Meaning.HEIGHT;
    return side && table.has(Meaning.SECTION)
        ? Meaning.SECTION
        : column.equals("mass") ? Meaning.WEIGHT : meaning;
  }

  /** Lines of the job's table as rows of the list, where they come from it. */
  private String inList(Problem problem, String clause) {
    Matcher m = LINE.matcher(clause);
    return m.replaceAll(
        r -> {
          ListRow row =
              sources
                  .getOrDefault(problem.file(), new LinkedHashMap<>())
                  .get(Integer.parseInt(r.group(1)));
          return row == null
              ? "in line " + r.group(1) + " of " + problem.file()
              : "in row " + row.number();
        });
  }
}
