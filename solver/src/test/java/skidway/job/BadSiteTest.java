package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each test spoils one thing in job.json or site.json and expects the one problem it makes. */
final class BadSiteTest {
  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "units": "us" | "units": "imperial" | "imperial" | "imperial" as "units"
          "units": "us" | "unit": "us" | { | a job without "units" (did you mean "unit"?)
          "format": 1 | "format": 2 | format": ^2 | the number 2 as "format"
          "name": "Hut at the lake" | "name": "" | name": ^"" | "" as "name"
          "stackHeight": "5 ft" | "stackHight": "5 ft" | "stackHight" | unknown setting "stackHight" (did you mean "stackHeight"?)
          "stackHeight": "5 ft" | "stackHeight": "5 lb" | "5 lb" | "5 lb" as length
          "stackHeight": "5 ft" | "stackHeight": "16'-1\\"" | "16'-1 | 29 CFR 1926.250(b)(8)(iv)
          "stackHeight": "5 ft" | "walkWidth": "2 ft" | "2 ft" | a published limit changed without a reason
          "stackHeight": "5 ft" | "stackHeight": "8 ft" | "8 ft" | a hard rule made weaker without a reason; "stackHeight" higher than 6'-0" lets through what the hard rule stackHeight stops, so it takes a reason
          "stackHeight": "5 ft" | "stackHeight": {"value": "8 ft", "reason": "forks lift on"} | none | none
          "stackHeight": "5 ft" | "endOverhang": "1 ft" | none | none
          "stackHeight": "5 ft" | "endOverhang": "13 in" | "13 in" | a hard rule made weaker without a reason
          "stackHeight": "5 ft" | "endOverhang": {"value": "30 ft", "reason": "long timbers"} | "30 ft" | "endOverhang" is 0" to 3'-3 1/2"
          "stackHeight": "5 ft" | "sideOverhang": {"value": "4 ft", "reason": "wide"} | "4 ft" | "sideOverhang" is 0" to
          "stackHeight": "5 ft" | "bearerReach": "1 ft" | "1 ft" | "bearerReach" higher than 0" lets through what the hard rules zoneLoad, bearingApart, joistBending, joistShear stop, so it
          "stackHeight": "5 ft" | "stackGap": 0 | "stackGap": ^0 | "stackGap" lower than 1'-0" lets through what the hard rules spotsApart, groundPressure stop
          "stackHeight": "5 ft" | "stackGap": "3 ft" | none | none
          "stackHeight": "5 ft" | "machineStandRoom": "4'-11\\"" | none | none
          "stackHeight": "5 ft" | "bearerHeight": "1 in" | "1 in" | a hard rule made weaker without a reason
          "stackHeight": "5 ft" | "rackPacking": "90 %" | "90 %" | a hard rule made weaker without a reason
          "stackHeight": "5 ft" | "walkWidth": {"value": "6 in", "reason": "thin crew"} | "6 in" | "walkWidth" is 1'-0" to
          "stackHeight": "5 ft" | "machineCrew": 3 | none | none
          "value": "4 ft", "reason": "guard barricade along the edge" | "value": "4 ft" | {"value" | without "reason"
          """)
  void job(String old, String other, String place, String message) {
    assertProblem("job.json", old, other, place, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "course": "6 in" | "course": "6 stone" | "6 stone" | "6 stone" as length; a length is a number in feet or text such as 16'-4 1/2" or 4.99 m
          "course": "6 in" | "course": 6 | "course": ^6 | 6 as length, that is 6'-0"; the height of a course is 1" to 3'-3 1/2"
          "course": "6 in" | "course": NaN | NaN | "NaN" as length
          "course": "6 in" | "course": true | true | true as "course"
          "course": "6 in" | "cours": "6 in" | { | a site without "course" (did you mean "cours"?)
          [0, 0], [130, 0], [130, 90], [0, 90] | [0, 0], [130, 90], [130, 0], [0, 90] | [[0, 0], [130, 90] | an outline whose sides 1 and 3 meet
          [0, 0], [130, 0], [130, 90], [0, 90] | [0, 0], [130, 0], [130, 90], [0, 90], [0, 0] | [[0, 0], [130, 0] | an outline whose corner 5 is also the next one
          [0, 0], [130, 0], [130, 90], [0, 90] | [0, 0], [130, 0] | [[0, 0], [130, 0]] | a list of 2 as "boundary"
          [0, 0], [130, 0], [130, 90], [0, 90] | [0, 0], [130], [130, 90], [0, 90] | [130] | a list of 1 as a point; a point is a list of two lengths, [x, y]
          [0, 0], [130, 0], [130, 90], [0, 90] | [0, 0], [130, 0], [1e5, 90], [0, 90] | 1e5 | 1e5 as length, that is 100,000'-0"; a coordinate is
          {"id": "W2" | {"id": "W1" | {"id": ^"W1", "from": [65 | a second wall "W1"; the first is in line 8
          "from": [65, 52], "to": [65, 78] | "from": [65, 52], "to": [65, 52] | [65, 52], "to": ^[65, 52] | wall "W2" ending where it starts
          "from": "13 ft" | "from": "30 ft" | "3'-2 | opening "D1" ending 33'-2" from the wall's start; wall "W1" is 32'-0" long
          "head": "6 ft" | "head": "2 ft" | "2 ft"} | opening "N1" with its head at 2'-0"
          "kind": "window" | "kind": "hatch" | "hatch" | "hatch" as "kind"; "kind" is one of door, window
          "starter": "half"}, | "starter": "quarter"}, | "quarter" | "quarter" as "starter"
          [54, 60], [54, 70] | [54, 60], [74, 70] | [[50, 60] | floor opening "stair" reaching beyond deck "deck"
          [66, 51], [66, 79] | [66, 79], [66, 51] | [[32, 51] | an outline whose sides 1 and 3 meet
          "top": [48, 53] | "top": [48, 50] | [48, 50] | steps "S1" whose top is not on deck "deck"
          "top": [48, 53] | "top": [52, 65] | [52, 65] | steps "S1" whose top is not on deck "deck"
          "top": [48, 53] | "top": [48, 51] | none | none
          "foot": [48, 48] | "foot": [48, 52] | [48, 52], "top" | steps "S1" whose foot is on deck "deck"
          "foot": [48, 48], "top": [48, 53] | "foot": [48, 51], "top": [48, 53] | none | none
          "yards": [ | "yards": [{"id": "east", "outline": [[90, 25], [110, 25], [110, 35], [90, 35]], "allowed": "900 psf"}, | [[16, 20] | yard "yard" over yard "east"; yards lie beside each other and may touch
          "yards": [ | "yards": [{"id": "east", "outline": [[98, 20], [110, 20], [110, 40], [98, 40]], "allowed": "900 psf"}, | none | none
          "decks": [ | "decks": [{"id": "porch", "outline": [[60, 75], [70, 75], [70, 85], [60, 85]], "height": "2 ft", "allowed": "60 psf"}, | [[32, 51] | deck "deck" over deck "porch"; decks lie beside each other and may touch
          "decks": [ | "decks": [{"id": "porch", "outline": [[40, 55], [45, 55], [45, 58], [40, 58]], "height": "2 ft", "allowed": "60 psf"}, | [[32, 51] | deck "deck" over deck "porch"
          "decks": [ | "decks": [{"id": "porch", "outline": [[66, 51], [66, 79], [32, 79], [32, 51]], "height": "2 ft", "allowed": "60 psf"}, | [[32, 51], [66, 51] | deck "deck" over deck "porch"
          "decks": [ | "decks": [{"id": "porch", "outline": [[20, 60], [80, 60], [80, 65], [20, 65]], "height": "2 ft", "allowed": "60 psf"}, | [[32, 51] | deck "deck" over deck "porch"
          "decks": [ | "decks": [{"id": "porch", "outline": [[66, 51], [76, 51], [76, 79], [66, 79]], "height": "2 ft", "allowed": "60 psf"}, | none | none
          "decks": [ | "decks": [{"id": "porch", "outline": [[30, 49], [68, 49], [68, 81], [67, 81], [67, 50], [30, 50]], "height": "2 ft", "allowed": "60 psf"}, | none | none
          [98, 20], [98, 40] | [98, 20], [198, 40] | [[16, 20] | yard "yard" reaching beyond the site's boundary
          [48, 10], [48, 48] | [48, -10], [48, 48] | [[48, -10] | lane "path" reaching beyond the site's boundary
          "centre": [60, 7] | "centre": [60, 3] | [60, 3] | truck stand "gate" reaching beyond the site's boundary
          "at": [66, 16] | "at": [66, -16] | [66, -16] | machine stand "M" reaching beyond the site's boundary
          "foot": [48, 48] | "foot": [48, -1] | [{"id": "S1" | steps "S1" reaching beyond the site's boundary
          "reach": "40 ft" | "reach": "20 ft" | "20 ft", "capacity": "4000 lb" | reach 20'-0" after 20'-0"; the reach grows from row to row
          "capacity": "4000 lb" | "capacity": "8000 lb" | "8000 lb" | a capacity above that of the shorter reach
          "capacity": "4000 lb" | "capacity": "4000 ft" | "4000 ft" | "4000 ft" as mass
          "capacity": "4000 lb" | "capacity": "-4 lb" | "-4 lb" | "-4 lb" as mass
          "zone": "yard" | "zone": "yrad" | "yrad" | unknown deck or yard "yrad" (did you mean "yard"?)
          "length": "17 ft" | "length": "17 m" | none | none
          "length": "17 ft" | "length": "170 ft" | "170 ft" | 170 ft as length, that is 170'-0"; the length of a spot is
          "reason": "roots" | "reson": "roots" | {"id": "oak" | without "reason" (did you mean "reson"?)
          "margin": "3 ft" | "margin": "-3 ft" | "-3 ft" | -3 ft as length, that is -3'-0"; a margin is 0" to
          "id": "deck", "outline" | "id": "yard", "outline" | "yard", "outline": [[16 | a second deck or yard "yard"
          "id": "oak" | "id": "" | "", "outline" | "" as "id"
          "id": "oak" | "id": "oak", "id": "ash" | "id": "ash" | a second field "id"; the first is in line 20
          "stands": [{"id": "M", "at": [66, 16]}] | "stands": [] | "stands": ^[] | a list of 0 as "stands"
          "stands": [{"id": "M", "at": [66, 16]}] | "stands": [7] | "stands": [^7 | the number 7; a machine stand is an object in braces
          """)
  void site(String old, String other, String place, String message) {
    assertProblem("site.json", old, other, place, message);
  }

  @Test
  void clockwiseWallsAreAProblemBecauseLeftAndRightWouldSwap() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace(
                "site.json",
                "\"from\": [33, 52], \"to\": [65, 52]",
                "\"from\": [65, 52], \"to\": [33, 52]")
            .replace(
                "site.json",
                "\"from\": [65, 52], \"to\": [65, 78]",
                "\"from\": [33, 52], \"to\": [33, 78]")
            .replace(
                "site.json",
                "\"from\": [65, 78], \"to\": [33, 78]",
                "\"from\": [33, 78], \"to\": [65, 78]")
            .replace(
                "site.json",
                "\"from\": [33, 78], \"to\": [33, 52]",
                "\"from\": [65, 78], \"to\": [65, 52]");
    assertThat(Spoiled.problems(folder))
        .singleElement()
        .matches(p -> p.line() == 8)
        .asString()
        .contains("walls that go round clockwise, from \"W1\"");
  }

  @Test
  void openWallsAreARemark() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace(
                "site.json",
                "\"from\": [33, 78], \"to\": [33, 52]",
                "\"from\": [33, 78], \"to\": [33, 60]");
    assertThat(JobReader.read(folder.path()).remarks())
        .singleElement()
        .asString()
        .contains("walls that do not close a ring");
  }

  @Test
  void unknownFieldsAreRemarks() {
    JobFolder folder =
        JobFolder.in(temp).replace("site.json", "\"margin\": \"3 ft\"", "\"margn\": \"3 ft\"");
    assertThat(JobReader.read(folder.path()).remarks())
        .singleElement()
        .asString()
        .contains("an unknown field \"margn\" (did you mean \"margin\"?)");
  }

  @Test
  void overlappingOpeningsAreAProblem() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace(
                "site.json",
                "\"openings\": [{\"id\": \"N1\"",
                "\"openings\": [{\"id\": \"N2\", \"kind\": \"window\", \"from\": \"8 ft\", \"width\": \"4 ft\", \"sill\": \"2 ft\", \"head\": \"5 ft\"}, {\"id\": \"N1\"");
    assertThat(Spoiled.problems(folder))
        .singleElement()
        .asString()
        .contains("opening \"N1\" over opening \"N2\"");
  }

  private void assertProblem(String file, String old, String other, String place, String message) {
    Spoiled.expect(JobFolder.in(temp).replace(file, old, other), file, place, message);
  }
}
