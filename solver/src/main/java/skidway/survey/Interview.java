package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.job.Problem;
import skidway.job.Problems;
import skidway.job.SourceFile;

/**
 * Asks for a site in turn. Every answer is one line of the description, so the lines themselves say
 * how far it has come: an interrupted interview goes on where it stopped, and going back is taking
 * the last line away.
 */
public final class Interview {
  private static final Topic[] TOPICS = Topic.values();

  private final List<String> lines = new ArrayList<>();
  private int topic;
  private int number = 1;

  /**
   * Goes on with a description.
   *
   * @return empty when the lines hold something that no answer wrote
   */
  public static Optional<Interview> of(List<String> lines) {
    Interview interview = new Interview();
    for (String line : lines) {
      if (!line.isBlank() && !interview.follows(line)) {
        return Optional.empty();
      }
    }
    return Optional.of(interview);
  }

  /** The description so far. */
  public String text() {
    return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
  }

  /** How many answers there are. */
  public int answers() {
    return lines.size();
  }

  /** What is asked next; empty when all is said. */
  public Optional<Question> next() {
    return topic < TOPICS.length ? Optional.of(now().question(number)) : Optional.empty();
  }

  /** Takes the last answer back; whether there was one. */
  public boolean back() {
    if (lines.isEmpty()) {
      return false;
    }
    List<String> before = List.copyOf(lines.subList(0, lines.size() - 1));
    lines.clear();
    topic = 0;
    number = 1;
    before.forEach(this::follows);
    return true;
  }

  /**
   * Takes an answer, if it can be read.
   *
   * @return what is wrong with it
   */
  public Optional<String> answer(String answer) {
    String line = line(answer.strip());
    if (line.startsWith("#")) {
      return endsTopic(line);
    }
    Optional<String> wrong = wrong(line);
    if (wrong.isEmpty()) {
      follows(line);
    }
    return wrong;
  }

  private Topic now() {
    return TOPICS[topic];
  }

  private String line(String answer) {
    boolean ends = answer.equalsIgnoreCase("none") || answer.equalsIgnoreCase("done");
    if (ends) {
      return now().noMore();
    }
    boolean named = now() == Topic.NAME || now() == Topic.MACHINE;
    String said = named && !answer.startsWith("\"") ? '"' + answer.replace("\"", "") + '"' : answer;
    return now().begin(number) + said;
  }

  private Optional<String> endsTopic(String line) {
    boolean needed =
        switch (now().times()) {
          case ONCE -> true;
          case ONE_OR_MORE -> number == 1;
          case UNTIL_DONE -> number <= 3;
          case AT_MOST_ONCE, UNTIL_NONE -> false;
        };
    if (needed) {
      return Optional.of(
          now() == Topic.WALL
              ? "A house has three walls or more."
              : "A site cannot do without it.");
    }
    Optional<String> open = now() == Topic.WALL ? problemAt(lines.size(), lines) : Optional.empty();
    if (open.isEmpty()) {
      follows(line);
    }
    return open;
  }

  /** Takes a line as the next answer, if one may be written so. */
  private boolean follows(String line) {
    if (topic >= TOPICS.length) {
      return false;
    }
    if (line.equals(now().noMore())) {
      lines.add(line);
      nextTopic();
      return true;
    }
    String begin = now().begin(number);
    if (line.startsWith("#") || !line.startsWith(begin) || line.length() == begin.length()) {
      return false;
    }
    lines.add(line);
    boolean once = now().times() == Topic.Times.ONCE || now().times() == Topic.Times.AT_MOST_ONCE;
    if (once || (now() == Topic.WALL && line.endsWith(" close"))) {
      nextTopic();
    } else {
      number++;
    }
    return true;
  }

  private void nextTopic() {
    topic += 1 + (lines.get(lines.size() - 1).equals(now().noMore()) ? follow(now()) : 0);
    number = 1;
  }

  /** How many of the next topics are idle where there is none of this one. */
  private static int follow(Topic none) {
    return switch (none) {
      case DECK -> 1; // steps
      case MACHINE -> 2; // its stands and chart
      default -> 0;
    };
  }

  private Optional<String> wrong(String line) {
    List<String> tried = new ArrayList<>(lines);
    tried.add(line);
    if (now() == Topic.WALL && !line.endsWith(" close")) {
      tried.add("wall \"the way back\" close"); // more walls follow; only this one is judged
    }
    return problemAt(lines.size() + 1, tried);
  }

  private static Optional<String> problemAt(int number, List<String> lines) {
    Problems problems = new Problems();
    SourceFile file = new SourceFile(SiteSurvey.FILE, String.join("\n", lines));
    SiteText.read(file, Optional.empty(), name -> Optional.empty(), problems);
    return problems.first(p -> p.line() == number).map(Interview::words);
  }

  private static String words(Problem p) {
    return "Found " + p.found() + "; " + p.allowed() + ". Way out: " + p.wayOut() + ".";
  }
}
