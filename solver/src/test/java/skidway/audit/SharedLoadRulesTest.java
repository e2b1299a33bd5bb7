package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** What several stacks put on one deck or yard. */
final class SharedLoadRulesTest {
  private static final Spot ON_DECK = spot("D1", "deck", 15, 19.5, 4, 0.9);

  @Test
  void zoneTotalAddsUpAllThatEverLiesThere() {
    Task task =
        task(
            aSite().deckTotal(500).build(),
            aBundle("B1").load("L1", 1).weighing(300).build(),
            aBundle("B2").load("L1", 2).weighing(200.1).build());
    Spot other = rack("D2", "deck", 15, 21, 1, 0.5);
    Spot yard = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    assertThat(
            Audited.sentences(
                Rule.ZONE_TOTAL, task, aPlan().stack(ON_DECK, "B1").stack(yard, "B2")))
        .isEmpty();
    assertThat(
            Audited.sentences(
                Rule.ZONE_TOTAL, task, aPlan().stack(ON_DECK, "B1").stack(other, "B2")))
        .containsExactly(
            "All that lies on deck weighs 500 kg, limit 500 kg (they differ by less than is"
                + " shown).");
    Bundle b1 = task.delivery().bundles().get(0);
    Bundle b2 = task.delivery().bundles().get(1);
    Spot waiting = spot("T1", "deck", 15, 21, 4, 0.6);
    assertThat(
            Audited.sentences(
                Rule.ZONE_TOTAL,
                task,
                aPlan()
                    .stack(ON_DECK, "B1")
                    .stack(yard, "B2")
                    .waiting(waiting)
                    .steps(
                        place(task, 1, b1, ON_DECK, 1),
                        setDown(task, 2, b2, waiting),
                        liftOn(task, 3, b2, waiting, yard, 1))))
        .hasSize(1);
  }

  @Test
  void zoneTotalCountsABundleThatWaitsForItsStackOnTheSameDeckOnce() {
    Task task = task(aSite().deckTotal(500).build(), aBundle("B1").weighing(300).build());
    Bundle b1 = task.delivery().bundles().get(0);
    Spot waiting = spot("T1", "deck", 15, 21, 4, 0.6);
    assertThat(
            Audited.sentences(
                Rule.ZONE_TOTAL,
                task,
                aPlan()
                    .stack(ON_DECK, "B1")
                    .waiting(waiting)
                    .steps(
                        setDown(task, 1, b1, waiting), liftOn(task, 2, b1, waiting, ON_DECK, 1))))
        .isEmpty();
  }

  @Test
  void bearingApartLooksAtAllOfTheDeckThatBearersMayReach() {
    // Bundles 0.6 m wide, 1.1 m from middle to middle: 0.5 m between them.
    assertThat(sideBySide(0.25, "deck")).isEmpty();
    assertThat(sideBySide(0.3, "deck"))
        .containsExactly(
            "The bearers of D1 and D2 spread their loads over the same 0.10 m of deck.");
    assertThat(sideBySide(0.3, "yard")).isEmpty();
  }

  private static List<String> sideBySide(double reachM, String zone) {
    Task task =
        task(
            aSite().build(),
            Settings.defaults().with(Setting.BEARER_REACH, reachM, "long bearers"),
            aBundle("B1").load("L1", 1).build(),
            aBundle("B2").load("L1", 2).build());
    return Audited.sentences(
        Rule.BEARING_APART,
        task,
        aPlan()
            .stack(spot("D1", zone, 15, 19.5, 4, 0.9), "B1")
            .stack(spot("D2", zone, 15, 20.6, 4, 0.9), "B2"));
  }
}
