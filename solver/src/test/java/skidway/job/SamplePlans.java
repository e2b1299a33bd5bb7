package skidway.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Heeded;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Proof;
import skidway.plan.Reason;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;

/** Plans to write and read back; they need not make sense on any site. */
final class SamplePlans {
  private SamplePlans() {}

  /** A plan whose figures have no more digits than the file keeps. */
  static Plan exact(int revision) {
    return plan(revision, spot(OptionalDouble.empty()), 12.5, OptionalDouble.of(3.2), 1.83)
        .withProof(Optional.of(new Proof(3912.345, 3960.5, List.of(Proof.Ignored.PATHS))))
        .labelled(revision, "aa", "", new Heeded(3, "0123456789abcdef"));
  }

  static Plan withLimit(OptionalDouble limit) {
    return plan(1, spot(OptionalDouble.of(4000)), 12.5, limit, limit.orElse(1));
  }

  private static Spot spot(OptionalDouble massLimitKg) {
    Footprint footprint = new Footprint(new Point(12.25, -3), 90, 5, 0.9);
    return new Spot(
        "N-01", "north yard", SpotKind.STACK, footprint, OpenSide.RIGHT, 0.91, massLimitKg);
  }

  private static Plan plan(
      int revision, Spot spot, double reachM, OptionalDouble nextBestPersonS, double limit) {
    Effort effort = new Effort(1200.5, 0, 0, 360, 2400);
    return new Plan(
        "sample",
        revision,
        "aa",
        "",
        new Search(Long.MAX_VALUE, 20_000, 0.01, false),
        List.of(new Stack(spot, List.of("B01", "B02"))),
        List.of(spot),
        List.of(
            new Step(
                1,
                StepKind.SET_DOWN,
                "B01",
                "L1",
                "N-01",
                1,
                "M",
                reachM,
                850.25,
                2000,
                new BearerRow(3, 1.2, 0.3, 0.75)),
            new Step(
                2, StepKind.LIFT_ON, "B01", "N-01", "N-02", 0, "M", 7, 0, 1999.99, BearerRow.NONE)),
        List.of(
            new Reason(
                "B01", "N-01", 88.8, "N-02", nextBestPersonS, List.of("Near.", "Long \"x\"")),
            new Reason("B02", "N-01", 0, "", OptionalDouble.empty(), List.of())),
        List.of(new Unplaced("B03", Rule.ZONE_LOAD, "Too heavy — for every zone.")),
        effort,
        List.of(new Baseline("nearest", "Nearest free spot.", 2, effort.plus(effort))),
        List.of(
            new Margin(Rule.STACK_HEIGHT, "N-01", 1.5, limit, false),
            new Margin(Rule.RACK_ROOM, "R-01", 0.1234, 0.6, false)));
  }

  /** A plan with figures of all digits. */
  static Plan random(Random random, int revision) {
    Plan base = exact(revision);
    List<Step> steps = new ArrayList<>();
    List<Reason> reasons = new ArrayList<>();
    List<Margin> margins = new ArrayList<>();
    List<Stack> stacks = new ArrayList<>();
    for (int i = 1; i <= 12; i++) {
      Footprint footprint =
          new Footprint(
              new Point(random.nextGaussian() * 30, random.nextGaussian() * 30),
              random.nextDouble() * 360,
              1 + random.nextDouble() * 8,
              0.3 + random.nextDouble());
      Spot spot =
          new Spot(
              "S" + i,
              "yard",
              i % 3 == 0 ? SpotKind.RACK : SpotKind.STACK,
              footprint,
              i % 2 == 0 ? OpenSide.LEFT : OpenSide.RIGHT,
              0.5 + random.nextDouble(),
              i % 2 == 0
                  ? OptionalDouble.of(5000 * random.nextDouble() + 10)
                  : OptionalDouble.empty());
      stacks.add(new Stack(spot, List.of("B" + i)));
      steps.add(
          new Step(
              i,
              StepKind.PLACE,
              "B" + i,
              "L1",
              "S" + i,
              1,
              "M",
              random.nextDouble() * 20,
              random.nextDouble() * 1e4,
              random.nextDouble() * 1e4,
              new BearerRow(1 + random.nextInt(5), random.nextDouble(), 0.3, random.nextDouble())));
      OptionalDouble next =
          i % 2 == 0 ? OptionalDouble.of(random.nextDouble() * 1e5) : OptionalDouble.empty();
      reasons.add(new Reason("B" + i, "S" + i, random.nextDouble() * 1e5, "", next, List.of("a")));
      List<Rule> rules = List.of(Rule.values());
      Rule rule = rules.get(random.nextInt(rules.size()));
      double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(9) - 4);
      margins.add(new Margin(rule, "S" + i, value, random.nextDouble() * 10, i % 2 == 0));
    }
    return new Plan(
        base.jobName(),
        revision,
        base.inputs(),
        base.previous(),
        base.search(),
        stacks,
        base.waitingPlaces(),
        steps,
        reasons,
        base.unplaced(),
        new Effort(random.nextDouble() * 1e6, 0, random.nextDouble(), 0, 1e-9),
        base.baselines(),
        margins);
  }
}
