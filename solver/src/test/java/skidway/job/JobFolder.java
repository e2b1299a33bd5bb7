package skidway.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A small valid job in US units: a hut of four walls, two bundles, one load. */
final class JobFolder {
  private final Path path;
  private final Map<String, String> texts = new LinkedHashMap<>();

  private JobFolder(Path path) {
    this.path = path;
    texts.put(
        "job.json",
        """
        {
          "format": 1,
          "name": "Hut at the lake",
          "units": "us",
          "settings": {
            "stackHeight": "5 ft",
            "deckEdgeSetback": {"value": "4 ft", "reason": "guard barricade along the edge"}
          }
        }
        """);
    texts.put(
        "site.json",
        """
        {
          "format": 1,
          "name": "Lake meadow",
          "north": 90,
          "course": "6 in",
          "boundary": [[0, 0], [130, 0], [130, 90], [0, 90]],
          "walls": [
            {"id": "W1", "from": [33, 52], "to": [65, 52], "thickness": "8 in", "starter": "full",
             "openings": [{"id": "D1", "kind": "door", "from": "13 ft", "width": "3'-2\\"", "sill": 0, "head": "6'-8\\""}]},
            {"id": "W2", "from": [65, 52], "to": [65, 78], "thickness": "8 in", "starter": "half"},
            {"id": "W3", "from": [65, 78], "to": [33, 78], "thickness": "8 in", "starter": "full",
             "openings": [{"id": "N1", "kind": "window", "from": "6 ft", "width": "4 ft", "sill": "3 ft", "head": "6 ft"}]},
            {"id": "W4", "from": [33, 78], "to": [33, 52], "thickness": "8 in", "starter": "half"}
          ],
          "decks": [{"id": "deck", "outline": [[32, 51], [66, 51], [66, 79], [32, 79]], "height": "2 ft", "allowed": "60 psf",
                     "openings": [{"id": "stair", "outline": [[50, 60], [54, 60], [54, 70], [50, 70]]}],
                     "steps": [{"id": "S1", "foot": [48, 48], "top": [48, 53], "width": "4 ft"}]}],
          "yards": [{"id": "yard", "outline": [[16, 20], [98, 20], [98, 40], [16, 40]], "allowed": "1500 psf"}],
          "lanes": [{"id": "path", "line": [[48, 10], [48, 48]], "width": "4 ft"}],
          "keepClears": [{"id": "oak", "outline": [[100, 60], [104, 60], [102, 64]], "margin": "3 ft", "reason": "roots"}],
          "truckStands": [{"id": "gate", "centre": [60, 7], "heading": 0, "length": "40 ft", "width": "8'-6\\""}],
          "machine": {"name": "rough terrain forklift", "stands": [{"id": "M", "at": [66, 16]}],
                      "chart": [{"reach": "20 ft", "capacity": "7000 lb"}, {"reach": "40 ft", "capacity": "4000 lb"}]},
          "spots": [{"id": "A1", "zone": "yard", "kind": "stack", "centre": [30, 30], "heading": 0,
                     "length": "17 ft", "width": "3 ft", "openSide": "left", "strip": "3 ft", "massLimit": "9000 lb"}]
        }
        """);
    texts.put(
        "pieces.csv",
        """
        mark,wall,course,position,length,width,height,species,moisture,bundle,layer
        W1-C1-1,W1,1,1,"13 ft",8 in,6 in,eastern white pine,18,B01,1
        W1-C1-2,W1,1,2,"15'-10"\"",8 in,6 in,eastern white pine,18,B01,1
        W2-C1-1,W2,1,1,16 ft,8 in,3 in,eastern white pine,18 %,B02,1
        W2-C1-2,W2,1,2,10 ft,8 in,3 in,eastern white pine,18,B02,2
        """);
    texts.put(
        "bundles.csv",
        """
        bundle,load,off_order,length,width,height
        B01,L1,1,16 ft,2 ft,1 ft
        B02,L1,2,16'-4 1/2",2 ft,1 ft
        """);
    texts.put(
        "loads.csv",
        """
        load,arrival,truck_stand
        L1,2031-05-05T08:00,gate
        """);
  }

  /** Writes the valid job into a folder. */
  static JobFolder in(Path path) {
    JobFolder folder = new JobFolder(path);
    folder.texts.forEach(folder::write);
    return folder;
  }

  /** The same job with every field that may be left out. */
  static JobFolder full(Path path) {
    return in(path)
        .replace(
            "job.json",
            "\"units\": \"us\",",
            "\"units\": \"us\",\n  \"woods\": [{\"name\": \"mill larch\", \"gravity\": 0.52, \"basis\": \"12 %\", \"spread\": \"8 %\"}],\n  \"erection\": {\"begins\": \"2031-05-06\", \"rate\": \"40 pieces/day\", \"days\": \"mon-fri\", \"hours\": \"07:00-16:00\", \"off\": [\"2031-05-29\"]},")
        .replace(
            "site.json",
            "\"starter\": \"half\"}\n",
            "\"starter\": \"half\", \"built\": \"8 ft\"}\n")
        .replace(
            "site.json",
            "\"allowed\": \"60 psf\",",
            """
            "allowed": "60 psf", "total": "20000 lb", "floorCheck": "joists",
            "joists": {"direction": 90, "spacing": "16 in", "first": [32, 51],
                       "supports": [[32, 52], [32, 65], [32, 78]], "live": 40},\
            """)
        .replace(
            "site.json",
            "\"allowed\": \"1500 psf\"",
            "\"soil\": \"Clay\", \"allowed\": \"1500 psf\", \"slope\": \"2 %\", \"total\": \"60 t\"")
        .replace(
            "site.json",
            "\"reason\": \"roots\"}],",
            """
            "reason": "roots"},
            {"id": "trench", "outline": [[110, 10], [120, 10], [120, 14], [110, 14]], "reason": "drain",
             "excavation": true, "depth": "5 ft"}],
            "overheadLines": [{"id": "feeder", "from": [0, 85], "to": [130, 88], "voltage": "7.2 kV", "clearance": "12 ft"}],\
            """)
        .replace(
            "site.json",
            "\"at\": [66, 16]}],",
            """
            "at": [66, 16], "lane": "path"}],
            "grip": {"kind": "forks", "loadCentre": "24 in"}, "width": 8, "rigging": "150 lb", "confirmedBy": "R. Ode",\
            """)
        .replace("pieces.csv", "3 in,eastern white pine,18,B02", "3 in,Mill-Larch,15-25,B02")
        .replace(
            "pieces.csv",
            "6 in,eastern white pine,18,B01,1\nW2",
            "6 in,eastern hemlock,green,B01,1\nW2");
  }

  Path path() {
    return path;
  }

  String text(String file) {
    return texts.get(file);
  }

  /**
   * Line and column of the first place where a snippet stands in a file, of its caret if it has
   * one.
   */
  String place(String file, String snippet) {
    int offset = texts.get(file).indexOf(snippet.replace("^", ""));
    if (offset < 0) {
      throw new IllegalArgumentException(file + " does not hold " + snippet);
    }
    String before = texts.get(file).substring(0, offset + Math.max(0, snippet.indexOf('^')));
    long line = before.chars().filter(c -> c == '\n').count() + 1;
    return line + ":" + (before.length() - before.lastIndexOf('\n'));
  }

  JobFolder replace(String file, String old, String other) {
    if (!texts.get(file).contains(old)) {
      throw new IllegalArgumentException(file + " does not hold " + old);
    }
    texts.put(file, texts.get(file).replace(old, other));
    return write(file, texts.get(file));
  }

  JobFolder write(String file, String text) {
    return write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  JobFolder write(String file, byte[] bytes) {
    try {
      Files.write(path.resolve(file), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }
}
