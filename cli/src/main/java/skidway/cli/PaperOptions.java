package skidway.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.sheet.PaperSize;
import skidway.units.UnitSystem;

/** Which paper everything is printed on. */
final class PaperOptions {
  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = {
        "letter, a4, tabloid or a3; letter with a job in US units,",
        "else a4. Tags are cut from half of a tabloid or a3."
      })
  private @Nullable String paper;

  PaperSize size(UnitSystem units) {
    if (paper == null) {
      return PaperSize.usualWith(units);
    }
    String found = paper;
    return PaperSize.of(found).orElseThrow(() -> unknown(found));
  }

  private static BadUsage unknown(String found) {
    String allowed =
        Arrays.stream(PaperSize.values()).map(PaperSize::word).collect(Collectors.joining(", "));
    return new BadUsage("--paper is one of " + allowed + "; found " + found + ".");
  }
}
