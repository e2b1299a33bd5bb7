package skidway.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Chooses where the timbers of one stretch of a course end: as few timbers as possible, no joint
 * within the shortest timber's length of one in the course below, none over or under an opening.
 * Courses take turns in where they begin to look, which staggers the joints up the wall.
 */
final class Joints {
  private final House house;
  private final HouseWall.Span span;
  private final int course;
  private final List<HouseWall.Span> forbidden = new ArrayList<>();

  private Joints(House house, HouseWall.Span span, int course) {
    this.house = house;
    this.span = span;
    this.course = course;
  }

  /** The right ends of the timbers, from the left; the last is the stretch's own end. */
  static List<Integer> ends(
      House house,
      HouseWall wall,
      HouseWall.Span span,
      int course,
      int bottom,
      int height,
      List<Integer> jointsBelow) {
    Joints search = new Joints(house, span, course);
    for (int joint : jointsBelow) {
      search.forbid(joint, joint, house.shortest());
    }
    for (HouseWall.Opening opening : wall.openings()) {
      boolean lintel = opening.head() <= bottom && opening.head() > bottom - height;
      boolean underSill = opening.sill() >= bottom + height && opening.sill() < bottom + 2 * height;
      if (lintel || underSill) {
        search.forbid(opening.from(), opening.to(), house.shortest() / 2);
      }
    }
    int fewest = (span.to() - span.from() + house.longest() - 1) / house.longest();
    return IntStream.rangeClosed(fewest, fewest + 2)
        .mapToObj(count -> search.split(span.from(), count))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "No joints for wall " + wall.id() + ", course " + course + ", " + span));
  }

  private void forbid(int from, int to, int margin) {
    forbidden.add(new HouseWall.Span(from - margin, to + margin));
  }

  private Optional<List<Integer>> split(int from, int count) {
    int left = span.to() - from;
    if (count == 1) {
      return left <= house.longest() ? Optional.of(List.of(span.to())) : Optional.empty();
    }
    return lengths()
        .filter(length -> length <= left - house.shortest() && allowed(from + length))
        .mapToObj(length -> withRest(from + length, count - 1))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<List<Integer>> withRest(int end, int count) {
    return split(end, count)
        .map(
            rest -> {
              List<Integer> ends = new ArrayList<>(List.of(end));
              ends.addAll(rest);
              return ends;
            });
  }

  /** All lengths on the grid, longest first, begun a third further on with each course. */
  private IntStream lengths() {
    int many = (house.longest() - house.shortest()) / house.step() + 1;
    int turn = course % 3 * many / 3;
    return IntStream.range(0, many).map(i -> house.longest() - (i + turn) % many * house.step());
  }

  private boolean allowed(int joint) {
    return forbidden.stream().noneMatch(f -> joint > f.from() && joint < f.to());
  }
}
