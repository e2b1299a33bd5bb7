package skidway.survey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import skidway.job.BadInput;
import skidway.job.Problems;
import skidway.job.SourceFile;
import skidway.job.Values;
import skidway.site.Point;
import skidway.units.UnitSystem;

/** A small house told in lines, and ways to read lines. */
final class Lines {
  /** Everything a site needs, every wall taped. */
  static final String HOUSE =
      """
      units us
      name "Lake meadow"
      course 6"
      walls thick 8"
      wall W1 east 36'
      wall W2 north 28'
      wall W3 west 36'
      wall W4 south 28'
      deck deck under house high 2' floor 50 psf
      yard south 10' off W1 full length wide 12' soil clay
      truck gate 30' off W1 middle long 30' wide 9'
      machine forklift
      stand M 50' off W1 middle
      chart 20' 7000 lb, 40' 4000 lb
      boundary around 30'
      """;

  private Lines() {}

  static SiteSurvey read(Path folder, String text) {
    return read(folder, text, false);
  }

  static SiteSurvey read(Path folder, String text, boolean replace) {
    write(folder, SiteSurvey.FILE, text);
    return SiteSurvey.read(folder, folder.resolve(SiteSurvey.FILE), replace);
  }

  /** The problems of lines that must not be read, one a line of text. */
  static String problems(Path folder, String text) {
    try {
      read(folder, text);
    } catch (BadInput e) {
      return e.getMessage();
    }
    throw new AssertionError("The lines were read although they are wrong.");
  }

  static void write(Path folder, String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The step of {@code DIRECTION LENGTH}, in feet, north up. */
  static Point step(String words) {
    Problems problems = new Problems();
    Values values = new Values(problems, UnitSystem.US, true);
    LineScanner line = new LineScanner(new SourceFile("step", words), 1, values);
    Directions directions = new Directions(90);
    double deg = directions.read(line, Double.NaN);
    Point step = directions.step(line, deg).times(1 / 0.3048);
    problems.throwIfAny(java.util.List.of("step"));
    return step;
  }

  static Optional<SiteText.Told> told(String text, Problems problems) {
    return SiteText.read(
        new SourceFile("site.txt", text), Optional.empty(), name -> Optional.empty(), problems);
  }
}
