package skidway.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import skidway.job.SiteFile;
import skidway.survey.Interview;
import skidway.survey.Question;

/** Asks for a site in the terminal, and keeps every answer in the description as it comes. */
final class Asking {
  private final Screen screen;
  private final BufferedReader answers;

  Asking(Screen screen, BufferedReader answers) {
    this.screen = screen;
    this.answers = answers;
  }

  /**
   * Asks until all is said or nobody answers any more.
   *
   * @return whether all is said
   */
  boolean ask(Path folder, Path description) {
    if (!Files.isDirectory(folder)) {
      throw new BadUsage(folder + ": no such folder. Make the job's folder first.");
    }
    Interview interview = begin(description);
    screen.say("Answer in words and measures. ? explains, \"back\" takes the last answer back.");
    screen.say("Every answer is kept in %s; stop at any time and go on later.", description);
    if (interview.answers() > 0) {
      screen.say("Going on after %d answers.", interview.answers());
    }
    Optional<Question> question = interview.next();
    while (question.isPresent()) {
      Optional<String> answer = hear(question.get());
      if (answer.isEmpty()) {
        screen.say("");
        screen.say(
            "Stopped. The answers so far are in %s; site.json was not written.", description);
        return false;
      }
      take(answer.get(), interview, question.get(), description);
      question = interview.next();
    }
    return true;
  }

  private void take(String answer, Interview interview, Question question, Path description) {
    if (answer.equals("?")) {
      screen.say("  %s", question.help());
      screen.say("  For example: %s", question.example());
    } else if (answer.equalsIgnoreCase("back")) {
      screen.say(
          interview.back() ? "  Took the last answer back." : "  This is the first question.");
      SiteFile.describe(description, interview.text());
    } else {
      String said = answer.isEmpty() ? question.usual() : answer;
      Optional<String> wrong =
          said.isEmpty() ? Optional.of("It has no usual answer.") : interview.answer(said);
      wrong.ifPresentOrElse(
          what -> screen.say("  %s For example: %s", what, question.example()),
          () -> SiteFile.describe(description, interview.text()));
    }
  }

  private Optional<String> hear(Question question) {
    String usual =
        question.usual().isEmpty() ? "for example " + question.example() : question.usual();
    screen.say("%s [%s]", question.words(), usual);
    try {
      return Optional.ofNullable(answers.readLine()).map(String::strip);
    } catch (IOException e) {
      throw new BadUsage("The answers cannot be read (" + e + ").");
    }
  }

  private static Interview begin(Path description) {
    if (!Files.exists(description)) {
      return Interview.of(List.of()).orElseThrow();
    }
    try {
      return Interview.of(Files.readAllLines(description))
          .orElseThrow(
              () ->
                  new BadUsage(
                      description
                          + ": it holds lines that no answer wrote, so it cannot be asked on."
                          + " Edit it by hand and run the command without --ask, or name another"
                          + " file."));
    } catch (IOException e) {
      throw new BadUsage(description + ": it cannot be read (" + e + ").");
    }
  }
}
