package skidway.cli;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import skidway.sheet.Part;

/** Which parts of the paper are asked for. */
final class PartOptions {
  @Option(
      names = "--only",
      paramLabel = "PARTS",
      split = ",",
      description = {
        "only these parts, separated by commas: map, set-out, unload,",
        "shop, settle, stacks, hours, limits, pull, waves, signs, placards, tags"
      })
  private List<String> only = List.of();

  Set<Part> parts() {
    if (only.isEmpty()) {
      return EnumSet.allOf(Part.class);
    }
    return only.stream()
        .map(PartOptions::part)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Part.class)));
  }

  private static Part part(String word) {
    return Part.of(word.strip())
        .orElseThrow(
            () ->
                new BadUsage(
                    "--only knows no part \"" + word + "\"; allowed are " + allowed() + "."));
  }

  private static String allowed() {
    return Arrays.stream(Part.values()).map(Part::word).collect(Collectors.joining(", "));
  }

  /** Whether waves are asked for by name, so that they must be there. */
  boolean namesWaves() {
    return !only.isEmpty() && parts().contains(Part.WAVES);
  }

  /** What the page holds, to begin a line with. */
  String words() {
    return only.isEmpty()
        ? "Map, set-out, unloading sheet, shopping list, pull list, signs and placards"
        : "Page with " + parts().stream().map(Part::word).collect(Collectors.joining(", "));
  }

  /** What a page with some parts only has in its name, so that it never replaces the whole one. */
  String suffix() {
    return only.isEmpty()
        ? ""
        : parts().stream().map(part -> "-" + part.word()).collect(Collectors.joining());
  }
}
