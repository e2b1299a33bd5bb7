package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.timber.Bundle;

/** B1 and B2 come first; B3 comes when some of their pieces are on the wall. */
final class MomentRulesTest {
  private static final Bundle B1 =
      aBundle("B1").load("L1", 1).piece("W1", 1, 1, 2).piece("W1", 1, 2, 2).build();
  private static final Bundle B2 = aBundle("B2").load("L1", 2).piece("W1", 2, 1, 2).build();
  private static final Bundle B3 = aBundle("B3").load("L2", 1).piece("W1", 3, 1, 2).build();
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private static final Spot OVER_Y1 = spot("Y3", "yard", 10.2, 8, 4.5, 0.9);
  private static final Task TASK = task(aSite().build(), B1, B2, B3);

  private static ToIntFunction<LocalDateTime> pulled(int pieces) {
    LocalDateTime second = TASK.delivery().loads().get(1).arrival();
    return arrival -> arrival.isBefore(second) ? 0 : pieces;
  }

  private static List<String> all(PlanBuilder plan, int pieces) {
    Plan silent = plan.build(TASK);
    Effort honest = Audit.of(TASK, silent, pulled(pieces)).effort();
    return Audit.of(TASK, plan.effort(honest).build(TASK), pulled(pieces)).findings().stream()
        .map(Finding::sentence)
        .toList();
  }

  private static PlanBuilder again() {
    return aPlan()
        .stack(Y1, "B1")
        .stack(Y2, "B2")
        .stack(Y1, "B3")
        .steps(place(TASK, 1, B1, Y1, 1), place(TASK, 2, B2, Y2, 1), place(TASK, 3, B3, Y1, 1));
  }

  @Test
  void aSpotIsUsedAgainWhenItsLastPieceIsPulled() {
    assertThat(all(again(), 2)).isEmpty();
    assertThat(all(again(), 1))
        .containsExactly(
            "Stack Y1 is planned twice at the same time. That is so once L2 is there.",
            "Step 3 puts B3 on tier 1 of Y1, but it gets to tier 2.");
    assertThat(all(again(), 0)).contains("Stack Y1 is planned twice at the same time.");
  }

  @Test
  void spotsThatOverlapMayBeUsedOneAfterTheOther() {
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B1")
            .stack(Y2, "B2")
            .stack(OVER_Y1, "B3")
            .steps(
                place(TASK, 1, B1, Y1, 1),
                place(TASK, 2, B2, Y2, 1),
                place(TASK, 3, B3, OVER_Y1, 1));
    assertThat(all(plan, 2)).isEmpty();
    assertThat(all(plan, 1))
        .contains("Stack Y1 and stack Y3 overlap by 0.90 m. That is so once L2 is there.");
  }

  @Test
  void nothingIsPulledThatIsNotThere() {
    // B3's piece is the fourth: three are pulled before it comes, however late it is.
    OnSite late = new OnSite(TASK, pulled(100));
    assertThat(late.moments()).isEqualTo(2);
    assertThat(late.isThere(B1, 1)).isFalse();
    assertThat(late.isThere(B2, 1)).isFalse();
    assertThat(late.isThere(B3, 0)).isFalse();
    OnSite first = new OnSite(TASK, pulled(1));
    assertThat(first.isThere(B1, 1)).isTrue();
    assertThat(first.meet(B1, B3)).isTrue();
    assertThat(late.meet(B1, B3)).isFalse();
    assertThat(late.meet(B1, B2)).isTrue();
  }

  @Test
  void aStackIsAsHighAsWhatIsThereTogether() {
    PlanBuilder pile =
        aPlan()
            .stack(Y1, "B1", "B2", "B3")
            .steps(place(TASK, 1, B1, Y1, 1), place(TASK, 2, B2, Y1, 2), place(TASK, 3, B3, Y1, 2));
    assertThat(all(pile, 2)).isEmpty();
    assertThat(all(pile, 0))
        .containsExactly("Step 3 puts B3 on tier 2 of Y1, but it gets to tier 3.");
    double allM = heightM(pile, 0);
    assertThat(heightM(pile, 2)).isLessThan(0.7 * allM);
    // Of what is gone nothing has to be moved aside: B3 over B2 alone, B2 over B1 before.
    assertThat(Audit.of(TASK, pile.build(TASK), pulled(2)).effort().rehandleS()).isEqualTo(120);
    assertThat(Audit.of(TASK, pile.build(TASK), pulled(3)).effort().rehandleS()).isEqualTo(60);
  }

  private static double heightM(PlanBuilder plan, int pieces) {
    return Audit.of(TASK, plan.build(TASK), pulled(pieces)).stackMargins().stream()
        .filter(m -> m.rule() == Rule.STACK_HEIGHT)
        .findFirst()
        .orElseThrow()
        .value();
  }
}
