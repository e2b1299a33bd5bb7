package skidway.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.sheet.PaperSize;
import skidway.sheet.TagFormat;
import skidway.sheet.TagRoll;
import skidway.sheet.TagSheet;
import skidway.units.UnitSystem;

/** What is asked of the tags. */
final class TagOptions {
  @Option(
      names = "--tags",
      paramLabel = "N",
      description = {
        "tags on a page: 2, 4 or 8; or roll, a label a tag;",
        "${DEFAULT-VALUE} unless told"
      })
  private String tags = "4";

  @Option(
      names = "--roll",
      paramLabel = "SIZE",
      description = {
        "with --tags roll: width x length of a label; 4x6in",
        "with a job in US units, else 100x150mm"
      })
  private @Nullable String roll;

  @Option(
      names = "--changed-since",
      paramLabel = "REV",
      description = {
        "only the tags that have changed since this revision, and",
        "a list of the tags to take off"
      })
  private @Nullable Integer since;

  boolean onlyChanged() {
    return since != null;
  }

  Optional<Integer> since() {
    return Optional.ofNullable(since);
  }

  TagFormat format(UnitSystem units, PaperSize paper) {
    if (tags.equalsIgnoreCase("roll")) {
      return roll == null ? TagRoll.usualWith(units) : roll(roll);
    }
    if (roll != null) {
      throw new BadUsage("--roll goes with --tags roll, found --tags " + tags + ".");
    }
    return switch (tags) {
      case "2", "4", "8" -> new TagSheet(paper.forTags(), Integer.parseInt(tags));
      default -> throw new BadUsage("--tags is 2, 4, 8 or roll, found " + tags + ".");
    };
  }

  private static TagRoll roll(String size) {
    try {
      return TagRoll.read(size)
          .orElseThrow(
              () ->
                  new BadUsage(
                      "--roll is width x length of a label with the unit, such as 4x6in or"
                          + " 100x150mm, found "
                          + size
                          + "."));
    } catch (IllegalArgumentException tooSmallOrLarge) {
      throw new BadUsage("--roll: " + tooSmallOrLarge.getMessage());
    }
  }
}
