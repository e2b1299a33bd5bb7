package skidway.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.progress.Diary.START;
import static skidway.progress.Diary.TASK;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;

/** The words people use for many pieces or bundles at once, and those said back to them. */
class WordsTest {
  @Test
  void aMarkMeansThePullListDownToIt() {
    assertThat(Through.read(TASK, " W2-C1-1 ").orElseThrow())
        .isEqualTo(new Through("W2-C1-1", List.of("W1-C1-1", "W1-C1-2", "W2-C1-1")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"W1-C02", "W1-2", "W1-c2", "W1 course 2", "W1 2"})
  void aCourseMeansTheWallUpToIt(String text) {
    assertThat(Through.read(TASK, text).orElseThrow())
        .isEqualTo(new Through("W1-C02", List.of("W1-C1-1", "W1-C1-2", "W1-C2-1")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "W1", "W1-C3", "W1-C0", "W9-C1", "W1-C2-7", "W1-C99999999999"})
  void anythingElseIsNotGuessed(String text) {
    assertThat(Through.read(TASK, text)).isEmpty();
  }

  @Test
  void aLoadUnloadedAsPlannedLiesByItsStepsBottomFirst() {
    assertThat(AsPlanned.of(Diary.PLAN, "L1"))
        .containsExactly(
            new AsPlanned.Put("B1", "Y1", 1),
            new AsPlanned.Put("B2", "Y1", 2),
            new AsPlanned.Put("B3", "YR1", 0));
    assertThat(AsPlanned.of(Diary.PLAN, "L9")).isEmpty();
  }

  @Test
  void whatWaitsForALaterTruckIsLiftedOnWithThatOne() {
    var one = aBundle("B1").load("L1", 1).build();
    var two = aBundle("B2").load("L1", 2).build();
    var three = aBundle("B3").load("L2", 1).build();
    Task task = Tasks.task(aSite().build(), one, two, three);
    var stack = spot("Y1", "yard", 8, 9, 5, 1);
    var waiting = spot("YX1", "yard", 20, 9, 5, 1);
    Plan plan =
        PlanBuilder.aPlan()
            .stack(stack, "B2", "B3", "B1")
            .waiting(waiting)
            .steps(
                PlanBuilder.setDown(task, 1, one, waiting),
                PlanBuilder.place(task, 2, two, stack, 1),
                PlanBuilder.place(task, 3, three, stack, 2),
                PlanBuilder.liftOn(task, 4, one, waiting, stack, 3))
            .build(task);
    assertThat(AsPlanned.of(plan, "L1"))
        .containsExactly(new AsPlanned.Put("B1", "YX1", 1), new AsPlanned.Put("B2", "Y1", 1));
    assertThat(AsPlanned.of(plan, "L2"))
        .containsExactly(new AsPlanned.Put("B3", "Y1", 2), new AsPlanned.Put("B1", "Y1", 3));
  }

  @Test
  void theMovesOfAPlanAreLiftsOfWhatLayThere() {
    var one = aBundle("B1").load("L1", 1).build();
    var two = aBundle("B2").load("L1", 2).build();
    var three = aBundle("B3").load("L2", 1).build();
    Task task = Tasks.task(aSite().build(), one, two, three);
    var from = spot("Y1", "yard", 8, 9, 5, 1);
    var to = spot("Y2", "yard", 14, 9, 5, 1);
    var waiting = spot("YX1", "yard", 20, 9, 5, 1);
    Plan plan =
        PlanBuilder.aPlan()
            .stack(to, "B1", "B2", "B3")
            .waiting(waiting)
            .steps(
                PlanBuilder.setAside(task, 1, two, from, waiting),
                PlanBuilder.move(task, 2, one, from, to, 1),
                PlanBuilder.liftOn(task, 3, two, waiting, to, 2),
                PlanBuilder.setDown(task, 4, three, waiting),
                PlanBuilder.liftOn(task, 5, three, waiting, to, 3))
            .build(task);
    assertThat(AsPlanned.moves(plan))
        .containsExactly(
            new AsPlanned.Put("B2", "YX1", 1),
            new AsPlanned.Put("B1", "Y2", 1),
            new AsPlanned.Put("B2", "Y2", 2));
  }

  @Test
  void eventsAreSaidInTheWordsInWhichTheyAreRecorded() {
    List<Event> events =
        new Diary()
            .arrived("L1")
            .placed("B1", "Y1", 1)
            .placed("B3", "YR1", 0)
            .moved("B1", "Y2", 1)
            .missing("B2")
            .damaged("W1-C1-1")
            .found("B2")
            .late("L2", START)
            .pulled("W1-C1-1", "W1-C1-2")
            .undo(9)
            .add((n, t, b) -> new Event.Pulled(n, t, b, "W1-C01", List.of("a", "b")))
            .events();
    assertThat(events.stream().map(EventWords::of))
        .containsExactly(
            "arrived L1",
            "placed B1 at Y1, tier 1",
            "placed B3 at YR1",
            "moved B1 to Y2, tier 1",
            "missing B2",
            "damaged W1-C1-1",
            "found B2",
            "late L2 until 2031-05-05 08:00",
            "pulled W1-C1-1 W1-C1-2",
            "undo 9",
            "pulled through W1-C01 (2 pieces)");
  }
}
