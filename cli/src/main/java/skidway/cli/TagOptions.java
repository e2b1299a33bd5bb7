package skidway.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.sheet.PaperSize;
import skidway.sheet.TagSheet;

/** What is asked of the tags. */
final class TagOptions {
  @Option(
      names = "--tags",
      paramLabel = "N",
      description = "tags on a page: 2, 4 or 8; ${DEFAULT-VALUE} unless told")
  private int perPage = 4;

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

  TagSheet sheet(PaperSize paper) {
    if (perPage != 2 && perPage != 4 && perPage != 8) {
      throw new BadUsage("--tags is 2, 4 or 8, found " + perPage + ".");
    }
    return new TagSheet(paper.forTags(), perPage);
  }
}
