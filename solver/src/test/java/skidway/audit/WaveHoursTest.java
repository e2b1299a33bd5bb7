package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;
import skidway.timber.BearerRow;

/** The audit's own hours of waves: summed by hand, and compared with what waves tell. */
final class WaveHoursTest {
  private static final Spot STACK = spot("Y1", "yard", 12, 8, 3.2, 0.8);
  private static final Spot PILE = spot("P1.1", "yard", 22, 8, 3.2, 0.61);

  /** Three layers in one bundle, 0.45 m high; what is needed first lies lowest. */
  private final Task task =
      Tasks.task(
          aSite().build(),
          aBundle("B1")
              .size(3.2, 0.8, 0.45)
              .piece("W1", 1, 1, 2.5, 1)
              .piece("W1", 2, 1, 2.5, 2)
              .piece("W1", 3, 1, 2.5, 3)
              .build());

  private final Plan plan = PlanBuilder.aPlan().stack(STACK, "B1").build(task);
  private final WaveHours hours = new WaveHours(task, plan);

  /** The two highest pieces: one carried to the pile by people, one brought by the machine. */
  private Wave wave(PieceHours told) {
    TimberPile pile =
        new TimberPile(
            PILE,
            List.of(List.of("W1-C3-1"), List.of("W1-C2-1")),
            0.408,
            90,
            new BearerRow(3, 1.2, 0.1, 0.61));
    List<Brought> brought =
        List.of(
            new Brought("W1-C3-1", "B1", "Y1", "P1.1", Way.BY_HAND, 2),
            new Brought("W1-C2-1", "B1", "Y1", "P1.1", Way.BY_MACHINE, 2));
    List<PileTrip> trips =
        List.of(new PileTrip("B1", "Y1", "P1.1", List.of("W1-C2-1"), "M", "M", 9, 90, 5000));
    return new Wave(1, 0, 3, 1, 3, List.of(pile), brought, trips, told);
  }

  private WavePlan waves(PieceHours ofWave, PieceHours straight, PieceHours all) {
    return new WavePlan("test job", 1, "", List.of(wave(ofWave)), straight, all);
  }

  private List<String> sentences(WavePlan waves) {
    WaveAudit audit = new WaveAudit(task, plan);
    List<Finding> findings = audit.findings(waves);
    AuditReport alone = Audit.of(task, plan);
    assertThat(audit.with(alone, waves).findings())
        .containsAll(findings)
        .hasSize(findings.size() + alone.findings().size());
    return findings.stream().map(Finding::sentence).toList();
  }

  private PieceHours found() {
    return hours.of(wave(PieceHours.NONE));
  }

  /** Of the whole work with that wave. */
  private PieceHours all() {
    return hours.outside(List.of(wave(PieceHours.NONE))).plus(found());
  }

  /** 30 kg each: two people. From the stack to the pile they walk straight. */
  @Test
  void theHoursAreThoseSummedByHand() {
    PieceHours found = found();
    double perMetreS = 2 * (1 / 0.75 + 1 / 1.31);
    double wayM = STACK.access().distanceTo(PILE.access());
    assertThat(found.bringS()).isCloseTo(wayM * perMetreS, within(0.06 * wayM * perMetreS));
    assertThat(found.layS()).isCloseTo(20 + 2 * 20 + 60, within(1e-6));
    double[] bundleCm = {8.9 + 7.5, 8.9 + 22.5, 8.9 + 37.5};
    double lost = 0;
    for (double heightCm : bundleCm) {
      lost += 0.003 * (75 - heightCm);
    }
    double thickCm = 100 * task.delivery().pieces().get(0).section().heightM();
    double stickerCm = 40.8 - 8.9 - 2 * thickCm;
    lost += 0.003 * (75 - (8.9 + thickCm / 2));
    lost += 0.003 * (75 - (8.9 + thickCm + stickerCm + thickCm / 2));
    assertThat(found.pickS()).isCloseTo(2 * 60 * lost, within(0.1));
    assertThat(found.asideS()).isZero();
    double liftS =
        task.settings().get(Setting.MACHINE_LIFT) * task.settings().get(Setting.MACHINE_CREW);
    assertThat(found.machineS()).isEqualTo(liftS);
  }

  /** Straight from the bundle two pieces lie over one that is needed earlier. */
  @Test
  void whatAWaveTakesFromTheTopIsNotMovedAside() {
    double onceS = hours.straight().asideS() / 2;
    assertThat(onceS).isPositive();
    Wave one = wave(PieceHours.NONE);
    Wave onlyTheTop =
        new Wave(
            1, 0, 3, 1, 3, one.piles(), one.brought().subList(0, 1), List.of(), PieceHours.NONE);
    assertThat(hours.of(onlyTheTop).asideS()).isEqualTo(onceS);
  }

  @Test
  void whatIsToldRightIsFine() {
    WavePlan waves = waves(found(), hours.straight(), all());
    assertThat(sentences(waves)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0, carrying to piles",
    "1, laying on piles and in racks",
    "2, carrying to the walls",
    "3, picking",
    "4, moving pieces aside",
    "5, machine work"
  })
  void aTimeToldWrongIsFoundOfAWaveOfAllAndWithoutWaves(int kind, String work) {
    PieceHours all = all();
    assertThat(sentences(waves(changed(found(), kind), hours.straight(), all)))
        .singleElement()
        .asString()
        .startsWith("Wave 1 says ")
        .contains(" of " + work + ", the audit finds ");
    assertThat(sentences(waves(found(), hours.straight(), changed(all, kind))))
        .singleElement()
        .asString()
        .startsWith("With all waves it says ")
        .contains(" of " + work + ", ");
    assertThat(sentences(waves(found(), changed(hours.straight(), kind), all)))
        .singleElement()
        .asString()
        .startsWith("Without waves it says ")
        .contains(" of " + work + ", ");
  }

  /** A tenth more, and two seconds. */
  private static PieceHours changed(PieceHours told, int kind) {
    double[] s = {
      told.bringS(), told.layS(), told.carryS(), told.pickS(), told.asideS(), told.machineS()
    };
    s[kind] = 1.1 * s[kind] + 2;
    return new PieceHours(s[0], s[1], s[2], s[3], s[4], s[5]);
  }
}
