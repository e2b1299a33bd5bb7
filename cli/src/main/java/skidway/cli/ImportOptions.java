package skidway.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.intake.Wishes;

/** What a person says about a packing list and its truck. */
final class ImportOptions {
  @Option(names = "--load", paramLabel = "ID", description = "the truck that the list belongs to")
  private @Nullable String load;

  @Option(
      names = "--arrival",
      paramLabel = "TIME",
      description = "when a new truck arrives, such as 2031-05-06T08:00")
  private @Nullable String arrival;

  @Option(
      names = "--stand",
      paramLabel = "ID",
      description = "where a new truck stands; not needed if the site has one stand")
  private @Nullable String stand;

  @Option(
      names = "--column",
      paramLabel = "FIELD=COLUMN",
      description = {
        "what a column means, such as length=E (letter, number or header text; none: no column).",
        "Fields: mark, wall, course, position, from_left, length, width, height, thickness,",
        "section, species, moisture, bundle, layer, weight, count, load, off_order. Repeatable."
      })
  private Map<String, String> columns = new LinkedHashMap<>();

  @Option(
      names = "--unit",
      paramLabel = "[FIELD=]UNIT",
      description =
          "unit of bare numbers where the list says none: mm, cm, m, in, ft, ft-in, kg, lb, t")
  private String[] units = {};

  @Option(
      names = "--mark",
      paramLabel = "PATTERN",
      description =
          "how marks are made, such as {wall}-{course}-{position} or W{wall}.{course:2}{position:2}")
  private @Nullable String mark;

  @Option(
      names = "--set",
      paramLabel = "FIELD=TEXT",
      description = "what goes for every row, such as moisture=19. Repeatable.")
  private Map<String, String> constants = new LinkedHashMap<>();

  @Option(
      names = "--call",
      paramLabel = "LIST=JOB",
      description =
          "what the job calls a wall or species of the list, such as North=W1. Repeatable.")
  private Map<String, String> calls = new LinkedHashMap<>();

  @Option(
      names = "--bundle-size",
      paramLabel = "N",
      description = "timbers of a bundle, when the list has no bundles")
  private @Nullable Integer bundleSize;

  @Option(
      names = "--decimal",
      paramLabel = "comma|point",
      description = "what stands before decimals")
  private @Nullable String decimal;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "sheet of a spreadsheet; else the first")
  private @Nullable String sheet;

  @Option(names = "--header", paramLabel = "ROW", description = "row of the header")
  private @Nullable Integer header;

  @Option(
      names = "--encoding",
      paramLabel = "NAME",
      description = "encoding of a text, such as windows-1250")
  private @Nullable String encoding;

  @Option(
      names = "--replace",
      description = "replace what the job has of the load by what the list says")
  private boolean replace;

  Wishes wishes() {
    if (bundleSize != null && (bundleSize < 1 || bundleSize > 1000)) {
      throw new BadUsage("--bundle-size is 1 to 1000.");
    }
    Map<String, String> byField = new LinkedHashMap<>();
    for (String unit : units) {
      int at = unit.indexOf('=');
      byField.put(at < 0 ? "" : unit.substring(0, at), unit.substring(at + 1));
    }
    return new Wishes(
        Optional.ofNullable(sheet),
        header == null ? OptionalInt.empty() : OptionalInt.of(header),
        Optional.ofNullable(encoding),
        columns,
        byField,
        Optional.ofNullable(mark),
        Optional.ofNullable(decimal),
        bundleSize == null ? OptionalInt.empty() : OptionalInt.of(bundleSize),
        constants,
        calls,
        Optional.ofNullable(load),
        Optional.ofNullable(arrival),
        Optional.ofNullable(stand),
        replace);
  }
}
