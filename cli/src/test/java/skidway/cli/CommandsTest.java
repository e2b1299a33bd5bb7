package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import skidway.staging.StopButton;

class CommandsTest {
  @Test
  void everyCommandIsCalledByItsOwnName() {
    Map<String, CommandLine> all = added("--help");
    assertThat(all).hasSizeGreaterThan(15);
    all.forEach((name, command) -> assertThat(command.getCommandName()).isEqualTo(name));
  }

  /** The list of commands shows what stands first alone. */
  @Test
  void theFirstThatIsSaidOfACommandIsAWholeSentence() {
    Map<String, CommandLine> own = new HashMap<>(added("--help"));
    own.remove("help"); // the library's
    own.forEach(
        (name, command) ->
            assertThat(command.getCommandSpec().usageMessage().description()[0])
                .as(name)
                .matches("[A-Z].*[.]"));
  }

  @Test
  void oneThatIsCalledIsMadeAlone() {
    assertThat(added("check", "job")).containsOnlyKeys("check");
  }

  @Test
  void helpAndWhatNobodyKnowsNeedAll() {
    int all = added().size();
    assertThat(added("help", "check")).hasSize(all);
    assertThat(added("chekc", "job")).hasSize(all);
  }

  private static Map<String, CommandLine> added(String... args) {
    CommandLine line = new CommandLine(new Bare());
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    Screen screen = new Screen(nowhere, nowhere, false);
    new Commands(screen, new StopButton(), Clock.systemUTC()).addTo(line, args);
    return line.getSubcommands();
  }

  @Command
  private static final class Bare {}
}
