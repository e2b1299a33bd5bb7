package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.site.Deck;
import skidway.site.Grip;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.KeepClear;
import skidway.site.Machine;
import skidway.site.OverheadLine;
import skidway.site.Site;
import skidway.site.Yard;
import skidway.timber.GravityBasis;
import skidway.timber.Moisture;
import skidway.timber.Piece;
import skidway.timber.SpeciesTable;

/** Reads a job with every field that may be left out, in both systems of units. */
final class FullJobTest {
  private static final double FT = 0.3048;
  private static final double PSF = 0.04788025898;

  @TempDir Path temp;

  @Test
  void readsFloorAndGround() {
    Site site = site(JobFolder.full(temp));
    Deck deck = site.decks().get(0);
    assertThat(deck.totalKg().getAsDouble()).isCloseTo(9071.8, within(0.1));
    Joists joists = deck.joists().orElseThrow();
    assertThat(joists.directionDeg()).isEqualTo(90);
    assertThat(joists.spacingM()).isCloseTo(0.4064, within(1e-9));
    assertThat(joists.first().x()).isCloseTo(32 * FT, within(1e-9));
    assertThat(joists.supports()).hasSize(3);
    assertThat(((JoistDesign.LiveLoad) joists.design()).kpa()).isCloseTo(40 * PSF, within(1e-9));
    Yard yard = site.yards().get(0);
    assertThat(yard.soil()).isEqualTo("clay");
    assertThat(yard.allowedKpa()).isCloseTo(1500 * PSF, within(1e-9));
    assertThat(yard.slope()).isEqualTo(OptionalDouble.of(0.02));
    assertThat(yard.totalKg()).isEqualTo(OptionalDouble.of(60_000));
  }

  @Test
  void readsWhatStandsInTheWay() {
    Site site = site(JobFolder.full(temp));
    assertThat(site.wall("W4").orElseThrow().builtM()).isCloseTo(8 * FT, within(1e-9));
    assertThat(site.wall("W1").orElseThrow().builtM()).isZero();
    KeepClear trench = site.keepClears().get(1);
    assertThat(trench.excavation()).isTrue();
    assertThat(trench.depthM().getAsDouble()).isCloseTo(5 * FT, within(1e-9));
    assertThat(site.keepClears().get(0).excavation()).isFalse();
    OverheadLine line = site.overheadLines().get(0);
    assertThat(line.volts()).isCloseTo(7200, within(1e-9));
    assertThat(line.clearanceM().getAsDouble()).isCloseTo(12 * FT, within(1e-9));
    assertThat(line.to().y()).isCloseTo(88 * FT, within(1e-9));
  }

  @Test
  void readsTheMachine() {
    Machine machine = site(JobFolder.full(temp)).machine();
    assertThat(((Grip.Forks) machine.grip()).loadCentreM().getAsDouble())
        .isCloseTo(0.6096, within(1e-9));
    assertThat(machine.widthM().getAsDouble()).isCloseTo(8 * FT, within(1e-9));
    assertThat(machine.riggingKg()).isCloseTo(68.04, within(0.01));
    assertThat(machine.confirmedBy()).isEqualTo("R. Ode");
    assertThat(machine.stands().get(0).laneId()).isEqualTo("path");
    JobFolder slings =
        JobFolder.full(temp)
            .replace(
                "site.json",
                "\"forks\", \"loadCentre\": \"24 in\"",
                "\"slings\", \"angle\": 60, \"leg\": 2000");
    Grip.Slings grip = (Grip.Slings) site(slings).machine().grip();
    assertThat(grip.angleDeg()).isEqualTo(OptionalDouble.of(60));
    assertThat(grip.legKg().getAsDouble()).isCloseTo(907.2, within(0.1));
  }

  @Test
  void leavesUnknownWhatIsLeftOut() {
    Site site = site(JobFolder.in(temp));
    assertThat(site.decks().get(0).joists()).isEmpty();
    assertThat(site.decks().get(0).totalKg()).isEmpty();
    assertThat(site.yards().get(0).slope()).isEmpty();
    assertThat(site.yards().get(0).soil()).isEmpty();
    assertThat(site.overheadLines()).isEmpty();
    assertThat(site.machine().grip()).isEqualTo(new Grip.Unstated());
    assertThat(site.machine().widthM()).isEmpty();
    assertThat(site.machine().riggingKg()).isZero();
    assertThat(site.machine().confirmedBy()).isEmpty();
    assertThat(site.machine().stands().get(0).laneId()).isEmpty();
  }

  @Test
  void takesTheStrengthOfGroundFromItsSoil() {
    JobFolder folder =
        JobFolder.full(temp).replace("site.json", "\"allowed\": \"1500 psf\", \"slope", "\"slope");
    assertThat(site(folder).yards().get(0).allowedKpa()).isCloseTo(71.82, within(0.01));
    folder.replace("site.json", "\"Clay\"", "\"Peat\", \"allowed\": \"300 psf\"");
    assertThat(site(folder).yards().get(0).soil()).isEqualTo("peat");
    assertThat(site(folder).yards().get(0).allowedKpa()).isCloseTo(300 * PSF, within(1e-9));
  }

  @Test
  void takesTheStrengthOfJoistsFromTheirTimber() {
    JobFolder folder =
        JobFolder.full(temp)
            .replace(
                "site.json",
                "\"live\": 40",
                "\"species\": \"Hem-fir\", \"grade\": \"No.1\", \"size\": \"2x8\"");
    JoistDesign.Lumber lumber = lumber(folder);
    assertThat(lumber.name()).isEqualTo("hem-fir No.1 2x8");
    assertThat(lumber.bendingPa()).isCloseTo(1345.5 * 6894.757, within(1.0));
    assertThat(lumber.deadKpa()).isCloseTo(10 * PSF, within(1e-4));
    folder.replace("site.json", "\"2x8\"", "\"2x8\", \"dead\": 15");
    assertThat(lumber(folder).deadKpa()).isCloseTo(15 * PSF, within(1e-9));
  }

  @Test
  void readsWoodsAndMoistures() {
    List<Piece> pieces = JobReader.read(JobFolder.full(temp).path()).task().delivery().pieces();
    Piece larch = pieces.get(3);
    assertThat(larch.species().name()).isEqualTo("mill larch");
    assertThat(larch.species().gravity().basis()).isEqualTo(GravityBasis.AIR_DRY_VOLUME);
    assertThat(larch.species().gravity().value()).isEqualTo(0.52);
    assertThat(larch.species().spreadShare()).isCloseTo(0.08, within(1e-12));
    assertThat(larch.moisture()).isEqualTo(new Moisture(15, 20, 25));
    Piece hemlock = pieces.get(1);
    assertThat(hemlock.moisture()).isEqualTo(hemlock.species().green().orElseThrow());
    JobFolder others =
        JobFolder.full(temp)
            .replace("job.json", ", \"spread\": \"8 %\"", "")
            .replace("job.json", "12 %", "oven-dry")
            .replace("pieces.csv", "15-25", "15-17-25");
    larch = JobReader.read(others.path()).task().delivery().pieces().get(3);
    assertThat(larch.moisture()).isEqualTo(new Moisture(15, 17, 25));
    assertThat(larch.species().spreadShare()).isEqualTo(SpeciesTable.SPREAD_SHARE);
    assertThat(larch.species().gravity().basis()).isEqualTo(GravityBasis.OVEN_DRY_VOLUME);
  }

  /** Bare numbers count in the job's unit; what carries its unit stays what it is. */
  @Test
  void readsTheSameInMetricUnits() {
    Site site =
        site(
            JobFolder.full(temp)
                .replace("job.json", "\"us\"", "\"metric\"")
                .replace(
                    "site.json",
                    "[32, 52], [32, 65], [32, 78]",
                    "[32, 51.5], [32, 58], [32, 65], [32, 72], [32, 78.5]")
                .replace("site.json", "\"width\": 8", "\"width\": 2.5")
                .replace("site.json", "\"live\": 40", "\"live\": 1.9")
                .replace("site.json", "\"16 in\"", "0.4")
                .replace("site.json", "\"depth\": \"5 ft\"", "\"depth\": 1.5")
                .replace("site.json", "\"7.2 kV\"", "\"7200 V\"")
                .replace("site.json", "\"150 lb\"", "70"));
    Joists joists = site.decks().get(0).joists().orElseThrow();
    assertThat(((JoistDesign.LiveLoad) joists.design()).kpa()).isEqualTo(1.9);
    assertThat(joists.spacingM()).isEqualTo(0.4);
    assertThat(joists.first().x()).isEqualTo(32);
    assertThat(site.decks().get(0).totalKg().getAsDouble()).isCloseTo(9071.8, within(0.1));
    assertThat(site.keepClears().get(1).depthM()).isEqualTo(OptionalDouble.of(1.5));
    assertThat(site.overheadLines().get(0).volts()).isEqualTo(7200);
    assertThat(site.overheadLines().get(0).clearanceM().getAsDouble())
        .isCloseTo(12 * FT, within(1e-9));
    assertThat(site.machine().widthM()).isEqualTo(OptionalDouble.of(2.5));
    assertThat(site.machine().riggingKg()).isEqualTo(70);
    assertThat(site.yards().get(0).allowedKpa()).isCloseTo(71.82, within(0.01));
  }

  private static Site site(JobFolder folder) {
    Job job = JobReader.read(folder.path());
    assertThat(job.remarks()).isEmpty();
    return job.task().site();
  }

  private static JoistDesign.Lumber lumber(JobFolder folder) {
    return (JoistDesign.Lumber) site(folder).decks().get(0).joists().orElseThrow().design();
  }
}
