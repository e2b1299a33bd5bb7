package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.timber.MassRange;
import skidway.units.Figures;
import skidway.units.UnitSystem;

class MassWordsTest {
  private static final Figures METRIC = new Figures(UnitSystem.METRIC);

  @Test
  void aRangeIsSaidWithWhatIsLikely() {
    assertThat(MassWords.sentence(new MassRange(1217, 1480, 1717), METRIC))
        .isEqualTo("1\u00a0217 to 1\u00a0717 kg, likely 1\u00a0480 kg");
    assertThat(MassWords.sentence(MassRange.weighed(500), METRIC)).isEqualTo("500 kg");
    assertThat(MassWords.bare(1217, METRIC)).isEqualTo("1\u00a0217");
  }

  @Test
  void checkShowsLowLikelyAndHigh(@TempDir Path dir) throws Exception {
    Path job = DemoFolder.copy("cabin", dir);
    Path bundles = job.resolve("bundles.csv");
    List<String> lines = Files.readAllLines(bundles);
    Files.write(bundles, weighed(lines));
    String out = Shell.run("check", job.toString()).out();
    assertThat(out).containsPattern("bundle +load .* low +likely +high +first needed");
    assertThat(out).containsPattern("B03 .* weighed +600 +600 kg +W1-01-1");
    assertThat(out).containsPattern("\nB02 .* [\\d,]+ +[\\d,]+ +[\\d,]+ kg +W4-06-1");
    assertThat(out).contains("Limits are held to the high figures");
    assertThat(out.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
  }

  /** The first bundle of the list, B03, was on the scales. */
  private static List<String> weighed(List<String> lines) {
    return lines.stream()
        .map(l -> l.startsWith("bundle") ? l + ",mass" : l.startsWith("B03") ? l + ",600" : l + ",")
        .toList();
  }
}
