package skidway.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Checks that the demo houses are cut as a maker would cut them. */
class DemoHouseTest {

  static List<DemoJob> jobs() {
    return DemoJob.all();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyTimberLiesInsideItsWallAndClearOfOpenings(DemoJob job) {
    for (Timber t : PieceList.of(job.house())) {
      HouseWall wall = wall(job, t.wall());
      assertThat(t.length()).as(t.mark()).isBetween(1, job.house().longest());
      assertThat(t.from()).as(t.mark()).isNotNegative();
      assertThat(t.to()).as(t.mark()).isLessThanOrEqualTo(wall.length());
      assertThat(wall.openings())
          .as(t.mark())
          .noneMatch(
              o -> beside(o, t.bottom(), t.height()) && o.from() < t.to() && o.to() > t.from());
    }
  }

  /** Timbers neither leave a gap nor overlap: their lengths are the wall less its openings. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyCourseIsComplete(DemoJob job) {
    for (HouseWall wall : job.house().walls()) {
      courses(job, wall)
          .forEach(
              (course, row) -> {
                int open =
                    wall.openings().stream()
                        .filter(o -> beside(o, row.get(0).bottom(), row.get(0).height()))
                        .mapToInt(HouseWall.Opening::width)
                        .sum();
                assertThat(row.stream().mapToInt(Timber::length).sum())
                    .as("%s, course %d", wall.id(), course)
                    .isEqualTo(wall.length() - open);
                assertThat(row).isSortedAccordingTo((a, b) -> Integer.compare(a.to(), b.from()));
              });
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void allWallsEndAtOneHeight(DemoJob job) {
    int top = job.house().courses() * job.house().course();
    for (HouseWall wall : job.house().walls()) {
      int bottom = 0;
      for (List<Timber> row : courses(job, wall).values()) {
        assertThat(row).extracting(Timber::bottom).containsOnly(bottom);
        bottom += row.get(0).height();
      }
      assertThat(bottom).as(wall.id()).isEqualTo(top);
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noJointStandsOverAnother(DemoJob job) {
    for (HouseWall wall : job.house().walls()) {
      List<Integer> below = List.of();
      for (List<Timber> row : courses(job, wall).values()) {
        List<Integer> joints = joints(row);
        for (int joint : joints) {
          assertThat(below)
              .as("%s, course %d", wall.id(), row.get(0).course())
              .noneMatch(b -> Math.abs(b - joint) < job.house().shortest());
        }
        below = joints;
      }
    }
  }

  private static List<Integer> joints(List<Timber> row) {
    List<Integer> starts = row.stream().map(Timber::from).toList();
    return row.stream().map(Timber::to).filter(starts::contains).toList();
  }

  private static boolean beside(HouseWall.Opening o, int bottom, int height) {
    return o.sill() < bottom + height && o.head() > bottom;
  }

  private static Map<Integer, List<Timber>> courses(DemoJob job, HouseWall wall) {
    return PieceList.of(job.house()).stream()
        .filter(t -> t.wall().equals(wall.id()))
        .collect(Collectors.groupingBy(Timber::course, TreeMap::new, Collectors.toList()));
  }

  private static HouseWall wall(DemoJob job, String id) {
    return job.house().walls().stream().filter(w -> w.id().equals(id)).findFirst().orElseThrow();
  }
}
