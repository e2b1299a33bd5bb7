package skidway.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.timber.SpeciesTable;
import skidway.timber.WoodDensity;

/** Checks that the demo bundles are what a mill would put on two trucks. */
class BundlingTest {
  private static final double HEAVIEST_KG = 900;

  static List<DemoJob> jobs() {
    return DemoJob.all();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyTimberIsInOneBundle(DemoJob job) {
    assertThat(job.bundles())
        .flatExtracting(MillBundle::timbers)
        .containsExactlyInAnyOrderElementsOf(PieceList.of(job.house()))
        .extracting(Timber::mark)
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void bundlesComeOffEachLoadOneByOne(DemoJob job) {
    List<MillBundle> bundles = job.bundles();
    assertThat(bundles).extracting(MillBundle::id).doesNotHaveDuplicates();
    for (String load : List.of("L1", "L2")) {
      List<Integer> turns =
          bundles.stream().filter(b -> b.load().equals(load)).map(MillBundle::offOrder).toList();
      assertThat(turns)
          .hasSizeGreaterThan(2)
          .isEqualTo(IntStream.rangeClosed(1, turns.size()).boxed().toList());
    }
  }

  /** The mill's order is not the crew's: most bundles hold timbers from low and high courses. */
  @ParameterizedTest
  @MethodSource("jobs")
  void bundlesMixCourses(DemoJob job) {
    List<MillBundle> bundles = job.bundles();
    long mixed = bundles.stream().filter(b -> courseSpread(b) >= 4).count();
    assertThat(mixed).isGreaterThanOrEqualTo(bundles.size() * 3L / 4);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void bundlesAreBandedInFullLayersOfOneHeight(DemoJob job) {
    for (MillBundle bundle : job.bundles()) {
      assertThat(bundle.timbers()).extracting(Timber::height).containsOnly(first(bundle).height());
      assertThat(bundle.layers()).isBetween(1, job.bundling().layers());
      for (int layer = 1; layer < bundle.layers(); layer++) {
        int looked = layer;
        assertThat(IntStream.range(0, bundle.timbers().size()))
            .filteredOn(i -> bundle.layerOf(i) == looked)
            .hasSize(bundle.wide());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void shortTimbersHaveBundlesOfTheirOwn(DemoJob job) {
    int longestShort = job.bundling().classes().get(0);
    for (MillBundle bundle : job.bundles()) {
      boolean half = first(bundle).height() < job.house().course();
      boolean hasShort = bundle.timbers().stream().anyMatch(t -> t.length() <= longestShort);
      assertThat(half || !hasShort || bundle.length() <= longestShort).as(bundle.id()).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noBundleIsTooHeavyForTheMachine(DemoJob job) {
    assertThat(job.bundles())
        .allSatisfy(b -> assertThat(massKg(job.house(), b)).isBetween(50.0, HEAVIEST_KG));
  }

  private static double massKg(House house, MillBundle bundle) {
    Ruler ruler = house.ruler();
    double volumeM3 =
        bundle.timbers().stream()
            .mapToDouble(
                t ->
                    ruler.metres(t.length())
                        * ruler.metres(t.height())
                        * ruler.metres(house.thickness()))
            .sum();
    return volumeM3
        * WoodDensity.kgPerM3(
            SpeciesTable.find(house.species()).orElseThrow(), house.moisturePct());
  }

  private static int courseSpread(MillBundle bundle) {
    var courses = bundle.timbers().stream().mapToInt(Timber::course).summaryStatistics();
    return courses.getMax() - courses.getMin();
  }

  private static Timber first(MillBundle bundle) {
    return bundle.timbers().get(0);
  }
}
