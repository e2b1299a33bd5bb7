package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.site.Wall;

/** Walls read off a drawing are the same as taped ones. */
final class PlanDrawingTest {
  private static final String TAPED =
      Lines.HOUSE
          .replace("W1 east 36'", "W1 east 10 m")
          .replace("W2 north 28'", "W2 north 8 m")
          .replace("W3 west 36'", "W3 west 10 m")
          .replace("W4 south 28'", "W4 south 8 m");

  private static final String DRAWN =
      TAPED
          .replaceAll("(?m)^wall W1 .*$", "plan house.svg unit 1 mm")
          .replaceAll("(?m)^wall W.*\n", "");

  @TempDir Path folder;

  private static String svg(String shape) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\">\n<g>\n" + shape + "\n</g></svg>";
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<polygon points='0,8000 10000,8000 10000,0 0,0'/>",
        "<polyline points='0 8000 1e4 8000 1e4 0 0 0 0 8000'/>",
        "<path d='M0 8000 H10000 V0 H0 Z'/>",
        "<path d='m0,8000 10000,0 0,-8000-10000,0z'/>",
        "<path d='M0 8000L10000 8000l0-8000L0 0L0 8000'/>",
        "<rect y='0' width='10000' height='8000'/>"
      })
  void anOutlineIsTheHouse(String shape) {
    List<Wall> taped = Lines.read(folder, TAPED).task().site().walls();
    Lines.write(folder, "house.svg", svg(shape));
    List<Wall> drawn = Lines.read(folder, DRAWN).task().site().walls();
    // The first corner may be another one, and then ids differ; the house is the same size.
    assertThat(drawn.stream().map(w -> Math.round(w.lengthM() * 1000)).sorted())
        .isEqualTo(taped.stream().map(w -> Math.round(w.lengthM() * 1000)).sorted().toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<path d='M0 0 C 1 1 2 2 3 3 Z'/>",
        "<path d='M0 0 L 5 5 M 6 6 L 7 7'/>",
        "<polygon points='0,0 5'/>",
        "<polygon points='0,0 5,5'/>",
        "<polygon points='0,0 5,5 a,b'/>",
        "<rect width='5%' height='4'/>",
        "<g transform='scale(2)'><rect width='5' height='4'/></g>",
        "<rect width='5' height='4'/><rect width='5' height='4'/>",
        "<circle r='4'/>",
        "<polyline points='0,8000 10000,8000 10000,0 0,0'/>",
        "<path d='M0 8000 H10000 V0 H0 V7900'/>",
        "<rect width='8.534' height='7.315'/>",
        "<rect width='8534000' height='7315'/>",
        "<rect width='5'"
      })
  void whatIsNoOutlineIsTold(String shape) {
    Lines.write(folder, "house.svg", svg(shape));
    assertThat(Lines.problems(folder, DRAWN))
        .containsOnlyOnce(": found ")
        .containsPattern("^house.svg|longest wall")
        .contains("Way out: ");
  }

  @Test
  void aLineThatComesBackAsNearAsATapeDoesIsClosed() {
    Lines.write(
        folder, "house.svg", svg("<polyline points='0,8000 10000,8000 10000,0 0,0 40,7970'/>"));
    assertThat(Lines.read(folder, DRAWN).task().site().walls()).hasSize(4);
  }

  @Test
  void anOutlineOfCountlessCornersIsNoHouse() {
    StringBuilder corners = new StringBuilder();
    for (int i = 0; i < 201; i++) {
      double turn = 2 * Math.PI * i / 201;
      corners.append(
          String.format(Locale.ROOT, "%.3f,%.3f ", 9e3 * Math.cos(turn), 9e3 * Math.sin(turn)));
    }
    Lines.write(folder, "house.svg", svg("<polygon points='" + corners + "'/>"));
    assertThat(Lines.problems(folder, DRAWN)).contains("201 corners").containsOnlyOnce(": found ");
  }

  @Test
  void nothingElseIsOpened() {
    Lines.write(folder, "secret.txt", "0,0 5,0 5,5");
    Lines.write(
        folder,
        "house.svg",
        "<!DOCTYPE svg [<!ENTITY e SYSTEM \"secret.txt\">]>\n" + svg("<polygon points='&e;'/>"));
    assertThat(Lines.problems(folder, DRAWN)).startsWith("house.svg");
    assertThat(Lines.problems(folder, DRAWN.replace("house.svg", "\"../house.svg\"")))
        .contains("a drawing lies beside the description");
  }
}
