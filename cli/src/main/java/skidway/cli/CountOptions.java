package skidway.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Option;
import skidway.job.Names;
import skidway.progress.Count;

/** What was counted at a truck, said on the command line. */
final class CountOptions {
  @Option(names = "--complete", description = "all that was expected is there and sound")
  private boolean complete;

  @Option(
      names = "--missing",
      paramLabel = "ID,ID",
      description = "bundles or pieces that are not there. Repeatable.")
  private String[] missing = {};

  @Option(
      names = "--damaged",
      paramLabel = "ID,ID",
      description = "bundles or pieces that must not be built in. Repeatable.")
  private String[] damaged = {};

  @Option(
      names = "--note",
      paramLabel = "ID=TEXT",
      description = "what the supplier should know of one of them. Repeatable.")
  private Map<String, String> notes = new LinkedHashMap<>();

  @Option(
      names = "--extra",
      paramLabel = "\"ID TEXT\"",
      description = {
        "what came but is on no list: a name without spaces, then what it is. Repeatable."
      })
  private String[] extras = {};

  /** Whether anything is said at all. */
  boolean said() {
    return complete
        || missing.length > 0
        || damaged.length > 0
        || extras.length > 0
        || !notes.isEmpty();
  }

  /**
   * The count.
   *
   * @throws BadUsage with everything that cannot be meant
   */
  Count count(String loadId) {
    List<String> wrong = new ArrayList<>();
    Set<String> gone = ids(missing);
    Set<String> bad = ids(damaged);
    Map<String, String> more = extras(wrong);
    if (complete && !(gone.isEmpty() && bad.isEmpty() && more.isEmpty())) {
      wrong.add("--complete says that nothing is missing, damaged or extra. Way out: leave it out");
    }
    for (Map.Entry<String, String> note : notes.entrySet()) {
      if (!gone.contains(note.getKey()) && !bad.contains(note.getKey())) {
        wrong.add(
            "--note is about "
                + plain(note.getKey())
                + ", which is neither said to be missing nor damaged. Way out: name it there too");
      }
      checkLine(note.getValue(), wrong);
    }
    if (!wrong.isEmpty()) {
      throw refused(wrong);
    }
    return new Count(loadId, Set.of(), noted(gone), noted(bad), more);
  }

  static BadUsage refused(List<String> sentences) {
    return new BadUsage(String.join("\n", sentences) + "\nNothing was recorded.");
  }

  private static Set<String> ids(String[] lists) {
    Set<String> ids = new LinkedHashSet<>();
    for (String list : lists) {
      Arrays.stream(list.split(",", -1))
          .map(String::strip)
          .filter(id -> !id.isEmpty())
          .forEach(ids::add);
    }
    return ids;
  }

  private Map<String, String> noted(Set<String> ids) {
    Map<String, String> noted = new LinkedHashMap<>();
    ids.forEach(id -> noted.put(id, notes.getOrDefault(id, "").strip()));
    return noted;
  }

  private Map<String, String> extras(List<String> wrong) {
    Map<String, String> more = new LinkedHashMap<>();
    for (String extra : extras) {
      String text = extra.strip();
      int space = text.indexOf(' ');
      String id = space < 0 ? text : text.substring(0, space);
      String note = space < 0 ? "" : text.substring(space).strip();
      if (!Names.isId(id)) {
        wrong.add(
            "--extra is called " + plain(id) + "; " + Names.ALLOWED + ". Way out: correct it");
      } else if (note.isEmpty()) {
        wrong.add(
            "--extra "
                + id
                + " does not say what it is. Way out: --extra \""
                + id
                + " 3 timbers 150x200, no marks\"");
      } else if (more.putIfAbsent(id, note) != null) {
        wrong.add("There are two extras " + id + ". Way out: put them into one");
      }
      checkLine(note, wrong);
    }
    return more;
  }

  private static void checkLine(String note, List<String> wrong) {
    if (!Names.isLine(note)) {
      wrong.add(
          "The note "
              + plain(note)
              + " is no line of at most 200 printable characters. Way out: shorten it");
    }
  }

  private static String plain(String text) {
    String shown = text.replaceAll("\\p{Cntrl}", "?");
    return '"' + (shown.length() <= 60 ? shown : shown.substring(0, 60) + "...") + '"';
  }
}
