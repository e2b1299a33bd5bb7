package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.plan.Plan;
import skidway.plan.Task;

/** Puts the pages of a plan's map together and heads each of them. */
record MapPages(Task task, Plan plan, String fingerprint) {
  private static final String ALL = "Whole site";
  private static final String GOVERNS = "the machine's own chart and the floor's designer govern";
  private static final String GOVERNS_BY_HAND = "the floor's designer and local codes govern";

  /** One of these papers for each page, whichever makes its map largest. */
  List<MapSheet> on(List<Paper> papers) {
    List<MapView> views = StackMap.views(task, plan);
    List<MapDrawing> drawings = views.stream().map(v -> MapDrawing.of(v, papers)).toList();
    int pages = drawings.size();
    pages += drawings.stream().mapToInt(d -> d.layout().morePages().size()).sum();
    List<MapSheet> sheets = new ArrayList<>();
    for (MapDrawing drawing : drawings) {
      String name = name(drawing);
      String scale = drawing.layout().frame().scale() + " at full size";
      sheets.add(drawing.titled(name, title(name, scale, sheets.size() + 1, pages)));
      for (Panel cards : drawing.layout().morePages()) {
        TitleBlock title = title(name, "more stacks from the side", sheets.size() + 1, pages);
        sheets.add(drawing.more(name + ", more stacks", cards, title));
      }
    }
    return sheets;
  }

  /** Without headings, for the page of a phone. */
  List<MapSheet> narrow() {
    return StackMap.views(task, plan).stream()
        .map(MapDrawing::narrow)
        .map(drawing -> drawing.untitled(name(drawing)))
        .toList();
  }

  private static String name(MapDrawing drawing) {
    return drawing.layout().view().zone().orElse(ALL);
  }

  private TitleBlock title(String name, String scale, int page, int pages) {
    String under =
        String.join(
            " · ",
            "map " + page + " of " + pages,
            scale,
            "plan " + Fingerprints.brief(fingerprint) + warning(),
            task.site().byHand() ? GOVERNS_BY_HAND : GOVERNS);
    return new TitleBlock(name, task.jobName(), "Revision " + plan.revision(), under);
  }

  private String warning() {
    int without = plan.unplaced().size();
    return without == 0 ? "" : " · " + without + " without a spot, see the sheet";
  }
}
