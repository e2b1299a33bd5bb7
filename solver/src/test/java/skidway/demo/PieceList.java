package skidway.demo;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Starter;

/** Cuts the walls of a house into timbers, course by course from the foot of each wall. */
final class PieceList {
  private PieceList() {}

  static List<Timber> of(House house) {
    List<Timber> timbers = new ArrayList<>();
    for (HouseWall wall : house.walls()) {
      timbers.addAll(cut(house, wall));
    }
    return timbers;
  }

  private static List<Timber> cut(House house, HouseWall wall) {
    boolean half = wall.starter() == Starter.HALF;
    int courses = house.courses() + (half ? 1 : 0);
    List<Timber> timbers = new ArrayList<>();
    List<Integer> jointsBelow = List.of();
    int bottom = 0;
    for (int course = 1; course <= courses; course++) {
      boolean halfHigh = half && (course == 1 || course == courses);
      int height = halfHigh ? house.course() / 2 : house.course();
      List<Integer> joints = new ArrayList<>();
      int position = 0;
      for (HouseWall.Span span : wall.solid(bottom, bottom + height)) {
        int from = span.from();
        for (int to : Joints.ends(house, wall, span, course, bottom, height, jointsBelow)) {
          timbers.add(new Timber(wall.id(), course, ++position, from, to - from, bottom, height));
          if (to != span.to()) {
            joints.add(to);
          }
          from = to;
        }
      }
      jointsBelow = joints;
      bottom += height;
    }
    return timbers;
  }
}
