package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import skidway.site.Point;

class TapeFixTest {
  private static final TapeSight OPEN = new TapeSight(List.of());

  /** All pairs by themselves are the oracle for what is left out before pairs are tried. */
  @Test
  void ofManyReferencesTheBestTwoAreFound() {
    Random random = new Random(5);
    for (int site = 0; site < 40; site++) {
      List<Reference> references = new ArrayList<>();
      for (int i = 0; i < 24; i++) {
        references.add(new Reference(Reference.letters(i), point(random), "somewhere", false));
      }
      Point corner = point(random);
      List<TapeFix> pairs = new ArrayList<>();
      for (int i = 0; i < references.size(); i++) {
        for (int j = 0; j < i; j++) {
          List<Reference> two = List.of(references.get(j), references.get(i));
          TapeFix.best(corner, two, OPEN).ifPresent(pairs::add);
        }
      }
      Optional<TapeFix> best = pairs.stream().min(Comparator.comparingDouble(TapeFixTest::badness));
      assertThat(TapeFix.best(corner, references, OPEN)).isEqualTo(best);
    }
  }

  /** Degrees from square, and two for every metre of tape. */
  private static double badness(TapeFix fix) {
    return Math.abs(fix.angleDeg() - 90) + 2 * (fix.firstM() + fix.secondM());
  }

  private static Point point(Random random) {
    return new Point(100 * random.nextDouble(), 60 * random.nextDouble());
  }
}
