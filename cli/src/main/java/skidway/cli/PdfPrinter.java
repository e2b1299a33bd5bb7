package skidway.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import skidway.job.OutFiles;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.paper.Pressed;
import skidway.units.Figures;

/**
 * Writes pages as PDFs too, unless they are not wanted, and says which letters no font has. Several
 * are pressed at once; they are told of in the order in which they were begun.
 */
final class PdfPrinter {
  private final Screen screen;
  private final Path folder;
  private final Optional<Press> press;
  private final int copies;
  private final List<Pressing> begun = new ArrayList<>();

  private record Pressing(String what, String name, Aside<Pressed> pdf) {}

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
   * Begins one.
   *
   * @param what it holds, to begin a line with
   * @param name of the file
   * @param html asked for on the thread that presses it, which may have to wait for it
   */
  void begin(String what, String name, Supplier<String> html, Foot foot) {
    press.ifPresent(
        p ->
            begun.add(
                new Pressing(
                    what, name, Aside.begin(name, () -> p.press(html.get(), foot, copies)))));
  }

  /** Writes one at once. */
  void write(String what, String name, Supplier<String> html, Foot foot) {
    begin(what, name, html, foot);
    finish();
  }

  /** Writes all that were begun. */
  void finish() {
    Set<String> told = new LinkedHashSet<>();
    for (Pressing pressing : begun) {
      Pressed pdf = pressing.pdf().done();
      Path file = OutFiles.write(folder, pressing.name(), pdf.bytes());
      String pages = Figures.counted(pdf.pages(), "page");
      String many = copies == 1 ? "" : " in " + copies + " copies";
      screen.result("%s, PDF of %s%s: %s", pressing.what(), pages, many, file);
      for (String remark : pdf.remarks()) {
        if (told.add(remark)) {
          screen.say("%s; print the HTML from a browser instead, or give --font FILE.", remark);
        }
      }
    }
    begun.clear();
  }
}
