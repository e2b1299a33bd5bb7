package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.site.Site;

/** Questions in turn lead to a site; an interview can stop anywhere and go on. */
final class InterviewTest {
  /** A house of 28 ft by 24 ft with one yard and one truck stand. */
  static final List<String> ANSWERS =
      List.of(
          "us",
          "Two Herons lot 7",
          "up",
          "6\"",
          "6\"",
          "east 28'",
          "north 24'",
          "west 28'",
          "south 24'",
          "done",
          "W1 10' from left wide 3' head 6'8\"",
          "none",
          "none",
          "2' floor 50 psf",
          "W1 10' from left run 3' wide 3'",
          "none",
          "12' off W1 full length wide 10' soil clay",
          "none",
          "none",
          "30' off W1 middle long 30' wide 9'",
          "none",
          "telehandler",
          "26' off W1 middle",
          "none",
          "10' 7000 lb, 20' 4500 lb, 30' 2400 lb",
          "30'",
          "none");

  @TempDir Path folder;

  @Test
  void lessThanThirtyAnswersMakeASite() {
    assertThat(ANSWERS).hasSizeLessThan(30);
    Interview interview = Interview.of(List.of()).orElseThrow();
    for (String answer : ANSWERS) {
      assertThat(interview.answer(answer)).as(answer).isEmpty();
    }
    assertThat(interview.next()).isEmpty();
    Site site = Lines.read(folder, interview.text()).task().site();
    assertThat(site.walls()).hasSize(4);
    assertThat(site.yards()).hasSize(1);
    assertThat(site.truckStands()).hasSize(1);
    assertThat(site.name()).isEqualTo("Two Herons lot 7");
  }

  @Test
  void withoutAMachineNobodyAsksForItsStandOrChart() {
    List<String> byHand = new ArrayList<>(ANSWERS);
    int machine = byHand.indexOf("telehandler");
    byHand.set(machine, "none");
    byHand.subList(machine + 1, machine + 4).clear();
    Interview interview = Interview.of(List.of()).orElseThrow();
    for (String answer : byHand) {
      assertThat(interview.answer(answer)).as(answer).isEmpty();
    }
    assertThat(interview.next()).isEmpty();
    assertThat(Interview.of(interview.text().lines().toList()).orElseThrow().next()).isEmpty();
    assertThat(Lines.read(folder, interview.text()).task().site().byHand()).isTrue();
  }

  @Test
  void itGoesOnFromItsOwnLinesAfterEveryAnswer() {
    Interview interview = Interview.of(List.of()).orElseThrow();
    for (String answer : ANSWERS) {
      interview = Interview.of(interview.text().lines().toList()).orElseThrow();
      assertThat(interview.answer(answer)).as(answer).isEmpty();
    }
    assertThat(interview.next()).isEmpty();
  }

  @Test
  void backAsksTheSameAgain() {
    Interview interview = Interview.of(List.of()).orElseThrow();
    assertThat(interview.back()).isFalse();
    for (String answer : ANSWERS) {
      Question asked = interview.next().orElseThrow();
      interview.answer(answer);
      assertThat(interview.back()).isTrue();
      assertThat(interview.next()).contains(asked);
      interview.answer(answer);
    }
  }

  @Test
  void aWrongAnswerIsToldAndAskedAgain() {
    Interview interview = Interview.of(List.of()).orElseThrow();
    ANSWERS.subList(0, 5).forEach(interview::answer);
    Question asked = interview.next().orElseThrow();
    assertThat(interview.answer("esat 28'").orElseThrow())
        .contains("found".replace('f', 'F') + " \"esat\" as a direction")
        .contains("Way out");
    assertThat(interview.answer("done")).isPresent();
    assertThat(interview.next()).contains(asked);
  }

  @Test
  void wallsThatDoNotCloseAreNotDone() {
    Interview interview = Interview.of(List.of()).orElseThrow();
    ANSWERS.subList(0, 8).forEach(interview::answer);
    assertThat(interview.answer("south 20'")).isEmpty();
    assertThat(interview.answer("done").orElseThrow()).contains("walls that end 4'-0\"");
    assertThat(interview.back()).isTrue();
    assertThat(interview.answer("close")).isEmpty();
    assertThat(interview.next().orElseThrow().words()).startsWith("Door");
  }

  @Test
  void linesThatNobodyAskedForAreLeftAlone() {
    assertThat(Interview.of(List.of("units us", "wall W1 east 3'"))).isEmpty();
    assertThat(Interview.of(List.of("units us", "# a remark"))).isEmpty();
  }
}
