package skidway.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Decides whether marks are taken apart, and how: as a person says; else, when a list has no column
 * for wall or course, by the usual shape that fits best; for the position alone only if every mark
 * fits and says the same as the list's columns.
 */
final class MarkChoice {
  private MarkChoice() {}

  static Optional<MarkPattern> of(Reading reading, List<String> notes, Trouble trouble) {
    ListTable table = reading.table();
    Optional<String> told = reading.wishes().mark();
    if (told.isPresent()) {
      return Optional.of(MarkPattern.of(told.get(), reading.grid().fileName()));
    }
    boolean placed = table.has(Meaning.WALL) && table.has(Meaning.COURSE);
    if (!table.has(Meaning.MARK) || (placed && table.has(Meaning.POSITION))) {
      return Optional.empty();
    }
    List<String> marks =
        reading.rows().stream()
            .map(r -> table.text(r, Meaning.MARK))
            .filter(m -> !m.isEmpty())
            .toList();
    Optional<MarkShapes.Proposal> proposal = MarkShapes.of(marks, walls(reading));
    if (placed) {
      return proposal.map(MarkShapes.Proposal::pattern).filter(p -> agrees(p, reading));
    }
    if (proposal.isEmpty()) {
      trouble.add(
          "marks such as "
              + Trouble.quote(marks.isEmpty() ? "" : marks.get(0))
              + ", and no column for wall and course",
          "the place of every timber is in columns, or in its mark in a shape that most marks have",
          "say how marks look, such as --mark \"{wall}-{course}-{position}\", or name the columns");
      return Optional.empty();
    }
    notes.add("Marks are taken apart by " + proposal.get().pattern().text() + ".");
    if (!proposal.get().others().isEmpty()) {
      notes.add(
          "As many marks fit "
              + String.join(" or ", proposal.get().others())
              + "; if that is meant, say it with --mark.");
    }
    return Optional.of(proposal.get().pattern());
  }

  private static Set<String> walls(Reading reading) {
    Set<String> walls = new HashSet<>(reading.job().walls());
    walls.addAll(reading.table().calls().keySet());
    return walls;
  }

  private static boolean agrees(MarkPattern pattern, Reading reading) {
    ListTable table = reading.table();
    return pattern.has(Meaning.POSITION)
        && reading.rows().stream()
            .allMatch(
                row ->
                    pattern
                        .apart(table.text(row, Meaning.MARK))
                        .filter(
                            parts ->
                                table
                                        .text(row, Meaning.WALL)
                                        .equals(parts.values().get(Meaning.WALL))
                                    && table
                                        .text(row, Meaning.COURSE)
                                        .equals(parts.values().get(Meaning.COURSE)))
                        .isPresent());
  }
}
