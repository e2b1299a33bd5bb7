package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each test spoils one thing that limits depend on: joists, ground, trenches, lines, slings, woods,
 * settings that bound each other. It expects the one problem that this makes.
 */
final class BadLimitsTest {
  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "live": 40 | "live": 40 | none | none
          "live": 40 | "live": 4000 | 4000 | 4000 as area load, that is 4,000 psf; a floor's live load is
          "live": 40 | "note": "strong" | {"direction" | joists whose strength nobody said; either "live", the load that the floor was designed for, or "species", "grade" and "size" of the joists. Way out: ask the floor's designer
          "live": 40 | "live": 40, "size": "2x10" | 40, "size | joists with "live" and with timber
          "live": 40 | "species": "Hem-Fir", "grade": "No. 2", "size": "2 x 10" | none | none
          "live": 40 | "species": "Hem-Fir", "grade": "No. 2" | {"direction" | a set of joists without "size"
          "live": 40 | "species": "Hem-Fir", "grade": "No. 5", "size": "2x10" | "Hem-Fir" | joists of "Hem-Fir No. 5 2x10"; known are douglas fir-larch No.2, hem-fir No.1, hem-fir No.2, spruce-pine-fir No.2 in 2x6, 2x8, 2x10, 2x12. Way out: correct them, or give "live"
          "live": 40 | "species": "Hem-Fir", "grade": "No. 2", "size": "2x10", "dead": "500 psf" | "500 psf" | a floor's own weight is 0 psf to
          "spacing": "16 in" | "spacing": "16 ft" | "16 ft" | the spacing of joists is 4" to 6'-6 1/2"
          "direction": 90 | "direction": 900 | 900 | a direction is -360.0° to 360.0°
          "direction": 90 | "direction": 0 | [[32, 52], [32, 65] | two supports at one place along the joists of deck "deck"; supports lie 1'-0" or more apart
          [32, 52], [32, 65], [32, 78] | [32, 52], [32, 52.5], [32, 78] | [[32, 52], [32, 52.5] | two supports at one place
          [32, 52], [32, 65], [32, 78] | [32, 52] | [[32, 52]] | a list of 1 as "supports"
          [32, 52], [32, 65], [32, 78] | [32, 52], [32, 79] | [[32, 52], [32, 79]] | joists of deck "deck" that span 27'-0"; sawn joists span at most 26'-0"
          [32, 52], [32, 65], [32, 78] | [32, 52], [32, 65], [200, 78] | [[32, 52], [32, 65] | beside deck "deck"; points of supports lie under the deck
          [32, 52], [32, 65], [32, 78] | [32, 52], [32, 77.1] | none | none
          [32, 52], [32, 65], [32, 78] | [32, 52], [32, 77] | [[32, 52], [32, 77]] | deck "deck" reaching 2'-0" beyond its last support; joists reach at most 1'-11 1/2" beyond
          [32, 52], [32, 65], [32, 78] | [32, 53.1], [32, 78] | [[32, 53.1] | deck "deck" reaching 2'-1" beyond its last support
          "floorCheck": "joists" | "floorCheck": "area" | "area" | a check by area beside "joists"
          "floorCheck": "joists" | "floorCheck": "joist" | "joist", | "joist" as "floorCheck" (did you mean "joists"?); "floorCheck" is one of area, joists
          "joists": { | "joist": { | "joists", | a check by joists without "joists"
          "total": "20000 lb" | "total": "20000 ft" | "20000 ft" | "20000 ft" as mass
          "soil": "Clay" | "soil": "clai" | "clai" | unknown soil "clai" (did you mean "clay"?); a soil is one of crystalline bedrock, sedimentary rock, gravel, sand, clay, topsoil, fill, mud, peat, organic
          "allowed": "1500 psf" | "allowed": "1600 psf" | "1600 psf" | 1,600 psf allowed on soil "clay"; the table presumes 1,500 psf for it (IBC 2012 Table 1806.2). Way out: correct "allowed" or "soil"; remove "soil" if somebody tested the ground
          "allowed": "1500 psf" | "allowed": "71.9 kPa" | "71.9 kPa" | 1,502 psf allowed on soil "clay"
          "allowed": "1500 psf" | "allowed": "71.8 kPa" | none | none
          "allowed": "1500 psf", "slope" | "slope" | none | none
          "Clay", "allowed": "1500 psf" | "topsoil", "allowed": "800 psf" | none | none
          "Clay", "allowed": "1500 psf" | "topsoil" | "topsoil" | soil "topsoil" without "allowed"; not covered by the table. Way out: add "allowed", as whoever knows the ground says
          "soil": "Clay", "allowed": "1500 psf" | "dry": true | {"id": "yard" | a yard without "allowed" or "soil"; the pressure a yard may get is told as "allowed", or its "soil" is one of crystalline bedrock, sedimentary rock, gravel, sand, clay
          "slope": "2 %" | "slope": 2 | 2, "total" | 2 as share, that is 2.00; a slope, fall over distance, is 0.00 to 1.00
          "slope": "2 %" | "slope": "-2 %" | "-2 %" | "-2 %" as share
          "excavation": true, "depth" | "depth" | "5 ft" | a depth of keep-clear "trench", which is no excavation
          "excavation": true, "depth" | "excavation": "yes", "depth" | "yes" | "yes" as "excavation"; "excavation" is true or false
          "depth": "5 ft" | "depth": "5 km" | "5 km" | "5 km" as length
          "depth": "5 ft" | "depth": "5 ft", "walkable": true | true}] | keep-clear "trench" as an excavation that people walk over
          "voltage": "7.2 kV" | "voltage": 7.2 | 7.2 | "7.2" as voltage; a voltage is text with its unit, such as 7.2 kV or 400 V
          "voltage": "7.2 kV" | "voltage": "7.2 volt" | "7.2 volt" | "7.2 volt" as voltage; a voltage is text with its unit, such as 7.2 kV or 400 V
          "voltage": "7.2 kV", | "note": "?", | {"id": "feeder" | an overhead line without "voltage"
          "7.2 kV", "clearance": "12 ft" | "1100 kV" | {"id": "feeder" | overhead line "feeder" of 1,100 kV without "clearance"; the table of 29 CFR 1926.1408 ends at 1,000 kV
          "7.2 kV", "clearance": "12 ft" | "1100 kV", "clearance": "60 ft" | none | none
          "7.2 kV", "clearance": "12 ft" | "1000 kV" | none | none
          "clearance": "12 ft" | "clearance": "10 ft" | none | none
          "clearance": "12 ft" | "clearance": "9 ft" | "9 ft" | overhead line "feeder" with a clearance of 9'-0"; "lineTo50kV" is 10'-0"; an owner asks for more, not for less
          "7.2 kV", "clearance": "12 ft" | "50.1 kV", "clearance": "12 ft" | "12 ft" | "lineTo200kV" is 15'-0"
          "to": [130, 88] | "to": [0, 85] | [0, 85], "voltage | overhead line "feeder" ending where it starts
          "from": [0, 85] | "from": [0, 8500] | 8500 | a coordinate is
          "kind": "forks" | "kind": "hook" | "hook" | "hook" as "kind"; "kind" is one of forks, slings
          "loadCentre": "24 in" | "loadCentre": "24 ft" | "24 ft" | a load centre is 4" to 9'-10"
          "forks", "loadCentre": "24 in" | "slings", "angle": 60, "leg": "2 t" | none | none
          "forks", "loadCentre": "24 in" | "slings", "angle": 0, "leg": "2 t" | 0, "leg | the angle of a sling from the horizontal is 5.0° to 90.0°
          "forks", "loadCentre": "24 in" | "slings", "angle": 45, "leg": "2 ft" | "2 ft"}, | "2 ft" as mass
          "grip": { | "grip": "forks", "other": { | "forks", "other | "forks" as "grip"; "grip" is an object in braces
          "width": 8, "rigging" | "width": 80, "rigging" | 80, "rigging | the width of a machine is
          "rigging": "150 lb" | "rigging": "7000 lb" | "7000 lb", "conf | rigging that is all the machine lifts
          "confirmedBy": "R. Ode" | "confirmedBy": "" | none | none
          "confirmedBy": "R. Ode" | "confirmedBy": true | "confirmedBy": ^true | true as "confirmedBy"
          "lane": "path" | "lane": "pth" | "pth" | unknown lane "pth" (did you mean "path"?); a lane is one of path
          "built": "8 ft" | "built": "80 ft" | "80 ft" | the height of a wall that stands already is 0" to
          """)
  void site(String old, String other, String place, String message) {
    Spoiled.expect(
        JobFolder.full(temp).replace("site.json", old, other), "site.json", place, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "gravity": 0.52 | "gravity": 520 | 520 | 520 as share, that is 520.00; a wood's specific gravity is 0.10 to 1.30
          "basis": "12 %" | "basis": "dry" | "dry" | "dry" as "basis" (did you mean "oven-dry"?); "basis" is one of green, 12 %, oven-dry
          "basis": "12 %", | "base": "12 %", | {"name" | a wood without "basis"; "basis" is one of
          "spread": "8 %" | "spread": "80 %" | "80 %" | a wood's spread is 0.00 to 0.50
          "mill larch" | "Western-Larch" | "Western-Larch" | a wood named like "western larch" of the handbook; a wood of the job's own has a name of its own. Way out: name it otherwise
          "mill larch" | "?!" | "?!" | a wood without a letter in its name
          "woods": [ | "woods": [{"name": "Mill larch", "gravity": 0.5, "basis": "green"}, | "mill larch" | a second wood "mill larch"
          "woods": [ | "woods": [7, | [^7 | the number 7; a wood is an object in braces
          """)
  void woods(String old, String other, String place, String message) {
    Spoiled.expect(
        JobFolder.full(temp).replace("job.json", old, other), "job.json", place, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          15-25   |
          15-25 % |
          15 %-25 %|
          15–19–25|
          15 - 25 |
          19.5    |
          0       |
          25-15   | "25-15" as moisture; a range goes from dry to wet, such as 15-25 or 15-19-25. Way out: put the lowest figure first
          15-30-25| "15-30-25" as moisture; a range goes from dry to wet
          1-2-3-4 | "1-2-3-4" as moisture; moisture is 0 to 143 percent of the dry mass in mill larch, such as 18 or 15-25.
          15--25  | "15--25" as moisture
          -5      | "-5" as moisture
          15-     | "15-" as moisture
          0.15-25 | "0.15-25" as moisture; moisture is 0 to 143 percent of the dry mass in mill larch, such as 18 or 15-25. Way out: write percent, not a share of one
          15-300  | "15-300" as moisture
          150 %%  | "150 %%" as moisture
          Green   | green mill larch, whose moisture was read nowhere; moisture is 0 to 143 percent of the dry mass in mill larch, such as 18 or 15-25. Way out: write a range of percent
          """)
  void moisture(String text, String message) {
    JobFolder folder = JobFolder.full(temp);
    String place = "Mill-Larch,^" + text;
    folder.replace("pieces.csv", "Mill-Larch,15-25", "Mill-Larch," + text);
    Spoiled.expect(folder, "pieces.csv", message == null ? "none" : place, "" + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "groundClearance": "12 in" | "12 in" | "groundClearance" 1'-0" above "bearerHeight" 3 1/2"; bearers lower than the clearance they are to give let no stack onto a yard. Way out: change one of the two
          "bearerHeight": {"value": "2 in", "reason": "planks"} | {"value": "2 in" | "groundClearance" 3 1/2" above "bearerHeight" 2"
          "groundClearance": "12 in", "bearerHeight": "14 in" | none | none
          "bearerSpacing": "15 in" | "15 in" | "bearerClosest" 1'-4" above "bearerSpacing" 1'-3"
          "bearerClosest": "5 ft" | "bearerClosest": ^"5 ft" | "bearerClosest" 5'-0" above "bearerSpacing" 4'-0"
          "handPileHeight": {"value": "4 ft", "reason": "short crew"} | "stackHeight": ^"5 ft" | "stackHeight" 5'-0" above "handPileHeight" 4'-0"; a stack is never higher than what hands may pile
          "handPileHeight": {"value": "20 ft", "reason": "by machine"} | "20 ft" | "handPileHeight" is 4" to 16'-0"
          "teamOfTwo": 0.4 | 0.4 | "teamOfThree" 0.50 above "teamOfTwo" 0.40; each of three lifts no more than each of two
          "lineTo50kV": {"value": "20 ft", "reason": "the owner asks for it"} | {"value": "20 ft" | "lineTo50kV" 20'-0" above "lineTo200kV" 15'-0"; a line of more voltage asks for no less room
          "lineTo50kV": {"value": 0, "reason": "switched off by the owner"} | none | none
          "lineTo50kV": "9 ft" | "9 ft" | a published limit changed without a reason; "lineTo50kV" is 10 ft up to 50 kV, 29 CFR 1926.1408 Table A
          "teamMost": 1 | 1, "deck | "teamMost" is 2 to 4
          "teamMost": 3 | none | none
          "teamMost": 5 | 5, "deck | "teamMost" is 2 to 4
          "liftPerPerson": "60 lb" | "60 lb" | a rule made weaker without a reason; "liftPerPerson" higher than 51 lb lets through what the rule teamLift stops
          "liftPerPerson": "40 lb" | none | none
          "liftPerPerson": {"value": "60 lb", "reason": "trained crew"} | none | none
          "yardSlope": "10 %" | "10 %" | "yardSlope" higher than 0.05 lets through what the hard rule yardSlope stops
          "excavationDepthShare": 0.5 | 0.5 | "excavationDepthShare" lower than 1.00 lets through what the hard rule excavationEdge stops
          "bearerWidth": 0 | 0, "deck | "bearerWidth" is 1" to 1'-7 1/2"
          "slingAngle": 100 | 100 | "slingAngle" is 0.0° to 90.0°
          "heightToWidth": 20 | 20, "deck | "heightToWidth" is 0.50 to 10.00
          "liftFrequency": 9 | 9, "deck | "liftFrequency" is 0.00 to 8.00
          """)
  void settings(String changed, String place, String message) {
    JobFolder folder =
        JobFolder.in(temp)
            .replace("job.json", "\"stackHeight\": \"5 ft\",\n    ", "\"stackHeight\": \"5 ft\", ")
            .replace("job.json", "\"deckEdge", changed + ", \"deckEdge");
    Spoiled.expect(folder, "job.json", place, message);
  }

  @Test
  void aStackThatIsAllBearersIsAContradiction() {
    JobFolder folder =
        JobFolder.in(temp).replace("job.json", "5 ft\"", "5 in\", \"bearerHeight\": \"6 in\"");
    Spoiled.expect(
        folder, "job.json", "\"6 in\"", "\"bearerHeight\" 6\" above \"stackHeight\" 5\"");
  }

  @Test
  void aLineMayBeNearerWhereTheJobSaysWhy() {
    JobFolder folder =
        JobFolder.full(temp)
            .replace("site.json", "\"clearance\": \"12 ft\"", "\"clearance\": \"9 ft\"")
            .replace(
                "job.json",
                "\"settings\": {",
                "\"settings\": {\"lineTo50kV\": {\"value\": \"8 ft\", \"reason\": \"insulated\"},");
    assertThat(JobReader.read(folder.path()).remarks()).isEmpty();
  }

  @Test
  void aWoodThatCouldNotBeReadIsNotUnknownAsWell() {
    JobFolder folder =
        JobFolder.full(temp).replace("job.json", "\"gravity\": 0.52", "\"gravity\": \"much\"");
    assertThat(Spoiled.problems(folder)).extracting(Problem::file).containsExactly("job.json");
    folder.write("job.json", "{");
    assertThat(Spoiled.problems(folder)).extracting(Problem::file).containsExactly("job.json");
  }

  @Test
  void settingsAreNotHeldAgainstEachOtherWhileTheUnitIsUnknown() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace("job.json", "\"us\"", "\"feet\"")
            .replace("job.json", "\"5 ft\"", "5");
    Spoiled.expect(folder, "job.json", "\"feet\"", "\"feet\" as \"units\"");
  }

  @Test
  void aDeadLoadBesideALiveLoadIsARemark() {
    JobFolder folder =
        JobFolder.full(temp).replace("site.json", "\"live\": 40", "\"live\": 40, \"dead\": 10");
    assertThat(JobReader.read(folder.path()).remarks())
        .singleElement()
        .asString()
        .contains("found=\"dead\" beside \"live\"");
  }
}
