package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.timber.Bundle;

final class StackRulesTest {
  private final Spot y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);

  private List<String> broken(Rule rule, Bundle... bottomToTop) {
    Task task = task(aSite().build(), bottomToTop);
    String[] ids = List.of(bottomToTop).stream().map(Bundle::id).toArray(String[]::new);
    return Audited.sentences(rule, task, aPlan().stack(y1, ids));
  }

  @Test
  void fitsSpotTakesABundleAsLongAndWideAsTheSpotAndNoMore() {
    assertThat(broken(Rule.FITS_SPOT, aBundle("B1").size(4.5, 0.9, 0.4).build())).isEmpty();
    assertThat(broken(Rule.FITS_SPOT, aBundle("B1").size(4.6, 0.9, 0.4).build()))
        .containsExactly("B1 is 4.60 m long, too long for spot Y1, limit 4.50 m.");
    assertThat(broken(Rule.FITS_SPOT, aBundle("B1").size(4.5, 1.0, 0.4).build()))
        .containsExactly("B1 is 1.00 m wide, too wide for spot Y1, limit 0.90 m.");
  }

  @Test
  void stackHeightCountsABearerUnderEachBundle() {
    Bundle low = aBundle("B1").load("L1", 1).size(4, 0.6, 0.826).build();
    assertThat(
            broken(Rule.STACK_HEIGHT, low, aBundle("B2").load("L1", 2).size(4, 0.6, 0.826).build()))
        .isEmpty();
    assertThat(
            broken(Rule.STACK_HEIGHT, low, aBundle("B2").load("L1", 2).size(4, 0.6, 0.946).build()))
        .containsExactly("Stack Y1 is 1.95 m high with its bearers, limit 1.83 m.");
  }

  @Test
  void aDifferenceTooSmallForTheFiguresIsSaidInWords() {
    Bundle low = aBundle("B1").load("L1", 1).size(4, 0.6, 0.826).build();
    assertThat(
            broken(Rule.STACK_HEIGHT, low, aBundle("B2").load("L1", 2).size(4, 0.6, 0.828).build()))
        .containsExactly(
            "Stack Y1 is 1.83 m high with its bearers, limit 1.83 m (they differ by less than is"
                + " shown).");
  }

  @Test
  void tierSupportLooksAtEveryBundleBeneathNotOnlyTheNext() {
    Bundle bottom = aBundle("B1").load("L1", 1).size(3.6, 0.6, 0.3).build();
    Bundle middle = aBundle("B2").load("L1", 2).size(4.0, 0.6, 0.3).build();
    Bundle top = aBundle("B3").load("L1", 3).size(4.5, 0.6, 0.3).build();
    assertThat(broken(Rule.TIER_SUPPORT, bottom, middle)).isEmpty();
    assertThat(broken(Rule.TIER_SUPPORT, middle, top)).isEmpty();
    assertThat(broken(Rule.TIER_SUPPORT, bottom, middle, top))
        .containsExactly("B3 sticks out 0.45 m beyond B1 beneath it, limit 0.30 m.");
  }

  @Test
  void tierSupportAllowsExactlyTheOverhang() {
    Bundle bottom = aBundle("B1").load("L1", 1).size(3.6, 0.6, 0.3).build();
    assertThat(broken(Rule.TIER_SUPPORT, bottom, aBundle("B2").size(4.2, 0.7, 0.3).build()))
        .isEmpty();
    assertThat(broken(Rule.TIER_SUPPORT, bottom, aBundle("B2").size(4.2, 0.8, 0.3).build()))
        .containsExactly("B2 sticks out 0.10 m to the side of B1 beneath it, limit 0.05 m.");
  }
}
