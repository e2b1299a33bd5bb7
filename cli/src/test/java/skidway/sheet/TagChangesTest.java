package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.OpenSide;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;

class TagChangesTest {
  private static final Spot ONE =
      SampleHouse.spot("Y1", "yard south", 40, 20, 0, 16, 4, OpenSide.LEFT);
  private static final Spot TWO =
      SampleHouse.spot("Y2", "yard south", 70, 20, 0, 16, 4, OpenSide.LEFT);

  private static Bundle bundle(String id, int order, double kg) {
    return BundleBuilder.aBundle(id).load("L1", order).weighing(kg).build();
  }

  private static Task task(Bundle... bundles) {
    return Tasks.task(SampleHouse.task().site(), bundles);
  }

  private static List<String> changed(TagChanges changes) {
    return changes.all().stream().map(TagChange::bundleId).toList();
  }

  private static final Task ABC =
      task(bundle("A", 1, 300), bundle("B", 2, 300), bundle("C", 3, 300));

  private static PlanBuilder aPlan() {
    return PlanBuilder.aPlan();
  }

  @Test
  void thePlanItselfChangesNothing() {
    Plan plan = aPlan().stack(ONE, "A", "B").stack(TWO, "C").build(ABC);
    assertThat(TagChanges.between(ABC, plan, plan).all()).isEmpty();
  }

  @Test
  void whoMovesAndWhoseStackGrowsGetsNewTags() {
    Plan older = aPlan().stack(ONE, "A").stack(TWO, "C", "B").build(ABC);
    Plan newer = aPlan().stack(ONE, "A").stack(TWO, "C").unplaced("B").build(ABC);
    TagChanges changes = TagChanges.between(ABC, older, newer);
    // C stays where it is, but is no longer one of two.
    assertThat(changed(changes)).containsExactly("B", "C");
    assertThat(changes.toTakeOff()).hasSize(2);
    assertThat(changes.all().get(0).was().orElseThrow().words()).isEqualTo("Y2, tier 2 of 2");
    assertThat(changes.all().get(0).now().orElseThrow().place().words()).isEqualTo("no spot");
  }

  @Test
  void aTurnedSpotTurnsTheEnds() {
    Spot turned = SampleHouse.spot("Y1", "yard south", 40, 20, 0, 16, 4, OpenSide.RIGHT);
    Plan older = aPlan().stack(ONE, "A").stack(TWO, "B", "C").build(ABC);
    Plan newer = aPlan().stack(turned, "A").stack(TWO, "B", "C").build(ABC);
    assertThat(changed(TagChanges.between(ABC, older, newer))).containsExactly("A");
  }

  @Test
  void aChangedPackingListIsFoundByTheLifts() {
    Plan older = aPlan().stack(ONE, "A", "B").stack(TWO, "C").build(ABC);
    Task now = task(bundle("A", 1, 310), bundle("B", 2, 300), bundle("N", 3, 200));
    Plan newer =
        aPlan()
            .stack(ONE, "A", "B")
            .stack(TWO, "N")
            .build(now)
            .labelled(2, "other inputs", "", Heeded.NONE);
    TagChanges changes = TagChanges.between(now, older, newer);
    assertThat(changes.sameInputs()).isFalse();
    assertThat(changed(changes)).containsExactly("A", "N", "C");
    assertThat(changes.all().get(1).was()).isEmpty();
    assertThat(changes.all().get(2).now()).isEqualTo(Optional.empty());
    String page =
        TagPage.of(newer, "ab", changes, List.of(), new TagSheet(PaperSize.A4, 4)).forBrowser();
    assertThat(page)
        .contains("no longer delivered", "What is inside a bundle cannot be compared")
        .contains("Tags to take off, since revision 1");
  }
}
