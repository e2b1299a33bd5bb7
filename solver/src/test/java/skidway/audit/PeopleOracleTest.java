package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import skidway.limits.Coupling;
import skidway.limits.HandLift;
import skidway.limits.LiftDuration;
import skidway.limits.LiftingEquation;
import skidway.limits.PickHeight;
import skidway.limits.TeamLift;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.timber.Bundle;

/** The audit's own code about people against the formulas that plans are made with. */
final class PeopleOracleTest {

  @Property(seed = "20310505", tries = 200)
  void teamsAreTheSame(
      @ForAll @DoubleRange(min = 5, max = 60) double oneKg,
      @ForAll @DoubleRange(min = 0.2, max = 1) double two,
      @ForAll @DoubleRange(min = 0.2, max = 1) double three,
      @ForAll @IntRange(min = 1, max = 6) int most,
      @ForAll @DoubleRange(min = 0.1, max = 8) double lengthM) {
    Settings settings =
        Settings.defaults()
            .with(Setting.LIFT_PER_PERSON, oneKg, "any")
            .with(Setting.TEAM_OF_TWO, two, "any")
            .with(Setting.TEAM_OF_THREE, three, "any")
            .with(Setting.TEAM_MOST, most, "any");
    Bundle bundle = aBundle("B1").piece("W1", 1, 1, lengthM).build();
    Team audits = new Team(scene(task(aSite().build(), settings, bundle)));
    TeamLift planners = new TeamLift(oneKg, two, three, most, 2.44);
    double massKg = bundle.mass().likelyKg();
    assertThat(audits.people(bundle.pieces().get(0))).isEqualTo(planners.people(massKg, lengthM));
    assertThat(audits.mostKg()).isCloseTo(planners.mostKg(), within(1e-9));
  }

  @Property(seed = "20310505")
  void liftLimitsAreTheSame(
      @ForAll @DoubleRange(min = 0, max = 100) double widthCm,
      @ForAll @DoubleRange(min = -5, max = 200) double heightCm,
      @ForAll @DoubleRange(min = -5, max = 200) double pickCm,
      @ForAll @DoubleRange(min = 0, max = 12) double perMin) {
    double travelCm = Math.abs(heightCm - pickCm);
    LiftingEquation equation = LiftingEquation.METRIC;
    HandLift lift =
        new HandLift(
            equation.estimatedReach(heightCm, widthCm),
            heightCm,
            pickCm,
            travelCm,
            0,
            perMin,
            LiftDuration.LONG,
            Coupling.POOR);
    assertThat(new LiftLimit(perMin).kg(widthCm, heightCm, pickCm, travelCm))
        .isCloseTo(equation.recommended(lift), within(1e-9));
  }

  @Property(seed = "20310505", tries = 200)
  void picksCostTheSame(
      @ForAll @DoubleRange(min = 0.1, max = 4) double heightM,
      @ForAll @IntRange(min = 1, max = 8) int layer,
      @ForAll @IntRange(min = 0, max = 5) int layersAbove) {
    Bundle bundle =
        aBundle("B1")
            .size(4, 0.6, heightM)
            .piece("W1", 1, 1, 1, layer)
            .piece("W1", 2, 1, 1, layer + layersAbove)
            .build();
    double expectedS =
        bundle.packed().stream()
            .mapToDouble(p -> PickHeight.factor(PickHeight.metres(0.089, bundle, p.layer())))
            .map(factor -> 60 * (1 - factor))
            .sum();
    assertThat(new Picking(scene(task(aSite().build(), bundle))).personS())
        .isCloseTo(expectedS, within(1e-9));
  }

  private static Scene scene(Task task) {
    return new Scene(
        task,
        aPlan().stack(spot("Y1", "yard", 10, 8, 8, 0.9), "B1").build(task),
        new OnSite(task, arrival -> 0));
  }
}
