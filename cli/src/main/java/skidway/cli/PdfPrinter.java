package skidway.cli;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import skidway.job.OutFiles;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.paper.Pressed;

/** Writes pages as PDFs too, unless they are not wanted, and says which letters no font has. */
final class PdfPrinter {
  private final Screen screen;
  private final Path folder;
  private final Optional<Press> press;
  private final int copies;
  private final Set<String> told = new LinkedHashSet<>();

  /**
   * @param folder the job's
   */
  PdfPrinter(Screen screen, Path folder, PaperOptions options) {
    this.screen = screen;
    this.folder = folder;
    this.press = options.press();
    this.copies = options.copies();
  }

  /**
   * Writes one.
   *
   * @param what it holds, to begin a line with
   * @param name of the file
   */
  void write(String what, String name, Supplier<String> html, Foot foot) {
    if (press.isEmpty()) {
      return;
    }
    Pressed pdf = press.get().press(html.get(), foot, copies);
    Path file = OutFiles.write(folder, name, pdf.bytes());
    String pages = pdf.pages() == 1 ? "1 page" : pdf.pages() + " pages";
    String many = copies == 1 ? "" : " in " + copies + " copies";
    screen.result("%s, PDF of %s%s: %s", what, pages, many, file);
    for (String remark : pdf.remarks()) {
      if (told.add(remark)) {
        screen.say("%s; print the HTML from a browser instead, or give --font FILE.", remark);
      }
    }
  }
}
