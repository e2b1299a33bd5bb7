package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Reason;
import skidway.site.Footprint;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

class BearerAdviceTest {
  /** Joists along x on supports at x = 10, 15 and 20. */
  private static final Joists JOISTS =
      new Joists(
          0,
          0.4,
          new Point(10, 16),
          List.of(new Point(9.9, 16), new Point(15, 16), new Point(20.1, 16)),
          new JoistDesign.LiveLoad(2.4));

  /** Sheets find the advice among a reason's sentences. */
  private static void isFoundAgain(String sentence) {
    List<String> all = List.of("D1, tier 1 of 1: its bearers are low.", sentence, "Next best: D2.");
    Reason reason = new Reason("B1", "D1", 0, "", OptionalDouble.empty(), all);
    assertThat(reason.bearerAdvice()).contains(sentence);
    Reason without = new Reason("B1", "D1", 0, "", OptionalDouble.empty(), all.subList(0, 1));
    assertThat(without.bearerAdvice()).isEmpty();
  }

  private static BearerAdvice advice(Bundle bundle, Spot spot) {
    return new BearerAdvice(
        Boards.board(task(aSite().joists(JOISTS).deckAllowed(9).build(), bundle), spot));
  }

  /** Two bearers, 0.6 m on either side of the support; farther in they come nearer to it. */
  @Test
  void bearersNearerToASupportBendLess() {
    Bundle bundle = aBundle("B1").size(1.8, 0.6, 0.4).weighing(300).piece("W1", 1, 1, 1.7).build();
    assertThat(advice(bundle, spot("D1", "deck", 15, 20, 2, 0.9)).of(0, 0))
        .hasValueSatisfying(
            sentence ->
                assertThat(sentence)
                    .startsWith("Bearers 0.45 m in from its ends instead of 0.30 m would bend"))
        .hasValueSatisfying(BearerAdviceTest::isFoundAgain);
  }

  @Test
  void bearersAlongTheJoistsShouldBeTurned() {
    Bundle bundle = aBundle("B1").weighing(300).piece("W1", 1, 1, 3).build();
    Spot across = spot("D1", "deck", 13, 20, 4.5, 0.9);
    Spot turned =
        new Spot(
            "D2",
            "deck",
            across.kind(),
            new Footprint(new Point(13, 20), 90, 4.5, 0.9),
            across.openSide(),
            across.stripM(),
            across.massLimitKg());
    assertThat(advice(bundle, turned).of(0, 0))
        .hasValueSatisfying(sentence -> assertThat(sentence).contains("lie along the joists"))
        .hasValueSatisfying(BearerAdviceTest::isFoundAgain);
  }

  @Test
  void aYardHasNoJoists() {
    Bundle bundle = aBundle("B1").weighing(300).piece("W1", 1, 1, 3).build();
    assertThat(advice(bundle, spot("Y1", "yard", 13, 8, 4.5, 0.9)).of(0, 0)).isEmpty();
  }
}
