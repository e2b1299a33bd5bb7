package skidway.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import skidway.audit.AuditReport;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.paper.Foot;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.WavePlan;
import skidway.sheet.MapSheet;
import skidway.sheet.Packet;
import skidway.sheet.PaperSize;
import skidway.sheet.Part;
import skidway.sheet.StackMap;
import skidway.sheet.StyledPage;

/** Writes the map and the page for the crew. */
final class PacketPrinter {
  private final Screen screen;
  private final ChosenPlan chosen;
  private final PartOptions only;
  private final PaperSize paper;
  private final PdfPrinter pdf;
  private final String fingerprint;
  private final Aside<List<MapSheet>> map;
  private Optional<Aside<StyledPage>> packet = Optional.empty();

  /** Begins to draw the map. */
  PacketPrinter(
      Screen screen, ChosenPlan chosen, PartOptions only, PaperSize paper, PdfPrinter pdf) {
    this.screen = screen;
    this.chosen = chosen;
    this.only = only;
    this.paper = paper;
    this.pdf = pdf;
    fingerprint = PlanFiles.fingerprint(chosen.file());
    map = Aside.begin("map", this::drawn);
  }

  private List<MapSheet> drawn() {
    Task task = chosen.task();
    return only.parts().contains(Part.MAP)
        ? StackMap.sheets(task, chosen.plan(), fingerprint, paper)
        : List.of();
  }

  /** Begins the page, if any of it is wanted, and its PDF. */
  void begin(Optional<WavePlan> waves, AuditReport audit, List<String> broken) {
    Set<Part> parts = only.parts();
    if (parts.equals(EnumSet.of(Part.TAGS))) {
      return;
    }
    Task task = chosen.task();
    Plan plan = chosen.plan();
    Aside<StyledPage> page =
        Aside.begin(
            "packet",
            () -> Packet.page(task, plan, waves, fingerprint, audit, parts, paper, map.done()));
    Foot foot = new Foot(Packet.heading(plan, fingerprint), Packet.caution(task, broken), 9);
    pdf.begin("Pages", name() + ".pdf", () -> page.done().forPdf(), foot);
    packet = Optional.of(page);
  }

  void write() {
    if (only.parts().contains(Part.MAP)) {
      String site = map.done().get(0).svg();
      screen.result("Map alone: %s", write("map-" + chosen.stem() + ".svg", site));
    }
    packet.ifPresent(
        page ->
            screen.result(
                "%s: %s", only.words(), write(name() + ".html", page.done().forBrowser())));
  }

  private String name() {
    return "packet-" + chosen.stem() + only.suffix();
  }

  private Path write(String name, String text) {
    return OutFiles.write(chosen.job().folder(), name, text);
  }
}
