package skidway.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.job.EventsFile;
import skidway.job.JobReader;
import skidway.progress.Event;
import skidway.progress.EventNames;
import skidway.progress.EventWords;
import skidway.progress.Undone;

/** Says which recorded events a corrected list leaves without the thing that they name. */
final class LostEvents {
  private LostEvents() {}

  /**
   * A sentence for each event in force.
   *
   * @param folder the job's, as it was before the list
   * @param gone bundles and pieces that the list takes away
   */
  static List<String> of(Path folder, Set<String> gone) {
    if (gone.isEmpty() || Files.notExists(folder.resolve(EventsFile.NAME))) {
      return List.of();
    }
    List<Event> events = EventsFile.read(JobReader.read(folder)).events();
    Map<Integer, Integer> undone = Undone.of(events);
    List<String> sentences = new ArrayList<>();
    for (Event event : events) {
      List<String> lost = EventNames.of(event).stream().filter(gone::contains).toList();
      if (!lost.isEmpty() && !undone.containsKey(event.seq())) {
        sentences.add(
            "Event "
                + event.seq()
                + " ("
                + EventWords.of(event)
                + ") stays recorded, but no longer counts for "
                + String.join(", ", lost)
                + ".");
      }
    }
    return sentences;
  }
}
