package skidway.layout;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.staging.BenchmarkPage;
import skidway.staging.ProcessorTime;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;

/**
 * How layout, exclusion and walks grow with obstacles and spots. Run by the Maven profile {@code
 * benchmark}.
 */
class GroundBenchmark {
  private static final Settings SETTINGS = Settings.defaults();
  private static final int COURSES = 24;

  @Test
  void writeTheTable() throws IOException {
    row(10, 100);
    List<String> lines = new ArrayList<>();
    lines.add("| obstacles | spots | layout | who excludes whom | all walks of 96 pieces |");
    lines.add("|---|---|---|---|---|");
    for (int obstacles : List.of(10, 50, 100, 500)) {
      lines.add(row(obstacles, 1000));
    }
    for (int spots : List.of(100, 10_000)) {
      lines.add(row(50, spots));
    }
    BenchmarkPage.write("ground", lines);
  }

  private static String row(int obstacles, int count) {
    Site site = site(obstacles);
    double layoutS =
        seconds(
            () -> SpotLayout.candidates(site, Tasks.task(site, bundles()).delivery(), SETTINGS));
    List<Spot> spots = grid(count);
    double exclusionS = seconds(() -> Exclusion.of(spots, site, SETTINGS));
    PullOrder order = Tasks.task(site, bundles()).pullOrder();
    Walker walker = new Walker(SETTINGS.get(Setting.STEP_OVER), SETTINGS.get(Setting.CLIMB_FACTOR));
    double walksS =
        seconds(
            () ->
                WalkingDistances.between(
                    site, walker, spots.stream().map(Spot::access).toList(), order));
    return String.format(
        Locale.ROOT,
        "| %d | %,d | %.2f s | %.2f s | %.2f s |",
        obstacles,
        count,
        layoutS,
        exclusionS,
        walksS);
  }

  private static double seconds(Runnable work) {
    double beganS = ProcessorTime.nowS();
    work.run();
    return ProcessorTime.nowS() - beganS;
  }

  /** The house of the tests and trees of 30 cm all over the ground west, north and east of it. */
  private static Site site(int obstacles) {
    SiteBuilder site = aSite().yards(new Yard("yard", Outline.box(1, 4, 39, 15), 70));
    int columns = (int) Math.ceil(Math.sqrt(2.0 * obstacles));
    for (int i = 0; i < obstacles; i++) {
      int row = i / columns;
      double x = 1 + 38.0 * (i % columns) / columns;
      double y = 4.2 + 9.5 * row * columns / obstacles;
      site.keepClear("tree " + i, Outline.box(x, y, x + 0.3, y + 0.3), 0, false);
    }
    return site.build();
  }

  private static List<Spot> grid(int count) {
    int columns = (int) Math.ceil(Math.sqrt(3.0 * count));
    return IntStream.range(0, count)
        .mapToObj(
            i -> {
              int row = i / columns;
              double x = 3 + 33.0 * (i % columns) / columns;
              return spot("S" + i, "yard", x, 5 + 9.0 * row * columns / count, 2, 0.6);
            })
        .toList();
  }

  /** Four walls of 24 courses, a piece each, in eight bundles. */
  private static Bundle[] bundles() {
    return IntStream.range(0, 8)
        .mapToObj(
            b -> {
              var bundle = aBundle("B" + b).size(2, 0.6, 0.4);
              for (int p = 0; p < 12; p++) {
                bundle.piece("W" + (1 + p % 4), 1 + (3 * b + p / 4) % COURSES, 1, 1.9, 1 + p / 4);
              }
              return bundle.build();
            })
        .toArray(Bundle[]::new);
  }
}
