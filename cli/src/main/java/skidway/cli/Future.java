package skidway.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.job.History;
import skidway.plan.Plan;
import skidway.progress.Contradiction;
import skidway.progress.Event;
import skidway.progress.Progress;

/**
 * What might become of a job: what is recorded, and events that somebody supposes.
 *
 * @param history as it would be; nothing of what is supposed is ever written
 */
record Future(String name, History history) {
  private static final String NAME = "supposed";

  /**
   * The job as it is recorded, then one future for each text.
   *
   * @throws BadUsage if one cannot be read, or cannot happen
   */
  static List<Future> of(History history, List<String> texts) {
    List<Future> futures = new ArrayList<>();
    futures.add(new Future("as recorded", history));
    texts.forEach(text -> futures.add(of(history, text)));
    return futures;
  }

  private static Future of(History history, String text) {
    List<String> sentences =
        Arrays.stream(text.split(";", -1)).map(String::strip).filter(s -> !s.isEmpty()).toList();
    if (sentences.isEmpty()) {
      throw Sentence.bad("--suppose '" + text + "' says nothing.");
    }
    Progress progress = history.progress();
    for (String sentence : sentences) {
      List<Event> events = events(history, progress, sentence);
      List<Contradiction> found = progress.check(events);
      if (!found.isEmpty()) {
        throw new BadUsage(
            found.stream().map(Contradiction::text).collect(Collectors.joining("\n"))
                + "\nThat was supposed: "
                + sentence
                + ". Nothing was recorded.");
      }
      for (Event event : events) {
        progress = progress.with(event);
      }
    }
    History then = new History(history.job(), history.plans(), progress.events());
    return new Future(String.join("; ", sentences), then);
  }

  private static List<Event> events(History history, Progress progress, String sentence) {
    List<String> words = Arrays.asList(sentence.split("\\s+", -1));
    Sentence said = Sentence.of(words, Optional.empty(), Optional.empty());
    Plan plan = history.newest().orElseThrow();
    ChosenPlan chosen = new ChosenPlan(history.job(), Path.of(""), plan, history.job().task());
    return new Recorder(new Standing(chosen, progress), said, at(history), NAME).events();
  }

  /** When the last thing happened that is recorded; the comparison needs no clock. */
  private static LocalDateTime at(History history) {
    return history.events().stream()
        .map(Event::at)
        .max(LocalDateTime::compareTo)
        .orElse(history.job().task().schedule().begins());
  }
}
