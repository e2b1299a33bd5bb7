package skidway.job;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Splits a table into rows of cells that know where they stand; skips rows without any text. */
final class CsvCells implements AutoCloseable {

  private final SourceFile file;
  private final Problems problems;
  private final CsvParser parser;
  private final int longest;
  private boolean broken;

  /** One cell and its place. */
  record Cell(String text, Place place) {}

  CsvCells(SourceFile file, Problems problems) {
    this(
        file,
        problems,
        Separator.of(file.text().stripLeading().lines().findFirst().orElse("")),
        FileBounds.LONGEST_CELL);
  }

  /**
   * @param longest most characters of a cell
   */
  CsvCells(SourceFile file, Problems problems, char separator, int longest) {
    this.file = file;
    this.problems = problems;
    this.longest = longest;
    try {
      this.parser = csv(longest).createParser(new StringReader(file.text()));
      parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
      parser.nextToken(); // the array round the table
    } catch (IOException e) {
      throw new UncheckedIOException("Reading from memory failed.", e);
    }
  }

  private static CsvFactory csv(int longest) {
    return CsvFactory.builder()
        .enable(CsvParser.Feature.WRAP_AS_ARRAY)
        .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
        .streamReadConstraints(StreamReadConstraints.builder().maxStringLength(longest).build())
        .build();
  }

  /** The next row with any text in it; empty at the end or after a problem that ends the file. */
  List<Cell> next() {
    try {
      while (parser.nextToken() == JsonToken.START_ARRAY) {
        List<Cell> cells = row();
        if (hasText(cells)) {
          return cells;
        }
      }
    } catch (JsonProcessingException e) {
      broken = true;
      JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
      problems.add(
          file.at(at.getLineNr(), at.getColumnNr()),
          whatIsWrong(e),
          "a cell is at most "
              + longest
              + " characters; in a cell in quotes, a quote is written twice",
          "correct the quotes there or just before; the rest of the file was not read");
    } catch (IOException e) {
      throw new UncheckedIOException("Reading from memory failed.", e);
    }
    return List.of();
  }

  private static boolean hasText(List<Cell> cells) {
    for (Cell cell : cells) {
      if (!cell.text().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private String whatIsWrong(JsonProcessingException e) {
    if (e instanceof StreamConstraintsException) {
      return "a cell of more than " + longest + " characters";
    }
    boolean open = e.getOriginalMessage().contains("closing quote");
    return open ? "the end of the file within quotes" : "text after a cell in quotes";
  }

  /** Whether the file could not be read to its end. */
  boolean broken() {
    return broken;
  }

  private List<Cell> row() throws IOException {
    List<Cell> cells = new ArrayList<>();
    while (parser.nextToken() == JsonToken.VALUE_STRING) {
      JsonLocation at = parser.currentTokenLocation();
      cells.add(new Cell(parser.getText().strip(), file.at(at.getLineNr(), at.getColumnNr())));
    }
    return cells;
  }

  @Override
  public void close() {
    try {
      parser.close();
    } catch (IOException e) {
      throw new UncheckedIOException("Closing memory failed.", e);
    }
  }
}
