package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgArcTest {
  /** Quarters and three quarters of a circle of radius 10; bounds reckoned by hand. */
  @ParameterizedTest
  @CsvSource({
    "0 1, 0, -10, 10, 0",
    "0 0, 0, -10, 10, 0",
    "1 1, -10, -20, 10, 0",
    "1 0, 0, -10, 20, 10"
  })
  void boundsOfArcs(String flags, double x0, double y0, double x1, double y1) {
    Path2D path = SvgPath.of("M0 0A10 10 0 " + flags + " 10 -10");
    Rectangle2D bounds = path.getBounds2D();
    assertThat(bounds.getMinX()).isCloseTo(x0, within(0.1));
    assertThat(bounds.getMinY()).isCloseTo(y0, within(0.1));
    assertThat(bounds.getMaxX()).isCloseTo(x1, within(0.1));
    assertThat(bounds.getMaxY()).isCloseTo(y1, within(0.1));
    assertThat(path.getCurrentPoint().getX()).isCloseTo(10, within(1e-6));
    assertThat(path.getCurrentPoint().getY()).isCloseTo(-10, within(1e-6));
  }
}
