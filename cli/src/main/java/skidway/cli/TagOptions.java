package skidway.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.sheet.TagPaper;
import skidway.sheet.TagSheet;
import skidway.units.UnitSystem;

/** What is asked of the tags. */
final class TagOptions {
  @Option(
      names = "--tags",
      paramLabel = "N",
      description = "tags on a page: 2, 4 or 8; ${DEFAULT-VALUE} unless told")
  private int perPage = 4;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "paper of the tags: letter or a4; what is usual with the job's units")
  private @Nullable String paper;

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

  TagSheet sheet(UnitSystem units) {
    if (perPage != 2 && perPage != 4 && perPage != 8) {
      throw new BadUsage("--tags is 2, 4 or 8, found " + perPage + ".");
    }
    return new TagSheet(paper(units), perPage);
  }

  private TagPaper paper(UnitSystem units) {
    if (paper == null) {
      return TagPaper.usualWith(units);
    }
    if (paper.equalsIgnoreCase("a4")) {
      return TagPaper.A4;
    }
    if (paper.equalsIgnoreCase("letter")) {
      return TagPaper.LETTER;
    }
    throw new BadUsage("--paper is letter or a4, found " + paper + ".");
  }
}
