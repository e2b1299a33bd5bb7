package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LoadLookTest {
  /**
   * Full-strength simulation matrices on linear RGB: Machado, Oliveira, Fernandes 2009, table 1.
   */
  enum Vision {
    USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(
        0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
        1.051998),
    DEUTERANOPIA(
        0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(
        1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
        0.303900);

    private final double[] matrix;

    Vision(double... matrix) {
      this.matrix = matrix;
    }

    double[] seen(double[] rgb) {
      double[] out = new double[3];
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          out[i] += matrix[3 * i + j] * rgb[j];
        }
        out[i] = Math.max(0, Math.min(1, out[i]));
      }
      return out;
    }
  }

  @ParameterizedTest
  @EnumSource
  void coloursAreToldApartByEverybody(Vision vision) {
    LoadLook[] looks = LoadLook.values();
    for (int i = 0; i < looks.length; i++) {
      for (int j = i + 1; j < looks.length; j++) {
        double[] a = lab(vision.seen(linear(looks[i].colour())));
        double[] b = lab(vision.seen(linear(looks[j].colour())));
        double apart = Math.sqrt(sq(a[0] - b[0]) + sq(a[1] - b[1]) + sq(a[2] - b[2]));
        assertThat(apart).as(looks[i] + " and " + looks[j]).isGreaterThan(12);
      }
    }
  }

  @Test
  void patternsAreToldApartWithoutColour() {
    Set<List<String>> drawn = new HashSet<>();
    for (int turn = 1; turn <= LoadLook.values().length; turn++) {
      Markup page = new Markup();
      LoadLook.fill(new Drawing(page), turn, Box.at(0, 0, 5, 4).corners());
      drawn.add(
          Stream.of(page.done().replaceAll("fill=\"#[0-9a-f]+\"", "").split("(?=<)", -1)).toList());
    }
    assertThat(drawn).hasSameSizeAs(LoadLook.values());
  }

  private static double sq(double x) {
    return x * x;
  }

  private static double[] linear(String hex) {
    double[] rgb = new double[3];
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      rgb[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
    return rgb;
  }

  private static double[] lab(double[] rgb) {
    double x = f((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505);
    double y = f(0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]);
    double z = f((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.089);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double f(double t) {
    return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16.0 / 116;
  }
}
