package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;
import skidway.timber.BearerRow;

class WavePiecesTest {
  private static final Spot STACK = spot("Y1", "yard", 12, 8, 3.2, 0.8);
  private static final Spot PILE = spot("P1.1", "yard", 22, 8, 3.2, 0.61);

  private final Task task =
      Tasks.task(
          aSite().build(),
          aBundle("B1")
              .piece("W1", 1, 1, 3.0)
              .piece("W1", 2, 1, 3.0)
              .piece("W1", 3, 1, 3.0)
              .piece("W1", 4, 1, 3.8)
              .build());
  private final Plan plan = PlanBuilder.aPlan().stack(STACK, "B1").build(task);

  @Test
  void aSoundPileIsSound() {
    assertThat(rules(wave(2, 0.408, List.of(List.of("W1-C2-1"), List.of("W1-C1-1"))))).isEmpty();
  }

  @Test
  void whatIsNeededSoonerMustNotLieBeneath() {
    assertThat(rules(wave(2, 0.408, List.of(List.of("W1-C1-1"), List.of("W1-C2-1")))))
        .containsExactly(Rule.REHANDLE);
  }

  @Test
  void nothingLiesInTwoLayers() {
    assertThat(rules(wave(1, 0.408, List.of(List.of("W1-C1-1"), List.of("W1-C1-1")))))
        .containsExactly(Rule.ONCE);
  }

  @Test
  void whatIsLaidAfterTheWaveIsNotBrought() {
    assertThat(rules(wave(2, 0.408, List.of(List.of("W1-C3-1"), List.of("W1-C1-1")))))
        .containsExactly(Rule.STEPS_BUILD);
  }

  @Test
  void aLongPieceFitsNeitherThePlaceNorWhatIsBeneath() {
    assertThat(rules(wave(4, 0.408, List.of(List.of("W1-C4-1"), List.of("W1-C1-1")))))
        .containsExactly(Rule.FITS_SPOT);
  }

  @Test
  void aHeightToldTooLowIsFound() {
    assertThat(rules(wave(2, 0.3, List.of(List.of("W1-C2-1"), List.of("W1-C1-1")))))
        .containsExactly(Rule.STACK_HEIGHT);
  }

  @Test
  void aPileToldTooLightIsFound() {
    Wave sound = wave(2, 0.408, List.of(List.of("W1-C2-1"), List.of("W1-C1-1")));
    TimberPile pile = sound.piles().get(0);
    TimberPile light =
        new TimberPile(pile.spot(), pile.layers(), pile.heightM(), 40, pile.bearers());
    assertThat(rules(with(sound, List.of(light), List.of()))).containsExactly(Rule.SPOT_MASS);
  }

  @Test
  void aTripIsHeldToItsOwnFigureAndToTheChartWhateverItSays() {
    assertThat(rules(onTrip("M", 5000))).isEmpty();
    assertThat(rules(onTrip("nowhere", 5000))).containsExactly(Rule.KNOWN);
    assertThat(rules(onTrip("M", 5))).containsExactly(Rule.MACHINE_CAPACITY);
    Machine weak =
        new Machine(
            "weak machine",
            List.of(new MachineStand("M", new Point(20, 5))),
            List.of(new ChartRow(30, 10)));
    Task lifted = Tasks.task(aSite().machine(weak).build(), task.delivery().bundles().get(0));
    assertThat(new WaveAudit(lifted, plan).findings(waves(lifted, onTrip("M", 5000))))
        .extracting(Finding::rule)
        .containsExactly(Rule.MACHINE_CAPACITY);
  }

  private static Wave onTrip(String stand, double capacityKg) {
    Wave sound = wave(1, 0.239, List.of(List.of("W1-C1-1")));
    PileTrip trip =
        new PileTrip("B1", "Y1", "P1.1", List.of("W1-C1-1"), stand, stand, 9, 90, capacityKg);
    return with(sound, sound.piles(), List.of(trip));
  }

  private static Wave with(Wave wave, List<TimberPile> piles, List<PileTrip> trips) {
    Way way = trips.isEmpty() ? Way.BY_HAND : Way.BY_MACHINE;
    List<Brought> brought =
        wave.brought().stream()
            .map(b -> new Brought(b.mark(), b.bundleId(), b.fromSpotId(), b.pileId(), way, 2))
            .toList();
    return new Wave(1, 0, wave.laidAfter(), 1, 4, piles, brought, trips, PieceHours.NONE);
  }

  @Test
  void thePilesMarginsAreToldWithThoseOfTheStacks() {
    Wave wave = wave(2, 0.408, List.of(List.of("W1-C2-1"), List.of("W1-C1-1")));
    AuditReport alone = Audit.of(task, plan);
    AuditReport both = new WaveAudit(task, plan).with(alone, waves(task, wave));
    assertThat(alone.stackMargins()).noneMatch(margin -> margin.where().equals("P1.1"));
    assertThat(both.stackMargins())
        .containsAll(alone.stackMargins())
        .anyMatch(m -> m.where().equals("P1.1") && m.rule() == Rule.STACK_HEIGHT);
    assertThat(both.findings()).isEqualTo(alone.findings());
  }

  @Test
  void anUnknownPieceIsFound() {
    assertThat(rules(wave(2, 0.239, List.of(List.of("X"))))).contains(Rule.KNOWN);
  }

  @Test
  void aPileOnAStackIsFound() {
    Spot onTop = spot("P1.1", "yard", 12.3, 8, 3.2, 0.61);
    Wave wave = wave(onTop, 1, 0.239, List.of(List.of("W1-C1-1")));
    assertThat(new WaveAudit(task, plan).findings(wave))
        .extracting(Finding::rule)
        .contains(Rule.SPOTS_APART);
    assertThat(new WaveAudit(task, plan).faulty(wave)).containsExactly("P1.1");
  }

  private static Wave wave(int laidAfter, double heightM, List<List<String>> layers) {
    return wave(PILE, laidAfter, heightM, layers);
  }

  private static Wave wave(Spot place, int laidAfter, double heightM, List<List<String>> layers) {
    List<Brought> brought =
        layers.stream()
            .flatMap(List::stream)
            .distinct()
            .map(mark -> new Brought(mark, "B1", "Y1", place.id(), Way.BY_HAND, 2))
            .toList();
    TimberPile pile = new TimberPile(place, layers, heightM, 90, new BearerRow(3, 1.2, 0.1, 0.61));
    return new Wave(1, 0, laidAfter, 1, 4, List.of(pile), brought, List.of(), PieceHours.NONE);
  }

  private List<Rule> rules(Wave wave) {
    return new WaveAudit(task, plan)
        .findings(waves(task, wave)).stream().map(Finding::rule).distinct().toList();
  }

  /** With the hours that the audit finds; those that are told wrong have a test of their own. */
  private WavePlan waves(Task task, Wave wave) {
    WaveHours hours = new WaveHours(task, plan);
    PieceHours found = hours.of(wave);
    List<Wave> priced =
        List.of(
            new Wave(
                wave.number(),
                wave.laidBefore(),
                wave.laidAfter(),
                wave.fromCourse(),
                wave.toCourse(),
                wave.piles(),
                wave.brought(),
                wave.trips(),
                found));
    return new WavePlan(
        "test job", 1, "", priced, hours.straight(), hours.outside(priced).plus(found));
  }
}
