package skidway.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.timber.Moisture;
import skidway.timber.Piece;
import skidway.timber.Section;
import skidway.timber.SpeciesTable;

/**
 * Holds the folders under {@code demo-data} to what the generator writes. Run with {@code
 * -Dskidway.update=true} to write them anew.
 */
class DemoDataTest {
  private static final Path DEMO_DATA = Path.of("..", "demo-data");

  static List<DemoJob> jobs() {
    return DemoJob.all();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void foldersAreWhatTheGeneratorWrites(DemoJob job) throws IOException {
    Path folder = DEMO_DATA.resolve(job.folder());
    for (Map.Entry<String, String> file : job.files().entrySet()) {
      Path path = folder.resolve(file.getKey());
      if (Boolean.getBoolean("skidway.update")) {
        Files.createDirectories(folder);
        Files.writeString(path, file.getValue());
      }
      assertThat(Files.readString(path)).as(path.toString()).isEqualTo(file.getValue());
    }
  }

  @Test
  void theJobsHaveTheSizesTheDocumentsSpeakOf() {
    assertThat(Cabin.job().bundles()).hasSizeBetween(8, 12);
    assertThat(LHouse.job().bundles()).hasSizeBetween(26, 34);
    assertThat(PieceList.of(LHouse.job().house())).hasSizeGreaterThanOrEqualTo(250);
  }

  /** The folders give no distances from the left: Skidway finds the same places by itself. */
  @ParameterizedTest
  @MethodSource("jobs")
  void skidwayPutsEveryTimberWhereItWasCutFor(DemoJob job) {
    House house = job.house();
    Map<String, Timber> byMark =
        PieceList.of(house).stream().collect(Collectors.toMap(Timber::mark, t -> t));
    List<Piece> pieces = byMark.values().stream().map(t -> piece(house, t)).toList();
    PullOrder order = PullOrder.of(site(house), pieces);
    assertThat(order.placements()).hasSize(byMark.size());
    for (Placement placement : order.placements()) {
      Timber timber = byMark.get(placement.piece().mark());
      assertThat(placement.fromM())
          .as(timber.mark())
          .isCloseTo(house.ruler().metres(timber.from()), within(1e-6));
      assertThat(placement.bottomM())
          .as(timber.mark())
          .isCloseTo(house.ruler().metres(timber.bottom()), within(1e-6));
    }
  }

  private static Piece piece(House house, Timber t) {
    Ruler ruler = house.ruler();
    return new Piece(
        t.mark(),
        t.wall(),
        t.course(),
        t.position(),
        OptionalDouble.empty(),
        ruler.metres(t.length()),
        new Section(ruler.metres(house.thickness()), ruler.metres(t.height()), 1),
        SpeciesTable.find(house.species()).orElseThrow(),
        Moisture.of(house.moisturePct()),
        OptionalDouble.empty());
  }

  private static Site site(House house) {
    Machine machine =
        new Machine(
            "none", List.of(new MachineStand("M", new Point(0, 0))), List.of(new ChartRow(1, 1)));
    return new Site(
        "walls only",
        Outline.box(0, 0, 50, 50),
        90,
        house.ruler().metres(house.course()),
        house.walls().stream().map(w -> w.toWall(house)).toList(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        machine,
        List.of());
  }
}
