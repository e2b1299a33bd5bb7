package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each test spoils one thing in a table and expects the one problem it makes. */
final class BadTablesTest {
  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          pieces.csv  | W1-C1-2,W1      | W1-C1-1,W1     | 3:1  | a second piece "W1-C1-1"; the first is in line 2
          pieces.csv  | W2-C1-2,W2      | W2-C1-2,W5     | 5:9  | unknown wall "W5" (did you mean "W1" or "W2" or "W3"?); a wall is one of W1, W2, W3, W4
          pieces.csv  | W2,1,2          | W2,1,1         | 5:14 | a second piece at wall W2, course 1, position 1
          pieces.csv  | W2,1,2          | W2,0,2         | 5:12 | 0 as count; a course is 1 to 1000
          pieces.csv  | W2,1,2          | W2,1.5,2       | 5:12 | "1.5" as count; a count is a whole number
          pieces.csv  | W2,1,2          | W2,1,-2        | 5:14 | "-2" as count
          pieces.csv  | 16 ft,8 in      | 16 m,8 in      | 4:16 | piece "W2-C1-1" of 52'-6"; bundle "B02" is 16'-4 1/2" long
          pieces.csv  | 16 ft,8 in      | 160 ft,8 in    | 4:16 | 160 ft as length, that is 160'-0"; the length of a piece is 1" to 82'-0 1/2"
          pieces.csv  | 16 ft,8 in      | -16 ft,8 in    | 4:16 | the length of a piece is
          pieces.csv  | 16 ft,8 in      | 0,8 in         | 4:16 | the length of a piece is
          pieces.csv  | 16 ft,8 in      | NaN,8 in       | 4:16 | "NaN" as length
          pieces.csv  | 16 ft,8 in      | 16 ft,8        | 4:22 | 8 as length, that is 8'-0"; the width or height of a piece is
          pieces.csv  | 3 in,eastern white pine,18,B02,2 | 3 in,eastern wite pine,18,B02,2 | 5:32 | unknown species "eastern wite pine"; near names are eastern white pine
          pieces.csv  | 3 in,eastern white pine,18,B02,2 | 3 in,,18,B02,2                  | 5:32 | unknown species nothing
          pieces.csv  | pine,18,B02,2   | pine,300,B02,2 | 5:51 | "300" as moisture; moisture is 0 to 229 percent of the dry mass in eastern white pine
          pieces.csv  | pine,18,B02,2   | pine,0.18,B02,2| 5:51 | "0.18" as moisture
          pieces.csv  | pine,18,B02,2   | pine,wet,B02,2 | 5:51 | "wet" as moisture
          pieces.csv  | 18,B02,2        | 18,,2          | 5:54 | piece "W2-C1-2" in no bundle
          pieces.csv  | 18,B02,2        | 18,B03,2       | 5:54 | unknown bundle "B03" (did you mean "B01" or "B02"?)
          pieces.csv  | 18,B02,2        | 18,B02,0       | 5:58 | 0 as count; a layer is 1 to 1000
          pieces.csv  | 18,B02,2        | 18,B02         | 5:54 | 10 cells in this row; the header has 11 columns
          pieces.csv  | 18,B02,2        | 18,B02,2,x     | 5:60 | 12 cells in this row; the header has 11 columns
          pieces.csv  | "13 ft"         | "13 ft         | 3:18 | text after a cell in quotes
          pieces.csv  | "13 ft"         | "13 ft"x       | 2:24 | text after a cell in quotes
          pieces.csv  | moisture        | moistur        | 1:1  | no column "moisture" among mark, wall
          pieces.csv  | moisture        | layer          | 1:1  | none
          bundles.csv | B02,L1          | B01,L1         | 3:1  | none
          bundles.csv | B02,L1,2        | B02,L1,1       | 3:8  | off-order 1 of load "L1" a second time; the first is in line 2
          bundles.csv | B02,L1          | B02,L2         | 3:5  | unknown load "L2" (did you mean "L1"?)
          bundles.csv | B02,L1          | B02,           | 3:5  | bundle "B02" in no load
          bundles.csv | 16'-4 1/2"      | 3 stone        | 3:10 | found "3 stone" as length; a length is a number in feet or text such as 16'-4 1/2" or 4.99 m
          bundles.csv | 16'-4 1/2"      | 400            | 3:10 | 400 as length, that is 400'-0"
          loads.csv   | 2031-05-05T08:00| tomorrow       | 2:4  | "tomorrow" as arrival; an arrival is a date and time of day such as 2031-05-05T08:00
          loads.csv   | 2031-05-05T08:00| 2031-02-30T08:00 | 2:4 | "2031-02-30T08:00" as arrival
          loads.csv   | gate            | gaet           | 2:21 | unknown truck stand "gaet" (did you mean "gate"?)
          """)
  void cell(String file, String old, String other, String place, String message) {
    JobFolder folder = JobFolder.in(temp).replace(file, old, other == null ? "" : other);
    assertThat(Spoiled.problems(folder).get(0).text()).startsWith(file + ":" + place + ": found ");
    if (!message.equals("none")) {
      assertThat(Spoiled.problems(folder)).hasSize(1);
      assertThat(Spoiled.problems(folder).get(0).text()).contains(message);
    }
  }

  /** Wall W2 is 26 ft long; its first course is 16 ft and 10 ft. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          W2-C1-2,W2,1,2,10 ft        | W2-C1-2,W2,1,2,13 ft        |
          W2-C1-2,W2,1,2,10 ft        | W2-C1-2,W2,1,2,13'-4        | 5:16: found piece "W2-C1-2" that ends at 29'-4"; wall W2 is 26'-0" long, and timbers may pass a corner by 3'-3 1/2". Way out: correct the length, position or "from_left" of the pieces of course 1, or the wall's ends
          W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1, | W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1,-3 ft |
          W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1, | W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1,-4 ft | 4:62: found piece "W2-C1-1" that starts 4'-0" before its wall's left end; wall W2 is
          W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1, | W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1,600 ft | 4:62: found piece "W2-C1-1" that ends at 616'-0"; wall W2 is
          """)
  void piecesLieOnTheirWall(String old, String other, String problem) {
    JobFolder folder = JobFolder.in(temp);
    String table =
        folder.text("pieces.csv").replace("\n", ",\n").replaceFirst(",\n", ",from_left\n");
    assertThat(table).contains(old);
    folder.write("pieces.csv", table.replace(old, other));
    if (problem == null) {
      assertThat(JobReader.read(folder.path()).remarks()).isEmpty();
    } else {
      assertThat(Spoiled.problems(folder))
          .singleElement()
          .extracting(Problem::text)
          .asString()
          .startsWith("pieces.csv:" + problem);
    }
  }

  @Test
  void aWallThatIsTooShortIsOneProblemForEachCourse() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace("site.json", "[33, 52], \"to\": [65, 52]", "[33, 52], \"to\": [38, 52]")
            .replace(
                "site.json", "\"from\": \"13 ft\", \"width\"", "\"from\": \"1 ft\", \"width\"");
    folder.write(
        "pieces.csv",
        folder.text("pieces.csv").replace("W1-C1-2,W1,1,2,\"15'-10\"\"\"", "W1-C1-2,W1,1,2,8 ft")
            + "W1-C2-1,W1,2,1,13 ft,8 in,6 in,eastern white pine,18,B01,1\n"
            + "W1-C2-2,W1,2,2,8 ft,8 in,6 in,eastern white pine,18,B01,1\n");
    assertThat(Spoiled.problems(folder)).extracting(Problem::line).containsExactly(2, 6);
  }

  @Test
  void aBundleWithoutPiecesIsAProblem() {
    JobFolder folder = JobFolder.in(temp);
    folder.write("bundles.csv", folder.text("bundles.csv") + "B03,L1,3,8 ft,2 ft,1 ft\n");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::text)
        .singleElement()
        .asString()
        .startsWith("bundles.csv:4:1: found bundle \"B03\" without pieces");
  }

  @Test
  void aPieceWithAMistakeStillCountsForItsBundle() {
    JobFolder folder = JobFolder.in(temp).replace("pieces.csv", "3 in,eastern", "3 in,northern");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::file)
        .containsExactly("pieces.csv", "pieces.csv");
  }

  @Test
  void moreWoodThanABundleHasRoomForIsAProblem() {
    JobFolder folder = JobFolder.in(temp).replace("bundles.csv", "2 ft,1 ft", "1 ft,4 in");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::text)
        .first()
        .asString()
        .startsWith("bundles.csv:2:1: found more wood in the pieces of bundle \"B01\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"pieces.csv", "bundles.csv", "loads.csv"})
  void aTableWithoutRowsIsAProblem(String file) throws IOException {
    JobFolder folder = JobFolder.in(temp);
    Path table = folder.path().resolve(file);
    Files.writeString(table, Files.readString(table).lines().findFirst().orElseThrow() + "\n");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::text)
        .contains(
            file
                + ": found a header and no rows; a job has a row or more in every table."
                + " Way out: write the rows.");
  }

  @ParameterizedTest
  @ValueSource(strings = {";", "\t"})
  void takesSemicolonsAndTabs(String separator) {
    JobFolder folder = JobFolder.in(temp);
    Job commas = JobReader.read(folder.path());
    for (String file : new String[] {"pieces.csv", "bundles.csv", "loads.csv"}) {
      folder.write(file, folder.text(file).replace(",", separator));
    }
    assertThat(JobReader.read(folder.path()).task()).isEqualTo(commas.task());
  }

  @Test
  void takesWhatSpreadsheetsMakeOfATable() {
    JobFolder folder = JobFolder.in(temp);
    Job plain = JobReader.read(folder.path());
    String bundles =
        "\ufeff\n\nOff Order;LOAD;Bundle;height;width;length;;\r\n"
            + "\r\n1;L1;B01;1 ft;2 ft;16 ft;;\r\n;;;;;;;\r\n 2 ;L1; B02;1 ft;2 ft;\"16'-4 1/2\"\"\"\r\n";
    Job job = JobReader.read(folder.write("bundles.csv", bundles.replace(";;\r", "\r")).path());
    assertThat(job.task()).isEqualTo(plain.task());
    assertThat(job.remarks()).isEmpty();
  }

  @Test
  void unknownColumnsAreRemarks() {
    JobFolder folder =
        JobFolder.in(temp)
            .write("loads.csv", "load,arival,arrival,truck_stand\nL1,x,2031-05-05 08:00:30,gate\n");
    assertThat(JobReader.read(folder.path()).remarks())
        .extracting(Problem::text)
        .singleElement()
        .asString()
        .startsWith(
            "loads.csv:1:6: found an unknown column \"arival\" (did you mean \"arrival\"?)");
  }

  @Test
  void aTableWithoutAHeaderIsOneProblem() {
    JobFolder folder = JobFolder.in(temp).write("loads.csv", "L1,2031-05-05T08:00,gate\n");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::text)
        .singleElement()
        .asString()
        .startsWith("loads.csv:1:1: found no header but \"L1, 2031-05-05T08:00, gate\"");
  }

  @Test
  void aCellOverTwoLinesKeepsTheCountRight() {
    JobFolder folder =
        JobFolder.in(temp)
            .write("loads.csv", "load,note,arrival,truck_stand\nL1,\"two\nlines\",then,gate\n");
    assertThat(Spoiled.problems(folder).get(0).text()).startsWith("loads.csv:3:8: found \"then\"");
  }

  @Test
  void longCellsAndEndlessTablesStopEarly() {
    JobFolder folder = JobFolder.in(temp);
    folder.write("loads.csv", "load,arrival,truck_stand\n" + "x".repeat(1_000_000) + ",y,gate\n");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::text)
        .singleElement()
        .asString()
        .contains("a cell of more than 1000 characters");
    folder.write(
        "loads.csv", "load,arrival,truck_stand\n" + "1\n".repeat(FileBounds.MOST_ROWS + 5));
    BadInput bad = catchThrowableOfType(BadInput.class, () -> JobReader.read(folder.path()));
    assertThat(bad.problems()).hasSize(Problems.SHOWN);
    assertThat(bad.more())
        .as("each row lacks two cells")
        .isBetween(FileBounds.MOST_ROWS - Problems.SHOWN, FileBounds.MOST_ROWS);
    assertThat(bad.getMessage()).endsWith(" more");
  }
}
