package skidway.progress;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Task;
import skidway.timber.Piece;

/**
 * What "pulled through" means: a piece's mark is the pull list down to and with that piece; a
 * course, as in {@code W3-C04}, is all pieces of that wall up to and with that course.
 *
 * @param words the same, spelled in one way
 * @param marks in the order of pulling
 */
public record Through(String words, List<String> marks) {
  private static final Pattern COURSE =
      Pattern.compile(
          "(?<wall>.+?)[-\\s]+(?:c|course\\s*)?0*(?<course>\\d{1,4})", Pattern.CASE_INSENSITIVE);

  public Through {
    marks = List.copyOf(marks);
  }

  /**
   * Reads a mark or a course; empty when it is neither. A mark goes before a course of its name.
   */
  public static Optional<Through> read(Task task, String text) {
    List<Piece> order =
        PullOrder.of(task.site(), task.delivery().pieces()).placements().stream()
            .map(Placement::piece)
            .toList();
    List<String> marks = order.stream().map(Piece::mark).toList();
    int at = marks.indexOf(text.strip());
    return at >= 0
        ? Optional.of(new Through(text.strip(), marks.subList(0, at + 1)))
        : course(order, text.strip());
  }

  private static Optional<Through> course(List<Piece> order, String text) {
    Matcher m = COURSE.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    String wall = m.group("wall");
    int course = Integer.parseInt(m.group("course"));
    boolean known = order.stream().anyMatch(p -> isOf(p, wall) && p.course() == course);
    return known ? Optional.of(ofWall(order, wall, course)) : Optional.empty();
  }

  private static Through ofWall(List<Piece> order, String wall, int course) {
    return new Through(
        String.format(Locale.ROOT, "%s-C%02d", wall, course),
        order.stream()
            .filter(p -> isOf(p, wall) && p.course() <= course)
            .map(Piece::mark)
            .toList());
  }

  private static boolean isOf(Piece piece, String wall) {
    return piece.wallId().equals(wall);
  }
}
