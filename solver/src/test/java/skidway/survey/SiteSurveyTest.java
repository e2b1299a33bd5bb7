package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.Wall;

/** Lines become the site that a tape would find. */
final class SiteSurveyTest {
  private static final double FOOT = 0.3048;

  /** Places are written to a ten-thousandth of a foot. */
  private static final double WRITTEN = 0.0001;

  @TempDir Path folder;

  private Site site(String more) {
    return Lines.read(folder, Lines.HOUSE + more).task().site();
  }

  private static void at(Point p, double xFt, double yFt) {
    assertThat(p.x()).isCloseTo(xFt * FOOT, within(WRITTEN));
    assertThat(p.y()).isCloseTo(yFt * FOOT, within(WRITTEN));
  }

  @Test
  void wallsAreTapedOutsideAndGoFromCentreLineToCentreLine() {
    List<Wall> walls = site("").walls();
    assertThat(walls).extracting(Wall::id).containsExactly("W1", "W2", "W3", "W4");
    at(walls.get(0).start(), 4 / 12.0, 4 / 12.0);
    at(walls.get(0).end(), 36 - 4 / 12.0, 4 / 12.0);
    at(walls.get(2).start(), 36 - 4 / 12.0, 28 - 4 / 12.0);
    assertThat(walls)
        .extracting(Wall::starter)
        .containsExactly(Starter.FULL, Starter.HALF, Starter.FULL, Starter.HALF);
  }

  @Test
  void clockwiseWallsAreTurnedRound() {
    String clockwise =
        Lines.HOUSE
            .replace("W1 east 36'", "W1 west 36'")
            .replace("W3 west 36'", "W3 east 36'")
            .replace("truck", "door D in W2 6' from left wide 3' head 6'8\"\ntruck");
    SiteSurvey survey = Lines.read(folder, clockwise);
    assertThat(survey.notes()).anyMatch(n -> n.contains("listed clockwise"));
    List<Wall> walls = survey.task().site().walls();
    assertThat(walls).extracting(Wall::id).containsExactly("W1", "W4", "W3", "W2");
    at(walls.get(0).start(), -36 + 4 / 12.0, 4 / 12.0);
    at(walls.get(3).start(), -36 + 4 / 12.0, 28 - 4 / 12.0);
    Wall w2 = walls.get(3);
    at(w2.at(w2.openings().get(0).fromM()), -36 + 4 / 12.0, 28 - 6);
  }

  @Test
  void wallsThatNearlyCloseShareTheGap() {
    SiteSurvey survey = Lines.read(folder, Lines.HOUSE.replace("W3 west 36'", "W3 west 36'-1\""));
    assertThat(survey.notes()).anyMatch(n -> n.contains("1\" from where they began, 1:1537"));
    List<Wall> walls = survey.task().site().walls();
    double perimeterFt = 128 + 1 / 12.0;
    double eastFt = 36 + 36 / perimeterFt / 12;
    assertThat(walls.get(0).lengthM()).isCloseTo((eastFt - 8 / 12.0) * FOOT, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({
    "W2 north 28', W2 N 0 E 28'",
    "W2 north 28', W2 turn left 28'",
    "W2 north 28', W2 up 28'",
    "W2 north 28', W2 azimuth 0 28'",
    "W2 north 28', W2 by 28' north 0' east",
    "W4 south 28', W4 close"
  })
  void aWallMayBeToldInManyWays(String one, String other) {
    List<Wall> walls = site("").walls();
    List<Wall> same = Lines.read(folder, Lines.HOUSE.replace(one, other)).task().site().walls();
    assertThat(same).isEqualTo(walls);
  }

  @Test
  void northTurnsTheCompassAndNotTheDrawing() {
    Site turned = Lines.read(folder, Lines.HOUSE + "north 75").task().site();
    assertThat(turned.northDeg()).isEqualTo(75);
    Point along = turned.walls().get(0).along();
    assertThat(Math.toDegrees(Math.atan2(along.y(), along.x()))).isCloseTo(-15, within(0.01));
  }

  @Test
  void thingsLieWhereTheTapeSays() {
    Site site =
        site(
            """
            door D in W1 10' from left wide 3' head 6'-8"
            window N in W2, middle, 4' wide, sill 3', head 7'
            yard north 12' off W3 6' from left long 20' wide 10' bears 1000 psf
            lane L 3' off W2 full length wide 5'
            tree oak 12' off W4 6' from right radius 2' margin 3'
            trench T 12' off W2, middle, long 10', wide 4', deep 4'
            keep well 30' off W2 middle long 3' wide 3' because "well" walkable
            hole stair in deck 12' inside W1 4' from left long 10' wide 3'
            steps S onto deck at W1 10' from left run 3' wide 3'
            spot A1 in south kind stack 12' off W1 6' from left long 17' wide 3' open wall strip 3'
            joists of deck square to W1 supports 0 14' 28' first 0 spacing 16" live 40 psf
            partition P from W1 12' to W3 starter full
            wire street 45' off W1 voltage 7.2 kV
            """);
    at(site.walls().get(0).at(site.walls().get(0).openings().get(0).fromM()), 10, 4 / 12.0);
    at(site.walls().get(1).at(site.walls().get(1).openings().get(0).fromM()), 36 - 4 / 12.0, 12);
    // W3 goes west: 6' from its left end is 6' from the east corner.
    at(site.yards().get(1).outline().corners().get(3), 30, 40);
    assertThat(site.yards().get(1).outline().areaM2()).isCloseTo(200 * FOOT * FOOT, within(0.001));
    at(site.lanes().get(0).centreLine().get(0), 41.5, 0);
    at(site.lanes().get(0).centreLine().get(1), 41.5, 28);
    // W4 goes south: 6' from its right end is 6' from the south corner.
    double sum = site.keepClears().get(0).outline().corners().stream().mapToDouble(Point::y).sum();
    assertThat(sum / 8).isCloseTo(6 * FOOT, within(WRITTEN));
    assertThat(site.keepClears().get(1).excavation()).isTrue();
    assertThat(site.keepClears().get(2).walkable()).isTrue();
    at(site.decks().get(0).openings().get(0).outline().corners().get(0), 4, 12 + 8 / 12.0);
    at(site.decks().get(0).steps().get(0).foot(), 11.5, -3);
    assertThat(site.spots().get(0).openSide()).isEqualTo(OpenSide.LEFT);
    at(site.spots().get(0).towardsOpenSide().times(FOOT), 0, 1);
    at(site.decks().get(0).joists().orElseThrow().supports().get(1), 18, 14);
    at(site.walls().get(4).end(), 12, 28 - 4 / 12.0);
    assertThat(site.overheadLines().get(0).from().y()).isCloseTo(-45 * FOOT, within(WRITTEN));
    assertThat(site.overheadLines().get(0).from().x())
        .isLessThan(site.boundary().corners().get(0).x());
  }

  @Test
  void theOutsideCornersAreCheckedAcross() {
    assertThat(Lines.read(folder, Lines.HOUSE).checks())
        .containsExactly(
            "Outside corner where W1 begins to outside corner where W2 ends: 45'-7 1/2\".",
            "Outside corner where W2 begins to outside corner where W3 ends: 45'-7 1/2\".");
  }
}
