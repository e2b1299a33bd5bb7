package skidway.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.EventLog;
import skidway.job.EventsFile;
import skidway.job.PlanMark;
import skidway.progress.Contradiction;
import skidway.progress.Event;

/** Records what happened on site. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "record",
    description = {
      "Records in one line what happened on site.",
      "It goes into the job's file of events; nothing there is ever changed. Without "
          + "a sentence it lists what is recorded; 'state' says how the job stands. What "
          + "cannot have happened is refused with a way out."
    },
    footer = {
      "",
      "A sentence is one of",
      "  arrived LOAD",
      "  placed BUNDLE at SPOT [tier N]",
      "  placed LOAD as planned",
      "  moved BUNDLE to SPOT [tier N]",
      "  moved as planned (all moves of the newest plan)",
      "  missing | damaged | found BUNDLE-or-PIECE",
      "  late LOAD --until TIME",
      "  pulled PIECE ... | pulled --through PIECE-or-COURSE",
      "  undo [NUMBER ...]"
    })
final class RecordCommand implements Callable<Integer> {
  private final Screen screen;
  private final Clock clock;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1..*", arity = "0..*", paramLabel = "WORD", description = "what happened")
  private List<String> words = List.of();

  @Mixin private Witness witness = new Witness();

  @Option(
      names = "--until",
      paramLabel = "TIME",
      description =
          "when a late load is expected: 2031-05-12T08:00, 2031-05-12 at the hour expected so far,"
              + " or later than expected so far by +3d or +5h")
  private @Nullable String until;

  @Option(
      names = "--through",
      paramLabel = "PIECE-or-COURSE",
      description =
          "the pull list down to and with a piece's mark, or a wall up to and with a course, such"
              + " as W3-C04")
  private @Nullable String through;

  RecordCommand(Screen screen, Clock clock) {
    this.screen = screen;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    if (words.isEmpty() && until == null && through == null) {
      return list();
    }
    if (words.equals(List.of("state"))) {
      return StatusCommand.tell(screen, folder, false);
    }
    Sentence said = Sentence.of(words, Optional.ofNullable(until), Optional.ofNullable(through));
    ChosenPlan chosen = ChosenPlan.of(screen, folder, null);
    PlanMark mark = PlanMark.of(chosen.plan(), chosen.file());
    List<Event> recorded = EventsFile.append(chosen.job(), mark, log -> next(chosen, log, said));
    screen.results(EventTable.lines(recorded, Map.of()));
    if (recorded.size() > 1) {
      int last = recorded.get(recorded.size() - 1).seq();
      screen.result("To take all of them back: undo %d-%d", recorded.get(0).seq(), last);
    }
    OffPlan.lines(chosen.plan(), recorded).forEach(line -> screen.result("%s", line));
    screen.result("Recorded.");
    return ExitCode.FINE;
  }

  private List<Event> next(ChosenPlan chosen, EventLog log, Sentence said) {
    Standing standing = Standing.of(screen, chosen, log);
    Recorder recorder = new Recorder(standing, said, witness.when(log, clock), witness.who());
    List<Event> events = recorder.events();
    List<Contradiction> found = standing.progress().check(events);
    if (!found.isEmpty()) {
      throw new BadUsage(
          found.stream().map(Contradiction::text).collect(Collectors.joining("\n"))
              + "\nNothing was recorded.");
    }
    recorder.notes().forEach(note -> screen.say("%s", note));
    return events;
  }

  private Integer list() {
    Standing standing = Standing.of(screen, folder);
    if (standing.progress().events().isEmpty()) {
      screen.result("Nothing is recorded yet. Say one of");
      Sentence.FORMS.forEach(form -> screen.result("  %s", form));
      return ExitCode.FINE;
    }
    screen.results(EventTable.lines(standing.progress()));
    return StatusCommand.code(standing);
  }
}
