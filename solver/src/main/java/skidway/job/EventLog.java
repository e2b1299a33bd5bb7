package skidway.job;

import java.util.List;
import skidway.progress.Event;

/**
 * The recorded events of a job.
 *
 * @param entries in the order of recording
 * @param remarks what is odd about the file
 */
public record EventLog(List<Entry> entries, List<Problem> remarks) {
  /**
   * One line of the file.
   *
   * @param plan the newest plan when it was recorded: its spots are meant
   * @param check the value at its end, which stands for all up to it
   */
  public record Entry(Event event, PlanMark plan, String check) {}

  public EventLog {
    entries = List.copyOf(entries);
    remarks = List.copyOf(remarks);
  }

  public List<Event> events() {
    return entries.stream().map(Entry::event).toList();
  }

  /** The check value of each event. */
  List<String> checks() {
    return entries.stream().map(Entry::check).toList();
  }
}
