package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.OpenSide;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;

class TagTest {
  private static final List<Tag> TAGS = Tag.of(SampleHouse.task(), SampleHouse.plan());

  private static Tag tag(String bundleId) {
    return Tag.find(TAGS, bundleId).orElseThrow();
  }

  @Test
  void everyBundleHasOneInOffOrder() {
    assertThat(TAGS.stream().map(Tag::bundleId))
        .containsExactlyElementsOf(
            SampleHouse.task().delivery().bundles().stream().map(Bundle::id).toList());
  }

  @Test
  void theTierCountsFromTheBottom() {
    assertThat(tag("B03").place().words()).isEqualTo("D1, tier 1 of 2");
    assertThat(tag("B17").place().words()).isEqualTo("D1, tier 2 of 2");
    assertThat(tag("B31").place()).isEqualTo(new TagPlace.NoSpot());
  }

  @Test
  void cautionsStandOnlyWhereTheyApply() {
    assertThat(tag("B13").cautions()).anyMatch(c -> c.startsWith("Set down first at S1;"));
    assertThat(TAGS.stream().filter(t -> t.cautions().toString().contains("Set down"))).hasSize(1);
    assertThat(tag("B03").cautions()).noneMatch(c -> c.contains("wedges"));
    assertThat(TAGS.stream().filter(t -> t.cautions().toString().contains("Top above 3'-11\"")))
        .isNotEmpty()
        .allMatch(t -> ((TagPlace.Stacked) t.place()).tier() >= 3);
  }

  /** Who looks at the stack from the open side has the left end on the left hand. */
  @ParameterizedTest
  @CsvSource({
    "0, RIGHT, 90, west, east",
    "0, LEFT, 90, east, west",
    "180, RIGHT, 90, east, west",
    "90, RIGHT, 90, south, north",
    "45, RIGHT, 90, south-west, north-east",
    "0, RIGHT, 0, south, north",
  })
  void endsPointWhereTheSpotsHeadingSays(
      double heading, OpenSide side, double northDeg, String left, String right) {
    Spot spot = SampleHouse.spot("Z1", "yard south", 60, 24, heading, 16, 4, side);
    Task task = SampleHouse.task();
    Task turned =
        new Task(
            task.jobName(),
            north(task, northDeg),
            task.delivery(),
            task.settings(),
            task.figures());
    Plan plan = PlanBuilder.aPlan().stack(spot, "B01").build(turned);
    TagPlace place = Tag.find(Tag.of(turned, plan), "B01").orElseThrow().place();
    assertThat(place).isEqualTo(new TagPlace.Stacked("Z1", 1, 1, List.of(left, right)));
  }

  private static Site north(Task task, double northDeg) {
    Site s = task.site();
    return new Site(
        s.name(),
        s.boundary(),
        northDeg,
        s.courseM(),
        s.walls(),
        s.decks(),
        s.yards(),
        s.lanes(),
        s.keepClears(),
        s.truckStands(),
        s.machine(),
        s.spots());
  }

  @Test
  void whatIsInsideIsToldByWall() {
    Task house = SampleHouse.task();
    String wall = house.site().walls().get(0).id();
    String other = house.site().walls().get(1).id();
    Bundle bundle =
        BundleBuilder.aBundle("B1")
            .piece(other, 2, 1, 2)
            .piece(wall, 4, 1, 2)
            .piece(wall, 3, 1, 2)
            .piece(wall, 5, 1, 2)
            .piece(wall, 8, 1, 2)
            .build();
    Task task = Tasks.task(house.site(), bundle);
    Tag tag = Tag.of(task, PlanBuilder.aPlan().build(task)).get(0);
    assertThat(tag.inside()).containsExactly(wall + " courses 3-5, 8", other + " course 2");
    assertThat(tag.need()).isEqualTo("Needed from course 2 of " + other);
    assertThat(tag.pieces()).isEqualTo(5);
  }

  @Test
  void aHeavyLiftSaysHowMuchOfTheChartItTakes() {
    Task house = SampleHouse.task();
    Spot spot = SampleHouse.spot("Z1", "yard south", 42, 30, 0, 16, 4, OpenSide.LEFT);
    Bundle fine = BundleBuilder.aBundle("fine").load("L1", 1).weighing(2160).build();
    Bundle heavy = BundleBuilder.aBundle("heavy").load("L1", 2).weighing(2161).build();
    Bundle over = BundleBuilder.aBundle("over").load("L1", 3).weighing(2701).build();
    Task task = Tasks.task(house.site(), fine, heavy, over);
    Plan plan = PlanBuilder.aPlan().stack(spot, "fine", "heavy", "over").build(task);
    List<Tag> tags = Tag.of(task, plan);
    assertThat(tags.get(0).cautions()).isEmpty();
    assertThat(tags.get(1).cautions()).containsExactly("Heavy: takes 81 % of the machine's chart.");
    assertThat(tags.get(2).cautions()).anyMatch(c -> c.contains("Do not lift"));
  }
}
