package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import skidway.erection.Placement;
import skidway.plan.Task;
import skidway.site.Wall;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/** Says what is inside a bundle and from when on it is needed. */
final class BundleContents {
  private final List<Wall> walls;
  private final Map<String, Integer> pullIndex = new HashMap<>();

  private BundleContents(List<Wall> walls) {
    this.walls = walls;
  }

  static BundleContents of(Task task) {
    BundleContents contents = new BundleContents(task.site().walls());
    for (Placement p : task.pullOrder().placements()) {
      contents.pullIndex.put(p.piece().mark(), contents.pullIndex.size());
    }
    return contents;
  }

  /** The piece that is pulled first decides; an empty text when no wall needs any. */
  String need(Bundle bundle) {
    Optional<Piece> first =
        bundle.pieces().stream()
            .filter(piece -> pullIndex.containsKey(piece.mark()))
            .min(Comparator.comparing(piece -> pullIndex.get(piece.mark())));
    return first
        .map(piece -> "Needed from course " + piece.course() + " of " + piece.wallId())
        .orElse("");
  }

  /** Walls as the site lists them, each with its courses: {@code W1 courses 1-3, 5}. */
  List<String> walls(Bundle bundle) {
    List<String> all = new ArrayList<>();
    for (Wall wall : walls) {
      TreeSet<Integer> courses = new TreeSet<>();
      bundle.pieces().stream()
          .filter(piece -> piece.wallId().equals(wall.id()))
          .forEach(piece -> courses.add(piece.course()));
      if (!courses.isEmpty()) {
        all.add(wall.id() + (courses.size() == 1 ? " course " : " courses ") + ranges(courses));
      }
    }
    return all;
  }

  private static String ranges(Set<Integer> courses) {
    StringBuilder out = new StringBuilder();
    for (int course : courses) {
      boolean begins = !courses.contains(course - 1);
      boolean ends = !courses.contains(course + 1);
      if (begins) {
        out.append(out.isEmpty() ? "" : ", ").append(course);
      } else if (ends) {
        out.append(courses.contains(course - 2) ? "-" : ", ").append(course);
      }
    }
    return out.toString();
  }
}
