package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.move;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setAside;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** What lies where between two moves: OLD leaves the deck, NEW comes onto it from the yard. */
final class HalfwayRulesTest {
  private static final Bundle OLD = aBundle("OLD").load("L1", 1).weighing(550).build();
  private static final Bundle NEW = aBundle("NEW").load("L1", 2).weighing(500).build();
  private static final Spot D1 = spot("D1", "deck", 15, 19.5, 4, 0.9);
  private static final Spot D2 = spot("D2", "deck", 15, 21.5, 4, 0.9);
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private static final Spot WAIT = spot("T1", "deck", 15, 17.5, 4, 0.9);

  private static Task lying(Site site) {
    Task task = task(site, OLD, NEW);
    return task.startingFrom(
        new Start(
            List.of(new Stack(D1, List.of("OLD")), new Stack(Y1, List.of("NEW"))),
            Map.of("OLD", row(task, OLD, D1), "NEW", row(task, NEW, Y1)),
            List.of(D1, Y1),
            Set.of(),
            Set.of()));
  }

  private static BearerRow row(Task task, Bundle bundle, Spot spot) {
    return place(task, 1, bundle, spot, 1).bearers();
  }

  private static PlanBuilder tooSoon(Task task) {
    return aPlan()
        .stack(D2, "NEW")
        .stack(Y2, "OLD")
        .steps(move(task, 1, NEW, Y1, D2, 1), move(task, 2, OLD, D1, Y2, 1));
  }

  private static PlanBuilder inTime(Task task) {
    return aPlan()
        .stack(D2, "NEW")
        .stack(Y2, "OLD")
        .steps(move(task, 1, OLD, D1, Y2, 1), move(task, 2, NEW, Y1, D2, 1));
  }

  private static List<String> all(Task task, PlanBuilder plan) {
    return Audited.report(task, plan).findings().stream().map(Finding::sentence).toList();
  }

  @Test
  void theTotalOfADeckHoldsBetweenTwoMovesToo() {
    Task task = lying(aSite().builtWalls(2.4).deckTotal(1049).build());
    assertThat(all(task, inTime(task))).isEmpty();
    assertThat(all(task, tooSoon(task)))
        .containsExactly(
            "All that lies on deck weighs 1\u00a0050 kg, limit 1\u00a0049 kg. That is so after step 1.");
    Task enough = lying(aSite().builtWalls(2.4).deckTotal(1050).build());
    assertThat(all(enough, tooSoon(enough))).isEmpty();
  }

  /** Two stacks over the same joists; the joists bear one of them. */
  @Test
  void joistsBearWhatLiesBetweenTwoMoves() {
    Joists joists =
        new Joists(
            90,
            0.4,
            new Point(10, 20),
            List.of(new Point(15, 16), new Point(15, 24)),
            new JoistDesign.LiveLoad(1.3));
    Task task = lying(aSite().builtWalls(2.4).joists(joists).build());
    assertThat(all(task, inTime(task))).isEmpty();
    assertThat(Audited.report(task, tooSoon(task)).findings())
        .isNotEmpty()
        .allMatch(f -> f.rule() == Rule.JOIST_BENDING || f.rule() == Rule.JOIST_SHEAR)
        .allMatch(f -> f.sentence().endsWith(" That is so after step 1."));
  }

  @Test
  void whatIsSetAsideLoadsTheDeckMeanwhile() {
    Task task = lying(aSite().builtWalls(2.4).deckTotal(1049).build());
    PlanBuilder plan =
        aPlan()
            .stack(D1, "OLD")
            .stack(Y2, "NEW")
            .waiting(WAIT)
            .steps(setAside(task, 1, NEW, Y1, WAIT), liftOn(task, 2, NEW, WAIT, Y2, 1));
    assertThat(all(task, plan))
        .contains("All that lies on deck weighs 1\u00a0050 kg, limit 1\u00a0049 kg.");
    Task enough = lying(aSite().builtWalls(2.4).deckTotal(1050).build());
    PlanBuilder same =
        aPlan()
            .stack(D1, "OLD")
            .stack(Y2, "NEW")
            .waiting(WAIT)
            .steps(setAside(enough, 1, NEW, Y1, WAIT), liftOn(enough, 2, NEW, WAIT, Y2, 1));
    assertThat(all(enough, same)).isEmpty();
  }

  /** OLD lies on NEW for the time between two moves; NEW's bearers press too hard then. */
  @Test
  void bearersBearWhatLiesOnThemMeanwhile() {
    Spot narrow =
        new Spot("Y2", "yard", Y2.kind(), Y2.footprint(), Y2.openSide(), 0.91, most(1049));
    Task task = lying(aSite().builtWalls(2.4).build());
    PlanBuilder plan =
        aPlan()
            .stack(narrow, "NEW")
            .stack(Y1, "OLD")
            .steps(
                move(task, 1, NEW, Y1, narrow, 1),
                move(task, 2, OLD, D1, narrow, 2),
                move(task, 3, OLD, narrow, Y1, 1));
    assertThat(all(task, plan))
        .contains("Stack Y2 weighs 1\u00a0050 kg, limit 1\u00a0049 kg. That is so after step 2.");
  }

  private static OptionalDouble most(double kg) {
    return OptionalDouble.of(kg);
  }

  /** The deck was overloaded before; taking weight off it is no fault, putting more on it is. */
  @Test
  void whatWasSoBeforeIsAFaultOnlyWhenItGetsWorse() {
    Task task = lying(aSite().builtWalls(2.4).deckTotal(540).build());
    assertThat(all(task, inTime(task))).isEmpty();
    assertThat(all(task, tooSoon(task)))
        .containsExactly(
            "All that lies on deck weighs 1\u00a0050 kg, limit 540 kg. That is so after step 1.");
  }
}
