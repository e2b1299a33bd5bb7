package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.Point;

class CompassTest {
  @ParameterizedTest
  @CsvSource({
    "0, 1, 90, north", "1, 0, 90, east", "-1, 0, 90, west", "0, -1, 90, south",
    "1, 1, 90, north-east", "1, 0, 0, north", "0, 1, 0, west", "0, 1, 102, north",
    "0, 1, 135, north-east", "-1, -1, 90, south-west"
  })
  void directionsAreNamedAgainstNorth(double x, double y, double northDeg, String name) {
    assertThat(Compass.name(new Point(x, y), northDeg)).isEqualTo(name);
  }
}
