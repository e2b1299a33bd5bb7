package skidway.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import skidway.paper.BadFont;
import skidway.paper.Press;
import skidway.sheet.PaperSize;
import skidway.units.UnitSystem;

/** Which paper everything is printed on. */
final class PaperOptions {
  private static final int MOST_COPIES = 20;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = {
        "letter, a4, tabloid or a3; letter with a job in US units,",
        "else a4. Tags are cut from half of a tabloid or a3."
      })
  private @Nullable String paper;

  @Option(
      names = "--no-pdf",
      description = "write the pages for browsers alone, which takes less time")
  private boolean noPdf;

  @Option(
      names = "--copies",
      paramLabel = "N",
      description = "copies in each PDF, one behind the other: 1 to 20")
  private int copies = 1;

  @Option(
      names = "--font",
      paramLabel = "FILE",
      description = {
        "TrueType font for letters that neither our own fonts",
        "nor, then, the computer's have"
      })
  private @Nullable Path font;

  /**
   * What puts pages into PDFs; empty if none are wanted.
   *
   * @throws BadUsage if one of the options is not as it should be
   */
  Optional<Press> press() {
    if (copies < 1 || copies > MOST_COPIES) {
      throw new BadUsage("--copies is 1 to " + MOST_COPIES + ", found " + copies + ".");
    }
    if (noPdf) {
      return Optional.empty();
    }
    try {
      return Optional.of(Press.with(Optional.ofNullable(font)));
    } catch (BadFont bad) {
      throw new BadUsage(bad.sentence());
    }
  }

  int copies() {
    return copies;
  }

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
