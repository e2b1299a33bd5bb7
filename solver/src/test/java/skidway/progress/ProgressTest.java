package skidway.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static skidway.progress.Diary.PLAN;
import static skidway.progress.Diary.START;
import static skidway.progress.Diary.TASK;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import skidway.testkit.SiteBuilder;

/** What events come to. */
class ProgressTest {
  private static Diary unloaded() {
    return new Diary().arrived("L1").placed("B1", "Y1", 1).placed("B2", "Y1", 2);
  }

  @Test
  void beforeAnythingHappenedAllIsOnTheTrucks() {
    Progress progress = new Diary().progress();
    assertThat(progress.onTruck()).containsExactly("B1", "B2", "B3", "B4");
    assertThat(progress.lying()).isEmpty();
    assertThat(progress.arrived()).isEmpty();
    assertThat(progress.expected("L2")).isEqualTo(START.plusDays(1));
    assertThat(progress.spots()).containsOnlyKeys("Y1", "YR1", "Y2");
    assertThatThrownBy(() -> progress.expected("L9")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void bundlesLieBottomToTopWhereTheyWerePut() {
    Progress progress = unloaded().placed("B3", "YR1", 0).progress();
    assertThat(progress.lying()).isEqualTo(Map.of("Y1", List.of("B1", "B2"), "YR1", List.of("B3")));
    assertThat(progress.spotOf("B2")).contains("Y1");
    assertThat(progress.onTruck()).containsExactly("B4");
    assertThat(progress.arrived()).isEqualTo(Map.of("L1", START));
    assertThat(progress.contradictions()).isEmpty();
  }

  @Test
  void aMovedBundleLiesOnTopOfItsNewSpot() {
    Progress progress = unloaded().moved("B2", "Y2", 1).moved("B1", "Y2", 2).progress();
    assertThat(progress.lying()).isEqualTo(Map.of("Y2", List.of("B2", "B1")));
  }

  @Test
  void whatIsMissingComesOffItsStackAndGoesBackWhenItIsFoundAndPlaced() {
    Diary diary = unloaded().missing("B1");
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B2")));
    assertThat(diary.progress().onTruck()).doesNotContain("B1");
    assertThat(diary.progress().withheld()).containsExactly("W1-C1-1", "W1-C1-2");
    assertThat(diary.found("B1").progress().onTruck()).contains("B1");
    assertThat(diary.progress().withheld()).isEmpty();
    assertThat(diary.placed("B1", "Y1", 2).progress().lying())
        .isEqualTo(Map.of("Y1", List.of("B2", "B1")));
  }

  @Test
  void damagedTimberLiesThereButIsNotToHand() {
    Diary diary = unloaded().damaged("B2").damaged("W1-C1-2");
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B1", "B2")));
    assertThat(diary.progress().damaged()).containsExactly("B2", "W1-C1-2");
    assertThat(diary.progress().withheld()).containsExactly("W1-C1-2", "W1-C2-1");
    assertThat(diary.found("W1-C1-2").progress().damaged()).containsExactly("B2");
  }

  @Test
  void aPulledPieceThatCameToGriefIsNotInTheWall() {
    Diary diary = unloaded().pulled("W1-C2-1").damaged("W1-C2-1");
    assertThat(diary.progress().pulled()).isEmpty();
    assertThat(diary.progress().withheld()).containsExactly("W1-C2-1");
    assertThat(diary.found("W1-C2-1").progress().onTruck()).contains("B2");
  }

  @Test
  void aBundleIsGoneWithItsLastPieceAndWhatLayOnItComesDown() {
    Diary diary = unloaded().pulled("W1-C1-1");
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B1", "B2")));
    diary.pulled("W1-C1-2");
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B2")));
    assertThat(diary.progress().usedUp()).containsExactly("B1");
    assertThat(diary.progress().onTruck()).doesNotContain("B1");
    assertThat(diary.progress().pulled()).containsExactly("W1-C1-1", "W1-C1-2");
  }

  @Test
  void aBundleIsGoneTooWhenItsLastPieceIsMissing() {
    Diary diary = unloaded().pulled("W1-C1-1").missing("W1-C1-2");
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B2")));
    assertThat(unloaded().missing("W1-C1-1").missing("W1-C1-2").progress().lying())
        .as("nobody took anything out of it yet")
        .isEqualTo(Map.of("Y1", List.of("B1", "B2")));
  }

  @Test
  void theNewestWordSaysWhenALoadIsExpected() {
    Diary diary = new Diary().late("L2", START.plusDays(3)).late("L2", START.plusDays(2));
    assertThat(diary.progress().expected("L2")).isEqualTo(START.plusDays(2));
    assertThat(diary.undo(2).progress().expected("L2")).isEqualTo(START.plusDays(3));
    assertThat(diary.undo(1).progress().expected("L2")).isEqualTo(START.plusDays(1));
  }

  @Test
  void anUndoTakesBackAndAnUndoneUndoRestores() {
    Diary diary = unloaded().undo(3);
    assertThat(diary.progress().lying()).isEqualTo(Map.of("Y1", List.of("B1")));
    assertThat(diary.progress().undone()).isEqualTo(Map.of(3, 4));
    assertThat(diary.undo(4).progress().lying()).isEqualTo(Map.of("Y1", List.of("B1", "B2")));
    assertThat(diary.undo(5).progress().lying()).isEqualTo(Map.of("Y1", List.of("B1")));
    assertThat(diary.progress().events()).hasSize(6);
  }

  @Test
  void anEventThatDoesNotFitTheFilesAnyMoreIsListedAndDoesNotCount() {
    Progress progress = unloaded().placed("B9", "Y2", 1).placed("B3", "YR1", 0).progress();
    assertThat(progress.contradictions())
        .singleElement()
        .matches(c -> c.seq() == 4 && c.text().contains("There is no bundle \"B9\""));
    assertThat(progress.lying()).containsOnlyKeys("Y1", "YR1");
  }

  @Test
  void somethingMayLieOnASpotOfAnEarlierPlan() {
    List<Event> events = new Diary().arrived("L1").placed("B1", "Y9", 1).events();
    var old = List.of(SiteBuilder.spot("Y9", "yard", 25, 9, 5, 1));
    Progress progress = Progress.of(TASK, PLAN, old, events);
    assertThat(progress.lying()).isEqualTo(Map.of("Y9", List.of("B1")));
    assertThat(progress.with(new Event.Undo(3, START, "Ann", 2)).contradictions()).isEmpty();
    assertThat(Progress.of(TASK, PLAN, events).contradictions()).hasSize(1);
    var moved = List.of(SiteBuilder.spot("Y1", "yard", 25, 9, 5, 1));
    assertThat(Progress.of(TASK, PLAN, moved, List.of()).spots().get("Y1"))
        .isEqualTo(PLAN.stacks().get(0).spot());
  }

  @Test
  void eventsAreNumberedWithoutAGap() {
    List<Event> events = unloaded().events();
    assertThatThrownBy(() -> Progress.of(TASK, PLAN, events.subList(1, 3)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void severalEventsAreCheckedOneAfterTheOther() {
    Progress none = new Diary().progress();
    assertThat(none.check(unloaded().events())).isEmpty();
    assertThat(none.check(new Diary().arrived("L1").placed("B2", "Y1", 2).events()))
        .singleElement()
        .matches(c -> c.seq() == 2);
  }
}
