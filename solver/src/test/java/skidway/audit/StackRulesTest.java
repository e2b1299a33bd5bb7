package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
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
  void stackHeightNeverGoesBeyondWhatHandsMayTake() {
    Settings tall =
        Settings.defaults()
            .with(Setting.STACK_HEIGHT, 6, "tall crew")
            .with(Setting.HAND_PILE_HEIGHT, 1, "short crew");
    Task task = task(aSite().build(), tall, aBundle("B1").size(4, 0.6, 1).build());
    assertThat(Audited.sentences(Rule.STACK_HEIGHT, task, aPlan().stack(y1, "B1")))
        .containsExactly("Stack Y1 is 1.09 m high with its bearers, limit 1.00 m.");
  }

  @Test
  void stackSlenderMeasuresFromTheUndersideOfEachBundle() {
    // Upon B1, 0.6 m wide: 0.9 + 0.089 + 0.8 = 1.789, 2.98 times; on B2, 0.3 m wide, 0.8: 2.67.
    Bundle wide = aBundle("B1").load("L1", 1).size(4, 0.6, 0.9).build();
    Bundle narrow = aBundle("B2").load("L1", 2).size(4, 0.3, 0.8).build();
    assertThat(broken(Rule.STACK_SLENDER, wide, narrow)).isEmpty();
    Bundle high = aBundle("B2").load("L1", 2).size(4, 0.3, 0.93).build();
    assertThat(broken(Rule.STACK_SLENDER, wide, high))
        .containsExactly(
            "Stack Y1 is 3.10 times as high from the underside of B2 as B2 is wide, limit 3.00.",
            "Stack Y1 is 3.20 times as high from the underside of B1 as B1 is wide, limit 3.00.");
    Bundle exactly = aBundle("B1").size(4, 0.6, 1.8).build();
    assertThat(broken(Rule.STACK_SLENDER, exactly)).isEmpty();
    Bundle shorterThanWide = aBundle("B1").size(0.5, 0.6, 1.8).build();
    assertThat(broken(Rule.STACK_SLENDER, shorterThanWide)).hasSize(1);
  }

  @Test
  void stackSlenderAllowsLessOnASlope() {
    // 1 / (1 / 3 + 0.05) = 2.609.
    assertThat(onSlope(1.565)).isEmpty();
    assertThat(onSlope(1.57))
        .containsExactly(
            "Stack Y1 is 2.62 times as high from the underside of B1 as B1 is wide, limit 2.61.");
  }

  private List<String> onSlope(double heightM) {
    Yard yard =
        new Yard(
            "yard",
            Outline.box(5, 6, 30, 12),
            70,
            "",
            OptionalDouble.of(0.05),
            OptionalDouble.empty());
    Task task = task(aSite().yards(yard).build(), aBundle("B1").size(4, 0.6, heightM).build());
    return Audited.sentences(Rule.STACK_SLENDER, task, aPlan().stack(y1, "B1"));
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
