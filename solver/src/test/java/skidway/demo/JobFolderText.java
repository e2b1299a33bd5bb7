package skidway.demo;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes a demo job's files as a person would keep them: one wall, piece or bundle a line. */
record JobFolderText(House house) {

  Map<String, String> write(DemoJob job) {
    List<MillBundle> bundles = job.bundles();
    Map<String, String> files = new TreeMap<>();
    files.put("job.json", job.jobJson());
    files.put(
        "site.json",
        job.siteJson()
            .replace("@walls@", walls())
            .replace("@course@", house.ruler().length(house.course())));
    files.put("pieces.csv", pieces(bundles));
    files.put("bundles.csv", bundles(bundles));
    files.put("loads.csv", job.loadsCsv());
    files.put("about.txt", job.about());
    return files;
  }

  private String pieces(List<MillBundle> bundles) {
    StringBuilder csv =
        new StringBuilder(
            "mark,wall,course,position,length,width,height,species,moisture,bundle,layer\n");
    for (MillBundle bundle : bundles) {
      for (int i = 0; i < bundle.timbers().size(); i++) {
        Timber t = bundle.timbers().get(i);
        csv.append(
            line(
                t.mark(),
                t.wall(),
                t.course(),
                t.position(),
                length(t.length()),
                length(house.thickness()),
                length(t.height()),
                house.species(),
                String.format(Locale.ROOT, "%.0f", house.moisturePct()),
                bundle.id(),
                bundle.layerOf(i)));
      }
    }
    return csv.toString();
  }

  private String bundles(List<MillBundle> bundles) {
    StringBuilder csv = new StringBuilder("bundle,load,off_order,length,width,height\n");
    for (MillBundle bundle : bundles) {
      csv.append(
          line(
              bundle.id(),
              bundle.load(),
              bundle.offOrder(),
              length(bundle.length()),
              length(bundle.width(house)),
              length(bundle.height())));
    }
    return csv.toString();
  }

  private static String line(Object... cells) {
    return List.of(cells).stream().map(String::valueOf).collect(Collectors.joining(",")) + "\n";
  }

  private String walls() {
    return house.walls().stream().map(this::wall).collect(Collectors.joining(",\n"));
  }

  private String wall(HouseWall wall) {
    String openings =
        wall.openings().stream()
            .map(o -> "\n       " + opening(o))
            .collect(Collectors.joining(","));
    return String.format(
        Locale.ROOT,
        "    {\"id\": \"%s\", \"from\": %s, \"to\": %s, \"thickness\": \"%s\", \"starter\": \"%s\",\n"
            + "     \"openings\": [%s]}",
        wall.id(),
        point(wall.x0(), wall.y0()),
        point(wall.x1(), wall.y1()),
        length(house.thickness()),
        wall.starter().name().toLowerCase(Locale.ROOT),
        openings);
  }

  private String opening(HouseWall.Opening o) {
    return String.format(
        Locale.ROOT,
        "{\"id\": \"%s\", \"kind\": \"%s\", \"from\": \"%s\", \"width\": \"%s\","
            + " \"sill\": \"%s\", \"head\": \"%s\"}",
        o.id(),
        o.door() ? "door" : "window",
        length(o.from()),
        length(o.width()),
        length(o.sill()),
        length(o.head()));
  }

  private String point(int x, int y) {
    return "[" + house.ruler().coordinate(x) + ", " + house.ruler().coordinate(y) + "]";
  }

  private String length(int ticks) {
    return house.ruler().length(ticks);
  }
}
